using System.Net.Sockets;

namespace Surefoot.Web.Listing;

/// <summary>
/// Does once, as the studio starts, what the first person would wait for: code is made ready and the dances are read
/// while their browser is still opening.
/// </summary>
internal static class Warming
{
    public static async Task BeginAsync(string address, Shelving shelving)
    {
        await OpenShelfAsync(new(address));
        // With ten thousand dances the first search would wait for its index.
        await shelving.WarmAsync();
    }

    // Asked for as a browser does, so that all that a page passes through is warm; without the platform's own way of
    // asking, which would take longer to make ready than the page.
    private static async Task OpenShelfAsync(Uri address)
    {
        try
        {
            using var line = new TcpClient();
            await line.ConnectAsync(address.Host, address.Port);
            await using var stream = line.GetStream();
            await stream.WriteAsync(System.Text.Encoding.ASCII.GetBytes($"GET / HTTP/1.1\r\nHost: {address.Authority}\r\nConnection: close\r\n\r\n"));
            await stream.CopyToAsync(Stream.Null);
        }
        catch (Exception fault) when (fault is SocketException or IOException)
        {
            // The studio was closed again, or the machine lets no program talk to itself; then the first page is slower.
        }
    }
}
