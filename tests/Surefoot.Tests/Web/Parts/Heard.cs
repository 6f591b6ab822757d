using AngleSharp.Dom;

namespace Surefoot.Tests.Web.Parts;

/// <summary>What somebody who listens to a page is offered: each part's role and name, as the platform gives them (HTML-AAM, for what the studio uses).</summary>
internal static class Heard
{
    /// <summary>Everything that has a role, in order: "link Split Rail Cha-Cha", "button Copy".</summary>
    public static List<string> In(IEnumerable<IElement> elements) =>
        [.. elements.Where(e => !IsSilent(e)).Select(e => (Role: Role(e), Element: e)).Where(p => p.Role.Length > 0).Select(p => $"{p.Role} {Name(p.Element)}".TrimEnd())];

    /// <summary>The name: what is said of it, its label, or its words.</summary>
    public static string Name(IElement element)
    {
        if (element.GetAttribute("aria-label") is { } said) return said;
        if (element.GetAttribute("aria-labelledby") is { } by) return string.Join(' ', by.Split(' ').Select(id => Words(element.Owner!.QuerySelector("#" + id)!)));
        return element.LocalName switch
        {
            "input" or "select" or "textarea" => Label(element),
            "fieldset" => Words(element.QuerySelector("legend")!),
            "table" => Words(element.QuerySelector("caption")!),
            "form" or "ul" or "ol" or "nav" or "section" or "details" or "progress" => "",
            _ => Words(element),
        };
    }

    /// <summary>The words of an element as they are read, without what is only seen.</summary>
    public static string Words(INode node)
    {
        if (node is IText text) return Squeezed(text.Data);
        if (node is IElement element && (IsSilent(element) || element.LocalName is "select" or "option")) return "";
        return Squeezed(string.Join(' ', node.ChildNodes.Select(Words)));
    }

    private static string Label(IElement field)
    {
        if (field.Id is { } id && field.Owner!.QuerySelector($"label[for='{id}']") is { } beside) return Words(beside);
        return field.Closest("label") is { } around ? Words(around) : "";
    }

    private static string Role(IElement element) => element.GetAttribute("role") ?? element.LocalName switch
    {
        "a" when element.HasAttribute("href") => "link",
        "button" => "button",
        "summary" => "disclosure",
        "h1" or "h2" or "h3" => "heading",
        "select" => "choice",
        "textarea" => "text field",
        "input" => element.GetAttribute("type") switch
        {
            "search" => "search field",
            "radio" => "radio button",
            "checkbox" => "tick box",
            "number" => "number field",
            "file" => "file chooser",
            _ => "text field",
        },
        "fieldset" => "group",
        "table" => "table",
        "nav" => "navigation",
        "progress" => "progress",
        _ => "",
    };

    private static bool IsSilent(IElement element) =>
        element.Closest("[aria-hidden=true]") is not null || element.Closest("[hidden]") is not null || element.GetAttribute("type") == "hidden";

    private static string Squeezed(string words) => string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
