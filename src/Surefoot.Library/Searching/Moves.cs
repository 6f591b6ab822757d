using System.Globalization;
using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Searching;

/// <summary>
/// One thing danced, as a search looks at it: who, from which count on, and every word it may be called by:
/// its figure, its atom with its way and turn, and the page's own words.
/// </summary>
/// <param name="Who">'b' for both, 'l' for the lead, 'f' for the follow, 'd' for the dancer of a line dance, 'n' for the name of a part.</param>
internal readonly record struct Danced(char Who, double At, string Words);

/// <summary>The dance as the order of what is danced; kept as text, one a line: who, count, tab, words.</summary>
internal static class Moves
{
    public static List<Danced> Of(DanceScore score, SourceText page)
    {
        var found = new List<Danced>();
        foreach (var role in score.Roles) Add(role, score, page, found);
        // What both do alike is one thing danced.
        var both = new HashSet<(double, string)>();
        var lead = new HashSet<(double, string)>();
        foreach (var danced in found)
        {
            if (danced.Who == 'l') lead.Add((danced.At, danced.Words));
            else if (danced.Who == 'f' && lead.Contains((danced.At, danced.Words))) both.Add((danced.At, danced.Words));
        }

        return
        [
            .. found
                .Where(d => d.Who != 'f' || !both.Contains((d.At, d.Words)))
                .Select(d => both.Contains((d.At, d.Words)) ? d with { Who = 'b' } : d)
                .Concat(Beside(score, page))
                .OrderBy(d => d.At).ThenBy(d => d.Who),
        ];
    }

    /// <summary>What a name of a part is kept as: looked for, and nothing danced.</summary>
    public const char NameOfPart = 'n';

    // What hands do, and what she calls her parts.
    private static IEnumerable<Danced> Beside(DanceScore score, SourceText page)
    {
        foreach (var hands in score.Hands)
        {
            if (hands.Span.End > page.Text.Length || score.Sections.FirstOrDefault(s => s.Part == hands.Part) is not { } section) continue;
            yield return new(
                hands.Role switch { Role.Lead => 'l', Role.Follow => 'f', _ => 'b' }, section.Start.Value.ToDouble() + hands.At.Value.ToDouble() - 1,
                string.Join(' ', Folding.Key(page.Words(hands.Span)).Split(' ', StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal)));
        }

        for (var part = 0; part < score.Parts.Count; part++)
        {
            if (Folding.Key(score.Parts[part].Name) is { Length: > 0 } name) yield return new(NameOfPart, 1, name);
        }
    }

    public static string Written(IEnumerable<Danced> moves)
    {
        var text = new StringBuilder();
        foreach (var move in moves) text.Append(move.Who).Append(move.At.ToString("0.###", CultureInfo.InvariantCulture)).Append('\t').Append(move.Words).Append('\n');
        return text.ToString();
    }

    private static void Add(RoleScore role, DanceScore score, SourceText page, List<Danced> found)
    {
        var who = role.Role switch { Role.Lead => 'l', Role.Follow => 'f', _ => 'd' };
        for (var i = 0; i < role.Steps.Count;)
        {
            var first = role.Steps[i];
            var turn = Turn.None;
            var until = i;
            // The steps of one figure, or the one action, that one stretch of the page asks for.
            while (until < role.Steps.Count && role.Steps[until] is var step && step.Source == first.Source && step.Figure == first.Figure
                && step.Section == first.Section && (until == i || first.Figure is not null))
            {
                turn += step.Turn;
                until++;
            }

            found.Add(new(who, first.At.Value.ToDouble(), WordsOf(first, turn, page)));
            i = until;
        }
    }

    private static string WordsOf(ScoreStep step, Turn turn, SourceText page)
    {
        var words = new List<string>();
        Take(step.Figure ?? $"{step.Kind.Word()} {(step.Direction == Direction.InPlace ? "" : step.Direction.Word())}");
        if (step.Source.End <= page.Text.Length) Take(page.Words(step.Source));
        if (!turn.IsNone) Take($"{turn} turn");
        return string.Join(' ', words);

        void Take(string text)
        {
            foreach (var word in Folding.Key(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (!words.Contains(word)) words.Add(word);
            }
        }
    }
}
