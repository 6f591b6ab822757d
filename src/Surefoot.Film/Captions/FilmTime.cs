using System.Globalization;

namespace Surefoot.Film.Captions;

/// <summary>A moment of a film, in whole thousandths of a second from its beginning: what caption files can say.</summary>
public readonly record struct FilmTime(long Thousandths) : IComparable<FilmTime>
{
    public static FilmTime OfSeconds(double seconds) => new((long)Math.Round(seconds * 1000));

    public double Seconds => Thousandths / 1000.0;

    public static bool operator <(FilmTime a, FilmTime b) => a.Thousandths < b.Thousandths;

    public static bool operator >(FilmTime a, FilmTime b) => a.Thousandths > b.Thousandths;

    public static bool operator <=(FilmTime a, FilmTime b) => a.Thousandths <= b.Thousandths;

    public static bool operator >=(FilmTime a, FilmTime b) => a.Thousandths >= b.Thousandths;

    public int CompareTo(FilmTime other) => Thousandths.CompareTo(other.Thousandths);

    /// <summary>As a WebVTT file has it: "00:01:02.345".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Thousandths / 3_600_000:00}:{Thousandths / 60_000 % 60:00}:{Thousandths / 1000 % 60:00}.{Thousandths % 1000:000}");

    /// <summary>As people write it: "1:02", "1:00:05". The second that has begun, so that a jump does not come late.</summary>
    public string Short => Thousandths >= 3_600_000
        ? string.Create(CultureInfo.InvariantCulture, $"{Thousandths / 3_600_000}:{Thousandths / 60_000 % 60:00}:{Thousandths / 1000 % 60:00}")
        : string.Create(CultureInfo.InvariantCulture, $"{Thousandths / 60_000}:{Thousandths / 1000 % 60:00}");
}
