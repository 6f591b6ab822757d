using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>A moment of a dance in words: the count, what everybody does, the hold and the hands.</summary>
public static class MomentWords
{
    /// <param name="at">Counted through one repeat.</param>
    public static IReadOnlyList<string> Of(Reading reading, Count at, FootPictureOptions? options = null)
    {
        options ??= new();
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var lines = new List<string> { Heading(reading.Score, at) };
        foreach (var role in reading.Score.Roles)
        {
            if (options.Only is { } only && only != role.Role) continue;
            var who = reading.Score.Roles.Count > 1 ? names.Title(role.Role) + ": " : "";
            lines.Add(who + Doing(role, at, reading.Score.Facts.Floor));
        }

        if (options.Only is null && Hands(reading.Couple, at) is { } hands) lines.Add(hands);
        return lines;
    }

    private static string Heading(DanceScore score, Count at)
    {
        if (score.PartAt(at) is not { } place || place.Part.Label.Length == 0) return $"Count {at.Name}";
        var inPart = (place.InPart + Beats.Of(place.Part.CountOffset)).Name;
        return inPart == at.Name ? $"Count {at.Name}, {place.Part.Label}" : $"Count {at.Name}: count {inPart} of {place.Part.Label}";
    }

    private static string Doing(RoleScore role, Count at, Floor floor)
    {
        var before = role.Start.Weight;
        ScoreStep? last = null;
        foreach (var step in role.Steps)
        {
            if (step.At > at) break;
            before = last?.Weight ?? role.Start.Weight;
            last = step;
        }

        if (last is null) return $"stands, facing {role.Start.Facing.Phrase(floor)}";
        var words = StepWords.Of(last, before, spelled: true);
        return last.At == at ? $"{words}, facing {last.Facing.Phrase(floor)}" : $"stands after count {last.At.Name} ({words}), facing {last.Facing.Phrase(floor)}";
    }

    private static string? Hands(CoupleSolution? couple, Count at)
    {
        if (couple is null) return null;
        var m = 0;
        while (m + 1 < couple.Moments.Count && couple.Moments[m + 1].At <= at) m++;
        var moment = couple.Moments[m];
        var hold = moment.Where.Hold is { } name && !moment.Where.Wide ? Phrases.Capital(name) : null;
        var (named, held) = (hold is not null, new List<string>());
        if (couple.Hands is { } hands)
        {
            foreach (var track in hands.Pairs)
            {
                // Where a named hold has its hands is in its name; only what differs from it is said.
                if (track.Heights[m] is { } height) held.Add($"{track.Pair.Words()} joined{(named && height != HandHeight.Raised ? "" : Where(height))}");
            }
        }

        var joined = held.Count > 0 ? string.Join(", ", held) : "hands free";
        return hold is null ? Phrases.Capital(joined) + "." : held.Count == 0 ? hold + "." : $"{hold}: {joined}.";
    }

    private static string Where(HandHeight height) => height switch
    {
        HandHeight.Low => " at the waist",
        HandHeight.Shoulder => " at shoulder height",
        _ => " overhead",
    };
}
