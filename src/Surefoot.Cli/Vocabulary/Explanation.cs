using Surefoot.Dance.Checks;
using Surefoot.Dance.Words;

namespace Surefoot.Cli.Vocabulary;

/// <summary>What is written about one problem: its severity, what it is in one line, and its sections of paragraphs and pages.</summary>
internal sealed record Explanation(string Name, string Severity, string InShort, IReadOnlyList<ExplanationBlock> Blocks)
{
    private const string Folder = "problems/";

    /// <summary>Every name a problem can have.</summary>
    public static IEnumerable<string> Names =>
        AllChecks.List.Select(c => c.Name).Concat(ShippedText.Names(Folder).Select(NameOf)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

    public static Explanation? Of(string name) =>
        ShippedText.Names(Folder).Any(n => NameOf(n) == name) ? Read(name, ShippedText.Read($"{Folder}{name}.md")) : null;

    private static string NameOf(string file) => Path.GetFileNameWithoutExtension(file[Folder.Length..]);

    private static Explanation Read(string name, string text)
    {
        var blocks = new List<ExplanationBlock>();
        var severity = "";
        var says = "";
        var open = new List<string>();
        var fenced = false;
        foreach (var raw in text.EnumerateLines())
        {
            var line = raw.TrimEnd().ToString();
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                Close(fenced ? ExplanationBlockKind.Page : ExplanationBlockKind.Paragraph);
                fenced = !fenced;
            }
            else if (fenced)
            {
                open.Add(line);
            }
            else if (line.Length == 0)
            {
                Close(ExplanationBlockKind.Paragraph);
            }
            else if (line.StartsWith('#'))
            {
                Close(ExplanationBlockKind.Paragraph);
                if (line.StartsWith("## ", StringComparison.Ordinal)) blocks.Add(new(ExplanationBlockKind.Heading, line[3..].Trim()));
            }
            else if (blocks.Count == 0 && line.StartsWith("severity:", StringComparison.Ordinal))
            {
                severity = line["severity:".Length..].Trim();
            }
            else if (blocks.Count == 0 && line.StartsWith("says:", StringComparison.Ordinal))
            {
                says = line["says:".Length..].Trim();
            }
            else
            {
                if (line.StartsWith("- ", StringComparison.Ordinal)) Close(ExplanationBlockKind.Paragraph);
                open.Add(line.Trim());
            }
        }

        Close(fenced ? ExplanationBlockKind.Page : ExplanationBlockKind.Paragraph);
        return new(name, severity, says.Length > 0 ? says : FirstSentence(blocks), blocks);

        void Close(ExplanationBlockKind kind)
        {
            var page = kind == ExplanationBlockKind.Page;
            if (open.Count > 0) blocks.Add(new(kind, page ? string.Join('\n', open) : Plain(string.Join(' ', open))));
            open.Clear();
        }
    }

    private static string FirstSentence(List<ExplanationBlock> blocks)
    {
        var first = blocks.Find(b => b.Kind == ExplanationBlockKind.Paragraph)?.Text ?? "";
        var end = first.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? first : first[..(end + 1)];
    }

    // The marks of Markdown carry nothing that plain text needs.
    private static string Plain(string text) =>
        text.Replace("**", "", StringComparison.Ordinal).Replace("`", "\"", StringComparison.Ordinal);
}

internal sealed record ExplanationBlock(ExplanationBlockKind Kind, string Text);

internal enum ExplanationBlockKind
{
    Heading,
    Paragraph,
    Page,
}
