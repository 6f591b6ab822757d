using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Source;

/// <summary>A line of a sheet: as it stood, and with the marks of typing and printing taken away.</summary>
/// <param name="Number">From 1.</param>
internal sealed record SheetLine(int Number, string Text, string Plain);

/// <summary>Cuts a sheet into lines and makes their typing plain: one kind of space, dash, quote and bullet.</summary>
internal static class SheetText
{
    public static List<SheetLine> Lines(string text)
    {
        var lines = new List<SheetLine>();
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n')) lines.Add(new(lines.Count + 1, line, Plain(line)));
        return lines;
    }

    private static string Plain(string line) => WithoutBullet(PlainWords(line).Trim());

    /// <summary>The same line with one kind of space, every letter where it stood.</summary>
    internal static string OneSpace(string line) => string.Concat(line.Select(c => c is '\u00A0' or '\u2007' or '\u202F' or '\u2009' ? ' ' : c));

    /// <summary>The same words with one kind of space, dash and quote.</summary>
    internal static string PlainWords(string line)
    {
        var plain = new StringBuilder(line.Length);
        foreach (var c in line)
        {
            switch (c)
            {
                case '\u00A0' or '\u2007' or '\u202F' or '\u2009':
                    plain.Append(' ');
                    break;
                // A tab parts columns.
                case '\t':
                    plain.Append("   ");
                    break;
                case '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212':
                    plain.Append('-');
                    break;
                case '\u2018' or '\u2019' or '\u00B4' or '`':
                    plain.Append('\'');
                    break;
                case '\u201C' or '\u201D' or '\u00AB' or '\u00BB':
                    plain.Append('"');
                    break;
                case '\uFEFF' or '\u200B' or '\u00AD' or '*':
                    break;
                default:
                    // Digits of other scripts are the same numbers.
                    plain.Append(c > 127 && char.IsDigit(c) ? (char)('0' + CharUnicodeInfo.GetDecimalDigitValue(c)) : c);
                    break;
            }
        }

        // "Left, right, leeeft, riiight": drawn out as it is called.
        return DrawnOut.Replace(plain.ToString(), word => Roman.IsMatch(word.Value) ? word.Value : Long.Replace(word.Value, "${letter}"));
    }

    private static readonly Regex DrawnOut = new(@"\b[A-Za-z]+?(?<letter>[aeiou])\k<letter>{2}[a-z]*", RegexOptions.CultureInvariant);

    private static readonly Regex Long = new(@"(?<=[a-z])(?<letter>[aeiou])(?<!\k<letter>\k<letter>)\k<letter>{2,7}(?!\k<letter>)", RegexOptions.CultureInvariant);

    // "Figure viii".
    private static readonly Regex Roman = new("^[ivx]+$", RegexOptions.CultureInvariant);

    private static string WithoutBullet(string line)
    {
        // A row of a drawn table keeps its strokes.
        if (line is ['|', .., '|'] && line.Count(c => c == '|') > 2) return line;
        var start = 0;
        while (start < line.Length && (line[start] is '\u2022' or '\u25CF' or '\u25AA' or '>' or '|' || (line[start] is '-' or ' ' && start + 1 < line.Length && !char.IsDigit(line[start + 1])))) start++;
        return line[start..].Trim();
    }
}
