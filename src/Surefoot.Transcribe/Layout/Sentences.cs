using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>A sentence of a line, with who it is for and when, as far as it says.</summary>
internal sealed record Sentence(Role? Role, bool RoleSaid, CountLabel? Label, string Text)
{
    /// <summary>Which of its line: what only a semicolon parts has the same number.</summary>
    public int Number { get; init; }

    /// <summary>True when it ends with a colon: what comes next says how.</summary>
    public bool Announces { get; init; }
}

/// <summary>Cuts a line's words into sentences, sentences at role words, and these into phrases.</summary>
internal static class Sentences
{
    // A stop ends a sentence when words follow; the one after "1." or "Bk." does not.
    private static readonly Regex Ends = new(@"(?:(?<![\d][.)]?)(?<!\b(?:bk|fwd|ft|diag|opp|ct|cts|meas|tog|wt|pos|approx|incl|e\.g|i\.e|no|st))[.!?]|;)(?=\s|$)(?!\s*\([\d&,\s-]+\)\.?\s*$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex EndsAfterNumber = new(@"(?<=[a-z],?\s\d)[.](?=\s+[A-Z])|(?<=\bft)[.](?=\s+(?:keep|now|you|let|take|hold)\b)|(?<=\d\))[.](?=\s+[A-Z][a-z])", RegexOptions.CultureInvariant);

