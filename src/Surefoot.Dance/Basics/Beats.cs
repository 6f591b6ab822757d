namespace Surefoot.Dance.Basics;

/// <summary>
/// A length of music in counts, kept as an exact fraction; a half-count is 1/2. May be negative
/// when two moments are subtracted. For a moment in the dance see <see cref="Count"/>.
/// </summary>
public readonly struct Beats : IEquatable<Beats>, IComparable<Beats>
{
    // Kept one below the denominator so that an all-zero value is a lawful "0/1".
    private readonly int _denominatorLessOne;

    private Beats(int numerator, int denominator)
    {
        Numerator = numerator;
        _denominatorLessOne = denominator - 1;
    }

    public int Numerator { get; }

    public int Denominator => _denominatorLessOne + 1;

    public static Beats Zero => default;

    public static Beats One => new(1, 1);

    public static Beats Half => new(1, 2);

    public static Beats Of(int whole) => new(whole, 1);

    /// <exception cref="ArgumentOutOfRangeException">The denominator is not positive.</exception>
    public static Beats Of(int numerator, int denominator)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, 1);
        return Reduced(numerator, denominator);
    }

    public bool IsWhole => Denominator == 1;

    /// <summary>The whole counts at or below this length.</summary>
    public int Floor => FloorOf(Numerator, Denominator);

    /// <summary>The whole counts at or above this length.</summary>
    public int Ceiling => -FloorOf(-Numerator, Denominator);

    /// <summary>For drawing and speeds only; never compare dances with it.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    public static Beats operator +(Beats a, Beats b) =>
        Reduced(((long)a.Numerator * b.Denominator) + ((long)b.Numerator * a.Denominator), (long)a.Denominator * b.Denominator);

    public static Beats operator -(Beats a) => new(-a.Numerator, a.Denominator);

    public static Beats operator -(Beats a, Beats b) => a + -b;

    public static Beats operator *(Beats a, int times) => Reduced((long)a.Numerator * times, a.Denominator);

    public static Beats operator /(Beats a, int parts) => Reduced(a.Numerator, (long)a.Denominator * parts);

    public static bool operator ==(Beats a, Beats b) => a.Equals(b);

    public static bool operator !=(Beats a, Beats b) => !a.Equals(b);

    public static bool operator <(Beats a, Beats b) => a.CompareTo(b) < 0;

    public static bool operator >(Beats a, Beats b) => a.CompareTo(b) > 0;

    public static bool operator <=(Beats a, Beats b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Beats a, Beats b) => a.CompareTo(b) >= 0;

    public bool Equals(Beats other) => Numerator == other.Numerator && Denominator == other.Denominator;

    public override bool Equals(object? obj) => obj is Beats other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, Denominator);

    public int CompareTo(Beats other) =>
        ((long)Numerator * other.Denominator).CompareTo((long)other.Numerator * Denominator);

    public override string ToString() => IsWhole ? $"{Numerator}" : $"{Numerator}/{Denominator}";

    private static int FloorOf(int n, int d) => n >= 0 ? n / d : -((-n + d - 1) / d);

    private static Beats Reduced(long n, long d)
    {
        long a = Math.Abs(n), b = d;
        while (b != 0) (a, b) = (b, a % b);
        return a is 0 or 1 ? new((int)n, (int)(n == 0 ? 1 : d)) : new((int)(n / a), (int)(d / a));
    }
}
