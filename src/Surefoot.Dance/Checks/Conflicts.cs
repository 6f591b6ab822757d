using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Places where words and feet disagree, with what both roles share told once.</summary>
internal static class Conflicts
{
    /// <param name="Role">Null when it is the same for both roles.</param>
    /// <param name="Extra">Index of the part when it is a tag or the like, outside the repeat.</param>
    public sealed record Found(ScoreStep Step, int Index, ValueList<ScoreStep> Steps, Role? Role, int? Extra)
    {
        /// <summary>What to underline: the words, or the line that has them danced again.</summary>
        public TextSpan Span => Step.RepeatedBy ?? Step.Source;

        public (string? Part, string Count) Place(DanceCase dance, ScoreStep step) =>
            Extra is { } part ? (dance.LabelIn(part), dance.CountIn(part, step.At)) : dance.Place(step.At);
    }

    public static IEnumerable<Found> Of(DanceCase dance, Conflict kind)
    {
        var found = new List<Found>();
        var roles = dance.Score.Roles.Select(r => (r.Role, r.Steps, Extra: (int?)null))
            .Concat(dance.Score.Extras.SelectMany(e => e.Roles.Select(r => (r.Role, r.Steps, Extra: (int?)e.Part))));
        foreach (var (role, steps, extra) in roles)
        {
            for (var i = 0; i < steps.Count; i++)
            {
                if (steps[i].Conflict != kind) continue;
                var same = found.FindIndex(f => f.Step.Source == steps[i].Source && f.Step.At == steps[i].At && f.Role != role);
                if (same >= 0) found[same] = found[same] with { Role = null };
                else if (!found.Exists(f => f.Step.Source == steps[i].Source && (f.Role == role || f.Role is null))) found.Add(new(steps[i], i, steps, role, extra));
            }
        }

        return found;
    }

    /// <summary>The action that put the weight where it was before an action.</summary>
    public static int? LastWeight(ValueList<ScoreStep> steps, int index)
    {
        for (var i = index - 1; i >= 0; i--)
        {
            var before = i == 0 ? (Weight?)null : steps[i - 1].Weight;
            if (steps[i].ChangesWeight || (before is { } had && had != steps[i].Weight)) return i;
        }

        return null;
    }

    /// <summary>For a clash where earlier words are danced again: have them start with the other foot.</summary>
    public static ValueList<Fix> StartOther(DanceCase dance, TextSpan repeat, Foot free)
    {
        var words = dance.Words(repeat);
        // Where the line says something of feet already, another word would only confuse it.
        if (words.Contains("foot", StringComparison.OrdinalIgnoreCase) || words.Contains("start", StringComparison.OrdinalIgnoreCase) || words.Contains("mirror", StringComparison.OrdinalIgnoreCase)) return default;
        var but = words.IndexOf(", but", StringComparison.OrdinalIgnoreCase);
        var at = but >= 0 ? but : words.TrimEnd('.', ' ').Length;
        return [new($"Did you mean: {words[..at]} starting {free.Word()}", Sureness.Likely, [new(new(repeat.Start + at, 0), $" starting {free.Word()}")])];
    }

    /// <summary>
    /// A fix that exchanges left and right for the feet named from a move on, to the end of its role's words or to the
    /// first foot that already is the right one after those before it: "rock back L, recover L" was one slip and not two.
    /// </summary>
    public static ValueList<Fix> OtherFeet(DanceCase dance, TextSpan source)
    {
        if (Moves.SegmentAt(dance.Page, source) is not { } at) return default;
        var edits = new List<TextEdit>();
        Foot? stands = null;
        foreach (var move in Moves.In(at.Segment))
        {
            if (move.Span.Start < source.Start) continue;
            // Steps take turns: whoever now stands on one foot goes on with the other.
            if (stands is { } on && move.Feet.Count > 0 && move.Feet[0].Foot != on) break;
            // "Vine right R": with another foot it would go another way, and nobody can know which was meant.
            if (move.Towards is not null) return default;
            foreach (var foot in move.Feet) edits.Add(new(foot.Span, Say.OtherFoot(dance.Words(foot.Span))));
            stands = move is { Figure: null, Feet.Count: > 0 } && move.Verb.Rule() is WeightRule.Takes or WeightRule.Returns ? move.Feet[^1].Foot.Other() : null;
        }

        if (edits.Count == 0) return default;
        var text = TextEdits.Apply(dance.Page.Source.Text, edits, TextSpan.Between(source.Start, at.Segment.Span.End)).TrimEnd('.', ',', ' ');
        return [new($"Did you mean: {text}", Sureness.Likely, edits.ToValueList())];
    }
}
