using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Likeness;

/// <summary>A line of two dances laid side by side.</summary>
/// <param name="Fate">How the two stand to each other.</param>
/// <param name="Counts">How many counts the line stands for: more than one where they are alike, or where one dance goes on alone.</param>
/// <param name="First">Where it is in the first dance: "Part A, 5", or "Part A, 1 to 8"; null when only the second has it.</param>
/// <param name="FirstWords">What the first dances there, in few words; empty for counts that are told together.</param>
/// <param name="Second">Where it is in the second dance; null when only the first has it.</param>
public sealed record LaidRow(Fate Fate, int Counts, string? First, string FirstWords, string? Second, string SecondWords);

/// <summary>Two dances side by side, in dancers' words: stretches that are alike are one line, the others a line for each count.</summary>
public static class LaidOut
{
    /// <summary>So many counts that only one of the two has, and more, are one line. Working value.</summary>
    private const int Stretch = 4;

    public static List<LaidRow> Of(DanceScore first, DanceScore second, Compared compared)
    {
        var rows = new List<LaidRow>();
        for (var i = 0; i < compared.Rows.Count;)
        {
            var row = compared.Rows[i];
            var until = i + 1;
            while (row.Fate is Fate.Alike or Fate.Alone && until < compared.Rows.Count && GoesOn(compared.Rows[until - 1], compared.Rows[until])) until++;
            if (row.Fate == Fate.Alone && until - i < Stretch) until = i + 1;
            var last = compared.Rows[until - 1];
            rows.Add(new(
                row.Fate,
                until - i,
                Where(first, row.First, last.First),
                until - i > 1 || row.Fate == Fate.Alike ? "" : Words(first, row.First),
                Where(second, row.Second, last.Second),
                until - i > 1 || row.Fate == Fate.Alike ? "" : Words(second, row.Second)));
            i = until;
        }

        return rows;

        bool GoesOn(Beside before, Beside now) => now.Fate == before.Fate && now.First == before.First + 1 && now.Second == before.Second + 1
            && SectionOf(first, before.First) == SectionOf(first, now.First) && SectionOf(second, before.Second) == SectionOf(second, now.Second);
    }

    /// <summary>What is danced on a whole count of the repeat, from 0: "L rock forward", "lead R recover, follow L recover".</summary>
    internal static string Words(DanceScore score, int? count)
    {
        if (count is not { } at) return "";
        var said = score.Roles.Select(r => (r.Role, Words: OfRole(r, at))).ToList();
        if (said.Count == 0) return "";
        return said.TrueForAll(s => s.Words == said[0].Words) ? said[0].Words : string.Join("; ", said.Select(s => $"the {s.Role.Word()}: {s.Words}"));
    }

    private static string OfRole(RoleScore role, int count)
    {
        var words = new List<string>();
        var weight = role.Start.Weight;
        foreach (var step in role.Steps)
        {
            if (step.At.Whole == count + 1) words.Add((step.At.Value.IsWhole ? "" : step.At.Name[^1] + " ") + StepWords.Of(step, weight));
            weight = step.Weight;
        }

        return words.Count == 0 ? "hold" : string.Join(", ", words);
    }

    private static string? Where(DanceScore score, int? from, int? to)
    {
        if (from is not { } a || to is not { } b) return null;
        var counts = a == b ? Name(score, a) : $"{Name(score, a)} to {Name(score, b)}";
        return score.PartAt(Count.At(a + 1))?.Part.Label is { Length: > 0 } label ? $"{label}, {counts}" : counts;
    }

    private static string Name(DanceScore score, int count) =>
        score.PartAt(Count.At(count + 1)) is { } place ? (place.InPart + Beats.Of(place.Part.CountOffset)).Name : $"{count + 1}";

    private static int SectionOf(DanceScore score, int? count)
    {
        var section = 0;
        while (section + 1 < score.Sections.Count && score.Sections[section + 1].Start <= Count.At((count ?? 0) + 1)) section++;
        return section;
    }
}
