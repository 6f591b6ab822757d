using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>Dance and music's phrase meet again only after some repeats.</summary>
public sealed class Phrase : IWholeDanceCheck
{
    public string Name => "phrase";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        var phrasing = dance.Score.Facts.Phrase;
        var length = dance.Score.Counts.Ceiling;
        if (dance.InDoubt || length == 0 || phrasing.Counts <= 0 || phrasing.Sections.Count > 0 || dance.Score.Events.Count > 0) yield break;
        var repeats = Insight.PhraseMeeting.After(length, phrasing.Counts);
        if (phrasing.MeetsAfter is { } stated)
        {
            if (stated != repeats)
            {
                yield return new(
                    Name, Severity.Warning, phrasing.Span!.Value, null, null, null,
                    $"The page says dance and music meet again after {stated} repeats, and they do after {repeats}.",
                    $"{length} counts against phrases of {phrasing.Counts} meet after {(long)length * repeats} counts.");
            }

            yield break;
        }

        if (repeats <= 1) yield break;
        var span = dance.Page.TitleSpan ?? phrasing.Span ?? new(0, Math.Min(1, dance.Page.Source.Text.Length));
        yield return new(
            Name, Severity.Hint, span, null, null, null,
            $"The dance meets the music's phrases of {phrasing.Counts} counts again only after {repeats} repeats.",
            $"{length} counts against {phrasing.Counts} meet after {(long)length * repeats} counts. If that is as it should be, say so in the head: \"Phrase: {phrasing.Counts}, meets after {repeats} repeats\".");
    }
}
