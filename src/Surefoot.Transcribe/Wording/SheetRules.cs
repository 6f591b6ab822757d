using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Wording;

/// <summary>Says with a page's words what a phrase says with others; the rules are in <c>words/sheets.rules</c>.</summary>
internal sealed class SheetRules
{
    private const string Foot = @"\b(?:the )?(L|R)\b";

    private const string Other = @"(?:the other(?: foot| one)?|the (?:left|right) one|(?:the |your |his |her )?(?:L|R|left|right)\b(?: foot| one)?|it\b|each other)";

    // What feet do, as sheets say it.
    private const string Verb = @"(?:step|walk|march|run|rock|recover|replace|touch|tap|point|kick|hop|brush|scuff|stomp|stamp|close|cross|slide|draw|drag|turn|pivot|swing|lift|hitch|shuffle|triple|polka|waltz|vine|grapevine|sway|bump|swivel|jump|leap|skip|strut|glide|put|place|set|bring|hook|flick|lock|bounce|roll|repeat|clap|hold|face|spin|stand|take|do|make|go|come)(?:s|es|p?ing|ped|ed)?";

    private const string Everyday = "everyday:";

    private static readonly Lazy<SheetRules> Shipped = new(() => new());

    private readonly List<(Regex Says, string Page)> _sentences = [];
    private readonly List<(Regex Says, string Page)> _phrases = [];
    private readonly HashSet<string> _known = new(StringComparer.OrdinalIgnoreCase);

    private SheetRules()
    {
        using var reader = new StreamReader(typeof(SheetRules).Assembly.GetManifestResourceStream("sheets.rules")!);
        var rules = _sentences;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '>') continue;
            if (line.StartsWith(Everyday, StringComparison.Ordinal)) Learn(line[Everyday.Length..]);
            else if (line.StartsWith("====", StringComparison.Ordinal)) rules = _phrases;
            else rules.Add(Rule(line));
        }
    }

    /// <summary>A sentence with what belongs together said in one phrase.</summary>
    public static string Whole(string sentence)
    {
        foreach (var (says, page) in Shipped.Value._sentences) sentence = says.Replace(sentence, page);
        return sentence;
    }

    /// <summary>The phrase in a page's words, as far as rules know it.</summary>
    public static string Rewrite(string phrase)
    {
        phrase = phrase.Trim();
        foreach (var (says, page) in Shipped.Value._phrases) phrase = says.Replace(phrase, page);
        return Regex.Replace(phrase, @"\s+", " ").Trim(' ', ',', '.', ';', ':', '-');
    }

    /// <summary>Whether a word stands in any rule, or is one of every day.</summary>
    public static bool Knows(string word) => Shipped.Value._known.Contains(word);

    private (Regex, string) Rule(string line)
    {
        Learn(line);
        var at = line.IndexOf("=>", StringComparison.Ordinal);
        var says = line[..at].TrimEnd().Replace("{foot}", Foot, StringComparison.Ordinal).Replace("{other}", Other, StringComparison.Ordinal).Replace("{verb}", Verb, StringComparison.Ordinal);
        // A short form ends where it ends: "pl." is not the beginning of "place".
        if (says.EndsWith(@"\.?", StringComparison.Ordinal)) says += @"(?!\w)";
        return (new(says, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant), line[(at + 2)..].Trim().Replace('~', ' '));
    }

    private void Learn(string line)
    {
        foreach (Match word in Regex.Matches(line, "[A-Za-z]{3,}", RegexOptions.CultureInvariant)) _known.Add(word.Value);
    }
}
