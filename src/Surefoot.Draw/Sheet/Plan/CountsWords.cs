using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>The counts of a line, as the middle column has them.</summary>
internal static class CountsWords
{
    /// <param name="Counts">As the page writes them: "3&amp;4", "QQSS"; "1-4 / 1-2" where the roles begin together and end apart.</param>
    /// <param name="Covers">The counts that slows and quicks fill, "1-6"; empty where the counts are numbers.</param>
    public readonly record struct Label(string Counts, string Covers);

    public static Label Of(PartRow row) => new(row.Label, IsRhythm(row.Label) ? Covered(row) : "");

    public static Label Of(SidedRow row)
    {
        if (row.Shared || row.Lead is not { } lead || row.Follow is not { } follow) return Of(row.First);
        if (lead.Label == follow.Label) return Of(lead);
        if (lead.Length != follow.Length) return new($"{Numbered(lead)} / {Numbered(follow)}", "");
        if (IsRhythm(lead.Label)) return Of(lead);
        return IsRhythm(follow.Label) ? Of(follow) : new($"{lead.Label} / {follow.Label}", "");
    }

    /// <summary>Slows and quicks by their letters.</summary>
    public static bool IsRhythm(string label) => label.Length > 1 && label.All(c => c is 'Q' or 'S');

    private static string Numbered(PartRow row) => IsRhythm(row.Label) ? Covered(row) : row.Label;

    private static string Covered(PartRow row)
    {
        var last = row.From + row.Length - Beats.One;
        return last > row.From ? $"{row.From.Name}-{last.Name}" : row.From.Name;
    }
}
