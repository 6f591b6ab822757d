using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Feet;

/// <summary>
/// One moment of one dancer: what is done on a count, and how the feet stand before and after.
/// Several actions share a frame when they share the count, as a touch and a clap do.
/// </summary>
internal sealed record Frame(Role Role, ValueList<ScoreStep> Actions, Stance Before, Stance After)
{
    /// <summary>The action that shows in the feet; the others are only named under the panel.</summary>
    public ScoreStep Main
    {
        get
        {
            foreach (var action in Actions)
            {
                if (action.ChangesWeight || action.Kind.PlacesFoot() || action.Kind.InTheAir()) return action;
            }

            return Actions[0];
        }
    }

    public Turn Turned
    {
        get
        {
            var sum = Turn.None;
            foreach (var action in Actions) sum += action.Turn;
            return sum;
        }
    }

    /// <summary>True when both dancers do the very same, looking the same way, so that one picture serves both.</summary>
    public bool SameAs(Frame other)
    {
        if (Actions.Count != other.Actions.Count || Before.Weight != other.Before.Weight) return false;
        for (var i = 0; i < Actions.Count; i++)
        {
            var (a, b) = (Actions[i], other.Actions[i]);
            var same = a.At == b.At && a.Kind == b.Kind && a.Foot == b.Foot && a.Direction == b.Direction
                && a.Turn == b.Turn && a.Facing == b.Facing && a.Weight == b.Weight;
            if (!same) return false;
        }

        return true;
    }

    /// <summary>How a foot is to be drawn.</summary>
    public SoleMark Mark(Foot foot)
    {
        var main = Main;
        var carries = After.Weight.Free() != foot;
        var carried = Before.Weight.Free() != foot;
        var acts = main.Foot == FootUse.Both || main.Foot.Single() == foot;
        return main.Kind.Rule() switch
        {
            WeightRule.Takes or WeightRule.Evens when acts => SoleMark.Weighted,
            WeightRule.Returns when carries => SoleMark.Weighted,
            WeightRule.FreeFootActs when acts => Unweighted(main.Kind),
            // A hop lands on the foot it left; a pivot or a sway may bring the weight onto the other.
            WeightRule.Stays or WeightRule.Leans when carries && (!carried || main.Kind == ActionKind.Hop) => SoleMark.Weighted,
            _ => carried ? SoleMark.Standing : SoleMark.Resting,
        };
    }

    /// <summary>True when the weight comes onto a foot that did not move: a recover, the end of a pivot, a sway.</summary>
    public bool WeightComesBack(Foot foot) =>
        Main.Kind.Rule() is WeightRule.Returns or WeightRule.Stays or WeightRule.Leans
        && Main.Kind != ActionKind.Hop && Mark(foot) == SoleMark.Weighted;

    private static SoleMark Unweighted(ActionKind kind) => kind switch
    {
        _ when kind.InTheAir() => SoleMark.InAir,
        ActionKind.Heel => SoleMark.HeelOnly,
        ActionKind.StompUp or ActionKind.Fan => SoleMark.Flat,
        _ => SoleMark.ToeOnly,
    };

    /// <summary>Where a foot is drawn: where it stands, or the place in the air it swings to.</summary>
    public FootPlace Place(Foot foot)
    {
        if (Mark(foot) == SoleMark.InAir) return Gestures.Place(Main, foot, After);
        var place = After.Foot(foot);
        // A foot under the body's weight looks where the body looks, also at the end of a pivot.
        return Mark(foot) is SoleMark.Weighted or SoleMark.Standing && After.Weight.Free() != foot
            ? place with { Facing = After.Facing }
            : place;
    }

    /// <summary>Room the drawn feet take, in metres: the larger side of the box round their middles.</summary>
    public double Spread
    {
        get
        {
            var apart = Place(Foot.Left).At - Place(Foot.Right).At;
            return Math.Max(Math.Abs(apart.X), Math.Abs(apart.Y));
        }
    }
}
