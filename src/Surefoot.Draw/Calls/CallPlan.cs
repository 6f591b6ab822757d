using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Calls;

/// <summary>Everything a call sheet says, before anybody decides how it looks.</summary>
/// <param name="Opening">One sentence on how to read it, and how long the dance is.</param>
/// <param name="Once">What is called in one repeat only, as sentences.</param>
internal sealed record CallPlan(string Title, string Doubt, string Opening, RoleNames Names, IReadOnlyList<CallBand> Bands, IReadOnlyList<string> Once)
{
    public static CallPlan Of(Reading reading, SheetOptions options)
    {
        var score = reading.Score;
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var only = score.Facts.ForCouples ? options.Only : null;
        var title = "Calls for " + score.Title + (only is { } role ? $", for {names.The(role)}" : "");
        var doubt = options.Doubts <= 0 ? options.SoFar : $"This page has {options.Doubts} {(options.Doubts == 1 ? "place" : "places")} that cannot be danced as written; {options.DoubtsAt}.";
        var opening = $"{Phrases.Capital(Numbers.Counts(score.Counts.Ceiling))} in {score.Facts.Meter}. Each call is said on the counts it stands over, just before its step; what is danced meanwhile stands below.";
        var made = new CallBands(score, reading.Calls, names, only);
        return new(title, doubt, opening, names, made.All(), [.. reading.Calls.Walls.Select(w => OnceOf(w, score, names))]);
    }

    private static string OnceOf(WallCall wall, DanceScore score, RoleNames names)
    {
        var (first, last) = (Named(wall.Call.From), Named(wall.Call.To));
        var counts = wall.Call.Counts == 1 ? $"count {last}" : $"counts {first} and {last}";
        return $"In the {Numbers.Ordinal(wall.Wall)} repeat: \"{CallWords.For(wall.Call.Words, names.Bare(Role.Lead), names.Bare(Role.Follow))}\" on {counts}{(score.PartAt(Count.At(wall.Call.To)) is { Part.Label: { Length: > 0 } label } ? $" of {label}" : "")}.";

        string Named(int count) => score.PartAt(Count.At(count)) is { } place ? (place.InPart + Beats.Of(place.Part.CountOffset)).Name : $"{count}";
    }
}

/// <summary>A stretch that fits on one line: the counts, what is called over them and what is danced.</summary>
/// <param name="Heading">The part it begins, or empty where a part goes on.</param>
/// <param name="Counts">As dancers count them.</param>
internal sealed record CallBand(string Heading, string Name, IReadOnlyList<string> Counts, IReadOnlyList<CallCell> Calls, IReadOnlyList<CallCell> Danced);

/// <summary>Words over some counts of a band.</summary>
/// <param name="At">Which count of the band, from 0.</param>
/// <param name="Length">Over how many.</param>
/// <param name="Role">For whom; null for everybody.</param>
internal sealed record CallCell(int At, int Length, Role? Role, string Words, bool Written);
