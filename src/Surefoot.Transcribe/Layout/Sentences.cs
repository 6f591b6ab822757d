using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>A sentence of a line, with who it is for and when, as far as it says.</summary>
internal sealed record Sentence(Role? Role, bool RoleSaid, CountLabel? Label, string Text);

/// <summary>Cuts a line's words into sentences, sentences at role words, and these into phrases.</summary>
internal static class Sentences
{
    // A stop ends a sentence when words follow; the one after "1." or "Bk." does not.
    private static readonly Regex Ends = new(@"(?:(?<![\d][.)]?)(?<!\b(?:bk|fwd|ft|diag|opp|ct|cts|meas|tog|wt|pos|approx|incl|e\.g|i\.e|no|st))[.!?]|;)(?=\s|$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex EndsAfterNumber = new(@"(?<=[a-z]\s\d)[.](?=\s+[A-Z])", RegexOptions.CultureInvariant);

    // "..., then the same to the left".
    private static readonly Regex Same = new(@",?\s+(?:and\s+then|then|and)\s+(?=(?:do\s+)?(?:the\s+same|repeat|again)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex RoleInside = new(
        @"(?:,\s*|;\s*|(?<!\b(?:the|then|and|while|as|but|when))\s+)(?:and\s+|while\s+|as\s+|but\s+)?(?=(?:the\s+)?(?:man|gent|gentleman|leader|lead|woman|lady|follower|follow|he|she)\s+(?!may|can|could|will|should|has|is|must|leads|now)(?:\w+\s+){0,3}?(?:steps?|goes|go|brings?|takes?|walks?|turns?|rocks?|back|forward|left|right|moves?|does|dances?|closes?|L|R)\b)|(?:,\s*|;\s*|\s+)(?=(?:man|gent|gentleman|leader|lead|lady|woman|follower|follow|M|W|leads|follows)\s?:)|,\s*(?=(?:leader|lead|follower|follow|man|woman|lady|gent)\s+(?:left|right|L|R|forward|back)\b)|(?<=\bL),?\s+(?=W\s+R\b)|(?<=\bR),?\s+(?=W\s+L\b)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <param name="text">The words of a line after its own label and role.</param>
    /// <param name="labelled">True when the line has a label: numbers where its words begin are then no second one.</param>
    public static IEnumerable<Sentence> Of(string text, Role? role, bool labelled)
    {
        foreach (var piece in Cut(text, Ends, EndsAfterNumber, Same))
        {
            foreach (var clause in Cut(piece, RoleInside))
            {
                var (at, said, who) = (0, false, role);
                if (RoleWords.Opens(clause, 0, out var opens, out var end, out var marked) && (marked || end < clause.Length))
                {
                    (who, said, at) = (opens, true, end);
                    // "Man: ..." holds for the sentences after it; "the man goes ..." for its own.
                    if (marked) role = opens;
                }

                CountLabel? label = null;
                if ((!labelled || Beat.IsMatch(clause)) && CountLabel.AtStart(clause, at, out var after) is { } read) (label, at) = (read, after);
                labelled = false;
                if (!said && RoleWords.Opens(clause, at, out opens, out end, out marked) && end < clause.Length)
                {
                    (who, said, at) = (opens, true, end);
                    if (marked) role = opens;
                }

                var words = clause[at..].Trim(' ', ',', ';', '.', ':');
                if (words.Length > 0 || label is not null) yield return new(who, said, label, words);
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
