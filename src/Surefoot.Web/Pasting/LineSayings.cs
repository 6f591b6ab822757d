using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Transcribe;
using Surefoot.Web.Listing;

namespace Surefoot.Web.Pasting;

/// <summary>What is said of a line beside it.</summary>
/// <param name="Sign">The sign before it: "error", "warning", "clean" or "hint".</param>
internal sealed record Saying(string Sign, string Says);

/// <summary>How sure the reading of a line is, in words.</summary>
internal static class LineSayings
{
    /// <param name="line">The line as it was read.</param>
    /// <param name="doubts">Doubts of the whole sheet.</param>
    /// <param name="settings">Whose words for the roles are used.</param>
    /// <param name="words">What was taken as the hall, or somebody, had told, on the whole sheet.</param>
    public static IReadOnlyList<Saying> Of(LineRead line, IEnumerable<Doubt> doubts, NotebookSettings settings, IEnumerable<WordUsed>? words = null)
    {
        var all = new List<Saying>();
        if (line.NotUnderstood.Count > 0) all.Add(new("error", $"not understood: {string.Join(", ", line.NotUnderstood)}"));
        foreach (var doubt in doubts.Where(d => d.Line == line.Number && !SaidBy(line, d))) all.Add(new(Sign(doubt.Kind), HallRoles.In(doubt.Says, settings)));
        if (line.Assumed.Count > 0) all.Add(new("warning", HallRoles.In($"assumed: {string.Join("; ", line.Assumed)}", settings)));
        var told = (words ?? []).Where(w => w.Line == line.Number).Select(w => w.Says).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        if (told.Count > 0) all.Add(new("hint", $"assumed: {string.Join("; ", told)}"));
        if (all.Count == 0 && Plain(line) is { } plain) all.Add(plain);
        return all;
    }

    public static string Sign(DoubtKind kind) => kind is DoubtKind.NotUnderstood or DoubtKind.DoesNotWork ? "error" : "warning";

    // The line says these itself, in fewer words.
    private static bool SaidBy(LineRead line, Doubt doubt) => doubt.Kind switch
    {
        DoubtKind.NotUnderstood => line.NotUnderstood.Count > 0,
        DoubtKind.Assumed => line.Assumed.Any(a => doubt.Says.Contains(a, StringComparison.Ordinal)),
        _ => false,
    };

    private static Saying? Plain(LineRead line) => line.Kind switch
    {
        LineKind.Steps => line.Confidence >= 1 ? new("clean", "sure") : new("warning", "less sure than usual"),
        LineKind.Title => new("clean", "the title"),
        LineKind.Heading => new("clean", "a heading"),
        LineKind.Fact => new("hint", "read for facts of the dance, and kept as a note"),
        LineKind.Remark => new("hint", "kept as a note"),
        _ => null,
    };
}
