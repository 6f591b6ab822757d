using System.Net;
using Surefoot.Draw;

namespace Surefoot.Lessons.Sheets;

/// <summary>What lesson sheets and the overview have in common: paper, type and tones.</summary>
internal static class PrintedPage
{
    public const string Foot = "<footer>made with Surefoot</footer>\n</main></body></html>\n";

    public static string Head(string title, SheetOptions options, string rules)
    {
        var paper = options.Paper == PaperSize.Letter ? "letter" : "A4";
        var size = options.LargePrint ? "16pt" : "10.5pt";
        return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">"
            + $"<meta name=\"color-scheme\" content=\"light dark\"><title>{WebUtility.HtmlEncode(title)}</title>\n"
            + $"<style>@page{{size:{paper};margin:13mm 14mm}}:root{{--type:{size}}}{Rules}{rules}</style></head>\n<body><main>\n";
    }

    private static readonly string Rules = """
        :root{--ink:#1c1b19;--soft:#a3a19b;--paper:#fff;--quiet:#5f5c55;--line:#cbc7bd;
        --book:Charter,"Iowan Old Style","Palatino Linotype",Palatino,Georgia,"Liberation Serif",serif;
        --plain:system-ui,"Segoe UI",Roboto,"Helvetica Neue","Liberation Sans",sans-serif}
        *{box-sizing:border-box}
        html{background:var(--paper);color:var(--ink);-webkit-text-size-adjust:100%}
        body{margin:0;font:var(--type)/1.32 var(--plain)}
        main{max-width:190mm;margin:0 auto}
        h1{font:600 1.8em/1.1 var(--book);margin:0 0 .3em}
        .opening{font:1.08em/1.42 var(--book);margin:0 0 .5em;max-width:60em}
        .care{font:.94em/1.4 var(--book);margin:0 0 .6em;border-top:.75pt solid var(--line);padding-top:.5em;break-inside:avoid}
        footer{font-size:.72em;color:var(--quiet);text-align:right}
        @media screen{body{font-size:max(var(--type),16px);padding:1.2rem 1rem 2rem}}
        @media screen and (prefers-color-scheme:dark){:root{--ink:#f1eee6;--soft:#85827b;--paper:#191817;--quiet:#b3afa5;--line:#47443f}}
        """.ReplaceLineEndings("");
}
