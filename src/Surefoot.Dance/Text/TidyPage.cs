using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Text;

/// <summary>Prints a page in its usual form. Reading it again gives the same dance.</summary>
public static class TidyPage
{
    // Counts stand in a column as wide as "15&16" and two blanks.
    private const int CountColumn = 7;

    public static string Print(Page page, FigureBook book)
    {
        var lines = new List<string>(page.Lines.Count);
        Role? block = null;
        for (var i = 0; i < page.Lines.Count; i++)
        {
            var line = page.Lines[i];
            switch (line)
            {
                case BlankLine:
                    if (lines.Count > 0 && lines[^1].Length > 0) lines.Add("");
                    break;
                case TitleLine title:
                    lines.Add(Flat(page, title.Span));
                    break;
                case HeaderLine header:
                    lines.Add($"{HeaderWord(header, book)}: {Flat(page, header.ValueSpan)}".TrimEnd());
                    break;
                case NoteLine note:
                    lines.Add("> " + note.Text);
                    break;
                case HeadingLine heading:
                    if (lines.Count > 0 && lines[^1].Length > 0) lines.Add("");
                    lines.Add(Heading(page, heading));
                    block = null;
                    break;
                case RoleLine role:
                    lines.Add(RoleWord(page, role.Role, role.Span) + ":");
                    block = role.Role;
                    break;
                case CountLine counted:
                    lines.Add(Counted(page, counted, block, book));
                    break;
                case CallLine call:
                    lines.Add($"{Calls(page, call)}: {(call.None ? "none" : call.Words)}".TrimEnd());
                    break;
                case RepeatLine repeat:
                    lines.Add(Repeated(page, repeat, i + 1 < page.Lines.Count ? page.Lines[i + 1] : null, book));
                    break;
                case FigureLine { Key: "version" } version:
                    lines.Add(version.Value);
                    break;
                case FigureLine fact:
                    if (fact.Key == "figure" && lines.Count > 0 && lines[^1].Length > 0) lines.Add("");
                    lines.Add($"{char.ToUpperInvariant(fact.Key[0])}{fact.Key[1..]}: {Flat(fact.Value)}");
                    break;
                case StrayLine { Pieces.Count: > 0 } stray:
                    lines.Add(Flat(page, stray.Span));
                    break;
            }
        }

        while (lines.Count > 0 && lines[^1].Length == 0) lines.RemoveAt(lines.Count - 1);
        return lines.Count == 0 ? "" : string.Join('\n', lines) + "\n";
    }

    private static string Counted(Page page, CountLine line, Role? block, FigureBook book)
    {
        var text = new StringBuilder();
        text.Append(LabelOf(page, line.Group).PadRight(CountColumn));
        var own = line.Block != block && line.Segments.Count > 0 && line.Segments[0].RoleSpan is null ? line.Block : null;
        if (own is { } role) text.Append(RoleWord(page, role, page.Lines.OfType<RoleLine>().LastOrDefault(l => l.Role == role && l.Span.Start < line.Span.Start)?.Span)).Append(": ");
        for (var i = 0; i < line.Segments.Count; i++)
        {
            var segment = line.Segments[i];
            var words = segment.Pieces.Count == 0 ? "" : Tidy.Words(page.Source, segment.Span, book).Trim(' ', '.', ',', ';');
            if (i > 0) text.Append(segment.RoleSpan is null ? ", " : ". ");
            if (segment.RoleSpan is { } said) text.Append(RoleWord(page, segment.Role, said)).Append(": ");
            text.Append(words);
        }

        return text.ToString().TrimEnd();
    }

    /// <summary>Whoever writes "Man" and "Lady" keeps them; letters, "his" and "her" are written out.</summary>
    private static string RoleWord(Page page, Role? role, TextSpan? said)
    {
        if (role is null) return "Both";
        var words = said is { } span ? new string([.. page.Source.Words(span).ToLowerInvariant().Select(c => char.IsLetter(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries) : [];
        var word = words.FirstOrDefault(w => !LineReader.Joining.Contains(w)) ?? "";
        return word.Length < 3 || word is "his" or "him" or "her" or "she" ? role.Value.Title() : char.ToUpperInvariant(word[0]) + word[1..];
    }

    private static string Calls(Page page, CallLine call) => $"Call {(call.Group is { } group ? LabelOf(page, group) : "before the dance")}{CallReader.Says(call, page.Source)}";

    private static string Repeated(Page page, RepeatLine line, LineNode? next, FigureBook book)
    {
        var from = line.Group is { } group ? group.Span.End : line.Span.Start;
        var to = next is CountLine change && change.Span.Start > line.Span.Start && change.Span.End == line.Span.End ? change.Span.Start : line.Span.End;
        var words = Tidy.Words(page.Source, TextSpan.Between(from, to), book).Trim(' ', ':', '.', ',');
        return line.Group is null ? words : LabelOf(page, line.Group).PadRight(CountColumn) + words;
    }

    private static string Heading(Page page, HeadingLine heading)
    {
        var part = heading.Part;
        var source = page.Source.Words(heading.Span);
        if (source.TrimStart('\uFEFF', ' ')[0] is '[' or '(') return Flat(source);
        // Brackets stay as written, after the name.
        var open = source.IndexOfAny(['(', '[']);
        var brackets = open >= 0 ? Flat(source[open..]) : part.StatedRange is { } range ? $"({range.From}-{range.To})" : part.StatedCounts is { } counts ? $"({counts} {(counts == 1 ? "count" : "counts")})" : "";
        if (open >= 0 && part.Name.Length > 0 && source.IndexOf(part.Name, StringComparison.Ordinal) > open) return Flat(source);
        // "Tag: The singer waits": without the colon the name might read as a sentence.
        var label = part.Kind != PartKind.Part && part.Name.Length > 0 ? part.Label + ":" : part.Label;
        return string.Join("  ", new[] { label, Flat(part.Name), brackets }.Where(s => s.Length > 0));
    }

    private static string LabelOf(Page page, CountGroup group) => group.Lengths.Count > 0 ? page.Source.Words(group.Span) : group.Slots is [var only] && only < Count.First ? "&" : RowText.Label(group);

    private static string HeaderWord(HeaderLine header, FigureBook book)
    {
        if (!header.Known) return header.Key;
        foreach (var row in book.Rows)
        {
            if (row.Kind == "header" && row.Key == header.Key) return char.ToUpperInvariant(row.Spellings[0][0]) + row.Spellings[0][1..];
        }

        return header.Key;
    }

    private static string Flat(Page page, TextSpan span) => Flat(page.Source.Words(span));

    // Hard spaces and runs of blanks become single ones; titles and remarks keep their quotes and dashes.
    private static string Flat(string text)
    {
        var flat = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (Tokenizer.IsSpace(c))
            {
                if (flat.Length > 0 && flat[^1] != ' ') flat.Append(' ');
            }
            else
            {
                flat.Append(c);
            }
        }

        return flat.ToString().Trim();
    }
}
