namespace Surefoot.Web.Live;

/// <summary>The sheet's own names for its tones, as the studio's looks have them (Client/styles/looks.css).</summary>
internal static class SheetTones
{
    private const string
        Light = "--ink:#23201b;--soft:#a39d91;--faint:#b9b2a5;--floor:#f1ece2;--paper:#fdfaf4;--quiet:#5f594e;--line:#d3cbbd",
        Dark = "--ink:#ece7dc;--soft:#8a8577;--faint:#6c675b;--floor:#2b2924;--paper:#1d1c19;--quiet:#b5ae9f;--line:#454138",
        Dim = "--ink:#ffc77d;--soft:#96703c;--faint:#7a5a2f;--floor:#1c140a;--paper:#0d0906;--quiet:#d9a35c;--line:#4a3518";

    /// <summary>For a sheet in one room; said twice, so that it holds whatever the machine itself prefers.</summary>
    public static string Of(string? look) => look switch
    {
        "dark" => $"@media screen{{:root:root{{{Dark};color-scheme:dark}}}}",
        "dim" => $"@media screen{{:root:root{{{Dim};color-scheme:dark}}}}",
        _ => $"@media screen{{:root:root{{{Light};color-scheme:light}}}}",
    };

    /// <summary>For a sheet that is a page of the studio; paper keeps its own.</summary>
    public static string ForScreens { get; } = $"@media screen{{:root:root{{{Light};color-scheme:light}}:root[data-look=dark]{{{Dark};color-scheme:dark}}:root[data-look=dim]{{{Dim};color-scheme:dark}}}}";
}
