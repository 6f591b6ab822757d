using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Feet;
using Surefoot.Draw.Sheet.Plan;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Html;

/// <summary>
/// A part as a table of three columns: the counts in the middle, the lead's words left, the follow's right.
/// Words for everybody stand right of the counts; where a part begins with them, its heading uses the left side.
/// </summary>
internal static class PartMarkup
{
    /// <summary>Fewer lines than this are too low for the heading to stand beside them.</summary>
    private const int LeastBeside = 3;

    /// <summary>How many rows from the top have the heading at their left; 0 when it stands above.</summary>
    public static int RowsBesideHeading(PartPlan part)
    {
        var rows = 0;
        while (rows < part.Rows.Count && !part.Rows[rows].HasSides) rows++;
        return rows >= LeastBeside || rows == part.Rows.Count ? rows : 0;
    }

    /// <summary>What the id of a part's table begins with; its number among the parts of the page follows.</summary>
    private const string PartId = "part-";

    public static string Of(PartPlan part, RoleNames names, bool sides)
    {
        var beside = RowsBesideHeading(part);
        var text = new StringBuilder();
        text.Append($"<table id=\"{PartId}{part.Index}\"{(sides ? " class=\"sides\"" : "")}>")
            .Append("<colgroup><col class=\"l\"><col class=\"m\"><col class=\"r\"></colgroup>\n");
        // Where a part goes on on the next page its heading stands there again, and not how the part begins.
        if (beside == 0) text.Append($"<thead>\n{Above(Heading(part))}</thead>\n");
        text.Append("<tbody>\n");
        if (beside == 0 && part.Start.Length > 0) text.Append(Above(Start(part)));
        var apart = false;
        for (var i = 0; i < part.Rows.Count; i++)
        {
            var row = part.Rows[i];
            var head = beside > 0 && i == 0 ? HeadingBeside(part, beside) : null;
            var first = row.HasSides && !apart;
            apart = row.HasSides || (row.Both is null && apart);
            text.Append(row.HasSides ? Sides(row, names, first) : row.Note is { } note && sides && i >= beside ? Between(note) : Whole(row, head, covered: i < beside, both: sides && part.SaysBoth(i)));
        }

        return text.Append("</tbody></table>\n").ToString();
    }

    private const string Everybody = "<span class=\"who\">both</span>";

    private static string Heading(PartPlan part) =>
        $"<h2>{Svg.Escape(part.Heading)} <span>{Numbers.Counts(part.Counts)}</span></h2>";

    private static string Above(string words) => $"<tr class=\"top\"><td class=\"head\" colspan=\"3\">{words}</td></tr>\n";

    private static string HeadingBeside(PartPlan part, int rows) => $"<td class=\"head\" rowspan=\"{rows}\">{Heading(part)}{Start(part)}</td>";

    private static string Start(PartPlan part) => part.Start.Length == 0 ? "" : $"<p class=\"stand\">{Svg.Escape(part.Start)}</p>";

    private static string Whole(RowPlan row, string? head, bool covered, bool both)
    {
        var left = head ?? (covered ? "" : "<td class=\"gap\"></td>");
        if (row.Ours.Count > 0)
        {
            var lines = string.Concat(row.Ours.Select(o => $"<span>{Mark(o.Mark)} {Words(o.Words)}</span>"));
            return $"<tr class=\"ours\">{left}<td class=\"count\"></td><td>{lines}</td></tr>\n";
        }

        if (row.Note is { } note) return $"<tr class=\"remark\">{left}<td class=\"count\"></td><td>{Words(note)}</td></tr>\n";
        return $"<tr{Class(row, "")}>{left}{Counts(row)}<td>{(both ? Everybody : "")}{Words(row.Both ?? "")}</td></tr>\n";
    }

    // On one side it would look as if it were for that dancer alone.
    private static string Between(string note) => $"<tr class=\"remark between\"><td colspan=\"3\">{Words(note)}</td></tr>\n";

    // Where there is no room for two sides they stand under each other, and each line says whose it is.
    private static string Sides(RowPlan row, RoleNames names, bool first)
    {
        string Who(Role role) => Svg.Escape(names.Title(role).ToLowerInvariant());
        string Cell(Role role, string words, string kind) =>
            $"<td{kind} data-who=\"{Who(role)}\">{(first ? $"<span class=\"who\">{Who(role)}</span>" : "")}{Words(words)}</td>";
        return $"<tr{Class(row, "apart")}>{Cell(Role.Lead, row.Lead, " class=\"lead\"")}{Counts(row)}{Cell(Role.Follow, row.Follow, "")}</tr>\n";
    }

    private static string Class(RowPlan row, string also)
    {
        var kind = row.Kind switch { RowKind.Repeat => "again", RowKind.Change => "but", _ => "" };
        var all = string.Join(' ', new[] { also, kind }.Where(c => c.Length > 0));
        return all.Length == 0 ? "" : $" class=\"{all}\"";
    }

    private static string Counts(RowPlan row)
    {
        var but = row.Kind == RowKind.Change ? "<small>but</small> " : "";
        var tight = row.Counts.Length + row.Covers.Length + (but.Length > 0 ? 3 : 0) > 7 ? " class=\"tight\"" : "";
        var covers = row.Covers.Length == 0 ? "" : $" <small class=\"fills\">{Dashed(row.Covers)}</small>";
        return $"<th scope=\"row\"{tight}>{but}{Dashed(row.Counts)}{covers}</th>";
    }

    private static string Mark(string mark) => $"<b>{mark}</b>";

    /// <summary>The key at the foot, with its marks drawn as they stand in the rows.</summary>
    public static string Marked(string key) => Svg.Escape(key)
        .Replace(OurLine.Hands + " ", Mark(OurLine.Hands) + " ", StringComparison.Ordinal)
        .Replace(OurLine.Hold + " ", Mark(OurLine.Hold) + " ", StringComparison.Ordinal);

    private static string Dashed(string counts) => Svg.Escape(counts.Replace('-', '–'));

    private static string Words(string text) => Svg.Escape(Phrases.Kept(text));
}
