using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>
/// Follows one dancer's feet, weight and facing through laid moves. This is where words become steps:
/// everything that is not an atom comes from the figure texts.
/// </summary>
internal sealed partial class Dancer(Role role, RoleStart start, FigureBook book)
{
    private Foot? _rocked;
    private Direction _lastRock = Direction.Forward;
    private Direction _lastTravel = Direction.InPlace;
    private int _doubtLine = -1;
    private bool _doubt;
    private LaidMove _laid = null!;
    private Move _move = null!;
    private string? _figure;
    private bool _turnedRound;
    private Assumed _assumed;
    private bool _stepForwardJustBefore;
    private bool _listClash;

    public Role Role => role;

    public List<ScoreStep> Steps { get; } = [];

    public Weight Weight { get; private set; } = start.Weight;

    public Facing Facing { get; private set; } = start.Facing;

    /// <summary>Index of the dancing of a part that following steps belong to.</summary>
    public int Section { get; set; }

    /// <summary>What to add to a move's counts in its part to get the count of the whole repeat.</summary>
    public Beats Offset { get; set; }

    /// <summary>For the follow, where feet are opposite: how the lead looks just before a count.</summary>
    public Func<Count, Facing>? LeadFacing { get; init; }

    public void Dance(LaidMove laid)
    {
        if (laid.Times.Count == 0) return;
        _laid = laid;
        var move = laid.Mirrored ? laid.Move.Mirrored() : laid.Move;
        _turnedRound = false;
        if (laid.ForBoth && LeadFacing is not null)
        {
            var apart = Facing - LeadFacing(laid.Times[0] + Offset);
            _turnedRound = Math.Abs(apart.Eighths) >= 3;
            var side = move.TurnSide;
            move = move.Mirrored();
            // In a closed hold partners turn as one, the same way round; otherwise they are each other's mirror image.
            if (_turnedRound && TurnsAsOne) move.TurnSide = side;
            // Only what simply travels is turned round; crossings, kicks and turns are mirrored and no more.
            _turnedRound &= Travels(move);
        }

        _move = move;
        _assumed = Assumed.Nothing;
        if (laid.Doubtful) Doubt(laid.Line.Start);
        if (move.Figure is { } figure) DanceFigure(figure, move, laid.Times);
        else if (move is { OnlyTurn: true, InSteps: true }) TurnInSteps(move, laid.Times);
        else DanceAtoms(move, laid.Times);
    }

    /// <summary>True while the hold makes one body of two.</summary>
    public bool TurnsAsOne { get; init; }

    private bool Travels(Move move)
    {
        if (move.Figure is not { } figure) return move.Way != Direction.Apart;
        if (FigureDancer.Choose(figure, move.Way, 0, false, out _) is not { } version) return false;
        return FigureDancer.Of(figure, version, role, book).Steps.All(s =>
            s.Turn.IsNone && s.Direction is not (Direction.Across or Direction.Behind or Direction.ForwardAcross)
            && s.Kind is ActionKind.Step or ActionKind.Rock or ActionKind.Recover or ActionKind.Touch or ActionKind.Hold or ActionKind.Stomp or ActionKind.Hop);
    }

