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
    public static IReadOnlyList<string> Of(IReadOnlyList<byte[]> fits, IReadOnlyList<int> seen, IEnumerable<(IReadOnlyList<int> Words, string Says)> told)
    {
        // A word that is in sight under the title needs no reason, though it be misspelt.
        var open = fits.Where(f => !Has(f, seen)).ToList();
        var says = new List<string>();
        foreach (var (words, said) in told)
        {
            if (open.Count == 0 || says.Count == Most) break;
            if (open.RemoveAll(f => Has(f, words)) > 0 && !says.Contains(said)) says.Add(said);
        }

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
