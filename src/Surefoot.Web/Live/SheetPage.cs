using System.Security.Cryptography;
using System.Text;
using Surefoot.Dance.Problems;
using Surefoot.Draw;

namespace Surefoot.Web.Live;

/// <summary>The sheet as it would be handed out, in the tones of the room it is looked at in.</summary>
internal static class SheetPage
{
    // The sheet's own names for its tones, as the studio's looks have them (Client/styles/looks.css).
    private const string
        Light = "--ink:#23201b;--soft:#a39d91;--faint:#b9b2a5;--floor:#f1ece2;--paper:#fdfaf4;--quiet:#5f594e;--line:#d3cbbd",
        Dark = "--ink:#ece7dc;--soft:#8a8577;--faint:#6c675b;--floor:#2b2924;--paper:#1d1c19;--quiet:#b5ae9f;--line:#454138",
        Dim = "--ink:#ffc77d;--soft:#96703c;--faint:#7a5a2f;--floor:#1c140a;--paper:#0d0906;--quiet:#d9a35c;--line:#4a3518";

    public static async Task Write(HttpContext context, Desk desk, string? look)
    {
        var tones = look switch { "dark" => Dark, "dim" => Dim, _ => Light };
        var reading = desk.Reading;
        var options = new SheetOptions
        {
            LeadWord = desk.Settings.LeadWord,
            FollowWord = desk.Settings.FollowWord,
            Doubts = reading.Problems.Count(p => p.Severity == Severity.Error),
        };
        var sheet = HtmlSheet.Write(reading.Score, reading.Motion, options, reading.Couple);
        // Said twice, so that it holds whatever the machine itself prefers.
        sheet = sheet.Replace("</head>", $"<style>@media screen{{:root:root{{{tones};color-scheme:{(look is "dark" or "dim" ? "dark" : "light")}}}}}</style></head>", StringComparison.Ordinal);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        // Nothing on a sheet acts or loads; only its own styles, known by their fingerprints, count.
        context.Response.Headers.ContentSecurityPolicy = $"default-src 'none'; style-src {string.Join(' ', Styles(sheet))}; sandbox; frame-ancestors 'self'";
        await context.Response.WriteAsync(sheet, context.RequestAborted);
    }

    private static IEnumerable<string> Styles(string sheet)
    {
        const string open = "<style>", close = "</style>";
        for (var at = sheet.IndexOf(open, StringComparison.Ordinal); at >= 0; at = sheet.IndexOf(open, at, StringComparison.Ordinal))
        {
            at += open.Length;
            var style = sheet[at..sheet.IndexOf(close, at, StringComparison.Ordinal)];
            yield return $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'";
        }
    }
}
