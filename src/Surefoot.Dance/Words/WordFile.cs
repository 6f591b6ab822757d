using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Words;

/// <summary>Reads the rows of a words file. Lines starting with ">" are notes.</summary>
public static class WordFile
{
    public static List<WordRow> Read(string text)
    {
        var rows = new List<WordRow>();
        foreach (var raw in text.Split('\n'))
        {
            var line = raw.Trim();
            if (line.Length == 0 || line[0] == '>') continue;
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0) continue;
            var head = line[..colon].Trim();
            var space = head.IndexOf(' ', StringComparison.Ordinal);
            var kind = space < 0 ? head : head[..space];
            var key = space < 0 ? "" : head[(space + 1)..].Trim();
            var rest = line[(colon + 1)..];
            var semicolon = rest.IndexOf(';', StringComparison.Ordinal);
            var meaning = semicolon < 0 ? "" : rest[(semicolon + 1)..].Trim();
            var spellings = (semicolon < 0 ? rest : rest[..semicolon])
                .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            rows.Add(new(
                kind,
                key,
                spellings.Where(s => s[0] != '~').ToValueList(),
                meaning,
                spellings.Where(s => s[0] == '~').Select(s => s[1..]).ToValueList()));
        }

        return rows;
    }
}