    private void DanceAtoms(Move move, ValueList<Count> times)
    {
        _figure = null;
        for (var i = 0; i < times.Count; i++)
        {
            Foot? foot = i < move.Feet.Count ? move.Feet[i].Foot : null;
            var way = move.Way;
            var verb = move.Verb;
            // "Stomp R twice", "bump R twice" stay with the foot; only the last stomp takes weight.
            if (move is { Times: > 1, Feet.Count: 1 } && verb is ActionKind.Stomp or ActionKind.Bump or ActionKind.Sway)
            {
                foot = move.Feet[0].Foot;
                if (verb == ActionKind.Stomp && i < times.Count - 1) verb = ActionKind.StompUp;
            }

            if (move.AndBack && i == 1)
            {
                Act(ActionKind.Recover, Direction.InPlace, null, Turn.None, times[i], move.Span, move.Size, _assumed, move.EndsOn);
                continue;
            }

            // "Jump back R L" lands on one foot after the other; away from each other is back for both.
            if (verb == ActionKind.Jump && foot is not null) verb = ActionKind.Leap;
            if (way == Direction.Apart && LeadFacing is not null | role == Role.Lead && verb is ActionKind.Step or ActionKind.Rock) way = Direction.Back;
            if (way is Direction.Side or Direction.DiagonalForward or Direction.DiagonalBack && move.Towards is { } towards)
            {
                foot ??= verb.Rule() is WeightRule.Takes ? towards : null;
                if ((foot ?? Weight.Free()) is { } acting && acting != towards) way = PastTheOther(way.Value);
            }

            // "Walk 4, turning ½" turns a little with every step; a turn after a list of feet belongs to the last.
            var spread = move.Units > 1 && times.Count > 1 && move.TurnAmount > 0;
            var turn = spread ? Share(TurnOf(move), i, times.Count) : i == times.Count - 1 ? TurnOf(move) : Turn.None;
            var assumed = spread ? Assumed.TurnSpread : move.WayTaken ? Assumed.DirectionNotNamed : Assumed.Nothing;
            if (way is null) way = UsualWay(verb, ref assumed);
            if (_turnedRound && verb is ActionKind.Step or ActionKind.Rock or ActionKind.Stomp or ActionKind.Leap or ActionKind.Touch or ActionKind.Tap or ActionKind.Point or ActionKind.Toe)
            {
                way = way.Value.TurnedRound();
            }

            var pivots = _stepForwardJustBefore && verb == ActionKind.Turn && Math.Abs(turn.Eighths) is 2 or 4 && move.HeadSaid && move.EndsOn is null;
            if (pivots)
            {
                assumed |= Assumed.TurnAsPivot;
                verb = ActionKind.Pivot;
            }

            Act(verb, way.Value, foot, turn, times[i], move.Span, move.Size, assumed | _assumed, i == times.Count - 1 ? move.EndsOn : null);
        }
    }

    // To the side on which the other foot stands.
    private static Direction PastTheOther(Direction way) => way switch
    {
        Direction.DiagonalForward => Direction.ForwardAcross,
        Direction.DiagonalBack => Direction.Behind,
        _ => Direction.Across,
    };

    private Direction UsualWay(ActionKind verb, ref Assumed assumed)
    {
        switch (verb)
        {
            case ActionKind.Step:
                assumed |= Assumed.DirectionNotNamed;
                return Direction.InPlace;
            case ActionKind.Rock:
                assumed |= Assumed.DirectionNotNamed;
                return _lastTravel is Direction.Back or Direction.DiagonalBack ? Direction.Forward : _lastRock;
            case ActionKind.Kick or ActionKind.Heel or ActionKind.Brush or ActionKind.Scuff:
                return Direction.Forward;
            case ActionKind.Toe or ActionKind.Flick:
                return Direction.Back;
            case ActionKind.Point or ActionKind.Sway or ActionKind.Bump:
                return Direction.Side;
            case ActionKind.Hook or ActionKind.Sweep:
                return Direction.Across;
            case ActionKind.Touch or ActionKind.Tap or ActionKind.Drag or ActionKind.StompUp:
                return Direction.Together;
            default:
                return Direction.InPlace;
        }
    }

