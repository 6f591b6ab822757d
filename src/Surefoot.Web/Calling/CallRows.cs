using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;

namespace Surefoot.Web.Calling;

/// <summary>A dancing of a part with what is called in it, as the room of the calls shows it.</summary>
/// <param name="Section">Which dancing of the repeat; -1 for before the dance.</param>
/// <param name="Heading">"Part A, 2nd time".</param>
/// <param name="First">The part's first count as dancers count it; 0 where no call can be added.</param>
/// <param name="Last">Its last count.</param>
internal sealed record CallGroup(int Section, string Heading, int First, int Last, List<CallRow> Rows);

/// <param name="From">First count of the call, through the repeat.</param>
/// <param name="On">As dancers count it: "7-8".</param>
/// <param name="Written">True where the page has it.</param>
internal sealed record CallRow(int From, int Counts, string On, Role? Role, string Words, bool Written);

/// <summary>Sorts a dance's calls by the parts in which they are said.</summary>
internal static class CallRows
{
    public static List<CallGroup> Of(Reading reading)
    {
        var (score, sheet) = (reading.Score, reading.Calls);
        var groups = new List<CallGroup> { new(-1, "Before it begins", 0, 0, [.. sheet.Opening.Select(c => Row(c, "the last counts before"))]) };
        var times = new int[score.Parts.Count];
        for (var s = 0; s < score.Sections.Count; s++)
        {
            var section = score.Sections[s];
            var part = score.Parts[section.Part];
            var (before, length) = (section.Start.Whole - 1, part.Length.Ceiling);
            var time = ++times[section.Part];
            var label = part.Label.Length > 0 ? part.Label : "The dance";
            var heading = $"{label}{(score.Sections.Count(x => x.Part == section.Part) > 1 ? $", time {time}" : "")}{(section.Mirrored ? ", on the other foot" : "")}";
            var rows = sheet.Calls.Where(c => c.From > before && c.From <= before + length)
                .Select(c => Row(c, c.Counts == 1 ? $"{Count(c.From)}" : $"{Count(c.From)}-{Count(c.To)}")).ToList();
            groups.Add(new(s, heading, 1 + part.CountOffset, length + part.CountOffset, rows));

            int Count(int through) => through - before + part.CountOffset;
        }

        return groups;
    }

    private static CallRow Row(Call call, string on) => new(call.From, call.Counts, on, call.Role == Role.Dancer ? null : call.Role, CallWords.Plain(call.Words), call.Written);
}
