using System.Net;
using System.Text;
using Surefoot.Draw;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Sheets;

/// <summary>
/// Lesson sheets for the printer: the clock down the left edge, what happens beside it, and where a bite is taught its
/// counts in the middle with the lead's words left and the follow's right. One file with everything in it.
/// </summary>
public static class LessonHtml
{
    public static string Write(IReadOnlyList<LessonSheet> sheets, SheetOptions options)
    {
        var text = new StringBuilder(PrintedPage.Head(sheets.Count == 0 ? "Lesson" : sheets[0].Title, options, Rules));
        foreach (var sheet in sheets) text.Append(Lesson(sheet, options));
        return text.Append(PrintedPage.Foot).ToString();
    }

    private static string Lesson(LessonSheet sheet, SheetOptions options)
    {
        var text = new StringBuilder();
        text.Append($"<section class=\"lesson\">\n<h1>{E(sheet.Title)}</h1>\n<p class=\"opening\">{E(sheet.Opening)}</p>\n<ol class=\"run\">\n");
        foreach (var station in sheet.Stations) text.Append(Station(station, options));
        return text.Append($"</ol>\n<p class=\"care\">{E(sheet.Care)}</p>\n</section>\n").ToString();
    }

    private static string Station(Station station, SheetOptions options)
    {
        var text = new StringBuilder();
        var kind = station.Kind == ItemKind.Teach ? " class=\"taught\"" : "";
        text.Append($"<li{kind}><p class=\"clock\"><b>{E(station.Clock)}</b><span>{station.Minutes} min</span></p><div>\n<h2>{E(station.Heading)}</h2>\n");
        foreach (var says in station.Says) text.Append($"<p>{E(says)}</p>\n");
        if (station.Rows.Count > 0) text.Append(Table(station, options));
        if (station.Advice.Count > 0)
        {
            text.Append("<dl>\n");
            foreach (var advice in station.Advice) text.Append($"<dt>{E(advice.Word)}</dt><dd>{string.Join("<br>", advice.Items.Select(E))}</dd>\n");
            text.Append("</dl>\n");
        }

        if (station.Ways.Count > 0) text.Append($"<p class=\"ways\">{string.Join(' ', station.Ways.Select(w => $"<a href=\"{E(w.Address)}\">{E(w.Words)}</a>"))}</p>\n");
        return text.Append("</div></li>\n").ToString();
    }

    private static string Table(Station station, SheetOptions options)
    {
        var sides = station.ForCouples && station.Rows.Any(r => r.Both is null);
        var text = new StringBuilder($"<table{(sides ? " class=\"sides\"" : "")}>\n");
        if (sides) text.Append($"<thead><tr><th scope=\"col\" class=\"lead\">{E(options.LeadWord)}</th><th scope=\"col\" class=\"m\">count</th><th scope=\"col\">{E(options.FollowWord)}</th></tr></thead>\n");
        text.Append("<tbody>\n");
        foreach (var row in station.Rows)
        {
            var words = row.IsNote ? $"<i>{E(row.Both!)}</i>" : E(row.Both ?? row.Follow);
            var counts = $"<th scope=\"row\">{E(row.Counts.Replace('-', '–'))}</th>";
            if (!sides) text.Append($"<tr>{counts}<td>{words}</td></tr>\n");
            else if (row.Both is not null) text.Append($"<tr><td class=\"lead quiet\">{(row.IsNote ? "" : "both")}</td>{counts}<td>{words}</td></tr>\n");
            else text.Append($"<tr><td class=\"lead\">{E(row.Lead)}</td>{counts}<td>{words}</td></tr>\n");
        }

        return text.Append("</tbody></table>\n").ToString();
    }

    private static string E(string text) => WebUtility.HtmlEncode(text);

    private static readonly string Rules = """
        .lesson+.lesson{break-before:page}
        @media screen{.lesson+.lesson{margin-top:3em}}
        .run{list-style:none;margin:1em 0 0;padding:0}
        .run li{display:grid;grid-template-columns:4.4em 1fr;break-inside:avoid;border-top:.75pt solid var(--line);padding:.5em 0 .6em}
        .clock{margin:0;line-height:1.25}.clock b{display:block;font-variant-numeric:tabular-nums}.clock span{font-size:.86em;color:var(--quiet)}
        .run h2{font:600 1.1em/1.25 var(--book);margin:0 0 .15em}
        .run div>p{margin:0 0 .3em;max-width:62em;color:var(--quiet)}
        .taught .clock b{border-inline-start:3pt solid var(--ink);padding-inline-start:.4em;margin-inline-start:-.5em}
        table{border-collapse:collapse;width:100%;margin:.35em 0 .5em}
        td,th{padding:.14em .6em;vertical-align:baseline;text-align:left;font-weight:400}
        tbody th,.m{font-weight:700;text-align:center;white-space:nowrap;font-variant-numeric:tabular-nums;border-inline:.75pt solid var(--line);width:6em}
        table:not(.sides) tbody th{text-align:right;border-inline-start:0}
        .sides{table-layout:fixed}.sides .m{width:6em}
        thead th{font-size:.82em;color:var(--quiet);letter-spacing:.05em}thead .m{font-weight:400}
        .lead{text-align:right}.quiet{color:var(--quiet);font-size:.86em}
        .ways a{color:inherit;display:inline-block;padding:.5em .8em .5em 0}@media print{.ways{display:none}}
        dl{display:grid;grid-template-columns:max-content 1fr;gap:.12em .8em;margin:.2em 0 0}
        dt{font-weight:600;font-size:.92em}dd{margin:0}
        @media screen and (max-width:34rem){.run li{grid-template-columns:1fr}.clock b,.clock span{display:inline;margin-inline-end:.5em}.taught .clock b{margin-inline-start:0}dl{grid-template-columns:1fr}}
        """.ReplaceLineEndings("");
}
