using System.Globalization;
using System.Text;

namespace Surefoot.Draw.Feet;

/// <summary>Pieces of SVG text. Lengths inside a picture are tenths of a millimetre of paper.</summary>
internal static class Svg
{
    /// <summary>Units in a millimetre of paper.</summary>
    public const double Millimetre = 10;

    /// <summary>A number with at most one place: a hundredth of a millimetre of paper is finer than any printer.</summary>
    public static string N(double value)
    {
        var rounded = Math.Round(value, 1);
        return (rounded == 0 ? 0 : rounded).ToString("0.#", CultureInfo.InvariantCulture);
    }

    /// <summary>Text that may stand between tags and inside quoted attributes.</summary>
    public static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => safe.Append("&amp;"),
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '"' => safe.Append("&quot;"),
                '\'' => safe.Append("&#39;"),
                // The rest of the control characters may not stand in XML at all.
                < ' ' and not '\n' and not '\t' => safe.Append(' '),
                _ => safe.Append(c),
            };
        }

        return safe.ToString();
    }

    /// <param name="anchor">"start", "middle" or "end".</param>
    /// <param name="room">Width the text must not exceed, or 0; longer text is set smaller.</param>
    public static string Text(string text, double x, double y, double size, string fill, string anchor = "middle", bool bold = false, double room = 0)
    {
        var width = text.Length * size * UsualAdvance;
        if (room > 0 && width > room) size *= room / width;
        var weight = bold ? " font-weight=\"bold\"" : "";
        var place = anchor == "start" ? "" : $" text-anchor=\"{anchor}\"";
        return $"<text x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(size)}\" fill=\"{fill}\"{place}{weight}>{Escape(text)}</text>";
    }

    /// <summary>Advance of a letter over type size, a little above the mean of sans-serif faces so that text does fit.</summary>
    public const double UsualAdvance = 0.55;
}
