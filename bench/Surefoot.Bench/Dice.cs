namespace Surefoot.Bench;

/// <summary>Chance that falls the same way on every run and every machine: Splitmix64 (Steele, Lea and Flood 2014).</summary>
internal sealed class Dice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>From 0 to below a number.</summary>
    public int Next(int below) => (int)(NextDouble() * below);

    public int Next(int from, int below) => from + Next(below - from);

    /// <summary>From 0 to below 1.</summary>
    public double NextDouble()
    {
        var value = _state += 0x9E3779B97F4A7C15;
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
        return (double)((value ^ (value >> 31)) >> 11) / (1UL << 53);
    }
}
