using System.Net;
using System.Text.RegularExpressions;

namespace Surefoot.Tests.Web;

/// <summary>Sends the studio's forms without a browser, as somebody who wants to do harm would.</summary>
internal sealed partial class Forms : IDisposable
{
    private readonly HttpClient _http = new(new HttpClientHandler { CookieContainer = new(), AllowAutoRedirect = true });
    private readonly string _address;

    public Forms(Studio studio) => _address = studio.Address;

    public async Task<string> PageAsync(string path) => WebUtility.HtmlDecode(await _http.GetStringAsync(_address + path));

    /// <summary>Sends a form that carries the token of a page; answers with the page it leads to.</summary>
    public async Task<string> SendAsync(string path, string pageOfToken, MultipartFormDataContent form, bool token = true)
    {
        using var answer = await PostAsync(path, pageOfToken, form, token);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    /// <summary>Sends a form and answers with the address it leads to.</summary>
    public async Task<string> LeadAsync(string path, string pageOfToken, MultipartFormDataContent form)
    {
        using var answer = await PostAsync(path, pageOfToken, form, token: true);
        return answer.RequestMessage!.RequestUri!.PathAndQuery;
    }

    private async Task<HttpResponseMessage> PostAsync(string path, string pageOfToken, MultipartFormDataContent form, bool token)
    {
        var page = await _http.GetStringAsync(_address + pageOfToken);
        if (token) form.Add(new StringContent(Token().Match(page).Groups[1].Value), "__RequestVerificationToken");
        return await _http.PostAsync(_address + path, form);
    }

    public void Dispose() => _http.Dispose();

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
