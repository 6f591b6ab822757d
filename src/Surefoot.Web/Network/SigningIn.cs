using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;

namespace Surefoot.Web.Network;

/// <summary>
/// Who is signed in, by a cookie that only the browser itself sees. Everything that does not say otherwise is for
/// people who are: pages, what pages ask for, the line a page stays in touch by, files, and addresses that are nothing.
/// </summary>
internal static class SigningIn
{
    public const string Page = "/sign-in";

    /// <summary>How long somebody stays signed in without coming back, on a device that is theirs, and on one that is not. Working values: from one week's lesson to the next, and one evening.</summary>
    private static readonly TimeSpan Own = TimeSpan.FromDays(14), Borrowed = TimeSpan.FromHours(12);

    private const string Stamp = "stamp";

    public static void Add(IServiceCollection services)
    {
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie();
        services.AddOptions<CookieAuthenticationOptions>(CookieAuthenticationDefaults.AuthenticationScheme).Configure<Passphrase>((options, passphrase) =>
        {
            options.Cookie.Name = "surefoot";
            options.Cookie.HttpOnly = true;
            options.Cookie.SameSite = SameSiteMode.Strict;
            options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
            options.Cookie.Path = "/";
            options.CookieManager = new PrefixedCookies();
            options.ExpireTimeSpan = Own;
            options.SlidingExpiration = true;
            options.Events.OnRedirectToLogin = context => AskAsync(context.HttpContext);
            options.Events.OnValidatePrincipal = async context =>
            {
                // Signed in under another passphrase.
                if (context.Principal?.FindFirstValue(Stamp) is { Length: > 0 } stamp && stamp == passphrase.Stamp) return;
                context.RejectPrincipal();
                await context.HttpContext.SignOutAsync();
            };
        });
        services.AddAuthorizationBuilder().SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
    }

    /// <param name="own">The device is theirs: they stay signed in when the browser is closed.</param>
    public static Task InAsync(HttpContext context, Passphrase passphrase, bool own)
    {
        var who = new ClaimsIdentity([new(ClaimTypes.NameIdentifier, "hall"), new(Stamp, passphrase.Stamp ?? "")], CookieAuthenticationDefaults.AuthenticationScheme);
        var properties = new AuthenticationProperties { IsPersistent = own };
        if (!own) properties.ExpiresUtc = context.RequestServices.GetRequiredService<TimeProvider>().GetUtcNow() + Borrowed;
        return context.SignInAsync(new(who), properties);
    }

    /// <summary>Where somebody wanted to go, if it is a page of the studio that can be gone to.</summary>
    public static string Wanted(string? said) =>
        said is ['/', not ('/' or '\\'), ..] && !said.Any(char.IsControl) && !said.StartsWith(Page, StringComparison.OrdinalIgnoreCase) ? said : "/";

    // A window that goes somewhere is led to the sign-in; what a page asks for beside that is told in a word.
    private static Task AskAsync(HttpContext context)
    {
        var request = context.Request;
        var goes = request.Headers["Sec-Fetch-Mode"] is [{ } mode] ? mode == "navigate" : request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal);
        if (!goes || request.Headers["Sec-Fetch-Dest"] is ["iframe" or "frame" or "embed" or "object"])
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            context.Response.ContentType = "text/plain; charset=utf-8";
            return context.Response.WriteAsync("Please sign in.", context.RequestAborted);
        }

        var wanted = HttpMethods.IsGet(request.Method) ? Wanted(request.Path + request.QueryString) : "/";
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Redirect(wanted == "/" ? Page : $"{Page}?to={Uri.EscapeDataString(wanted)}");
        return Task.CompletedTask;
    }
}
