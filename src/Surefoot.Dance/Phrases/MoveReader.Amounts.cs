using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <content>How far and how often: turns, numbers, lengths.</content>
internal sealed partial class MoveReader
{
    private int TakeAmount(int i, int eighths)
    {
        _move.TurnAmount = eighths;
        _move.TurnSpan = Joined(_move.TurnSpan, items[i].Span);
        if (i > from && items[i - 1].Is(SenseKind.Side, out var prior) && _move.Feet.Count > 0 && _lastFootItem == i - 1
            && _move.TurnSide == 0 && (_turnHead || (_move.Feet.Count > 1 && !FollowedBySide(i))))
        {
            _move.Feet.RemoveAt(_move.Feet.Count - 1);
            _move.TurnSide = prior.Value == 0 ? 1 : -1;
        }

        // "½ turn to the left", "¼ left", "full left turn"
        var j = i + 1;
        while (j < to && (items[j].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value == ActionKind.Turn || (items[j].IsOnly(SenseKind.Filler) && FollowedBySide(j)))) j++;
        if (j < to && items[j].Is(SenseKind.Side, out var side) && !(j + 1 < to && items[j + 1].Is(SenseKind.FootNoun)))
        {
            _move.TurnSide = side.Value == 0 ? 1 : -1;
            Adopt(i, j);
            if (j + 1 < to && items[j + 1].Is(SenseKind.Verb, out var turn) && (ActionKind)turn.Value == ActionKind.Turn) Adopt(i, ++j);
            return j + 1;
        }

        if (j > i + 1) Adopt(i, j - 1);
        else if (!_head) BecomeTurn(headSaid: false);
        return j;

        void Adopt(int first, int last)
        {
            for (var k = first; k <= last; k++) Touch(items[k]);
            _move.TurnSpan = Joined(_move.TurnSpan, items[first].Span.Join(items[last].Span));
            if (!_head) BecomeTurn(headSaid: true);
        }
    }

    private void BecomeTurn(bool headSaid)
    {
        // Only while no foot or way was named: "R fwd ¼ right" is a step.
        if (_move.Feet.Count > 0 || _move.Way is not null || _part is not null) return;
        _head = true;
        _turnHead = true;
        _move.OnlyTurn = true;
        _move.Verb = ActionKind.Turn;
        _move.HeadSaid |= headSaid;
    }

    private int TakeNumber(int i)
    {
        var item = items[i];
        Touch(item);
        if (i + 1 < to && IsUnit(items[i + 1], out var metres))
        {
            _move.Size = new(StepSizeWord.Usual, item.Value * metres / (item.Kind == TokenKind.Decimal ? 1000 : 1));
            Touch(items[i + 1]);
            return i + 2;
        }

        if (i + 1 < to && items[i + 1].Is(SenseKind.Counts))
        {
            _move.CountsEach = item.Value;
            Touch(items[i + 1]);
            return i + 2;
        }

        if (i > from && items[i - 1].Is(SenseKind.Multiply) || (i + 1 < to && items[i + 1].Is(SenseKind.Multiply)))
        {
            Repeated(item.Value);
            return i + 1;
        }

        // "¼ turn on 3": the count on which the figure takes its turn anyway.
        if (i > from && items[i - 1].IsOnly(SenseKind.Filler) && _move.Figure is { Turns: TurnRule.OnCount } turning && turning.TurnsOn == Count.At(item.Value)) return i + 1;
        _number = item.Value;
        return i + 1;
    }

    private bool BesideNumber(int i) => i >= from && i < to && items[i].Kind == TokenKind.Number;

    private void Repeated(int times)
    {
        if (times is < 1 or > 64) return;
        if (!_head && _move.Feet.Count == 0 && _move.Way is null && before is not null) before.Times = times;
        else _move.Times = times;
    }

    private bool IsUnit(Item item, out double metres)
    {
        var word = text.AsSpan(item.Span.Start, item.Span.Length);
        metres = word.Equals("m", StringComparison.OrdinalIgnoreCase) || word.Equals("metre", StringComparison.OrdinalIgnoreCase)
            || word.Equals("metres", StringComparison.OrdinalIgnoreCase) || word.Equals("meters", StringComparison.OrdinalIgnoreCase) ? 1
            : word.Equals("cm", StringComparison.OrdinalIgnoreCase) ? 0.01 : 0;
        return metres > 0;
    }
}
