using Surefoot.Dance.Figures;

namespace Surefoot.Dance.Words;

/// <summary>Finds the words nearest to one that is not known, by spelling and by sense.</summary>
public static class NearWords
{
    public sealed record Near(string Word, int Distance, bool BySense);

    // More than three suggestions are a list to read, not a help.
    private const int Most = 3;

    public static List<Near> Of(string word, FigureBook book)
    {
        var lower = word.ToLowerInvariant();
        var limit = Math.Min(2, lower.Length / 3);
        var found = new List<Near>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in book.Rows)
        {
            if (row.Kind == "sense")
            {
                foreach (var spelling in row.Spellings)
                {
                    var arrow = spelling.IndexOf("->", StringComparison.Ordinal);
                    if (arrow > 0 && spelling[..arrow].Trim() == lower) AddSenses(spelling[(arrow + 2)..], row);
                }

                continue;
            }

            if (row.Kind is "header" or "filler" or "style" or "role" or "handnoun" or "number") continue;
            if (row.Spellings.Select(s => s.TrimStart('=')).SelectMany(WithForms).MinBy(s => DistanceTo(s)) is { } nearest) Compare(nearest);
        }

        foreach (var figure in book.All)
        {
            Compare(figure.Name);
            foreach (var name in figure.OtherNames) Compare(name);
            foreach (var one in figure.Name.Split(' ')) Compare(one);
        }

        return [.. found.OrderBy(n => n.BySense ? 0 : n.Distance).ThenBy(n => n.Word, StringComparer.Ordinal).Take(Most)];

        void AddSenses(string first, WordRow row)
        {
            foreach (var sense in row.Spellings.Skip(1).Prepend(first).Select(s => s.Trim()))
            {
                if (seen.Add(sense)) found.Add(new(sense, 0, true));
            }
        }

        // "Rockng" is near to "rocking", a form of "rock".
        static IEnumerable<string> WithForms(string spelling) =>
            spelling.Length < 4 || spelling.Contains(' ', StringComparison.Ordinal) ? [spelling] : WordForms.Of(spelling).Prepend(spelling);

        int DistanceTo(string candidate) =>
            Math.Abs(candidate.Length - lower.Length) > limit || candidate.Length is < 3 or > 64 ? int.MaxValue : Distance(lower, candidate, limit);

        void Compare(string candidate)
        {
            if (Math.Abs(candidate.Length - lower.Length) > limit || candidate.Length is < 3 or > 64) return;
            var distance = Distance(lower, candidate, limit);
            if (distance <= limit && seen.Add(candidate)) found.Add(new(candidate, distance, false));
        }
    }

    /// <summary>The one of a few words that was probably meant, or null where none is near.</summary>
    /// <param name="most">Slips at most; never more than one in three letters.</param>
    public static string? Nearest(string typed, IEnumerable<string> known, int most)
    {
        var lower = typed.ToLowerInvariant();
        var limit = Math.Min(most, lower.Length / 3);
        return known.Select(k => (Word: k, Distance: Distance(lower, k.ToLowerInvariant(), limit))).Where(n => n.Distance <= limit).OrderBy(n => n.Distance).Select(n => n.Word).FirstOrDefault();
    }

    /// <summary>
    /// How many letters have to be typed, left out, changed or exchanged with their neighbour
    /// (optimal string alignment); one more than the limit when it is further.
    /// </summary>
    public static int Distance(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int limit)
    {
        Span<int> before = stackalloc int[b.Length + 1];
        Span<int> last = stackalloc int[b.Length + 1];
        Span<int> now = stackalloc int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            var least = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                now[j] = Math.Min(Math.Min(last[j] + 1, now[j - 1] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) now[j] = Math.Min(now[j], before[j - 2] + 1);
                least = Math.Min(least, now[j]);
            }

            if (least > limit) return limit + 1;
            last.CopyTo(before);
            now.CopyTo(last);
        }

        return last[b.Length];
    }
}
