using System.Globalization;

namespace Surefoot.Library.Searching;

/// <summary>Tells by what a dance was found, where its name and what a list shows of it anyway do not tell.</summary>
internal static class Reasons
{
    /// <summary>More would be longer than the row it stands in.</summary>
    private const int Most = 3;

    /// <param name="fits">For every word asked for how well each word of the library fits it, of 255; in the order of the question.</param>
    /// <param name="seen">Words in sight: its names, tags, level and kind.</param>
    /// <param name="told">Where else its words stand, the likelier first, with what is said of that.</param>
    /// <param name="rest">What is said of words that stand nowhere of all these, or null.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<byte[]> fits, IReadOnlyList<int> seen, IEnumerable<(IReadOnlyList<int> Words, string Says)> told, string? rest)
    {
        // A word that is in sight under the title needs no reason, though it be misspelt.
        var open = fits.Where(f => !Has(f, seen)).ToList();
        var says = new List<string>();
        var places = open.Count == 0 ? [] : told.ToList();
        while (open.Count > 0 && says.Count < Most)
        {
            // What tells most of the words at once is what was meant: "right" alone stands on many counts.
            var (best, most) = (-1, 0);
            for (var i = 0; i < places.Count; i++)
            {
                var has = open.Count(f => Has(f, places[i].Words));
                if (has > most) (best, most) = (i, has);
            }

            if (best < 0) break;
            var (words, said) = places[best];
            open.RemoveAll(f => Has(f, words));
            if (!says.Contains(said)) says.Add(said);
        }

        if (open.Count > 0 && says.Count < Most && rest is not null) says.Add(rest);
        return says;
    }

    /// <param name="who">'l', 'f', 'b' or 'd', as moves are kept.</param>
    /// <param name="at">The count it begins on.</param>
    public static string Danced(char who, float at)
    {
        var whose = who switch { 'l' => "the lead’s steps", 'f' => "the follow’s steps", _ => "the steps" };
        return string.Create(CultureInfo.InvariantCulture, $"{whose} on count {(int)at}");
    }

    private static bool Has(byte[] fits, IReadOnlyList<int> words)
    {
        foreach (var word in words)
        {
            // Words that came in since the question was compared are of no dance it found.
            if (word >= 0 && word < fits.Length && fits[word] > 0) return true;
        }

        return false;
    }
}
