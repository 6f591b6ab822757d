using System.Net;
using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Library;

namespace Surefoot.Web.Printing;

/// <summary>The line above a sheet on the screen, where one chooses how it is printed. Paper does not have it.</summary>
internal static class PrintBar
{
    /// <param name="says">Which text of the page it is: "version 4, the page now", "a draft".</param>
    /// <param name="draft">A draft that says something else than the page, or null.</param>
    public static string Of(PageInfo page, string title, PrintChoice choice, NotebookSettings settings, bool forCouples, IReadOnlyList<(string Name, string Value)> which, string says, string? draft)
    {
        var bar = new StringBuilder("<header class=\"print-bar\"><a class=\"home\" href=\"/dance/").Append(page.Id).Append("\">Back to ").Append(WebUtility.HtmlEncode(title)).Append("</a>");
        bar.Append($"<p class=\"which\">This is {WebUtility.HtmlEncode(says)}.");
        var form = new StringBuilder();
        var chosen = new StringBuilder();
        foreach (var (name, value) in which) form.Append($"<input type=\"hidden\" name=\"{name}\" value=\"{WebUtility.HtmlEncode(value)}\">");
        Select(form, chosen, "Sheet", "sheet", choice.Calls ? "calls" : "", ("", "steps"), ("calls", "calls"));
        Select(form, chosen, "Type", "type", choice.Large ? "large" : "", ("", "usual"), ("large", "large"));
        // Calls are words of their own and have no pictures.
        if (!choice.Calls) Select(form, chosen, "Words", "words", choice.FeetOnly ? "feet" : "", ("", "as written"), ("feet", "feet only"));
        if (forCouples) Select(form, chosen, "For", "role", choice.Only switch { Role.Lead => "lead", Role.Follow => "follow", _ => "" }, ("", "both"), ("lead", settings.LeadWord), ("follow", settings.FollowWord));
        // What is usual here stays out of the address.
        string Paper(PaperSize paper) => paper == HallSheet.PaperOf(settings) ? "" : paper == PaperSize.Letter ? "letter" : "a4";
        Select(form, chosen, "Paper", "paper", Paper(choice.Paper), (Paper(PaperSize.A4), "A4"), (Paper(PaperSize.Letter), "US Letter"));
        if (!choice.Calls) Select(form, chosen, "Pictures", "pictures", choice.Pictures ? "" : "none", ("", "with"), ("none", "without"));
        // Whoever goes over to the draft goes on with what was chosen here.
        if (draft is not null) bar.Append($" There is a draft that nobody kept: <a href=\"?draft={Uri.EscapeDataString(draft)}{chosen}\">print that</a>.");
        if (choice.Calls) bar.Append($" <a href=\"/dance/{page.Id}/calls\">Change the calls</a>.");
        bar.Append("</p><form method=\"get\">").Append(form);
        return bar.Append("<button type=\"submit\" data-show>Show</button></form><button type=\"button\" class=\"primary\" data-print>Print</button></header>").ToString();
    }

    private static void Select(StringBuilder form, StringBuilder all, string label, string name, string chosen, params (string Value, string Words)[] choices)
    {
        if (chosen.Length > 0) all.Append($"&amp;{name}={chosen}");
        form.Append($"<label>{label} <select name=\"{name}\">");
        foreach (var (value, words) in choices) form.Append($"<option value=\"{value}\"{(value == chosen ? " selected" : "")}>{WebUtility.HtmlEncode(words)}</option>");
        form.Append("</select></label>");
    }
}
