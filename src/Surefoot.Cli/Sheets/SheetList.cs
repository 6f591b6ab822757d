using System.Net;
using System.Text;
using Surefoot.Cli.Commands;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli.Sheets;

/// <summary>The list of a folder's sheets: one file with everything in it, couples' dances first.</summary>
internal static class SheetList
{
    /// <param name="Address">Of the sheet, seen from the list.</param>
    public sealed record Line(string Address, OnePage Page);

    private const string Style = """
        body{font:1.05rem/1.5 system-ui,sans-serif;max-width:44rem;margin:2rem auto;padding:0 1rem;color:#1c1b19;background:#fffdf8}
        h1{font-size:1.6rem}h2{font-size:1.15rem;margin:2rem 0 .3rem}
        ul{list-style:none;margin:0;padding:0}li{padding:.45rem 0;border-bottom:1px solid #d9d2c3}
        a{color:#1d4f73;font-weight:600;text-underline-offset:.15em}span{display:block}
        @media(prefers-color-scheme:dark){body{color:#f1ede4;background:#1b1a18}a{color:#9cc9ea}li{border-color:#4a463e}}
        @media print{body{margin:0;color:#000;background:#fff}a{color:#000}}
        """;

    public static string Write(IReadOnlyList<Line> lines)
    {
        var page = new StringBuilder();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">");
        page.Append("<meta name=\"color-scheme\" content=\"light dark\"><title>Sheets</title>\n<style>").Append(Style).Append("</style></head>\n<body><main>\n<h1>Sheets</h1>\n");
        Group(page, "For couples", [.. lines.Where(l => l.Page.Reading.Score.Facts.ForCouples)]);
        Group(page, "Without a partner", [.. lines.Where(l => !l.Page.Reading.Score.Facts.ForCouples)]);
        return page.Append("</main></body></html>\n").ToString();
    }

    private static void Group(StringBuilder page, string heading, List<Line> lines)
    {
        if (lines.Count == 0) return;
        page.Append("<h2>").Append(heading).Append("</h2>\n<ul>\n");
        foreach (var line in lines.OrderBy(l => l.Page.Reading.Score.Title, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Address, StringComparer.Ordinal))
        {
            var title = line.Page.Reading.Score.Title is { Length: > 0 } named ? named : line.Page.Stem;
            var address = string.Join('/', line.Address.Split('/').Select(Uri.EscapeDataString));
            page.Append($"<li><a href=\"{WebUtility.HtmlEncode(address)}\">{WebUtility.HtmlEncode(title)}</a><span>{WebUtility.HtmlEncode(InShort(line.Page))}</span></li>\n");
        }

        page.Append("</ul>\n");
    }

    // "40 counts, 4 walls, beginner"
    private static string InShort(OnePage page)
    {
        var facts = page.Reading.Score.Facts;
        var words = new List<string> { Prose.Number(page.Reading.Score.Counts.Ceiling, "count") };
        if (Walls.Of(page.Reading) is { } walls) words.Add(Prose.Number(walls, "wall"));
        if (facts.Hold is { } hold) words.Add(hold);
        if (facts.Level is { } level) words.Add(level);
        return string.Join(", ", words);
    }
}
