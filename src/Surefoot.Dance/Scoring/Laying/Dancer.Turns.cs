using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <content>How far a move turns, which way round, and on which of its actions.</content>
internal sealed partial class Dancer
{
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
}
