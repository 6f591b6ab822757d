namespace Surefoot.Tests.Film.Speaking;

/// <summary>Numbers that look drawn by lot and are the same on every run and machine (SplitMix64: Steele, Lea and Flood 2014).</summary>
internal sealed class Chance(int seed)
{
    private ulong _state = (ulong)seed * 0x9E3779B97F4A7C15;

    public double NextDouble() => (Draw() >> 11) * (1.0 / (1UL << 53));

    /// <summary>From 0 to below a number.</summary>
    public int Next(int below) => (int)(NextDouble() * below);

    public int Next(int from, int below) => from + Next(below - from);

    private ulong Draw()
    {
        var z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
