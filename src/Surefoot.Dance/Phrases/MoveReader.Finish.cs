using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <content>What a phrase came to once all its words are read.</content>
internal sealed partial class MoveReader
{
    private void Finish()
    {
        if (!_any) return;
        _any = false;
        _move.Span = _span!.Value;
        if (_number > 0)
        {
            if (_move is { Figure: null, Verb: ActionKind.Hold } && _head) _move.CountsEach = _number;
            else if (_head || _move.Feet.Count > 0 || _move.Way is not null) _move.Units = _number;
        }

        if (_part is { } part) ApplyPart(part);
        if (_outIn is { } outIn && _move is { Figure: null, Way: null, OnlyTurn: false } && (!_head || _move.Verb is ActionKind.Step or ActionKind.Touch or ActionKind.Point or ActionKind.Jump))
        {
            // "Out R, out L, in R, in L".
            _move.Way = _move.Verb == ActionKind.Jump && _head ? (outIn == Direction.Side ? Direction.Apart : Direction.Together) : outIn;
        }

        if (_turnHead && _move is { OnlyTurn: true, Feet: [var foot], TurnSpan: { } turns } && foot.Span.Start < turns.Start && IsParticiple(turns)
            && before is { Figure: null, OnlyTurn: false, TurnAmount: 0, TurnTo: null, Feet.Count: > 0 } steps && steps.Verb.Rule() is WeightRule.Takes && LastPiece() is MovePiece)
        {
            // "Step in place R, L, R turning ½ right": one step more, and the turn goes with it.
            (_move.OnlyTurn, _move.Verb, _move.Way) = (false, steps.Verb, steps.Way);
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_turnHead && _move.OnlyTurn && before is { TurnAmount: 0, TurnTo: null, OnlyTurn: false } turned && LastPiece() is MovePiece && IsParticiple(_move.Span))
        {
            // "Step forward L, turning ¼ left": the turn belongs to the step before the comma.
            (turned.TurnAmount, turned.TurnSide, turned.TurnTo) = (_move.TurnAmount, _move.TurnSide, _move.TurnTo);
            turned.TurnSpan = _move.Span;
            turned.Span = turned.Span.Join(_move.Span);
            return;
        }

        if (_head)
        {
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.Way is not null || _move.Towards is not null)
        {
            // Only a way and perhaps a foot: a step that way, or the same again.
            if (_move.Verb == default) _move.Verb = Continued();
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.Feet.Count > 0)
        {
            // "L" after "Walk R": the same again with that foot.
            if (before is { } last && LastPiece() is MovePiece or null && _move is { TurnAmount: 0, TurnTo: null })
            {
                SettleSide(last, _move.Feet[0].Span);
                if (_move.CountsEach > 0)
                {
                    // "Walk L quick, R quick, L slow": each foot has its own length.
                    for (var k = 0; k < last.Feet.Count; k++) last.Feet[k] = last.Feet[k] with { Counts = last.Feet[k].Counts > 0 ? last.Feet[k].Counts : Math.Max(1, last.CountsEach) };
                    last.CountsEach = 0;
                }

                last.Feet.AddRange(_move.Feet.Select(f => f with { Counts = _move.CountsEach }));
                last.Span = last.Span.Join(_move.Span);
                return;
            }

            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.TurnTo is not null || _move.TurnSide != 0)
        {
            _move.OnlyTurn = true;
            _move.Verb = ActionKind.Turn;
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.Unclear)
        {
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.CountsEach > 0 && before is not null && LastPiece() is MovePiece) before.CountsEach = _move.CountsEach;
        pieces.Add(new NotePiece(text.Substring(_move.Span.Start, _move.Span.Length), _move.Span));
    }

    // "Touch R forward, side, back" goes on touching; "rock back on R, forward on L" comes back.
    private ActionKind Continued()
    {
        if (before is not { Figure: null, OnlyTurn: false, Way: { } was } last || LastPiece() is not MovePiece || _move.Way is not { } way) return ActionKind.Step;
        var sameFoot = _move.Feet.Count == 0 || (last.Feet.Count > 0 && _move.Feet[0].Foot == last.Feet[^1].Foot);
        if (last.Verb is ActionKind.Touch or ActionKind.Tap or ActionKind.Point or ActionKind.Kick or ActionKind.Toe && sameFoot && way is not (Direction.Together or Direction.InPlace)) return last.Verb;
        if (last.Verb == ActionKind.Rock && way == was.TurnedRound() && way != was && !sameFoot) return ActionKind.Recover;
        return ActionKind.Step;
    }

    // "turning …", "making …" go with what stands before them; "turn …" is an action of its own.
    private bool IsParticiple(TextSpan span)
    {
        var words = text.AsSpan(span.Start, span.Length);
        var blank = words.IndexOf(' ');
        return (blank < 0 ? words : words[..blank]).EndsWith("ing", StringComparison.OrdinalIgnoreCase);
    }

    private Piece? LastPiece() => pieces.Count > 0 ? pieces[^1] : null;

    private void ApplyPart(Part part)
    {
        if (_move.Figure is not null) return;
        var kind = part switch
        {
            Part.Heel => ActionKind.Heel,
            Part.Toe => ActionKind.Toe,
            Part.Hip => ActionKind.Bump,
            Part.Knee => ActionKind.Hitch,
            _ => (ActionKind?)null,
        };
        if (kind is null) return;
        if (!_head)
        {
            _head = true;
            _move.HeadSaid = true;
            // "Heels apart" twists both feet; "R heel" is one foot's.
            _move.Verb = _partPlural && part is Part.Heel or Part.Toe ? ActionKind.Swivel : kind.Value;
        }
        else if (_move.Verb is ActionKind.Touch or ActionKind.Tap or ActionKind.Point && part is Part.Heel or Part.Toe)
        {
            _move.Verb = kind.Value;
        }
    }
}
