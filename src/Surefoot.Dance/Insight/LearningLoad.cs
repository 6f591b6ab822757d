using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Insight;

/// <summary>How much of a dance is new to somebody who learns it, in whole counts.</summary>
/// <param name="Counts">Length of one repeat of the dance.</param>
/// <param name="New">Counts that have to be learned.</param>
/// <param name="Mirrored">Counts danced again with the other foot: not free, but less than new.</param>
/// <param name="Changed">Counts of a repeat that differ from what they repeat; part of <paramref name="New"/>.</param>
public sealed record LearningLoad(Role Role, int Counts, int New, int Mirrored, int Changed)
{
    /// <summary>
    /// Counts the load of a role from the repeats the page writes down. A part danced again costs nothing,
    /// a stretch repeated costs only the counts that differ for this role.
    /// </summary>
    public static LearningLoad Of(DanceScore score, Role role)
    {
        var fresh = 0;
        var mirrored = 0;
        var changed = 0;
        var seen = new HashSet<int>();
        foreach (var section in score.Sections)
        {
            var part = score.Parts[section.Part];
            if (!seen.Add(section.Part))
            {
                if (section.Mirrored) mirrored += part.Length.Ceiling;
                continue;
            }

            var whole = part.Length;
            foreach (var repeat in part.Repeats)
            {
                whole -= repeat.Length;
                if (repeat.Mirrored) mirrored += repeat.Length.Ceiling;
                foreach (var change in repeat.Changes)
                {
                    if (change.Role is { } only && only != role) continue;
                    changed += (change.To - change.From).Ceiling;
                }
            }

            fresh += whole.Ceiling;
        }

        return new(role, score.Counts.Ceiling, fresh + changed, mirrored, changed);
    }
}
