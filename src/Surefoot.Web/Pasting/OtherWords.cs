using System.Text;
using Surefoot.Transcribe;

namespace Surefoot.Web.Pasting;

/// <summary>Puts the page's words in the place of words that nobody understood, wherever they stand in lines that were not understood; a title of the same words stays.</summary>
internal static class OtherWords
{
    /// <summary>What of a sheet nobody understood, each once, in order: whole phrases where the doubt names one that stands in its line, else single words.</summary>
    public static IReadOnlyList<string> Unknown(Transcript read)
    {
        var all = new List<string>();
        foreach (var line in read.Lines.Where(l => l.NotUnderstood.Count > 0))
        {
            var phrases = read.Doubts.Where(d => d.Kind == DoubtKind.NotUnderstood && d.Line == line.Number).Select(d => d.Phrase ?? "").Where(p => Places(line.Text, p).Any()).ToList();
            all.AddRange(phrases.Count > 0 ? phrases : line.NotUnderstood.Where(w => Places(line.Text, w).Any()));
        }

        return [.. all.Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>How often something unknown stands on the sheet.</summary>
    public static int Count(Transcript read, string said) => read.Lines.Where(l => l.NotUnderstood.Count > 0).Sum(l => Places(l.Text, said).Count());

    /// <summary>The sheet with other words for <paramref name="said"/>, written large or small.</summary>
    /// <param name="sheet">Its text as it stands now.</param>
    /// <param name="read">How it was read; lines that changed since are left as they are.</param>
    /// <param name="said">What was not understood.</param>
    /// <param name="means">What it means.</param>
    public static string Replaced(string sheet, Transcript read, string said, string means)
    {
        var unknown = read.Lines.Where(l => l.NotUnderstood.Count > 0).Select(l => l.Text).ToHashSet(StringComparer.Ordinal);
        return string.Join('\n', sheet.Split('\n').Select(line => unknown.Contains(line) ? Replaced(line, said, means) : line));
    }

    private static string Replaced(string line, string said, string means)
    {
        var (made, from) = (new StringBuilder(), 0);
        foreach (var at in Places(line, said))
        {
            made.Append(line, from, at - from).Append(means);
            from = at + said.Length;
        }

        return made.Append(line, from, line.Length - from).ToString();
    }

    private static IEnumerable<int> Places(string line, string said)
    {
        if (said.Length == 0) yield break;
        for (var at = 0; (at = line.IndexOf(said, at, StringComparison.OrdinalIgnoreCase)) >= 0; at += said.Length)
        {
            // "hop" does not stand in "shop".
            if (!Inside(line, at - 1) && !Inside(line, at + said.Length)) yield return at;
        }
    }

    private static bool Inside(string line, int at) => at >= 0 && at < line.Length && char.IsLetterOrDigit(line[at]);
}
