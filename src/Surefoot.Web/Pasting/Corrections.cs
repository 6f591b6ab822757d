using Surefoot.Transcribe;

namespace Surefoot.Web.Pasting;

/// <summary>What somebody said of a sheet's words, kept up from one reading to the next.</summary>
internal static class Corrections
{
    /// <summary>With one more; what was said before of the same words at the same places gives way.</summary>
    public static List<SheetWord> With(IEnumerable<SheetWord> before, PhraseSaid said, string means, Holds holds)
    {
        var word = new SheetWord(said.Words, means);
        var here = word with { Only = said.Place };
        var all = before.Where(c => c.Key != word.Key || (c.Only != said.Place && (c.Only is not null || holds == Holds.Here))).ToList();
        if (holds == Holds.All) all.Add(word);
        // What the hall keeps comes with the hall's words.
        if (holds == Holds.Here || !said.IsFound) all.Add(here);
        return all;
    }

    /// <summary>As one list: what holds at several places is one thing to take back.</summary>
    public static List<(string Said, string Means, List<int> Lines)> Shown(IReadOnlyList<SheetWord> corrections, Transcript read) =>
    [
        .. corrections.GroupBy(c => (c.Key, c.Means)).Select(g => (
            g.First().Said,
            g.Key.Means,
            read.Words.Where(w => g.Contains(w.Word)).Select(w => w.Line).Distinct().ToList())),
    ];

    /// <summary>Without one of that list.</summary>
    public static List<SheetWord> Without(IReadOnlyList<SheetWord> corrections, int number) =>
        corrections.GroupBy(c => (c.Key, c.Means)).ElementAtOrDefault(number) is { } gone ? [.. corrections.Except(gone)] : [.. corrections];

    /// <summary>After the sheet's text was changed: what was said of one place goes with its line.</summary>
    /// <param name="lost">What it was said of, where that line is not there any more.</param>
    public static List<SheetWord> Moved(IReadOnlyList<SheetWord> corrections, string from, string to, out List<string> lost)
    {
        lost = [];
        if (from == to) return [.. corrections];
        var (before, now, moved) = (from.Split('\n'), to.Split('\n'), new List<SheetWord>());
        foreach (var one in corrections)
        {
            if (one.Only is not { } place)
            {
                moved.Add(one);
                continue;
            }

            var line = before[place.Line - 1];
            var there = Enumerable.Range(1, now.Length).Where(n => now[n - 1] == line).OrderBy(n => Math.Abs(n - place.Line)).FirstOrDefault();
            // The line itself was written on, and says it still.
            if (there == 0 && place.Line <= now.Length && now[place.Line - 1].Contains(one.Said, StringComparison.OrdinalIgnoreCase)) there = place.Line;
            if (there > 0) moved.Add(one with { Only = place with { Line = there } });
            else lost.Add(one.Said);
        }

        return moved;
    }
}
