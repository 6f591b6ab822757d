using Surefoot.Dance.Insight;

namespace Surefoot.Likeness;

/// <summary>How often a dance has a run of counts, as it is and in the mirror; a run that is its own mirror image counts as both.</summary>
internal readonly record struct RunTally(byte Plain, byte Turned);

/// <summary>
/// The short runs of counts that a dance is made of, of both roles, each as a number. A run and its mirror image have one
/// number, kin of an action are one action, walls are not in it, and the repeat goes round.
/// </summary>
internal static class StepRuns
{
    /// <summary>Counts of a run. A passage that an alignment finds is longer, so it shows in the runs; shorter ones all dances share. Working value, measured in docs/performance.md.</summary>
    private const int Run = 3;

    public static Dictionary<uint, RunTally> Of(DanceSteps dance)
    {
        var all = new Dictionary<uint, RunTally>(2 * dance.Length);
        var lead = new CountSteps[dance.Length];
        var follow = new CountSteps[dance.Length];
        for (var i = 0; i < dance.Length; i++) (lead[i], follow[i]) = (ActionKin.Plain(dance.Counts[i].Lead), ActionKin.Plain(dance.Counts[i].Follow));
        Add(lead, all);
        Add(follow, all);
        return all;
    }

    private static void Add(CountSteps[] plain, Dictionary<uint, RunTally> to)
    {
        var mirrored = Array.ConvertAll(plain, p => p.Mirrored);
        for (var i = 0; i < plain.Length; i++)
        {
            // Whichever comes first of a run and its mirror image stands for both.
            var (here, there) = (Mix(plain, i), Mix(mirrored, i));
            var number = (uint)(Math.Min(here, there) >> 32);
            var known = to.GetValueOrDefault(number);
            to[number] = new(here <= there ? More(known.Plain) : known.Plain, there <= here ? More(known.Turned) : known.Turned);
        }
    }

    private static byte More(byte often) => often == byte.MaxValue ? often : (byte)(often + 1);

    // The last steps of Splitmix64 (Steele, Lea and Flood 2014), count after count.
    private static ulong Mix(CountSteps[] counts, int from)
    {
        var mixed = 0UL;
        for (var k = 0; k < Run; k++) mixed = Scatter(mixed ^ counts[(from + k) % counts.Length].Packed) + 0x9E3779B97F4A7C15;
        return Scatter(mixed);
    }

    private static ulong Scatter(ulong value)
    {
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
        return value ^ (value >> 31);
    }
}
