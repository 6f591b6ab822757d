using System.Text;

namespace Surefoot.Cli.Printing;

/// <summary>Breaks sentences into lines.</summary>
internal static class Prose
{
    /// <param name="width">Columns of a line, or null for one line however long.</param>
    public static IEnumerable<string> Wrap(string text, int? width, int indent, int hanging)
    {
        var line = new StringBuilder().Append(' ', indent);
        if (width is not { } columns || Cells.Width(text) + indent <= columns)
        {
            yield return line.Append(text).ToString();
            yield break;
        }

        var used = indent;
        var begun = false;
        // Runs of blanks in front and between columns are kept where the line is not broken.
        for (var i = 0; i < text.Length;)
        {
            var blanks = i;
            while (blanks < text.Length && text[blanks] == ' ') blanks++;
            var end = blanks;
            while (end < text.Length && text[end] != ' ') end++;
            var word = text[blanks..end];
            var needed = (blanks - i) + Cells.Width(word);
            if (begun && used + needed > columns && used > hanging)
            {
                yield return line.ToString().TrimEnd();
                line.Clear().Append(' ', hanging);
                used = hanging;
                needed = Cells.Width(word);
            }
            else
            {
                line.Append(' ', blanks - i);
            }

            line.Append(word);
            used += needed;
            begun = true;
            i = end;
        }

        yield return line.ToString().TrimEnd();
    }

    /// <summary>"1 error", "2 errors", "no errors".</summary>
    public static string Number(int count, string one, string? many = null) =>
        $"{(count == 0 ? "no" : $"{count}")} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string And(IReadOnlyList<string> items, string joint = "and") => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} {joint} {items[^1]}",
    };
}
