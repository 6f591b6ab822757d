using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Wording;

/// <summary>Says with a page's words what a phrase says with others; the rules are in <c>words/sheets.rules</c>.</summary>
internal static class SheetRules
{
    private const string Foot = @"\b(?:the )?(L|R)\b";

    private const string Other = @"(?:the other(?: foot| one)?|the (?:left|right) one|(?:the |your |his |her )?(?:L|R|left|right)\b(?: foot| one)?|it\b|each other)";

    private static readonly Lazy<(List<(Regex Says, string Page)> Sentences, List<(Regex Says, string Page)> Phrases)> All = new(Load);

    /// <summary>A sentence with what belongs together said in one phrase.</summary>
    public static string Whole(string sentence)
    {
        foreach (var (says, page) in All.Value.Sentences) sentence = says.Replace(sentence, page);
        return sentence;
    }

    /// <summary>The phrase in a page's words, as far as rules know it.</summary>
    public static string Rewrite(string phrase)
    {
        var words = phrase;
        foreach (var (says, page) in All.Value.Phrases) words = says.Replace(words, page);
        return Regex.Replace(words, @"\s+", " ").Trim(' ', ',', '.', ';', ':', '-');
    }

    /// <summary>Whether a word stands in any rule.</summary>
    public static bool Knows(string word) => Vocabulary.Value.Contains(word);

    private static readonly Lazy<HashSet<string>> Vocabulary = new(() =>
    {
        var words = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (says, page) in All.Value.Sentences.Concat(All.Value.Phrases))
        {
            foreach (Match word in Regex.Matches($"{says} {page}", @"[A-Za-z]{3,}", RegexOptions.CultureInvariant)) words.Add(word.Value);
        }

        return words;
    });

    private static (List<(Regex, string)> Sentences, List<(Regex, string)> Phrases) Load()
    {
        using var stream = typeof(SheetRules).Assembly.GetManifestResourceStream("sheets.rules")!;
        using var reader = new StreamReader(stream);
        var (sentences, phrases) = (new List<(Regex, string)>(), new List<(Regex, string)>());
        var rules = sentences;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '>') continue;
            if (line.StartsWith("====", StringComparison.Ordinal))
            {
                rules = phrases;
                continue;
            }

            var at = line.IndexOf("=>", StringComparison.Ordinal);
            var says = line[..at].TrimEnd().Replace("{foot}", Foot, StringComparison.Ordinal).Replace("{other}", Other, StringComparison.Ordinal);
            // A short form ends where it ends: "pl." is not the beginning of "place".
            if (says.EndsWith(@"\.?", StringComparison.Ordinal)) says += @"(?!\w)";
            // A blank in a rule is any blank on the sheet.
            rules.Add((new(says, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1)), line[(at + 2)..].Trim()));
        }

        return (sentences, phrases);
    }
}
