using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Library.Differing;

/// <summary>What two scores have danced otherwise.</summary>
internal static class ScoreDifference
{
    public static List<FactChange> Facts(DanceScore before, DanceScore after)
    {
        var changes = new List<FactChange>();
        Told("title", before.Title, after.Title);
        Told("for", Who(before.Facts), Who(after.Facts));
        Told("meter", before.Facts.Meter.ToString(), after.Facts.Meter.ToString());
        Told("tempo", Tempo(before.Facts), Tempo(after.Facts));
        Told("level", before.Facts.Level ?? "", after.Facts.Level ?? "");
        Told("hold", before.Facts.Hold ?? "", after.Facts.Hold ?? "");
        Told("walls", before.Facts.Walls?.ToString() ?? "", after.Facts.Walls?.ToString() ?? "");
        Told("counts", before.Counts.ToString(), after.Counts.ToString());
        Told("order", Order(before), Order(after));
        foreach (var role in after.Facts.Roles)
        {
            if (before.Of(role) is not { } was || after.Of(role) is not { } now) continue;
            Told($"{role.Word()} starts", Stands(was.Start, before.Facts.Floor), Stands(now.Start, after.Facts.Floor));
        }

        return changes;

        void Told(string what, string was, string now)
        {
            if (was != now) changes.Add(new(what, was, now));
        }
    }

    public static List<StepChange> Steps(DanceScore before, DanceScore after)
    {
        var changes = new List<StepChange>();
        foreach (var (was, now) in Paired(before, after)) Compare(before, was, after, now, changes);
        return changes;
    }

    /// <summary>Parts that only one of the two has.</summary>
    public static IEnumerable<string> WholeParts(DanceScore before, DanceScore after) =>
        Paired(before, after).Where(p => p.Was < 0 || p.Now < 0).Select(p => p.Was < 0 ? after.Parts[p.Now].Label : before.Parts[p.Was].Label);

    // Which part of the one is which of the other; -1 where it has none.
    private static IEnumerable<(int Was, int Now)> Paired(DanceScore before, DanceScore after)
    {
        var seen = new HashSet<int>();
        for (var now = 0; now < after.Parts.Count; now++)
        {
            var was = Same(before, after.Parts[now], seen);
            if (was >= 0) seen.Add(was);
            yield return (was, now);
        }

        for (var was = 0; was < before.Parts.Count; was++)
        {
            if (!seen.Contains(was)) yield return (was, -1);
        }
    }

    private static void Compare(DanceScore before, int was, DanceScore after, int now, List<StepChange> changes)
    {
        var part = now >= 0 ? after.Parts[now] : before.Parts[was];
        var sameLength = was >= 0 && now >= 0 && before.Parts[was].Length == after.Parts[now].Length;
        var found = new List<StepChange>();
        foreach (var role in before.Facts.Roles.Concat(after.Facts.Roles).Distinct())
        {
            var pairs = Alignment.Of(was < 0 ? [] : PartSteps.Of(before, was, role), now < 0 ? [] : PartSteps.Of(after, now, role), sameLength);
            foreach (var (a, b) in pairs)
            {
                if (a?.Act == b?.Act) continue;
                found.Add(new(part.Label, (b ?? a)!.At, role, a?.Words, b?.Words));
            }
        }

        // What changed alike for both is told once.
        foreach (var change in found.OrderBy(c => c.Count).ThenBy(c => c.Role))
        {
            if (change.Role == Role.Follow && found.Contains(change with { Role = Role.Lead })) continue;
            changes.Add(change.Role == Role.Lead && found.Contains(change with { Role = Role.Follow }) ? change with { Role = null } : change);
        }
    }

    private static int Same(DanceScore before, PartScore part, HashSet<int> taken)
    {
        for (var i = 0; i < before.Parts.Count; i++)
        {
            if (!taken.Contains(i) && before.Parts[i].Kind == part.Kind && before.Parts[i].Key == part.Key) return i;
        }

        return -1;
    }

    private static string Who(DanceFacts facts) => facts.ForCouples ? "couples" : "each by themselves";

    private static string Tempo(DanceFacts facts) =>
        facts.TempoFrom is null ? "" : facts.TempoFrom == facts.TempoTo ? $"{facts.TempoFrom}" : $"{facts.TempoFrom}-{facts.TempoTo}";

    private static string Order(DanceScore score) =>
        score.Parts.Count < 2 ? "" : string.Join(' ', score.Sections.Select(s => score.Parts[s.Part].Key + (s.Mirrored ? " (mirrored)" : "")));

    private static string Stands(RoleStart start, Floor floor) =>
        $"facing {start.Facing.Phrase(floor)}, {(start.Free is { } free ? $"{free.Word()} foot free" : "on both feet")}";
}
