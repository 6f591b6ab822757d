using System.Security.Cryptography;
using System.Text;
using Surefoot.Dance.Problems;
using Surefoot.Draw;
using Surefoot.Web.Printing;

namespace Surefoot.Web.Live;

/// <summary>The sheet as it would be handed out, in the tones of the room it is looked at in.</summary>
internal static class SheetPage
{
    public static async Task Write(HttpContext context, Desk desk, string? look)
    {
        var reading = desk.Reading;
        var options = HallSheet.Of(desk.Settings) with
        {
            // Somebody sits before this one and may be writing; what is printed to be handed out counts it as a fault.
            Doubts = reading.Problems.Count(p => p.Severity == Severity.Error && p.Unfinished is null),
            DoubtsAt = "the problems beside this sheet say why",
            SoFar = reading.Problems.FirstOrDefault(p => p.Unfinished is not null)?.Unfinished?.Says ?? "",
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
