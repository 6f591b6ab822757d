using System.Globalization;

namespace Surefoot.Dance.Basics;

/// <summary>How lengths are shown.</summary>
public enum Units
{
    Metric,
    FeetAndInches,
}

/// <summary>What stands between the ones and the tenths of a number.</summary>
public enum DecimalMark
{
    /// <summary>1.5</summary>
    Point,

    /// <summary>1,5</summary>
    Comma,
}

/// <summary>How a hall writes lengths and numbers. Surefoot reckons in metres; this is for what is read by people.</summary>
public sealed record Measures(Units Units = Units.Metric, DecimalMark Mark = DecimalMark.Point)
{
    /// <summary>Metres in an inch, by definition (international inch, 1959).</summary>
    public const double Inch = 0.0254;

    private const double Foot = 12 * Inch;

    // The machine's own cultures are not loaded, so that a page reads alike everywhere; the format is said in full.
    private static readonly NumberFormatInfo Point = Written(".", ",");

    // Thousands are set off by a blank that does not break the line, as the standard for quantities asks (ISO 80000-1).
    private static readonly NumberFormatInfo Comma = Written(",", "\u00A0");

    public static Measures Usual { get; } = new();

    /// <summary>For the platform's own formatting of numbers.</summary>
    public IFormatProvider Numbers => Mark == DecimalMark.Comma ? Comma : Point;

    /// <summary>A number in one of the platform's forms, such as "0.0#".</summary>
    public string Number(double number, string form) => number.ToString(form, Numbers);

    /// <summary>"0.5 m", "1.75 m", "1 ft 8 in". Rounded to a hundredth of a metre or to an inch; below an inch and a half to a tenth.</summary>
    /// <param name="metres">0 or more.</param>
    public string Length(double metres)
    {
        if (Units == Units.Metric) return Number(metres, "0.0#") + " m";
        var inches = metres / Inch;
        if (inches < 1.5) return Number(inches, "0.#") + " in";
        var whole = (int)Math.Round(inches, MidpointRounding.AwayFromZero);
        return (whole / 12, whole % 12) switch
        {
            (0, var rest) => $"{rest} in",
            (var feet, 0) => $"{feet} ft",
            var (feet, rest) => $"{feet} ft {rest} in",
        };
    }

    /// <summary>"3.5 m a second", "11.5 ft a second".</summary>
    public string Speed(double metresPerSecond) =>
        Units == Units.Metric ? Number(metresPerSecond, "0.0#") + " m a second" : Number(metresPerSecond / Foot, "0.0") + " ft a second";

    private static NumberFormatInfo Written(string mark, string group)
    {
        var format = (NumberFormatInfo)NumberFormatInfo.InvariantInfo.Clone();
        (format.NumberDecimalSeparator, format.NumberGroupSeparator) = (mark, group);
        return NumberFormatInfo.ReadOnly(format);
    }
}
