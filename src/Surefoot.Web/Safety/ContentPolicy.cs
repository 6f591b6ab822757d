namespace Surefoot.Web.Safety;

/// <summary>
/// Tells the browser what a page may load: our own files and nothing else, no script and no style written into
/// the page. So text from a dance could not act even if it became markup.
/// </summary>
internal sealed class ContentPolicy(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context, Nonce nonce)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy =
            $"default-src 'none'; script-src 'self'; style-src 'self' 'nonce-{nonce.Value}'; img-src 'self' data:; font-src 'self'; "
            + "connect-src 'self'; frame-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    }

    /// <summary>
    /// Lets the page that is being made play films, which no other page may: files of the reader's own device, which the
    /// browser hands to it, captions of the studio's, and, where an address was kept, what lies at addresses of the web.
    /// </summary>
    public static void LetFilmsPlay(HttpContext context, bool fromTheWeb)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = $"{headers.ContentSecurityPolicy}; media-src 'self' blob:{(fromTheWeb ? " https:" : "")}";
    }
}
