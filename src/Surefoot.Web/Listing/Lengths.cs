using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;

namespace Surefoot.Web.Listing;

/// <summary>A height that was typed; null metres for nothing typed.</summary>
internal readonly record struct TypedHeight(double? Metres);

/// <summary>Heights as people write them, in metres, centimetres, or feet and inches.</summary>
internal static partial class Lengths
{
    /// <summary>What was typed, or null when it is no height.</summary>
    public static TypedHeight? Read(string? typed)
    {
        var text = (typed ?? "").Trim().Replace(',', '.');
        if (text.Length == 0) return new(null);
        if (Feet().Match(text) is { Success: true } feet)
        {
            var inches = (12 * Number(feet.Groups["feet"])) + (feet.Groups["inches"].Success ? Number(feet.Groups["inches"]) : 0);
            return Height(inches * Measures.Inch);
        }

        if (Metric().Match(text) is not { Success: true } metric) return null;
        var number = Number(metric.Groups["number"]);
        return Height(metric.Groups["unit"].Value is "cm" || number > 3 ? number / 100 : number);
    }

    /// <summary>"1.80 m" or "5 ft 11 in"; nothing for no height.</summary>
    public static string Show(double? metres, Measures measures)
    {
        if (metres is not { } told) return "";
        if (measures.Units == Units.Metric) return measures.Number(told, "0.00") + " m";
        var inches = (int)Math.Round(told / Measures.Inch);
        return $"{inches / 12} ft {inches % 12} in";
    }

    private static TypedHeight? Height(double metres) => metres is >= 1.0 and <= 2.4 ? new(Math.Round(metres, 4)) : null;

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<feet>\d)\s*(?:ft|feet|foot|'|′)\s*(?:(?<inches>\d{1,2}(?:\.\d+)?)\s*(?:in|inch|inches|""|″)?)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 200)]
    private static partial Regex Feet();

    [GeneratedRegex(@"^(?<number>\d{1,3}(?:\.\d{1,3})?)\s*(?<unit>cm|m)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 200)]
    private static partial Regex Metric();
}
