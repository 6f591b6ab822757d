using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Cli.Printing;

/// <summary>Prints a problem for somebody who reads: where, the words underlined, what and why, and what was perhaps meant.</summary>
internal static class ProblemPrinter
{
    private const int MostRelated = 3;

    public static void Print(Problem problem, Page page, TextWriter to, Skin skin, int? width)
    {
        var severity = skin.Of(problem.Severity, Word(problem.Severity));
        to.WriteLine($"{severity}  {skin.Title(problem.Name)}   {Place(problem, page)}");
        if (Underline.Of(page.Source, problem.Span) is { } shown)
        {
            to.WriteLine("  " + shown.Line);
            to.WriteLine("  " + skin.Of(problem.Severity, shown.Carets));
        }

        Say(problem.Message);
        Say(problem.Reason);
        // Lead and follow often share a place; it is told once.
        var places = problem.Related.Select(r => RelatedPlace.Told(page, r, problem.Part)).Distinct(StringComparer.Ordinal).ToList();
        var shownPlaces = places.Count == MostRelated + 1 ? places.Count : Math.Min(MostRelated, places.Count);
        foreach (var place in places.Take(shownPlaces)) Say(place);
        if (places.Count > shownPlaces) Say($"… and {places.Count - shownPlaces} more places");
        foreach (var fix in Fixes(problem.Fixes)) Say(fix, skin.Come);

        void Say(string text, Func<string, string>? paint = null)
        {
            if (text.Length == 0) return;
            foreach (var line in Prose.Wrap(Cells.Harmless(text), width, 2, 2)) to.WriteLine(paint is null ? line : paint(line));
        }
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "hint",
    };

    /// <summary>"Part A, count 5 (follow)"; the line's number where the problem is in no part.</summary>
    private static string Place(Problem problem, Page page)
    {
        var place = (problem.Part, problem.Count) switch
        {
            ({ } part, { } count) => $"{part}, count {count}",
            ({ } part, null) => part,
            (null, { } count) => $"count {count}",
            _ => $"line {page.Source.Place(problem.Span.Start).Line}",
        };
        return problem.Role is Role.Lead or Role.Follow ? $"{place} ({problem.Role.Value.Word()})" : place;
    }

    /// <summary>Each fix in a line; short words that might have been meant share one.</summary>
    private static IEnumerable<string> Fixes(ValueList<Fix> fixes)
    {
        const string meant = "Did you mean: ";
        if (fixes.Count > 1 && fixes.All(f => f.Title.StartsWith(meant, StringComparison.Ordinal) && f.Title.Length < 40 && !f.Title.Contains(',', StringComparison.Ordinal)))
        {
            return [meant + Prose.And([.. fixes.Select(f => f.Title[meant.Length..])], "or")];
        }

        return fixes.Select(f => f.Title.StartsWith("Did you mean", StringComparison.Ordinal) ? f.Title : $"Suggestion: {f.Title}");
    }
}
