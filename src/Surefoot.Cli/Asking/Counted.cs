using System.Globalization;
using Surefoot.Dance.Basics;

namespace Surefoot.Cli.Asking;

/// <summary>A count as people type it: "15", "3&amp;", "&amp;3" (the half-count before 3), "4a", "4e", "3.5".</summary>
internal static class Counted
{
    public static Count? Read(string text)
    {
        var asked = text.Trim().ToLowerInvariant().Replace("and", "&", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);
        if (asked.Length == 0) return null;
        var before = asked[0] is '&' or 'e' or 'a';
        var digits = before ? asked[1..] : asked.TrimEnd('&', 'e', 'a');
        var mark = before ? asked[..1] : asked[digits.Length..];
        if (mark.Length == 0 && decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is > 0 and < 10_000)
        {
            return new Count(Beats.Of((int)Math.Round(number * 4), 4));
        }

        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) || whole is < 1 or > 10_000) return null;
        Beats? part = mark switch { "e" => Beats.Of(1, 4), "&" => Beats.Half, "a" => Beats.Of(3, 4), _ => null };
        return part is { } late ? new Count(Beats.Of(before ? whole - 1 : whole) + late) : null;
    }
}
