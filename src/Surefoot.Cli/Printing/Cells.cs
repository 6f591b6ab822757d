using System.Globalization;
using System.Text;

namespace Surefoot.Cli.Printing;

/// <summary>How many columns text takes on a terminal: none for accents that sit on a letter, two for wide letters.</summary>
internal static class Cells
{
    public static int Width(ReadOnlySpan<char> text)
    {
        var width = 0;
        while (text.Length > 0)
        {
            var length = StringInfo.GetNextTextElementLength(text);
            width += OfElement(text[..length]);
            text = text[length..];
        }

        return width;
    }

    /// <summary>The text with what a terminal would obey, or hide, made visible and harmless.</summary>
    public static string Harmless(ReadOnlySpan<char> text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            var unseen = (char.IsControl(c) && c != '\t') || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u2028' or '\u2029';
            safe.Append(unseen ? '\uFFFD' : c);
        }

        return safe.ToString();
    }

    /// <summary>Pads with blanks to a number of columns.</summary>
    public static string Pad(string text, int columns) => text + new string(' ', Math.Max(0, columns - Width(text)));

    // One letter as a reader sees it: with its accents, or a picture made of several signs.
    private static int OfElement(ReadOnlySpan<char> element)
    {
        var width = 0;
        foreach (var rune in element.EnumerateRunes())
        {
            // The sign that asks for the coloured form of a picture, which is wide.
            if (rune.Value == 0xFE0F) return 2;
            width = Math.Max(width, OfRune(rune));
        }

        return width;
    }

    private static int OfRune(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark => 0,
        UnicodeCategory.Format => rune.Value == 0xAD ? 1 : 0,
        _ => IsWide(rune.Value) ? 2 : 1,
    };

    // Unicode's East Asian Width, the classes W and F, in ranges.
    private static bool IsWide(int value) => value switch
    {
        < 0x1100 => false,
        <= 0x115F => true,
        >= 0x2E80 and <= 0x303E or >= 0x3041 and <= 0xA4CF or >= 0xA960 and <= 0xA97C or >= 0xAC00 and <= 0xD7A3 => true,
        >= 0xF900 and <= 0xFAFF or >= 0xFE30 and <= 0xFE6F or >= 0xFF01 and <= 0xFF60 or >= 0xFFE0 and <= 0xFFE6 => true,
        >= 0x1F300 and <= 0x1F64F or >= 0x1F680 and <= 0x1F6FF or >= 0x1F900 and <= 0x1FAFF or >= 0x20000 and <= 0x3FFFD => true,
        _ => false,
    };
}
