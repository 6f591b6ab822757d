using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Library.Differing;

/// <summary>What is compared of an action: not where it leads the dancer, which follows from the actions before it.</summary>
internal readonly record struct Act(FootUse Foot, ActionKind Kind, Direction Direction, Turn Turn, StepSize Size);

/// <summary>An action of a part at its count in the part, with the words for it.</summary>
internal sealed record PartStep(Count At, Act Act, string Words);

/// <summary>The actions of one role in one part, from the part's first dancing.</summary>
internal static class PartSteps
{
    public static List<PartStep> Of(DanceScore score, int part, Role role)
    {
        for (var section = 0; section < score.Sections.Count; section++)
        {
            if (score.Sections[section].Part != part || score.Sections[section].Mirrored) continue;
            return score.Of(role) is { } steps ? Taken(steps, section, score.Sections[section].Start) : [];
        }

        foreach (var extra in score.Extras)
        {
            if (extra.Part != part) continue;
            foreach (var steps in extra.Roles)
            {
                if (steps.Role == role) return Taken(steps, section: null, Count.First);
            }
        }

        return [];
    }

    private static List<PartStep> Taken(RoleScore role, int? section, Count start)
    {
        var found = new List<PartStep>();
        var weight = role.Start.Weight;
        foreach (var step in role.Steps)
        {
            if (section is null || step.Section == section)
            {
                found.Add(new(Count.First + (step.At - start), new(step.Foot, step.Kind, step.Direction, step.Turn, step.Size), StepWords.Of(step, weight)));
            }

            weight = step.Weight;
        }

        return found;
    }
}
