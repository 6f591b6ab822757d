using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plain;

/// <summary>Breaks text into lines of so many letters, at blanks where there are any.</summary>
internal static class Columns
{
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Phrases.Kept(text).Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word.Replace(Phrases.NoBreak, ' ');
            if (line.Length > 0 && line.Length + 1 + rest.Length <= width)
            {
                line += " " + rest;
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            // A word longer than the column is cut rather than let out of it.
            while (rest.Length > width)
            {
                lines.Add(rest[..width]);
                rest = rest[width..];
            }

            line = rest;
        }

        if (line.Length > 0 || lines.Count == 0) lines.Add(line);
        return lines;
    }
}
