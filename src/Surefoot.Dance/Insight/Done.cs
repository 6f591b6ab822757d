using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Insight;

/// <summary>One thing that the page asks for: all steps of a figure, or one action.</summary>
/// <param name="Name">The figure, or what the action is called; null for a hold.</param>
internal readonly record struct Done(string? Name, Turn Turn, bool Split, bool Quarters)
{
    /// <summary>
    /// How demanding it is by itself. Working values: walks and touches for anybody; half-counts or a quarter turn for
    /// beginners; both of these, or a half turn, for improvers; more turn, or quarter-counts, for intermediates.
    /// </summary>
    public Level Demands
    {
        get
        {
            var turned = Math.Abs(Turn.Eighths);
            var turning = turned switch { 0 => 0, <= 2 => 1, <= 4 => 2, <= 8 => 3, _ => 4 };
            var timing = Quarters ? 3 : Split ? 1 : 0;
            return (Level)(turning == 1 && timing == 1 ? 2 : Math.Max(turning, timing));
        }
    }

    public static IEnumerable<Done> In(RoleScore role)
    {
        var steps = role.Steps;
        for (var i = 0; i < steps.Count;)
        {
            var first = steps[i];
            var (turn, split, quarters) = (Turn.None, false, false);
            var until = i;
            // The steps of one figure, or the one action, that one stretch of the page asks for.
            while (until < steps.Count && steps[until] is var step && step.Source == first.Source && step.Figure == first.Figure
                && step.Section == first.Section && (until == i || first.Figure is not null))
            {
                turn += step.Turn;
                split |= !step.At.Value.IsWhole;
                quarters |= step.At.Value.Denominator > 2;
                until++;
            }

            var name = first.Figure ?? (first.Kind == ActionKind.Hold ? null : first.Kind.Word() + (first.Turn.IsNone || first.Kind is ActionKind.Turn or ActionKind.Pivot ? "" : " turning"));
            yield return new(name, turn, split, quarters);
            i = until;
        }
    }
}
