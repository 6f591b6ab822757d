using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>What the feet of one role do in a row, read from the score: "L rock forward, R recover".</summary>
internal static class FeetWords
{
    public static string Of(DanceScore score, int part, PartRow row, Role role)
    {
        var section = FirstDancing(score, part);
        if (section < 0 || score.Of(role) is not { } steps) return "";
        var offset = score.Sections[section].Start - Count.First;
        var words = new List<string>();
        var weight = steps.Start.Weight;
        var slows = CountsWords.IsRhythm(row.Label);
        for (var i = 0; i < steps.Steps.Count; i++)
        {
            var step = steps.Steps[i];
            var at = step.At - offset;
            var here = step.Section == section && at >= row.From && at < row.From + row.Length;
            // Beside "QQSS" a slow step is one word, as it is one letter.
            if (here && !(slows && Fillers.FillsSlow(score, steps.Steps, i))) words.Add(StepWords.Of(step, weight));
            weight = step.Weight;
        }

        return string.Join(", ", words);
    }

    /// <summary>The first section that dances a part, or -1; one not mirrored before one that is, because its words are the page's.</summary>
    public static int FirstDancing(DanceScore score, int part)
    {
        var found = -1;
        for (var i = score.Sections.Count - 1; i >= 0; i--)
        {
            var section = score.Sections[i];
            if (section.Part == part && (!section.Mirrored || found < 0 || score.Sections[found].Mirrored)) found = i;
        }

        return found;
    }
}
