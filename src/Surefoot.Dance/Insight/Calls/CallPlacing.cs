using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>Puts calls on the last one or two counts before their steps, and says once what is for both.</summary>
internal static class CallPlacing
{
    /// <summary>Counts on which a call is said where there is room: the handbook's trade.md, "Calling"; published.md 8, "Cue lead".</summary>
    private const int Usual = 2;

    /// <param name="counts">Length of what is danced, in whole counts.</param>
    /// <param name="around">True when its end leads into its start.</param>
    public static List<Call> Of(IReadOnlyList<(Role Role, List<CallUnit> Units)> roles, int counts, bool around)
    {
        var placed = roles.SelectMany(r => Placed(r.Role, r.Units, counts, around)).ToList();
        return [.. Joined(placed, roles.Count).OrderBy(c => c.From).ThenBy(c => c.Role)];
    }

    /// <summary>What is called before the very first step, when nothing went before.</summary>
    public static List<Call> Opening(IReadOnlyList<(Role Role, List<CallUnit> Units)> roles)
    {
        var first = roles.Where(r => r.Units.Count > 0).Select(r => new Placing(r.Role, r.Units[0], 1 - Length(r.Units[0]), Length(r.Units[0]), Count.First, true)).ToList();
        return Joined(first, roles.Count);
    }

    /// <param name="New">False when the same goes on and nothing has to be called for this role.</param>
    private sealed record Placing(Role Role, CallUnit Unit, int From, int Counts, Count Step, bool New);

    /// <summary>On how many counts words are said where there is room.</summary>
    public static int CountsFor(string words) => Math.Clamp(Syllables.In(CallWords.Plain(words)), 1, Usual);

    private static int Length(CallUnit unit) => CountsFor(unit.Words);

    private static IEnumerable<Placing> Placed(Role role, List<CallUnit> units, int counts, bool around)
    {
        for (var i = around ? 0 : 1; i < units.Count; i++)
        {
            var unit = units[i];
            var before = units[i == 0 ? ^1 : i - 1];
            var step = i == 0 ? unit.At + Beats.Of(counts) : unit.At;
            // The last whole count before it, and the first one on which what goes before is being danced.
            var last = step.Value.Ceiling - 1;
            var room = last - before.At.Value.Ceiling + 1;
            if (i == 0 && units.Count == 1) room = last;
            if (room < 1) continue;
            var length = Math.Max(1, Math.Min(Length(unit), room));
            yield return new(role, unit, last - length + 1, length, step, unit.Words != before.Words && last >= 1 && last <= counts);
        }
    }

    private static List<Call> Joined(List<Placing> placed, int roles)
    {
        var calls = new List<Call>();
        foreach (var together in placed.GroupBy(p => p.Step))
        {
            if (!together.Any(p => p.New)) continue;
            var all = together.ToList();
            var same = all.TrueForAll(p => p.Unit.Words == all[0].Unit.Words) ? all[0].Unit.Words
                : all.TrueForAll(p => p.Unit.Bare == all[0].Unit.Bare && p.Unit.TurnsFar == all[0].Unit.TurnsFar && p.Unit.Bare.Length > 0) ? all[0].Unit.Bare : null;
            if (all.Count == roles && same is not null)
            {
                var shortest = all.MinBy(p => p.Counts)!;
                calls.Add(new(shortest.From, shortest.Counts, null, same, shortest.Step, all.Exists(p => !p.Unit.Turned.IsNone), false));
            }
            else
            {
                calls.AddRange(all.Where(p => p.New).Select(p => new Call(p.From, p.Counts, roles == 1 ? null : p.Role, p.Unit.Words, p.Step, !p.Unit.Turned.IsNone, false)));
            }
        }

        return calls;
    }
}
