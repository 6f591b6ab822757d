using System.Security.Cryptography;
using System.Text;
using Surefoot.Dance.Problems;
using Surefoot.Draw;
using Surefoot.Web.Listing;
using Surefoot.Web.Printing;

namespace Surefoot.Web.Live;

/// <summary>The sheet as it would be handed out, in the tones of the room it is looked at in.</summary>
internal static class SheetPage
{
    /// <param name="doubts">How many errors there are in the eyes of the browser, which sees the writer; null: as whoever gets the page finds them.</param>
    public static async Task Write(HttpContext context, Desk desk, string? look, int? doubts)
    {
        var reading = desk.Reading;
        var options = HallSheet.Of(desk.Settings) with
        {
            // Somebody sits before this one and may be writing; what is printed to be handed out counts it as a fault.
            Doubts = Math.Max(0, doubts ?? reading.Problems.Count(p => p.Severity == Severity.Error)),
            DoubtsAt = "the problems beside this sheet say why",
            SoFar = reading.Problems.FirstOrDefault(p => p is { Severity: Severity.Error, Unfinished.While: not Writing.Typed })?.Unfinished?.Says is { } says ? HallRoles.In(says, desk.Settings) : "",
        };
        var sheet = HtmlSheet.Write(reading.Score, reading.Motion, options, reading.Couple);
        sheet = sheet.Replace("</head>", $"<style>{SheetTones.Of(look)}</style></head>", StringComparison.Ordinal);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        // Nothing on a sheet acts or loads; only its own styles, known by their fingerprints, count.
        context.Response.Headers.ContentSecurityPolicy = $"default-src 'none'; style-src {string.Join(' ', Styles(sheet))}; sandbox; frame-ancestors 'self'";
        await context.Response.WriteAsync(sheet, context.RequestAborted);
    }

    /// <summary>The fingerprints of the styles in a sheet, as a policy names them.</summary>
    public static IEnumerable<string> Styles(string sheet)
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
