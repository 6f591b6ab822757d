using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <content>Left and right: a foot, a way, or the way round, as the words beside them tell.</content>
internal sealed partial class MoveReader
{
    private int TakeSide(int i, Foot side)
    {
        var item = items[i];
        Touch(item);
        // "to the left side", "left side", "right diagonal"
        var wayNext = i + 1 < to && items[i + 1].Is(SenseKind.Way, out var way) ? (Direction?)way.Value : null;
        if (TurnsHere(i))
        {
            _move.TurnSide = side == Foot.Left ? 1 : -1;
            _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
            return i + 1;
        }

        if (_objectNext)
        {
            _objectNext = false;
            return i + 1;
        }

        if (AfterTo(i) && _move.Figure is null)
        {
            if (_move.Feet.Count > 0 && _move.Way is Direction.Together or Direction.Across or Direction.Behind) return i + 1;
            if (_move.Feet.Count > 0 && _move.Way is null && item.Span.Length == 1 && wayNext is not (Direction.Side or Direction.DiagonalForward or Direction.DiagonalBack))
            {
                // "Drag L to R": to the other foot.
                _move.Way = Direction.Together;
                return i + 1;
            }

            _move.Towards = side;
            if (wayNext is Direction.DiagonalForward or Direction.DiagonalBack)
            {
                // "To the right diagonal", "back to the left diagonal".
                _move.Way = _move.Way is { } said && Combined(said, wayNext.Value) is { } both ? both : wayNext;
                Touch(items[i + 1]);
                return i + 2;
            }

            if (_move.Way is null || _verbWay) _move.Way ??= Direction.Side;
            if (wayNext is not Direction.Side) return i + 1;
            Touch(items[i + 1]);
            return i + 2;
        }

        if (_move.Figure is { } going && AfterTo(i) && going.Versions.Exists(v => v.Going == Direction.Side))
        {
            // "Shuffle to the right", "chassé to right side".
            _move.Way ??= Direction.Side;
            _move.Towards = side;
            if (wayNext is not Direction.Side) return i + 1;
            Touch(items[i + 1]);
            return i + 2;
        }

        if (wayNext is Direction.Side && (_move.Feet.Count > 0 || !NextIsFoot(i + 1)) && _move.Figure is null)
        {
            // "touch R to right side": the foot is named, the side is the way.
            _move.Towards = side;
            if (_move.Feet.Count == 0) AddFoot(i, side);
            return i + 1;
        }

        if (wayNext is Direction.DiagonalForward or Direction.DiagonalBack && _move.Feet.Count > 0) return i + 1;
        if (_move is { Figure: null, Verb: ActionKind.Swivel or ActionKind.Turn or ActionKind.Pivot } && _head)
        {
            if (_move.Verb == ActionKind.Swivel) AddFoot(i, side);
            else if (_move.TurnSide == 0) _move.TurnSide = side == Foot.Left ? 1 : -1;
            return i + 1;
        }

        if (_move.Figure is { } named && (named.NamesTurn || !named.UsualTurn.IsNone) && !_starting && _move.Feet.Count == 0 && _move.TurnSide == 0)
        {
            // "Pivot turn right": the way round, or the foot it starts on; the feet decide.
            AddFoot(i, side);
            _move.SideOpen = true;
            return i + 1;
        }

        if (_move is { Figure: null, Way: Direction.Side or Direction.DiagonalForward or Direction.DiagonalBack } && item.Span.Length > 2 && FootLetterNext(i))
        {
            // "Step side right R", "diagonally forward left L": the word is the way, the letter is the foot.
            _move.Towards = side;
            return i + 1;
        }

        if (_move is { Figure: null, Way: Direction.DiagonalForward or Direction.DiagonalBack, Feet.Count: 1 } && _lastFootItem != i - 1 && !items[i].Joined && !BetweenFeet(i))
        {
            // "Step R diagonally forward left" goes to the other side than that foot's own.
            _move.Towards = side;
            return i + 1;
        }

        // "forward right" after a named foot says nothing new.
        if (_move.Feet.Count > 0 && _lastFootItem != i - 1 && !items[i].Joined && !BetweenFeet(i) && _move.Figure is null) return i + 1;
        AddFoot(i, side);
        return i + 1;
    }

