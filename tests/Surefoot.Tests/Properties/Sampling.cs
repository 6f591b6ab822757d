using System.Globalization;
using System.Runtime.ExceptionServices;
using CsCheck;

namespace Surefoot.Tests.Properties;

/// <summary>Laws tried on cases made at random, the same ones in every run: what passed once does not fail the next time for another reason than a change.</summary>
internal static class Sampling
{
    /// <summary>Which cases are tried; another whole number in SUREFOOT_SAMPLE tries others.</summary>
    private static readonly ulong Set = ulong.TryParse(Environment.GetEnvironmentVariable("SUREFOOT_SAMPLE"), NumberStyles.None, CultureInfo.InvariantCulture, out var set) ? set : 20261126;

    public static void Each<T>(this Gen<T> cases, Action<T> law, int iter = 100, int threads = -1, Func<T, string>? print = null)
    {
        (string Seed, Exception Why)? broken = null;
        var gate = new Lock();
        Parallel.For(0, iter, new() { MaxDegreeOfParallelism = threads }, (i, loop) =>
        {
            var random = new PCG((uint)i, Set);
            var seed = random.ToString();
            try
            {
                law(cases.Generate(random, null, out _));
            }
            catch (Exception why)
            {
                lock (gate) broken ??= (seed, why);
                loop.Stop();
            }
        });
        if (broken is not { } found) return;
        // Looks for a smaller case that breaks it as well, and tells that one.
        cases.Sample(law, seed: found.Seed, iter: 200, threads: threads, print: print);
        ExceptionDispatchInfo.Throw(found.Why);
    }

    public static void Each<T1, T2>(this Gen<(T1, T2)> cases, Action<T1, T2> law, int iter = 100) => cases.Each(both => law(both.Item1, both.Item2), iter);

    public static void Each<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> cases, Action<T1, T2, T3, T4> law, int iter = 100) => cases.Each(all => law(all.Item1, all.Item2, all.Item3, all.Item4), iter);

    public static void Each<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> cases, Action<T1, T2, T3, T4, T5> law, int iter = 100) => cases.Each(all => law(all.Item1, all.Item2, all.Item3, all.Item4, all.Item5), iter);
}
