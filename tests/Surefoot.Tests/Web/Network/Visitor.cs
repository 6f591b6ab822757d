using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Surefoot.Tests.Web.Network;

/// <summary>Somebody with a browser of their own: cookies, no redirects followed, and an eye on the certificate, which has to be the one the console names.</summary>
internal sealed partial class Visitor : IDisposable
{
    private readonly SocketsHttpHandler _handler;
    private readonly string _fingerprint;

    public Visitor(string address, IPAddress? from, string consoleSaid)
    {
        Address = address;
        _fingerprint = string.Concat(Pairs().Matches(consoleSaid).Select(m => m.Value)).Replace(" ", "");
        _handler = new()
        {
            AllowAutoRedirect = false,
            CookieContainer = Cookies,
            SslOptions = { RemoteCertificateValidationCallback = (_, certificate, _, _) => Known(certificate) },
            ConnectCallback = async (context, stop) =>
            {
                var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
                if (from is not null) socket.Bind(new IPEndPoint(from.MapToIPv6(), 0));
                await socket.ConnectAsync(context.DnsEndPoint, stop);
                return new NetworkStream(socket, ownsSocket: true);
            },
        };
        Http = new(_handler) { BaseAddress = new(address) };
    }

    public string Address { get; }

    public CookieContainer Cookies { get; } = new();

    public HttpClient Http { get; }

    private bool Known(System.Security.Cryptography.X509Certificates.X509Certificate? certificate) =>
        certificate?.GetCertHashString(System.Security.Cryptography.HashAlgorithmName.SHA256) == _fingerprint;

    /// <summary>A page as a browser's window asks for it.</summary>
    public async Task<HttpResponseMessage> GoAsync(string path)
    {
        using var asked = new HttpRequestMessage(HttpMethod.Get, path);
        asked.Headers.Add("Accept", "text/html");
        asked.Headers.Add("Sec-Fetch-Mode", "navigate");
        return await Http.SendAsync(asked);
    }

    public async Task<string> ReadAsync(string path)
    {
        using var answer = await GoAsync(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    /// <summary>Sends a form of a page, with the page's token.</summary>
    public async Task<HttpResponseMessage> SendAsync(string page, string path, params (string Name, string Value)[] fields)
    {
        return await PostAsync(path, [.. fields, ("__RequestVerificationToken", await TokenAsync(page))]);
    }

    /// <summary>What a page's forms carry, so that no other page can send them.</summary>
    public async Task<string> TokenAsync(string page) => Token().Match(await ReadAsync(page)).Groups[1].Value;

    public async Task<HttpResponseMessage> PostAsync(string path, params (string Name, string Value)[] fields)
    {
        using var form = new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value)));
        using var asked = new HttpRequestMessage(HttpMethod.Post, path) { Content = form };
        asked.Headers.Add("Origin", Address);
        asked.Headers.Add("Sec-Fetch-Mode", "navigate");
        return await Http.SendAsync(asked);
    }

    public Task<HttpResponseMessage> SignInAsync(string passphrase, bool own = false) =>
        SendAsync("/sign-in", "/door/in", [("passphrase", passphrase), .. own ? [("own", "yes")] : Array.Empty<(string, string)>()]);

    /// <summary>What the page says to which an answer leads.</summary>
    public async Task<string> ToldAsync(HttpResponseMessage answer)
    {
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return await ReadAsync(answer.Headers.Location!.OriginalString);
    }

    public async Task<bool> IsInAsync()
    {
        using var answer = await GoAsync("/");
        return answer.StatusCode == HttpStatusCode.OK;
    }

    /// <summary>The line by which a page stays in touch with the studio.</summary>
    public async Task<ClientWebSocket> CallAsync()
    {
        using var negotiated = await Http.PostAsync("/_blazor/negotiate?negotiateVersion=1", null);
        negotiated.EnsureSuccessStatusCode();
        using var told = JsonDocument.Parse(await negotiated.Content.ReadAsStringAsync());
        return await LineAsync($"?id={told.RootElement.GetProperty("connectionToken").GetString()}");
    }

    public async Task<ClientWebSocket> LineAsync(string query)
    {
        var line = new ClientWebSocket();
        line.Options.Cookies = Cookies;
        line.Options.RemoteCertificateValidationCallback = (_, certificate, _, _) => Known(certificate);
        await line.ConnectAsync(new(Address.Replace("http", "ws", StringComparison.Ordinal) + "/_blazor" + query), CancellationToken.None);
        return line;
    }

    public void Dispose()
    {
        Http.Dispose();
        _handler.Dispose();
    }

    [GeneratedRegex("(?:[0-9A-F]{2} ){15}[0-9A-F]{2}")]
    private static partial Regex Pairs();

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
