using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Draw.Words;

/// <summary>
/// Holds that are only the second half of a slow step: the figure brings them to fill its counts, and no word of
/// the page asks for them. A slow step written by itself has none, and both are shown alike.
/// </summary>
internal static class Fillers
{
    /// <param name="steps">All steps of a role.</param>
    /// <param name="index">The step in question.</param>
    public static bool FillsSlow(DanceScore score, ValueList<ScoreStep> steps, int index)
    {
        if (index == 0 || steps[index] is not { Kind: ActionKind.Hold, Figure: not null } hold) return false;
        var before = steps[index - 1];
        return before.ChangesWeight && before.Figure == hold.Figure && before.Source == hold.Source
            && hold.At - before.At == Beats.One && !IsAskedFor(score, hold);
    }

    private static bool IsAskedFor(DanceScore score, ScoreStep hold)
    {
        foreach (var part in score.Parts)
        {
            foreach (var row in part.Rows)
            {
                var inside = row.Span.Start <= hold.Source.Start && hold.Source.End <= row.Span.End;
                if (inside && row.Words.Any(w => w.Text.Contains("hold", StringComparison.OrdinalIgnoreCase))) return true;
            }
        }

        return false;
    }
}
