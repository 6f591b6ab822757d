using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Surefoot.Web.Network;

/// <summary>By which addresses and names others in the hall can reach this machine.</summary>
internal static class Reach
{
    public static string MachineName { get; } = Plain(Environment.MachineName) is { Length: > 0 } name ? name : "this-machine";

    /// <summary>The machine's name, as itself, as small networks without a name server know it (".local"), and with its domain where it has one.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. new[] { MachineName, MachineName + ".local", Domain() is { Length: > 0 } domain ? $"{MachineName}.{domain}" : MachineName }.Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Addresses of this machine in its networks; those that lead further (a router is there) first, the short kind before the long one.</summary>
    public static IReadOnlyList<IPAddress> Addresses()
    {
        try
        {
            return
            [
                .. from network in NetworkInterface.GetAllNetworkInterfaces()
                   where network.OperationalStatus is not OperationalStatus.Down && network.NetworkInterfaceType is not NetworkInterfaceType.Loopback
                   let properties = network.GetIPProperties()
                   let leads = properties.GatewayAddresses.Any(g => !g.Address.Equals(IPAddress.Any))
                   from one in properties.UnicastAddresses
                   where !IPAddress.IsLoopback(one.Address) && !one.Address.IsIPv6LinkLocal
                   orderby leads descending, one.Address.AddressFamily
                   select one.Address,
            ];
        }
        catch (NetworkInformationException)
        {
            return [];
        }
    }

    /// <summary>Web addresses to write down, at most as many as anybody reads.</summary>
    public static IEnumerable<string> WebAddresses(int port)
    {
        var all = Addresses();
        var shown = all.Any(a => a.AddressFamily is AddressFamily.InterNetwork) ? all.Where(a => a.AddressFamily is AddressFamily.InterNetwork) : all;
        return shown.Take(3).Select(a => $"https://{new IPEndPoint(a, port)}");
    }

    // What a host name may be made of; anything else would make no certificate and no address.
    private static string Plain(string name) => string.Concat(name.Where(c => char.IsAsciiLetterOrDigit(c) || c == '-')).Trim('-').ToLowerInvariant();

    private static string Domain()
    {
        try
        {
            return string.Join('.', IPGlobalProperties.GetIPGlobalProperties().DomainName.Split('.').Select(Plain).Where(p => p.Length > 0));
        }
        catch (NetworkInformationException)
        {
            return "";
        }
    }
}