    // "..., then the same to the left".
    private static readonly Regex Same = new(@"(?:,?\s+(?:and\s+then|then|and)|,(?=\s+do\s+(?:this|that|it)\b))\s+(?=(?:do\s+)?(?:the\s+(?:very\s+|exact\s+)?same|all\s+(?:of\s+)?(?:that|this)|the\s+(?:whole\s+)?lot\s+(?:again|once)|repeat|again(?!\s+(?:onto|turn)))\b|do\s+(?:that|this|it)\s+(?:again|once\s+more|a\s+second\s+time|twice|(?:two|three|four|five|six)\s+times)\b|\d{1,2}\s?(?:-|to)\s?\d{1,2}\s+(?:again|once\s+more|one\s+more\s+time|(?:for\s+)?(?:a|the)\s+(?:second|third|fourth|last|final)\s+time)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex RoleInside = new(
        @"(?:,\s*|;\s*|(?<!\b(?:the|then|and|while|as|but|when|takes?|taking|leads?|leading|turns?|brings?|guides?|sends?|lets?|helps?|has|have|facing|behind|beside|past|around|round|under|towards?|with|for))\s+)(?:and\s+|while\s+|as\s+|but\s+)?(?=(?:the\s+)?(?:man|gent|gentleman|leader|lead|woman|lady|follower|follow|he|she)\s+(?!may|can|could|will|should|has|is|must|leads|now)(?:\w+\s+){0,3}?(?:steps?|stepping|goes|go|going|brings?|takes?|walk|walks|turns?|turning|rocks?|stays?|back|forward|left|right|moves?|moving|does|dances?|finish(?:es)?|continues?|comes?|stays?|reach(?:es)?|tap(?:s)?|closes?|closing|cross(?:es|ing)?|points?|touches|hops?|swings?|L|R)\b)|,\s*(?:and\s+|while\s+|but\s+)?(?=(?:the\s+)?(?:men|women|gents|ladies|leaders|followers)\s+(?:step|go|walk|turn|stay|rock|cross|dance|move|come|march|run|roll)\b)|(?:,\s*(?:(?:and|while|as|but)\s+)?|\s+(?:and|while|as|but)\s+)(?=(?:the\s+)?(?:man|gent|gentleman|leader|lead|woman|lady|follower|follow)\s+(?:with|on|to\s+the|in\s+place|her|his|the\s+(?:left|right))\b)|(?:,\s*|;\s*|\s+)(?=(?:man|gent|gentleman|leader|lead|lady|woman|follower|follow|M|W|leads|follows)\s?:)|,\s*(?=(?:dancers|the\s+dancers|the\s+couple|both|partners)\s+(?:\w+\s+)?(?:steps?|walks?|goe?s?|move|turn|close|dance)\b)|,\s*(?=(?:leader|lead|follower|follow|man|woman|lady|gent)\s+(?:left|right|L|R|LF|RF|forward|back)\b)|,\s*(?:and\s+)?(?=(?:the\s+)?(?:men|gents|gentlemen|women|ladies|leaders|followers)\s+(?:with\s+|on\s+)?(?:the\s+|their\s+)?(?:left|right)\b(?!,?\s+(?:hand|shoulder|side|arm|elbow|left|right)))|,\s*(?=(?-i:[MW])\s+(?:two|three|four|six|[2-6])\s+(?:steps|walks|walking|shuffles|triples|step-hops|stamps)\b)|(?<=\bL),?\s+(?=W\s+R\b)|(?<=\bR),?\s+(?=W\s+L\b)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <param name="text">The words of a line after its own label and role.</param>
    /// <param name="labelled">True when the line has a label: numbers where its words begin are then no second one.</param>
    public static List<Sentence> Of(string text, Role? role, bool labelled)
    {
        var all = new List<Sentence>();
        Sentence? shared = null;
        foreach (var sentence in Plain(text, role, labelled))
        {
            var feet = sentence.RoleSaid && sentence.Label is null ? OnlyFeet.Match(sentence.Text) : Match.Empty;
            var before = all.Count > 0 ? all[^1] : null;
            if (!feet.Success || before is null)
            {
                all.Add(sentence);
                shared = null;
                continue;
            }

            // "Four polka steps forward, man L R L R, lady R L R L": what both do, each from another foot.
            if (shared is null && !before.RoleSaid && before.Role is null && !NamesFoot.IsMatch(before.Text)) all.Remove(shared = before);
            var rest = feet.Groups["rest"].Success ? ", " + feet.Groups["rest"].Value : "";
            if (shared is not null) all.Add(sentence with { Label = shared.Label, Text = $"{shared.Text} {feet.Groups["feet"].Value}{rest}" });
            // "The leader steps through with the right foot and the follower with the left".
            else if (NamesFoot.Count(before.Text) == 1) all.Add(sentence with { Text = NamesFoot.Replace(before.Text, NamesFoot.Match(feet.Groups["feet"].Value).Value) + rest });
            else all.Add(sentence);
        }

        return all;
    }

    private static readonly Regex NamesFoot = new(@"\b(?:[Ll]eft|[Rr]ight|L|R|LF|RF)\b", RegexOptions.CultureInvariant);

    private static readonly Regex OnlyFeet = new(
        @"^(?:with |on )?(?<feet>(?:the |her |his |their )?(?:left|right|LF|RF|L|R)(?: foot| ft\.?)?(?: first)?(?:(?:\s*,\s*|\s+(?:and |then )?|-)(?:the |her |his )?(?:left|right|LF|RF|L|R)(?: foot| ft\.?)?(?![\w]))*)(?:\s+to\s+(?:the\s+|his\s+|her\s+)?(?:left|right|L|R)(?:\s+foot)?(?=\s*[,.]|$))?(?:[,.]?\s+(?:and )?(?!to\b|side|forward|back|foot|in\b|across|behind|touch|close|(?:recover|rock|step|walk|cross|kick|stomp|scuff|brush|pivot|turn|point|heel|toe|hold|swing|tap|hop|draw|slide|over|beside|next|shuffle|triple|coaster|sailor|hook|hitch|sway|cha)s?\b)(?<rest>[^\s:][^:]*))?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static IEnumerable<Sentence> Plain(string text, Role? role, bool labelled)
    {
        var (from, spoken, number) = (0, role, 0);
        foreach (var piece in Cut(text, Ends, EndsAfterNumber, Same))
        {
            // "He goes back right, side left; forward left, ...": after a semicolon it is still he.
            from = Math.Max(from, text.IndexOf(piece, from, StringComparison.Ordinal));
            var goesOn = from > 0 && text[..from].TrimEnd() is [.., ';'];
            from += piece.Length;
            if (!goesOn) (spoken, number) = (role, number + 1);
            foreach (var clause in Cut(piece, RoleInside))
            {
                var (at, said, who) = (0, goesOn && spoken != role, goesOn ? spoken : role);
                if (RoleWords.Opens(clause, 0, out var opens, out var end, out var marked) && (marked || end < clause.Length))
                {
                    (who, said, at) = (opens, true, end);
                    // "Man: ..." holds for the sentences after it; "the man goes ..." for its own.
                    if (marked) role = opens;
                }

                CountLabel? label = null;
                if ((!labelled || Beat.IsMatch(clause)) && !AgainWords.OnceMoreCounts(clause[at..]) && CountLabel.AtStart(clause, at, out var after) is { } read) (label, at) = (read, after);
                labelled = false;
                if (!said && RoleWords.Opens(clause, at, out opens, out end, out marked) && end < clause.Length)
                {
                    (who, said, at) = (opens, true, end);
                    if (marked) role = opens;
                }

                if (said) spoken = who;
                var words = clause[at..].Trim(' ', ',', ';', '.', ':');
                if (words.Length > 0 || label is not null) yield return new(who, said, label, words) { Number = number, Announces = clause.TrimEnd() is [.., ':'] };
            }
        }
    }

    private static readonly Regex Beat = new(@"^(?:beat|count)s?\s+\w+\s*:", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static IEnumerable<string> Cut(string text, params Regex[] at)
    {
        var cuts = at.SelectMany(r => r.Matches(text)).Where(m => !InBrackets(text, m.Index)).OrderBy(m => m.Index).ToList();
        var from = 0;
        foreach (var cut in cuts)
        {
            if (cut.Index < from) continue;
            if (text[from..cut.Index].Trim() is { Length: > 0 } piece) yield return piece;
            from = cut.Index + cut.Length;
        }

        if (text[from..].Trim() is { Length: > 0 } rest) yield return rest;
    }

    public static bool InBrackets(string text, int at)
    {
        var depth = 0;
        for (var i = 0; i < at; i++)
        {
            if (text[i] is '(' or '[') depth++;
            else if (text[i] is ')' or ']') depth = Math.Max(0, depth - 1);
        }

        return depth > 0;
    }
}
