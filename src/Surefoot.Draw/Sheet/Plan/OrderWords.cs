using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>How the parts follow each other where that is not simply the order of the sheet, and what happens in one repeat only.</summary>
internal static class OrderWords
{
    public static string Of(DanceScore score)
    {
        var sentences = new List<string>();
        if (!EachPartOnce(score)) sentences.Add(Sequence(score));
        foreach (var once in score.Events.OrderBy(e => e.Wall)) sentences.Add(Event(score, once));
        sentences.AddRange(Extras(score));
        return string.Join(' ', sentences);
    }

    private static bool EachPartOnce(DanceScore score)
    {
        var next = 0;
        for (var i = 0; i < score.Parts.Count; i++)
        {
            if (score.Parts[i].Kind != PartKind.Part) continue;
            if (next >= score.Sections.Count || score.Sections[next].Part != i || score.Sections[next].Mirrored) return false;
            next++;
        }

        return next == score.Sections.Count;
    }

    private static string Sequence(DanceScore score)
    {
        var keys = score.Sections.Select(s => score.Parts[s.Part].Key + (s.Mirrored ? " (begun on the other foot)" : ""));
        return $"One repeat is danced {string.Join(", ", keys)}.";
    }

    private static string Event(DanceScore score, PassEvent once)
    {
        var through = score.Facts.Floor == Floor.Walls && !score.Facts.ForCouples ? "wall" : "time through";
        var time = $"{Numbers.Ordinal(once.Wall)} {through}";
        var facing = once.Facing is { } look ? $", facing {look.Phrase(score.Facts.Floor)}" : "";
        if (once.Kind == PassEventKind.Restart)
        {
            return $"{(through == "wall" ? "On the" : "The")} {time}, start again after {Numbers.Counts(once.AfterCount)}{facing}.";
        }

        var part = once.Part >= 0 && once.Part < score.Parts.Count ? score.Parts[once.Part] : null;
        var name = part is null ? "a tag" : string.Equals(part.Label, "Tag", StringComparison.OrdinalIgnoreCase) ? "the tag" : part.Label;
        var length = part is null && once.StatedLength is { } counts ? $" of {Numbers.Counts(counts)}" : "";
        return $"After the {time}, dance {name}{length}{facing}.";
    }

    /// <summary>Introduction and ending, which no event calls for.</summary>
    private static IEnumerable<string> Extras(DanceScore score)
    {
        foreach (var extra in score.Extras)
        {
            var part = score.Parts[extra.Part];
            if (part.Kind == PartKind.Intro && !SheetPlan.IsOnlySaid(part)) yield return $"{part.Label} comes once, before everything else.";
            if (part.Kind == PartKind.Ending) yield return $"{part.Label} comes once, at the end of the music.";
        }
    }
}
