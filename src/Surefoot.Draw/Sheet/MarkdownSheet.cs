using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Sheet.Plan;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>The sheet as Markdown, with a table for each part.</summary>
public static class MarkdownSheet
{
    /// <param name="couple">How the couple was solved, for what the page leaves unsaid of hands; null prints the page's words alone.</param>
    public static string Write(DanceScore score, SheetOptions options, CoupleSolution? couple = null)
    {
        var plan = SheetPlan.Of(score, options, couple);
        var text = new StringBuilder();
        text.Append($"# {Escape(plan.Title)}\n");
        if (plan.Doubt.Length > 0) text.Append($"\n**{Escape(plan.Doubt)}**\n");
        text.Append($"\n{Escape(plan.Opening)}\n");
        if (plan.Order.Length > 0) text.Append($"\n**{Escape(plan.Order)}**\n");
        foreach (var note in plan.Notes) text.Append($"\n> {Escape(note)}\n");
        foreach (var part in plan.Parts) Part(text, part, plan.Names);
        if (plan.Key.Length > 0) text.Append($"\n*{Escape(plan.Key)}*\n");
        return text.Append($"\n{Escape(plan.Care)}\n\n{SheetPlan.MadeWith}\n").ToString();
    }

    private static void Part(StringBuilder text, PartPlan part, RoleNames names)
    {
        text.Append($"\n## {Escape(part.Heading)} ({Numbers.Counts(part.Counts)})\n\n");
        if (part.Start.Length > 0) text.Append($"{Escape(part.Start)}\n\n");
        if (part.Rows.Count == 0) return;
        text.Append(part.HasSides
            ? $"| {Escape(names.Title(Role.Lead))} | Counts | {Escape(names.Title(Role.Follow))} |\n| ---: | :---: | :--- |\n"
            : "| Counts | Steps |\n| ---: | :--- |\n");
        for (var i = 0; i < part.Rows.Count; i++)
        {
            var row = part.Rows[i];
            var words = row.Ours.Count > 0 ? Ours(row) : row.Note is { } note ? $"*{Escape(note)}*" : Styled(row, row.Both ?? row.Follow);
            if (!part.HasSides) text.Append($"| {Counts(row)} | {words} |\n");
            else text.Append($"| {Left(row, part.SaysBoth(i))} | {Counts(row)} | {words} |\n");
        }
    }

    private static string Left(RowPlan row, bool both) => row.HasSides ? Styled(row, row.Lead) : both ? "*both*" : "";

    private static string Styled(RowPlan row, string words) => row.Kind == RowKind.Repeat ? $"*{Escape(words)}*" : Escape(words);

    /// <summary>The mark stands outside the slanted words, because a note of the author is slanted too.</summary>
    private static string Ours(RowPlan row) => string.Join(" ", row.Ours.Select(o => $"{Escape(o.Mark)} *{Escape(o.Words)}*"));

    private static string Counts(RowPlan row) =>
        row.Note is not null || row.Ours.Count > 0 ? "" : (row.Kind == RowKind.Change ? "but " : "") + $"**{Escape(row.Counts)}**" + (row.Covers.Length > 0 ? $" {row.Covers}" : "");

    /// <summary>Marks that Markdown would take for its own are made harmless; a line break would end a table's row.</summary>
    private static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            // An ampersand only matters where it could begin a named character; "3&4" stays as it is.
            var entity = c == '&' && i + 1 < text.Length && (char.IsAsciiLetter(text[i + 1]) || text[i + 1] == '#');
            if (entity || c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '~') safe.Append('\\');
            safe.Append(c is '\n' or '\r' or '\t' ? ' ' : c);
        }

        return safe.ToString();
    }
}
