using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <content>What a phrase asks for: verbs, figures and the ways they go.</content>
internal sealed partial class MoveReader
{
    private int TakeVerb(int i, ActionKind verb, int way)
    {
        var item = items[i];
        var turns = verb is ActionKind.Turn;
        if (_head)
        {
            if (turns && _move.Figure is null && !_turnHead && _move.Verb != ActionKind.Hold)
            {
                // "Step R forward turning ¼ right": the turn belongs to the step.
                Touch(item);
                _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
                _move.TurnMaySplit = true;
                return i + 1;
            }

            if (turns && _move.Figure is not null)
            {
                Touch(item);
                _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
                return i + 1;
            }

            if (_turnHead && verb == ActionKind.Pivot)
            {
                // "½ pivot left".
                _move.Verb = verb;
                _move.OnlyTurn = _turnHead = false;
                Touch(item);
                return i + 1;
            }

            if (_turnHead && (verb.Rule() is not WeightRule.Stays))
            {
                // "Turn ¼ left stepping R forward".
                _turnHead = false;
                _move.OnlyTurn = false;
                _move.Verb = verb;
                _move.TurnSpan ??= _move.Span;
                Touch(item);
                SetVerbWay(way);
                return i + 1;
            }

            if (verb == ActionKind.Rock && _move is { Figure: null, Verb: ActionKind.Step } && _verbWay)
            {
                // "Cross rock" is a rock across.
                _move.Verb = ActionKind.Rock;
                Touch(item);
                return i + 1;
            }

            if (verb == ActionKind.Step && way >= 0 && _move is { Figure: null, Verb: ActionKind.Step, Way: null, Feet.Count: 0 })
            {
                // "Step cross L" is one step.
                Touch(item);
                SetVerbWay(way);
                return i + 1;
            }

            if (_part is not null || _move.Figure is null || verb != ActionKind.Step) NextMove();
            else
            {
                // "Jazz box step": the word adds nothing.
                Touch(item);
                return i + 1;
            }
        }

        Touch(item);
        _head = true;
        _move.HeadSaid = true;
        _move.Verb = verb;
        _turnHead = verb is ActionKind.Turn;
        _move.OnlyTurn = _turnHead;
        if (_turnHead) _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
        SetVerbWay(way);
        return i + 1;
    }

    private int TakeFigure(int i, Figure figure)
    {
        var item = items[i];
        if (_head && !_turnHead) NextMove();
        Touch(item);
        _head = true;
        _turnHead = false;
        _move.OnlyTurn = false;
        _move.HeadSaid = true;
        _move.Figure = figure;
        if (_move.Feet.Count > 0 && figure.NamesTurn) _move.SideOpen = true;
        return i + 1;
    }

    private int TakeWay(int i, Direction way)
    {
        var item = items[i];
        if (_move.Way is { } had && !_verbWay)
        {
            if (Combined(had, way) is { } both)
            {
                _move.Way = both;
                Touch(item);
                return i + 1;
            }

            if (_move.Feet.Count > 0 && NextIsFoot(i) && had == way)
            {
                Touch(item);
                _objectNext = true;
                return i + 1;
            }

            if (_move.Figure is null)
            {
                // "Side together side": each way is a step of its own.
                var verb = _head && _move.Verb is ActionKind.Step or ActionKind.Touch or ActionKind.Point or ActionKind.Tap ? _move.Verb : ActionKind.Step;
                NextMove();
                _move.Verb = verb;
            }
        }

        Touch(item);
        _verbWay = false;
        _move.Way = way;
        _objectNext = _move.Feet.Count > 0 && way is Direction.Across or Direction.Behind or Direction.Together or Direction.LockBehind or Direction.LockFront;
        return i + 1;
    }

    private void SetVerbWay(int way)
    {
        if (way < 0) return;
        if (_move.Way is null)
        {
            _move.Way = (Direction)way;
            _verbWay = true;
        }
    }

    private static Direction? Combined(Direction a, Direction b) => (a, b) switch
    {
        (Direction.Forward, Direction.Side) or (Direction.Side, Direction.Forward) => Direction.DiagonalForward,
        (Direction.Back, Direction.Side) or (Direction.Side, Direction.Back) => Direction.DiagonalBack,
        (Direction.Forward, Direction.Across) or (Direction.Across, Direction.Forward) => Direction.ForwardAcross,
        (Direction.DiagonalForward, Direction.Forward) or (Direction.Forward, Direction.DiagonalForward) => Direction.DiagonalForward,
        (Direction.DiagonalForward, Direction.Back) or (Direction.Back, Direction.DiagonalForward) => Direction.DiagonalBack,
        (Direction.LockBehind, Direction.Behind) => Direction.LockBehind,
        (Direction.LockBehind, Direction.Across) => Direction.LockFront,
        (Direction.Across, Direction.Behind) => Direction.Behind,
        (Direction.InPlace, Direction.Together) or (Direction.Together, Direction.InPlace) => Direction.Together,
        _ => null,
    };

    // "hold" is a verb and part of a hold's name; "turn" alone is the atom even where a figure has the name too.
    private static bool PrefersVerb(Item item) => item.Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value is ActionKind.Turn;
}
