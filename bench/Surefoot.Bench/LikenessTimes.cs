using System.Diagnostics;
using System.Globalization;
using Surefoot.Dance;
using Surefoot.Likeness;

namespace Surefoot.Bench;

/// <summary>
/// The nearest ten among very many dances: how long it takes, how many of the true ten are found, and how much memory it
/// needs. True is what comes out when every dance is really compared, in the same run and with the same comparing.
/// </summary>
internal static class LikenessTimes
{
    public const int UsualDances = 100_000, UsualQueries = 40;

    private const int Ten = 10;

    /// <param name="dances">How many dances there are.</param>
    /// <param name="queries">For how many of them everything is compared with everything.</param>
    public static void Run(int dances, int queries)
    {
        var clock = Stopwatch.StartNew();
        var index = new NearestDances();
        var kept = new List<DanceSteps>(dances);
        var making = TimeSpan.Zero;
        foreach (var page in new Families(7).Pages().Take(dances))
        {
            kept.Add(DanceSteps.Of(DanceReader.Read(page).Score));
            var before = clock.Elapsed;
            index.Put(kept.Count, kept[^1]);
            making += clock.Elapsed - before;
        }

        Say($"{dances} dances read in {clock.Elapsed.TotalSeconds:0} s, each put in in {making.TotalMilliseconds / dances:0.000} ms");
        // Warm, as in a studio that has answered before.
        for (var i = 0; i < 20; i++) index.Ask(kept[i * 97 % dances], Ten);
        List<double> quick = [], whole = [];
        var work = TimeSpan.Zero;
        var (found, wanted, first) = (0, 0, 0);
        var shares = new List<double>();
        for (var q = 0; q < queries; q++)
        {
            var own = (int)((long)q * 7919 % dances);
            var asked = kept[own];
            var worked = Environment.CpuUsage.TotalTime;
            var (near, time) = Timed(() => index.Ask(asked, Ten));
            work += Environment.CpuUsage.TotalTime - worked;
            var (truth, slow) = Timed(() => index.AskAll(asked, Ten));
            quick.Add(time);
            whole.Add(slow);
            // As near as the tenth is as good as the tenth: many dances are equally near.
            var least = truth[^1].Share;
            found += near.Count(n => n.Share >= least);
            wanted += truth.Count;
            shares.Add(least);
            if (near[0].Share >= 1) first++;
        }

        shares.Sort();
        Say($"nearest ten                 {Spread(quick)}");
        Say($"of that the processor's     {work.TotalMilliseconds / queries:0.0} ms at the mean");
        Say($"all compared, same run      {Spread(whole)}: {whole.Sum() / quick.Sum():0} times as long");
        Say($"of the true ten             {100.0 * found / wanted:0.0} of 100 found, over {queries} dances; itself or its like first in {first}");
        Say($"share of the true tenth     from {shares[0]:0.00} over {shares[shares.Count / 2]:0.00} to {shares[^1]:0.00}");
        Say($"memory of the index         {Memory(kept) / 1048576.0:0} MiB");
    }

    private static long Memory(List<DanceSteps> dances)
    {
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var index = new NearestDances();
        for (var i = 0; i < dances.Count; i++) index.Put(i, dances[i]);
        var after = GC.GetTotalMemory(forceFullCollection: true);
        GC.KeepAlive(index);
        GC.KeepAlive(dances);
        return after - before;
    }

    private static (IReadOnlyList<NearDance> Answer, double Milliseconds) Timed(Func<IReadOnlyList<NearDance>> ask)
    {
        var clock = Stopwatch.StartNew();
        return (ask(), clock.Elapsed.TotalMilliseconds);
    }

    private static string Spread(List<double> times)
    {
        var sorted = times.Order().ToList();
        return string.Create(CultureInfo.InvariantCulture, $"median {sorted[sorted.Count / 2]:0.0} ms, 95 of 100 within {sorted[sorted.Count * 95 / 100]:0.0} ms, slowest {sorted[^1]:0.0} ms");
    }

    private static void Say(FormattableString words) => Console.WriteLine(words.ToString(CultureInfo.InvariantCulture));
}
