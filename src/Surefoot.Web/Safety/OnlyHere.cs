using System.Net;
using Surefoot.Web.Network;

namespace Surefoot.Web.Safety;

/// <summary>
/// Answers only to browsers that ask for this machine by a name it has, and were led here by the studio's own pages:
/// a page from elsewhere could otherwise ask for a notebook under a name of its own that it points at this machine.
/// </summary>
internal sealed class OnlyHere(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        if (IsOurs(context.Request) && (context.Request.Headers.Origin is not [{ } origin] || origin == $"{context.Request.Scheme}://{context.Request.Host}")) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }

    private static bool IsOurs(HttpRequest request)
    {
        var host = request.Host.Host;
        var address = IPAddress.TryParse(host.Trim('[', ']'), out var number) ? number : null;
        if (host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (address is not null && IPAddress.IsLoopback(address))) return true;
        // Only the network's line is encrypted. A number is nobody's to point elsewhere, so any will do: a hall's router may show another than the machine's.
        return request.IsHttps && (address is not null || Reach.Names.Contains(host.TrimEnd('.'), StringComparer.OrdinalIgnoreCase));
    }
}
