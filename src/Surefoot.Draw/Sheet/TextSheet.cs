using System.Text;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Sheet.Plain;
using Surefoot.Draw.Sheet.Plan;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>The sheet as plain text of 78 columns, for an e-mail: the counts in the middle, the lead left, the follow right.</summary>
public static class TextSheet
{
    /// <summary>Columns of the whole sheet; mail programs begin to break lines soon after.</summary>
    private const int Width = 78;

    /// <summary>Columns of one side and of the counts with the blanks round them: 33 + 12 + 33.</summary>
    private const int Side = 33, Middle = 12;

    /// <summary>Least columns of the counts where nobody has words of their own.</summary>
    private const int Alone = 11;

    /// <param name="couple">How the couple was solved, for what the page leaves unsaid of hands; null prints the page's words alone.</param>
    public static string Write(DanceScore score, SheetOptions options, CoupleSolution? couple = null)
    {
        var plan = SheetPlan.Of(score, options, couple);
        var text = new StringBuilder();
        Paragraph(text, plan.Title);
        text.Append(new string('=', Math.Min(plan.Title.Length, Width))).Append('\n');
        if (plan.Doubt.Length > 0)
        {
            Paragraph(text, plan.Doubt);
            text.Append('\n');
        }

        Paragraph(text, plan.Opening);
        if (plan.Order.Length > 0) Paragraph(text.Append('\n'), plan.Order);
        foreach (var note in plan.Notes) Paragraph(text.Append('\n'), note);
        foreach (var part in plan.Parts) Part(text, part, plan.Names);
        if (plan.Key.Length > 0) Paragraph(text.Append('\n'), plan.Key);
        text.Append('\n');
        Paragraph(text, plan.Care);
        return text.Append('\n').Append(SheetPlan.MadeWith).Append('\n').ToString();
    }

    private static void Paragraph(StringBuilder text, string words)
    {
        foreach (var line in Columns.Wrap(words, Width)) text.Append(line).Append('\n');
    }

    private static void Part(StringBuilder text, PartPlan part, RoleNames names)
    {
        var heading = $"{part.Heading} ({Numbers.Counts(part.Counts)})";
        text.Append('\n');
        Paragraph(text, heading);
        text.Append(new string('-', Math.Min(heading.Length, Width))).Append('\n');
        if (part.Start.Length > 0) Paragraph(text, part.Start);
        var alone = Math.Max(Alone, part.Rows.Select(r => Counts(r).Length + 2).DefaultIfEmpty(0).Max());
        var apart = false;
        for (var i = 0; i < part.Rows.Count; i++)
        {
            var row = part.Rows[i];
            if (row.HasSides && !apart) Line(text, [names.Title(Dance.Basics.Role.Lead)], "", [names.Title(Dance.Basics.Role.Follow)]);
            apart = row.HasSides || (row.Both is null && apart);
            if (!part.HasSides) Whole(text, row, alone);
            else if (row.HasSides) Line(text, Columns.Wrap(row.Lead, Side), Counts(row), Columns.Wrap(row.Follow, Side));
            else Line(text, part.SaysBoth(i) ? ["both"] : [], Counts(row), Words(row, Side));
        }
    }

    private static void Whole(StringBuilder text, RowPlan row, int alone)
    {
        var lines = Words(row, Width - alone);
        for (var i = 0; i < lines.Count; i++)
        {
            text.Append((i == 0 ? Counts(row) : "").PadLeft(alone - 2)).Append("  ").Append(lines[i]).Append('\n');
        }
    }

    /// <summary>A note in brackets, what we worked out behind its mark and a little to the right.</summary>
    private static IReadOnlyList<string> Words(RowPlan row, int width) => row.Ours.Count == 0
        ? Columns.Wrap(row.Both ?? $"({row.Note})", width)
        : [.. row.Ours.SelectMany(o => Columns.Wrap(o.Words, width - 4).Select((line, i) => (i == 0 ? $"  {o.Mark} " : "    ") + line))];

    private static void Line(StringBuilder text, IReadOnlyList<string> lead, string counts, IReadOnlyList<string> follow)
    {
        for (var i = 0; i < Math.Max(1, Math.Max(lead.Count, follow.Count)); i++)
        {
            var middle = i == 0 ? counts : "";
            var left = (Middle - middle.Length) / 2;
            var line = (i < lead.Count ? lead[i] : "").PadLeft(Side)
                + new string(' ', Math.Max(1, left)) + middle + new string(' ', Math.Max(1, Middle - middle.Length - left))
                + (i < follow.Count ? follow[i] : "");
            text.Append(line.TrimEnd()).Append('\n');
        }
    }

    private static string Counts(RowPlan row) =>
        (row.Kind == RowKind.Change ? "but " : "") + row.Counts + (row.Covers.Length > 0 ? " " + row.Covers : "");
}
