namespace Surefoot.Dance.Basics;

/// <summary>
/// A moment in a part or a dance, as dancers count: the first beat is count 1, the half-count
/// after it is "1&amp;". Exact. For lengths see <see cref="Beats"/>.
/// </summary>
public readonly record struct Count(Beats Value) : IComparable<Count>
{
    public static Count First => new(Beats.One);

    public static Count At(int whole) => new(Beats.Of(whole));

    /// <summary>The whole count this moment belongs to: 3 for "3", "3e", "3&amp;" and "3a".</summary>
    public int Whole => Value.Floor;

    /// <summary>"3", "3e", "3&amp;", "3a"; a half-count before the first beat is "&amp;1".</summary>
    public string Name
    {
        get
        {
            var part = Value - Beats.Of(Whole);
            var suffix = (part.Numerator, part.Denominator) switch
            {
                (0, _) => "",
                (1, 4) => "e",
                (1, 2) => "&",
                (3, 4) => "a",
                // Moments that no count names belong to the count before them.
                _ => "",
            };
            return Whole == 0 && suffix is "e" or "&" or "a" && Whole == 0 ? suffix + "1" : Whole + suffix;
        }
    }

    public static Count operator +(Count a, Beats b) => new(a.Value + b);

    public static Count operator -(Count a, Beats b) => new(a.Value - b);

    public static Beats operator -(Count a, Count b) => a.Value - b.Value;

    public static bool operator <(Count a, Count b) => a.Value < b.Value;

    public static bool operator >(Count a, Count b) => a.Value > b.Value;

    public static bool operator <=(Count a, Count b) => a.Value <= b.Value;

    public static bool operator >=(Count a, Count b) => a.Value >= b.Value;

    public int CompareTo(Count other) => Value.CompareTo(other.Value);

    public override string ToString() => Name;
}
