using System.Net;

namespace Surefoot.Web.Safety;

/// <summary>
/// Answers only to browsers on this machine that were led here by the studio's own pages: a page from elsewhere
/// could otherwise ask for a notebook under a name of its own that it points at this machine.
/// </summary>
internal sealed class OnlyHere(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        var host = context.Request.Host.Host;
        var here = host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));
        if (here && (context.Request.Headers.Origin is not [{ } origin] || origin == $"{context.Request.Scheme}://{context.Request.Host}")) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }
}
