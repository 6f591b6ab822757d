using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Hosting.Server;
using Surefoot.Web.Deeds;

namespace Surefoot.Web.Network;

/// <summary>What is sent at the door: signing in and out, and choosing the passphrase.</summary>
internal static class DoorDeeds
{
    /// <summary>Bytes of a form at the door: two passphrases of the longest kind, written as numbers, and the page's token.</summary>
    public const int MostBytes = 16 << 10;

    public static void MapDoor(this WebApplication app)
    {
        Form("/door/in", SignIn, SigningIn.Page).RequireRateLimiting(Limits.Door).WithMetadata(new AllowAnonymousAttribute());
        Form(NotYet.Deed, First, NotYet.Page).RequireRateLimiting(Limits.Door).WithMetadata(new AllowAnonymousAttribute());
        Form("/door/change", Change, "/settings").RequireRateLimiting(Limits.Door);
        Form("/door/out", SignOut, "/settings");

        // Whoever stands there may be anybody, so nothing too large is even heard.
        RouteHandlerBuilder Form(string path, Delegate deed, string page) => app.MapGroup("").Guarded(_ => page, formBytes: MostBytes, grace: 0).MapPost(path, deed);
    }

    private static async Task<IResult> SignIn(HttpContext context, Passphrase passphrase, Tries tries, Notes notes)
    {
        var form = context.Request.Form;
        var wanted = SigningIn.Wanted(form["to"]);
        if (tries.Begin(context.Connection.RemoteIpAddress) is { Ticks: > 0 } wait) return new Waiting(wait);
        if (!passphrase.Is(form["passphrase"].ToString()))
        {
            return notes.Say(wanted == "/" ? SigningIn.Page : $"{SigningIn.Page}?to={Uri.EscapeDataString(wanted)}", new("That is not the passphrase. Capitals and spaces count.", Bad: true));
        }

        tries.Right(context.Connection.RemoteIpAddress);
        await SigningIn.InAsync(context, passphrase, own: form["own"] == "yes");
        return ShelfDeeds.To(wanted);
    }

    private static async Task<IResult> First(HttpContext context, Passphrase passphrase, Notes notes, IServer server)
    {
        if (!OwnScreen.Is(context) || !passphrase.IsMissing) return ShelfDeeds.To(SigningIn.Page);
        var form = context.Request.Form;
        var chosen = form["new"].ToString();
        if (PassphraseRules.Fault(chosen, form["again"].ToString()) is { } fault) return notes.Say(NotYet.Page, new(fault, Bad: true));
        if (!passphrase.SetFirst(chosen)) return ShelfDeeds.To(SigningIn.Page);
        await SigningIn.InAsync(context, passphrase, own: true);
        var way = Studio.NetworkPort(server) is { } port && Reach.WebAddresses(port).FirstOrDefault() is { } address ? $" at {address}" : "";
        return notes.Say("/settings", new($"The passphrase is kept. Others in the hall can come in with it now{way}."));
    }

    private static async Task<IResult> Change(HttpContext context, Passphrase passphrase, Tries tries, Notes notes)
    {
        var form = context.Request.Form;
        if (tries.Begin(context.Connection.RemoteIpAddress) is { Ticks: > 0 } wait) return new Waiting(wait);
        if (!passphrase.Is(form["now"].ToString())) return notes.Say("/settings", new("That is not the present passphrase. Nothing was changed.", Bad: true));
        tries.Right(context.Connection.RemoteIpAddress);
        var chosen = form["new"].ToString();
        if (PassphraseRules.Fault(chosen, form["again"].ToString()) is { } fault) return notes.Say("/settings", new($"{fault} Nothing was changed.", Bad: true));
        var own = (await context.AuthenticateAsync()).Properties?.IsPersistent ?? false;
        passphrase.Set(chosen);
        await SigningIn.InAsync(context, passphrase, own);
        return notes.Say("/settings", new("The new passphrase holds. Everybody else is asked for it now."));
    }

    private static async Task<IResult> SignOut(HttpContext context)
    {
        await context.SignOutAsync();
        return ShelfDeeds.To(SigningIn.Page);
    }

    private sealed class Waiting(TimeSpan wait) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext) => Limits.TooOften(httpContext, wait);
    }
}
