using System.Text;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Feet;
using Surefoot.Draw.Sheet.Html;
using Surefoot.Draw.Sheet.Plan;

namespace Surefoot.Draw;

/// <summary>The sheet to hand out: one HTML file with everything in it, for the printer and for a telephone.</summary>
public static class HtmlSheet
{
    /// <param name="couple">How the couple was solved, for what the page leaves unsaid of hands; null prints the page's words alone.</param>
    public static string Write(DanceScore score, DanceMotion motion, SheetOptions options, CoupleSolution? couple = null)
    {
        var plan = SheetPlan.Of(score, options, couple);
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">")
            .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">")
            .Append("<meta name=\"color-scheme\" content=\"light dark\">")
            .Append($"<title>{Svg.Escape(plan.Title)}</title>\n")
            .Append($"<style>{HtmlStyle.Of(SheetFit.TypeSize(plan, options), options.Paper)}</style></head>\n<body><main>\n")
            .Append($"<h1>{Svg.Escape(plan.Title)}</h1>\n");
        if (plan.Doubt.Length > 0) text.Append($"<p class=\"doubt\">{Svg.Escape(plan.Doubt)}</p>\n");
        text.Append($"<p class=\"opening\">{Svg.Escape(plan.Opening)}</p>\n");
        if (plan.Order.Length > 0) text.Append($"<p class=\"order\">{Svg.Escape(plan.Order)}</p>\n");
        foreach (var note in plan.Notes) text.Append($"<p class=\"note\">{Svg.Escape(note)}</p>\n");
        text.Append("<div class=\"parts\">\n");
        foreach (var part in plan.Parts) text.Append(PartMarkup.Of(part, plan.Names, plan.HasSides));
        text.Append("</div>\n");
        if (plan.Key.Length > 0) text.Append($"<p class=\"key ours\">{PartMarkup.Marked(plan.Key)}</p>\n");
        text.Append($"<p class=\"care\">{Svg.Escape(plan.Care)}</p>\n");
        text.Append($"<footer>{SheetPlan.MadeWith}</footer>\n");
        if (options.Pictures) text.Append(SheetPictures.Of(score, motion, plan, options));
        return text.Append("</main></body></html>\n").ToString();
    }
}
