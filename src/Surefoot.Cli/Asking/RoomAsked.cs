using System.Globalization;
using Surefoot.Dance.Insight;

namespace Surefoot.Cli.Asking;

/// <summary>A room as people type it: "12x18", "12.5 x 18 m", "40x60ft", "40'x60'".</summary>
internal static class RoomAsked
{
    /// <summary>Sides outside of this, in metres, are taken for a slip of the finger.</summary>
    private const double Smallest = 1, Largest = 500;

    public static Room? Read(string text)
    {
        var asked = text.Trim().ToLowerInvariant().Replace('×', 'x').Replace('*', 'x').Replace(',', '.');
        var feet = asked.Contains('\'') || asked.Contains('’') || asked.Contains("ft", StringComparison.Ordinal) || asked.Contains("feet", StringComparison.Ordinal);
        var sides = asked.Split('x', 'X');
        if (sides.Length != 2 || Side(sides[0]) is not { } one || Side(sides[1]) is not { } other) return null;
        return new(Math.Min(one, other), Math.Max(one, other));

        double? Side(string side)
        {
            var digits = side.Trim().TrimEnd('\'', '’', '.', ' ', 'm', 'e', 't', 'r', 's', 'f');
            if (!double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)) return null;
            var metres = feet ? value * Room.Foot : value;
            return metres is >= Smallest and <= Largest ? metres : null;
        }
    }
}
