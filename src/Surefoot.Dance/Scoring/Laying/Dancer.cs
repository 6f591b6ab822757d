using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>
/// Follows one dancer's feet, weight and facing through laid moves. This is where words become steps:
/// everything that is not an atom comes from the figure texts.
/// </summary>
internal sealed class Dancer(Role role, RoleStart start, FigureBook book)
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
            if (way == Direction.Side && move.Towards is { } towards)
            {
                foot ??= verb.Rule() is WeightRule.Takes ? towards : null;
                if ((foot ?? Weight.Free()) is { } acting && acting != towards) way = Direction.Across;
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

    private Turn TurnOf(Move move)
    {
        // "Roll hips counter-clockwise" turns nobody.
        if (move.Figure is null && move.Verb is ActionKind.Bounce or ActionKind.Hold or ActionKind.Clap or ActionKind.Snap) return Turn.None;
        if (move.ToPartner) return TowardsPartner(move);
        if (move.TurnAmount == 0 && move.TurnTo is { } to)
        {
            var shortest = (to - Facing).Eighths;
            if (Math.Abs(shortest) == 4 && move.TurnSide == 0) _assumed |= Assumed.TurnSideNotNamed;
            if (move.TurnSide > 0 && shortest < 0) shortest += 8;
            if (move.TurnSide < 0 && shortest > 0) shortest -= 8;
            return new(shortest);
        }

        if (move.TurnAmount == 0)
        {
            if (move.TurnSide == 0 && !move.OnlyTurn && move.Verb != ActionKind.Pivot) return Turn.None;
            if (move.Verb == ActionKind.Swivel || (move.TurnSide == 0 && move.OnlyTurn && move.Figure is null && move.Verb != ActionKind.Turn)) return Turn.None;
            _assumed |= Assumed.TurnAmountNotNamed;
            return new(4 * SideOf(move));
        }

        return new(move.TurnAmount * SideOf(move));
    }

    // In a circle the lead finds his partner on the outside, the follow hers on the inside.
    private Turn TowardsPartner(Move move)
    {
        var shortest = (new Facing(role == Role.Follow ? 2 : 6) - Facing).Eighths;
        if (move.TurnSide > 0 && shortest < 0) shortest += 8;
        if (move.TurnSide < 0 && shortest > 0) shortest -= 8;
        return new(shortest);
    }

    private int SideOf(Move move)
    {
        if (move.TurnSide != 0) return move.TurnSide;
        if (move.TurnTo is { } to && (to - Facing).Eighths is var shortest && Math.Abs(shortest) == move.TurnAmount) return Math.Sign(shortest);
        _assumed |= Assumed.TurnSideNotNamed;
        if (move.Verb is ActionKind.Pivot or ActionKind.Turn) return Weight == Weight.Left ? -1 : 1;
        return (move.Feet.Count > 0 ? move.Feet[0].Foot : Weight.Free() ?? Foot.Left) == Foot.Left ? 1 : -1;
    }

    private void TurnInSteps(Move move, ValueList<Count> times)
    {
        _figure = null;
        var total = TurnOf(move);
        var fullTurn = Math.Abs(total.Eighths) >= 8;
        for (var i = 0; i < times.Count; i++)
        {
            Foot? foot = i < move.Feet.Count ? move.Feet[i].Foot : null;
            var assumed = fullTurn ? Assumed.Nothing : Assumed.StepsNotNamed;
            Act(ActionKind.Step, Direction.InPlace, foot, Share(total, i, times.Count), times[i], move.Span, move.Size, assumed | _assumed, null);
        }
    }

    /// <summary>The part of a turn that falls on one of several steps, so that the parts add up exactly.</summary>
    internal static Turn Share(Turn total, int index, int of)
    {
        var size = Math.Abs(total.Eighths);
        var before = ((size * index * 2) + of) / (2 * of);
        var after = ((size * (index + 1) * 2) + of) / (2 * of);
        return new((after - before) * Math.Sign(total.Eighths));
    }

    private void DanceFigure(Figure figure, Move move, ValueList<Count> times)
    {
        _figure = figure.Name;
        // Where the page wrote the figure's first step itself, that step's foot is the one that began.
        var begun = move.Skip > 0 && FigureDancer.Rhythm(figure, move, role, book).Steps is [{ ChangesWeight: true }, ..];
        var plan = FigurePlan.Make(figure, move, role, begun ? Weight.Free()?.Other() : Weight.Free(), book);
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

    private void Act(
        ActionKind kind, Direction way, Foot? named, Turn turn, Count at, TextSpan source, StepSize size, Assumed assumed, Weight? endsOn,
        bool? footNamed = null, Conflict conflict = Conflict.None)
    {
        var says = footNamed ?? named is not null;
        var weightBefore = Weight;
        Foot? acting = null;
        switch (kind.Rule())
        {
            case WeightRule.Takes:
                acting = FreeFoot(named, says, ref conflict);
                Weight = acting.Value.Weight();
                break;
            case WeightRule.Returns:
                acting = Returning(named, says, ref conflict);
                Weight = acting.Value.Weight();
                break;
            case WeightRule.FreeFootActs:
                acting = FreeFoot(named, says, ref conflict);
                Weight = acting.Value.Other().Weight();
                break;
            case WeightRule.Evens:
                Weight = Weight.Both;
                break;
            case WeightRule.Leans:
                acting = named ?? Weight.Free() ?? Foot.Left;
                Weight = acting.Value.Weight();
                break;
            default:
                if (kind == ActionKind.Hop)
                {
                    if (Weight == Weight.Both && named is null) conflict = Raise(Conflict.WeightEven);
                    acting = Weight.Free()?.Other() ?? named ?? Foot.Left;
                    if (named is { } hopped && Weight.Free() == hopped) conflict = Raise(Conflict.HopOnFreeFoot);
                    Weight = acting.Value.Weight();
                }
                else if (kind == ActionKind.Pivot && _stepForwardJustBefore && Weight.Free() is { } other)
                {
                    Weight = other.Weight();
                }

                break;
        }

        if (endsOn is { } told) Weight = told;
        else if (_figure is not null && kind is ActionKind.Turn && _move.Figure is { FreeAfter: "as told" }) assumed |= Assumed.WeightNotNamed;
        Facing += turn;
        var use = kind switch
        {
            ActionKind.Jump => FootUse.Both,
            ActionKind.Turn or ActionKind.Pivot => weightBefore switch { Weight.Left => FootUse.Left, Weight.Right => FootUse.Right, _ => FootUse.Both },
            _ => acting?.Use() ?? FootUse.None,
        };
        Steps.Add(new(at + Offset, Beats.Zero, use, kind, way, turn, Facing, Weight, Section, source, _figure, size, assumed, conflict)
        {
            FootNamed = says,
            Repeated = _laid.Repeated,
            RepeatedBy = _laid.RepeatedBy,
        });
        Remember(kind, way, acting);
    }

    private void Remember(ActionKind kind, Direction way, Foot? acting)
    {
        if (kind == ActionKind.Rock || kind.Rule() == WeightRule.Leans)
        {
            _rocked = acting;
            if (kind == ActionKind.Rock) _lastRock = way;
        }
        else if (kind.Rule() is not WeightRule.Stays)
        {
            _rocked = null;
        }

        if (kind.Rule() == WeightRule.Takes && kind != ActionKind.Rock && way is not (Direction.InPlace or Direction.Together)) _lastTravel = way;
        _stepForwardJustBefore = kind is ActionKind.Step or ActionKind.Rock or ActionKind.Stomp && way is Direction.Forward or Direction.DiagonalForward or Direction.ForwardAcross or Direction.Across;
    }

    private Foot FreeFoot(Foot? named, bool says, ref Conflict conflict)
    {
        var free = Weight.Free();
        if (named is { } foot)
        {
            if (free is { } only && only != foot) conflict = Raise(Conflict.FootCarriesWeight);
            else if (says) Settled();
            return foot;
        }

        if (free is null)
        {
            conflict = Raise(Conflict.WeightEven);
            return Foot.Left;
        }

        return free.Value;
    }

    private Foot Returning(Foot? named, bool says, ref Conflict conflict)
    {
        if (_rocked is { } rocked)
        {
            if (named == rocked) conflict = Raise(Conflict.FootCarriesWeight);
            else if (named is not null && says) Settled();
            return named ?? rocked.Other();
        }

        conflict = Raise(Conflict.NothingToRecover);
        return named ?? Weight.Free() ?? Foot.Left;
    }

    // One cause, one report: what clashes after a clash is taken as the page says it, once the line is another.
    private Conflict Raise(Conflict conflict)
    {
        if (_doubt)
        {
            if (_doubtLine != _laid.Line.Start) _doubt = false;
            return Conflict.None;
        }

        Doubt(_laid.Line.Start);
        return conflict;
    }

    private void Doubt(int line)
    {
        _doubt = true;
        _doubtLine = line;
    }

    private void Settled()
    {
        if (_doubt && _doubtLine != _laid.Line.Start) _doubt = false;
    }
}
