using System.Globalization;
using System.Text;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Draw.Calls;
using Surefoot.Draw.Feet;
using Surefoot.Draw.Sheet.Plan;

namespace Surefoot.Draw;

/// <summary>
/// The printed call sheet: an 8 is one line of counts, over it what is called on them, under it what is danced meanwhile. One HTML file
/// with everything in it.
/// </summary>
public static class CallHtml
{
    // Letters of a call that a column of a count has room for, in usual and in large print. Measured on paper.
    private const double Letters = 6.2, LettersLarge = 4.6;

    // A call in smaller type than this share is not read at arm's length: then it is broken instead.
    private const double Smallest = 0.7;

    public static string Write(Reading reading, SheetOptions options)
    {
        var plan = CallPlan.Of(reading, options);
        var most = plan.Bands.Select(b => b.Counts.Count).DefaultIfEmpty(8).Max();
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">")
            .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><meta name=\"color-scheme\" content=\"light dark\">")
            .Append($"<title>{Svg.Escape(plan.Title)}</title>\n<style>{CallStyle.Of(options)}</style></head>\n<body><main>\n<h1>{Svg.Escape(plan.Title)}</h1>\n");
        if (plan.Doubt.Length > 0) text.Append($"<p class=\"doubt\">{Svg.Escape(plan.Doubt)}</p>\n");
        text.Append($"<p class=\"opening\">{Svg.Escape(plan.Opening)}</p>\n");
        var letters = (options.LargePrint ? LettersLarge : Letters) * 8 / most;
        foreach (var band in plan.Bands) Band(text, band, plan, most, letters);
        foreach (var once in plan.Once) text.Append($"<p class=\"once\">{Svg.Escape(once)}</p>\n");
        return text.Append($"<footer>{SheetPlan.MadeWith}</footer>\n</main></body></html>\n").ToString();
    }

    private static void Band(StringBuilder text, CallBand band, CallPlan plan, int most, double letters)
    {
        if (band.Heading.Length > 0) text.Append($"<h2>{Svg.Escape(band.Heading)}{(band.Name.Length > 0 ? $" <span>{Svg.Escape(band.Name)}</span>" : "")}</h2>\n");
        var counts = band.Counts.Count;
        // A short band leaves its other counts empty, so that all counts of a sheet are alike.
        text.Append($"<table><caption class=\"unseen\">Counts {band.Counts[0]} to {band.Counts[^1]}</caption>");
        text.Append("<colgroup><col class=\"who\">").Append(string.Concat(Enumerable.Repeat("<col>", most))).Append("</colgroup><tbody>\n");
        foreach (var lane in Lanes(band.Calls)) Lane(text, "call", Who(lane, plan, "call"), band.Calls.Where(c => c.Role == lane), counts, most, letters);
        text.Append("<tr class=\"counts\"><td></td>");
        foreach (var count in band.Counts) text.Append($"<th scope=\"col\">{count}</th>");
        text.Append(Rest(most - counts)).Append("</tr>\n");
        foreach (var lane in Lanes(band.Danced)) Lane(text, "danced", Who(lane, plan, "step"), band.Danced.Where(c => c.Role == lane), counts, most, double.PositiveInfinity);
        text.Append("</tbody></table>\n");
    }

    private static IEnumerable<Role?> Lanes(IReadOnlyList<CallCell> cells) => cells.Select(c => c.Role).Distinct().OrderBy(r => r is null ? -1 : (int)r);

    private static string Who(Role? role, CallPlan plan, string plain) => role is { } one && one != Role.Dancer ? plan.Names.Bare(one) : plain;

    private static void Lane(StringBuilder text, string kind, string who, IEnumerable<CallCell> cells, int counts, int most, double letters)
    {
        text.Append($"<tr class=\"{kind}\"><th scope=\"row\">{Svg.Escape(who)}</th>");
        var at = 0;
        foreach (var cell in cells.OrderBy(c => c.At))
        {
            if (cell.At < at) continue;
            if (cell.At > at) text.Append($"<td colspan=\"{cell.At - at}\"></td>");
            text.Append($"<td class=\"said\" colspan=\"{cell.Length}\"><b{Smaller(cell, letters)}>{Svg.Escape(cell.Words)}</b></td>");
            at = cell.At + cell.Length;
        }

        if (at < counts) text.Append($"<td colspan=\"{counts - at}\"></td>");
        text.Append(Rest(most - counts)).Append("</tr>\n");
    }

    // A long word on a single count stands in smaller type rather than broken.
    private static string Smaller(CallCell cell, double letters)
    {
        var share = letters * cell.Length / cell.Words.Split(' ').Max(w => w.Length);
        return share is >= 1 or < Smallest ? "" : string.Create(CultureInfo.InvariantCulture, $" style=\"font-size:{share:0.##}em\"");
    }

    private static string Rest(int columns) => columns <= 0 ? "" : $"<td class=\"rest\" colspan=\"{columns}\"></td>";
}
