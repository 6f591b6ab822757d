using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>What the checks of arms and hands share.</summary>
internal static class ArmWords
{
    /// <summary>A problem at the count of each trouble of a kind; the same words are told once.</summary>
    public static IEnumerable<Problem> Of(DanceCase dance, HandTroubleKind kind, Func<HandTrouble, string, string, Problem> told)
    {
        if (dance.InDoubt || dance.Couple?.Hands is not { } hands) yield break;
        var seen = new HashSet<(TextSpan, Pairs)>();
        Count? last = null;
        foreach (var trouble in hands.Troubles)
        {
            if (trouble.Kind != kind) continue;
            // One turn that catches both pairs, a count apart, is one cause.
            if (last is { } before && trouble.At >= before && trouble.At - before <= Beats.Of(2)) continue;
            last = trouble.At;
            var step = PlaceWords.LastStep(dance, trouble.At);
            if (!seen.Add((step.Source, trouble.Pair))) continue;
            var (part, count) = dance.Place(trouble.At);
            var problem = told(trouble, LoopHold.Hands(trouble.Pair), count) with { Span = step.Source, Part = part, Count = count };
            // At the end as it is now the arms go straight to the start again, which is not yet what comes next.
            if (dance.Score.Roles.All(r => r.Steps.Count == 0 || r.Steps[^1].At <= trouble.At))
            {
                problem = problem with { Unfinished = PageEnd.Open(dance.Page, $"Whether {LoopHold.Hands(trouble.Pair)} can stay joined after count {count} shows with the next counts.") };
            }

            yield return problem;
        }
    }

    /// <summary>"the follow's left arm".</summary>
    public static string Arm(HandTrouble trouble) => trouble.Role switch
    {
        Role.Lead => $"the lead's {trouble.Pair.LeadHand().Word()} arm",
        _ => $"the follow's {trouble.Pair.FollowHand().Word()} arm",
    };

    /// <summary>What to write where the arm is meant to lie behind the back; nothing where no hammerlock would do.</summary>
    public static string OrHammerlock(HandTrouble trouble) =>
        trouble.Hammerlock ? " Where a hammerlock is meant, the hand low behind the own back, call it one on the page, and mind the shoulder." : "";

    public static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
