using System.Text;
using System.Text.Encodings.Web;

namespace Surefoot.Web.Network;

/// <summary>A page of one sentence, for whoever has to be told something before they may see more.</summary>
internal static class PlainPage
{
    public static Task WriteAsync(HttpContext context, int status, string title, string says, (string To, string Words)? way = null)
    {
        var html = HtmlEncoder.Default;
        var link = way is { } on ? $"<p><a class=\"button main\" href=\"{html.Encode(on.To)}\">{html.Encode(on.Words)}</a></p>" : "";
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en" data-look="light">
            <head>
              <meta charset="utf-8" />
              <meta name="viewport" content="width=device-width, initial-scale=1" />
              <title>{html.Encode(title)} - Surefoot</title>
              <link rel="icon" href="/mark.svg" type="image/svg+xml" />
              <link rel="stylesheet" href="/dist/studio.css" />
              <script src="/dist/look.js"></script>
            </head>
            <body>
              <main class="room door">
                <div class="card">
                  <h1>{html.Encode(title)}</h1>
                  <p>{html.Encode(says)}</p>
                  {link}
                </div>
              </main>
            </body>
            </html>
            """,
            Encoding.UTF8,
            context.RequestAborted);
    }
}