    private void DanceFigure(Figure figure, Move move, ValueList<Count> times)
    {
        _figure = figure.Name;
        // Where the page wrote the figure's first step itself, that step's foot is the one that began.
        var begun = move.Skip > 0 && FigureDancer.Rhythm(figure, move, role, book).Steps is [{ ChangesWeight: true }, ..];
        var plan = FigurePlan.Make(figure, move, role, begun ? Weight.Free()?.Other() : Weight.Free(), book, opposite: LeadFacing is not null);
        if (move is { TurnAmount: 0 } && (move.TurnTo is not null || move.ToPartner) && figure.UsualTurn.IsNone && plan.Dance.Steps.All(s => s.Turn.IsNone) && TurnOf(move) is { IsNone: false } there)
        {
            // "Shuffle turning to LOD": as far as it takes to look there.
            move = move with { TurnAmount = Math.Abs(there.Eighths), TurnSide = Math.Sign(there.Eighths), TurnTo = null, ToPartner = false };
            plan = FigurePlan.Make(figure, move, role, plan.Start, book, opposite: LeadFacing is not null);
        }

        var turns = plan.Turns(times.Count);
        _assumed |= plan.Assumed;
        _listClash = false;
        var oncePerFoot = Shape.OncePerFoot(move, figure, plan.Dance) || (figure.AnyCounts && plan.Dance.Steps.Count > 1);
        var next = 0;
        var feetAt = 0;
        var unit = 0;
        while (next < times.Count)
        {
            var dance = plan.Dance;
            if (dance.Steps.Count == 0) return;
            var first = unit == 0 ? move.Skip : 0;
            var startFoot = unit == 0 ? plan.Start : Weight.Free() ?? plan.Start;
            var mirrored = startFoot == Foot.Right;
            for (var k = Math.Min(first, dance.Steps.Count - 1); k < dance.Steps.Count && next < times.Count; k++)
            {
                var step = dance.Steps[k];
                var foot = step.Foot.Single();
                if (mirrored) foot = foot?.Other();
                var named = unit == 0 && k == first && plan.StartNamed;
                var clash = false;
                if (foot is not null && move.Feet.Count > 1 && feetAt < move.Feet.Count && ListsFoot(step, plan) && !oncePerFoot)
                {
                    var listed = step.Kind == ActionKind.Pivot ? foot.Value.Other() : foot.Value;
                    clash = move.Feet[feetAt].Foot != listed && feetAt > 0 && !_listClash;
                    _listClash |= clash;
                    named = true;
                    feetAt++;
                }

                var last = next == times.Count - 1;
                if (last && move.Closing is { } closing)
                {
                    CloseWith(closing, move, times[next], turns[next]);
                    next++;
                    continue;
                }

                var way = _turnedRound && !dance.ByRole && step.Kind.Rule() is not WeightRule.Stays ? step.Direction.TurnedRound() : step.Direction;
                var endsOn = last ? move.EndsOn : null;
                if (way == Direction.Side && foot is { } sideFoot && plan.ExtraTurn(next) is var extra and not 0)
                {
                    // Turned a quarter further than the figure does, its side step leads ahead or back.
                    if (Math.Abs(extra) == 2) way = Math.Sign(extra) == (sideFoot == Foot.Left ? 1 : -1) ? Direction.Forward : Direction.Back;
                }

                // Weight that the figure's own text moves without a foot acting, as in a pivot, is followed by the atom itself.
                Act(step.Kind, way, ActingFoot(step, foot, unit == 0 && k == first, plan), turns[next], times[next], move.Span, move.Size.Word == StepSizeWord.Usual && move.Size.Metres <= 0 ? step.Size : move.Size,
                    _assumed | step.Assumed & ~(Assumed.FootNotNamed | Assumed.DirectionNotNamed), endsOn, named, clash ? Conflict.FeetListed : Conflict.None);
                next++;
            }

            unit++;
            if (!figure.AnyCounts && move.Times * Math.Max(1, move.Units) <= 1 && !oncePerFoot && next < times.Count) break;
        }
    }

    // Inside a figure only the first foot can be in doubt; the others follow from it.
    private Foot? ActingFoot(ScoreStep step, Foot? foot, bool first, FigurePlan plan)
    {
        if (step.Kind.Rule() is WeightRule.Stays && step.Kind != ActionKind.Hop) return null;
        if (first && !plan.StartNamed) return Weight == Weight.Both ? null : foot == plan.Start ? null : foot;
        return foot;
    }

    private static bool ListsFoot(ScoreStep step, FigurePlan plan) => plan.ListsWeightOnly ? step.ChangesWeight || step.Kind == ActionKind.Pivot : step.Foot != FootUse.None;

    private void CloseWith(Move closing, Move figure, Count at, Turn turn)
    {
        Foot? foot = closing.Feet.Count > 0 ? closing.Feet[0].Foot : null;
        var assumed = Assumed.Nothing;
        var way = closing.Way ?? UsualWay(closing.Verb, ref assumed);
        if (closing.TurnAmount > 0) turn += new Turn(closing.TurnAmount * SideOf(closing));
        Act(closing.Verb, way, foot, turn, at, closing.Span, closing.Size, assumed, figure.EndsOn);
    }

    private void Doubt(int line)
    {
        _doubt = true;
        _doubtLine = line;
    }
}
