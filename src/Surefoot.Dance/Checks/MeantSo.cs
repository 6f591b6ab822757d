using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>
/// Warnings that are a matter of judgement, and what a page's head says is meant so: "Meant: travel back, turn fast".
/// They are not told again; errors always are.
/// </summary>
internal static class MeantSo
{
    private static readonly string[] Judged = ["travel-back", "drift", "turn-fast", "step-long", "foot-fast", "bump-couple"];

    /// <summary>How they are written in a head.</summary>
    public static IEnumerable<string> Words => Judged.Select(Written);

    /// <summary>The warnings that a page says are meant so.</summary>
    public static HashSet<string> Said(Page page) => [.. Items(page).Select(i => Judged.FirstOrDefault(j => Is(i.Words, j))).OfType<string>()];

    /// <summary>What stands there and names no such warning.</summary>
    public static IEnumerable<(string Words, TextSpan Span)> Unread(Page page) => Items(page).Where(i => !Array.Exists(Judged, j => Is(i.Words, j)));

    /// <summary>A warning that may be meant so, with the words that say it, after whatever else would mend it.</summary>
    public static Problem Offered(Problem problem, Page page)
    {
        if (problem.Severity != Severity.Warning || Array.IndexOf(Judged, problem.Name) < 0) return problem;
        var edit = page.Header("meant") is { } said
            ? new TextEdit(new(said.Span.End, 0), (said.Value.Length > 0 ? ", " : " ") + Written(problem.Name))
            : Place(page) is { } at ? new TextEdit(new(at, 0), $"\nMeant: {Written(problem.Name)}") : null;
        return edit is null ? problem : problem with { Fixes = [.. problem.Fixes, new("It is meant so", Sureness.Idea, [edit])] };
    }

    private static int? Place(Page page) => page.Headers.Count > 0 ? page.Headers.Max(h => h.Span.End) : page.TitleSpan?.End;

    private static string Written(string name) => name.Replace('-', ' ');

    private static bool Is(string words, string name) => words.Replace('-', ' ').Equals(Written(name), StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<(string Words, TextSpan Span)> Items(Page page)
    {
        if (page.Header("meant") is not { } said) yield break;
        var value = page.Source.Words(said.ValueSpan);
        var at = 0;
        foreach (var item in value.Split(','))
        {
            var words = item.Trim();
            if (words.Length > 0) yield return (words, new(said.ValueSpan.Start + at + item.IndexOf(words, StringComparison.Ordinal), words.Length));
            at += item.Length + 1;
        }
    }
}
