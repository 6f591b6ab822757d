using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "And do that agian": slips in words that the layout stands on. Those of steps are mended later, phrase by phrase
/// (<see cref="Wording.Spelling"/>); a repeat that is not seen is a line lost.
/// </summary>
internal static class Slips
{
    private static readonly Dictionary<string, List<string>> BySorted = new[]
    {
        "again", "repeat", "repeated", "same", "opposite", "mirror", "other", "counts", "count", "beats", "measure", "measures", "bars", "twice", "times", "more",
        "then", "together", "partner", "lady", "ladies", "woman", "gentleman", "gents", "leader", "follower", "slow", "quick", "section", "part", "both", "start", "starting", "beginning", "first", "second", "third", "fourth",
        "left", "right", "forward", "back", "side", "behind", "across", "touch", "close", "step", "steps", "recover", "turn", "quarter", "half",
    }.Distinct().GroupBy(Sorted).ToDictionary(g => g.Key, g => g.ToList(), StringComparer.Ordinal);

    private static readonly HashSet<string> Right = [.. BySorted.Values.SelectMany(w => w)];

    private static readonly Regex Word = new(@"\b[a-z]{4,}\b", RegexOptions.CultureInvariant);

    /// <summary>Mends them in all lines.</summary>
    /// <returns>What was mended, as a sentence, with its line.</returns>
    public static List<(int Line, string Says)> In(List<SheetLine> lines)
    {
        var mended = new List<(int, string)>();
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            lines[i] = line with
            {
                Plain = Word.Replace(line.Plain, slip =>
                {
                    if (Right.Contains(slip.Value) || Wording.SheetRules.Knows(slip.Value) || !BySorted.TryGetValue(Sorted(slip.Value), out var near)) return slip.Value;
                    // Two letters that stand beside each other have changed places, and nothing else.
                    if (near.Find(w => Exchanged(w, slip.Value)) is not { } meant) return slip.Value;
                    mended.Add((line.Number, $"\"{slip.Value}\" was read as \"{meant}\""));
                    return meant;
                }),
            };
        }

        return mended;
    }

    private static bool Exchanged(string word, string slip)
    {
        var at = Enumerable.Range(0, word.Length).Where(i => word[i] != slip[i]).ToList();
        return at.Count == 2 && at[1] == at[0] + 1;
    }

    private static string Sorted(string word)
    {
        var letters = word.ToCharArray();
        Array.Sort(letters);
        return new(letters);
    }
}
