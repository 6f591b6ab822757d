using System.Net;

namespace Surefoot.Web.Network;

/// <summary>Tells the machine's own screen from everybody else: only there the first passphrase is chosen.</summary>
internal static class OwnScreen
{
    public static bool Is(HttpContext context)
    {
        var line = context.Connection;
        if (line is not { RemoteIpAddress: { } from, LocalIpAddress: { } to } || !Loops(from) || !Loops(to)) return false;
        // Another program on this machine that passes on what strangers ask speaks from here but not for here.
        var headers = context.Request.Headers;
        return !headers.ContainsKey("Forwarded") && !headers.ContainsKey("Via") && !headers.Keys.Any(k => k.StartsWith("X-Forwarded-", StringComparison.OrdinalIgnoreCase) || k.Equals("X-Real-IP", StringComparison.OrdinalIgnoreCase));
    }

    private static bool Loops(IPAddress address) => IPAddress.IsLoopback(address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address);
}