    // A side word right beside a turn is the way round.
    private bool TurnsHere(int i)
    {
        if (i + 1 < to && items[i + 1].Is(SenseKind.FootNoun)) return false;
        if (i + 1 < to && items[i + 1].Is(SenseKind.Verb, out var next) && (ActionKind)next.Value == ActionKind.Turn
            && !text.AsSpan(items[i + 1].Span.Start, items[i + 1].Span.Length).EndsWith("ing", StringComparison.OrdinalIgnoreCase))
        {
            return _move.TurnSide == 0;
        }

        var j = i - 1;
        while (j >= from && items[j].IsOnly(SenseKind.Filler)) j--;
        if (j < from || _move.TurnSide != 0) return false;
        if (items[j].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value is ActionKind.Turn or ActionKind.Pivot) return true;
        return (items[j].Kind == TokenKind.Fraction || items[j].Is(SenseKind.Amount)) && _move.TurnAmount > 0;
    }

    private bool AfterTo(int i)
    {
        var j = i - 1;
        while (j >= from && items[j].IsOnly(SenseKind.Filler))
        {
            var word = text.AsSpan(items[j].Span.Start, items[j].Span.Length);
            if (word.Equals("to", StringComparison.OrdinalIgnoreCase)) return true;
            if (!word.Equals("the", StringComparison.OrdinalIgnoreCase) && !word.Equals("your", StringComparison.OrdinalIgnoreCase)) return false;
            j--;
        }

        return false;
    }

    private bool FollowedBySide(int i)
    {
        var j = i + 1;
        while (j < to && (items[j].IsOnly(SenseKind.Filler) || (items[j].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value == ActionKind.Turn))) j++;
        return j < to && items[j].Is(SenseKind.Side);
    }

    private bool NextIsFoot(int i) => i + 1 < to && (items[i + 1].Is(SenseKind.Side) || items[i + 1].Is(SenseKind.Foot));

    // One letter and no more of them: after "diagonally left R, L" or "left R-L" the word may well be a foot itself.
    private bool FootLetterNext(int i) =>
        i + 1 < to && items[i + 1].Span.Length <= 2 && !items[i + 1].Joined && (items[i + 1].Is(SenseKind.Side) || items[i + 1].Is(SenseKind.Foot)) && !NextIsFoot(i + 1);

    private bool BetweenFeet(int i)
    {
        for (var k = _lastFootItem + 1; k < i; k++)
        {
            if (items[k].Kind is not (TokenKind.Dash or TokenKind.Slash or TokenKind.Open or TokenKind.Close)) return false;
        }

        return _lastFootItem >= 0;
    }

    private void AddFoot(int i, Foot foot)
    {
        SettleSide(_move, items[i].Span);
        _move.Feet.Add(new(foot, items[i].Span));
        _lastFootItem = i;
        _starting = false;
    }

    // "Full turn right, starting left": once a foot is named, the first side word was the way round.
    private static void SettleSide(Move move, TextSpan foot)
    {
        if (move.Feet.Count != 1) return;
        if (!move.SideOpen)
        {
            // "Vine left L", "chassé to the right R L R": the word is the way, the letters are the feet.
            if (move.Figure is null || move.Feet[0].Span.Length < 4 || foot.Length > 2) return;
            move.Towards = move.Feet[0].Foot;
            move.Feet.Clear();
            return;
        }

        if (move.TurnSide == 0) move.TurnSide = move.Feet[0].Foot == Foot.Left ? 1 : -1;
        move.Feet.Clear();
        move.SideOpen = false;
    }
}
