using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>
/// A tag or a restart misses the music: it is longer or shorter than stated, or the dance begins anew off
/// the bar, or off the song's phrases where the page lists them.
/// </summary>
public sealed class TagLength : ICheck
{
    public string Name => "tag-length";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var happening in dance.Score.Events)
        {
            if (happening.Kind == PassEventKind.Tag && happening.Part >= 0 && happening.StatedLength is { } stated
                && dance.Score.Parts[happening.Part].Length.Ceiling is var length && length != stated)
            {
                yield return Tell(happening,
                    $"The order line gives the tag {Say.Counts(stated)}, and it holds {length}.",
                    $"The music would be missed by {Say.Counts(Math.Abs(length - stated))}.");
            }

            if (happening.Kind == PassEventKind.Restart && (happening.AfterCount < 1 || Beats.Of(happening.AfterCount) >= dance.Score.Counts))
            {
                yield return Tell(happening,
                    happening.AfterCount < 1 ? "The restart does not say after how many counts." : $"The restart comes after {happening.AfterCount} counts, and a whole repeat has only {dance.Score.Counts}.",
                    "A restart breaks a repeat off part of the way through it, as in \"Restart in 5th wall after 16\".");
            }
        }

        if (dance.InDoubt) yield break;
        var phrasing = dance.Score.Facts.Phrase;
        var boundaries = Boundaries(phrasing);
        foreach (var moment in WallWalk.Of(dance.Score))
        {
            if (boundaries.Count > 0)
            {
                if (moment.NextStart > boundaries[^1] || boundaries.Contains(moment.NextStart)) continue;
                var nearest = boundaries.MinBy(b => Math.Abs(b - moment.NextStart));
                yield return Tell(moment.Event,
                    $"After {What(dance, moment)} the dance begins at count {moment.NextStart + 1} of the song, {Say.Counts(Math.Abs(nearest - moment.NextStart))} {(moment.NextStart > nearest ? "after" : "before")} a phrase begins.",
                    $"The song's phrases begin at counts {string.Join(", ", boundaries.Take(12).Select(b => b + 1))}{(boundaries.Count > 12 ? " …" : "")}.");
                continue;
            }

            var bar = dance.Score.Facts.Meter.Beats;
            var off = moment.NextStart % bar;
            if (off == 0) continue;
            yield return Tell(moment.Event,
                $"After {What(dance, moment)} the dance begins {Say.Counts(off)} into a bar of {bar}.",
                $"{moment.NextStart} counts have been danced by then, and bars have {bar}. If the song really adds or cuts part of a bar, list its phrases: \"Phrases: 32 32 34 32\".");
        }
    }

    private Problem Tell(PassEvent happening, string message, string reason) =>
        new(Name, Severity.Error, happening.Span, null, null, null, message, reason);

    private static string What(DanceCase dance, WallWalk.Moment moment) =>
        moment.Event.Kind == PassEventKind.Tag ? $"the tag that follows {Say.Repeat(dance)} {moment.Event.Wall}" : $"the restart in {Say.Repeat(dance)} {moment.Event.Wall}";

    private static List<int> Boundaries(Phrasing phrasing)
    {
        var at = 0;
        var found = new List<int>();
        if (phrasing.Sections.Count == 0) return found;
        found.Add(0);
        foreach (var section in phrasing.Sections) found.Add(at += section);
        return found;
    }
}
