using Microsoft.AspNetCore.Authentication.Cookies;

namespace Surefoot.Web.Network;

/// <summary>
/// Puts "__Host-" before the sign-in cookie's name where the line is encrypted: browsers then take it only from this
/// very machine, encrypted, for all of its pages. The own screen's line is not (it never leaves the machine), and
/// browsers would refuse that name there.
/// </summary>
internal sealed class PrefixedCookies : ICookieManager
{
    private readonly ChunkingCookieManager _cookies = new();

    public string? GetRequestCookie(HttpContext context, string key) => _cookies.GetRequestCookie(context, Named(context, key));

    public void AppendResponseCookie(HttpContext context, string key, string? value, CookieOptions options) => _cookies.AppendResponseCookie(context, Named(context, key), value, options);

    public void DeleteCookie(HttpContext context, string key, CookieOptions options) => _cookies.DeleteCookie(context, Named(context, key), options);

    private static string Named(HttpContext context, string key) => context.Request.IsHttps ? "__Host-" + key : key;
}
