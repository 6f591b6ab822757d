using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// Everything a sheet says, in order, before anybody decides how it looks. The three sheets (printable,
/// plain, Markdown) are made from this one plan, so that they can never say different things.
/// </summary>
/// <param name="Doubt">That the page cannot be danced as written; empty for a sound page.</param>
/// <param name="Opening">The sentences about the whole dance.</param>
/// <param name="Order">How the parts follow each other and what happens once only; empty when there is nothing to say.</param>
/// <param name="Notes">Notes that belong to no part.</param>
internal sealed record SheetPlan(
    string Title,
    string Doubt,
    string Opening,
    string Order,
    IReadOnlyList<string> Notes,
    IReadOnlyList<PartPlan> Parts,
    string Care,
    RoleNames Names)
{
    /// <summary>What the marks of our own lines mean; empty where the sheet has none.</summary>
    public string Key => OurLine.Key(Parts);

    public const string MadeWith = "made with Surefoot";

    /// <summary>True when at least one line has different words for the two roles, so that two sides are needed.</summary>
    public bool HasSides => Parts.Any(p => p.HasSides);

    /// <param name="couple">How the couple was solved; without it the sheet says of hands what the page says and no more.</param>
    public static SheetPlan Of(DanceScore score, SheetOptions options, CoupleSolution? couple = null)
    {
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var ours = OurLines.Of(score, couple, names);
        var parts = new List<PartPlan>();
        for (var i = 0; i < score.Parts.Count; i++)
        {
            if (!IsOnlySaid(score.Parts[i])) parts.Add(PartPlan.Of(score, i, options, names, ours));
        }

        var title = score.Facts.ForCouples && options.Only is { } role ? $"{score.Title}, for {names.The(role)}" : score.Title;
        return SpelledOut.In(new(
            title,
            DoubtOf(options),
            OpeningWords.Of(score, options, names),
            OrderWords.Of(score),
            NotePlaces.OfDance(score, names),
            parts,
            // Whoever reads the sheet is not to take our caution for the author's.
            $"Surefoot adds: {CareWords.Of(score, options.Only)}",
            names));
    }

    /// <summary>"Intro: on the vocals" heads no lines: it is said in the opening sentences, not printed as a part.</summary>
    public static bool IsOnlySaid(PartScore part) => part.Kind == PartKind.Intro && part.Rows.Count == 0 && part.Name.Length > 0;

    private static string DoubtOf(SheetOptions options) => options.Doubts <= 0
        ? options.SoFar
        : $"This page has {options.Doubts} {(options.Doubts == 1 ? "place" : "places")} that cannot be danced as written; {options.DoubtsAt}.";
}

/// <summary>A part on the sheet.</summary>
/// <param name="Index">Index into the score's parts.</param>
/// <param name="Start">How the dancers stand before its first count, as a sentence; empty when the part is never danced.</param>
internal sealed record PartPlan(int Index, string Label, string Name, int Counts, string Start, IReadOnlyList<RowPlan> Rows)
{
    public string Heading => Name.Length == 0 ? Label : $"{Label}: {Name}";

    public bool HasSides => Rows.Any(r => r.HasSides);

    /// <summary>True where a line for everybody has to say so: where the part begins with it, and after words for each.</summary>
    public bool SaysBoth(int row)
    {
        // What Surefoot worked out and remarks are nobody's steps.
        if (Rows[row].Both is null || Rows[row].Note is not null) return false;
        for (var i = row - 1; i >= 0; i--)
        {
            if (Rows[i].HasSides) return true;
            if (Rows[i].Both is not null) return false;
        }

        return true;
    }

    public static PartPlan Of(DanceScore score, int index, SheetOptions options, RoleNames names, OurLines? ours)
    {
        var part = score.Parts[index];
        return new(
            index,
            part.Label,
            part.Name,
            part.Length.Ceiling,
            StartWords.Of(score, index, options.Only, names, ours),
            RowPlan.Of(score, index, options, names, ours));
    }
}
