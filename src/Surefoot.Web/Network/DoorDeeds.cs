using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Mvc;
using Surefoot.Web.Deeds;

namespace Surefoot.Web.Network;

/// <summary>What is sent at the door: signing in and out, and choosing the passphrase.</summary>
internal static class DoorDeeds
{
    /// <summary>Bytes of a form at the door: two passphrases of the longest kind, written as numbers, and the page's token.</summary>
    public const int MostBytes = 16 << 10;

    public static void MapDoor(this WebApplication app)
    {
        Form(app, "/door/in", SignIn, SigningIn.Page).RequireRateLimiting(Limits.Door).WithMetadata(new AllowAnonymousAttribute());
        Form(app, NotYet.Deed, First, NotYet.Page).RequireRateLimiting(Limits.Door).WithMetadata(new AllowAnonymousAttribute());
        Form(app, "/door/change", Change, "/settings").RequireRateLimiting(Limits.Door);
        Form(app, "/door/out", SignOut, "/settings");
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
        if (!passphrase.Is(form["now"].ToString())) return notes.Say("/settings", new("The passphrase of now was another. Nothing was changed.", Bad: true));
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

    private static RouteHandlerBuilder Form(WebApplication app, string path, Delegate deed, string page) =>
        app.MapPost(path, deed).WithMetadata(new RequestSizeLimitAttribute(MostBytes)).AddEndpointFilter(async (call, next) =>
        {
            var context = call.HttpContext;
            try
            {
                if (!context.Request.HasFormContentType) return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
                await context.Request.ReadFormAsync(context.RequestAborted);
            }
            catch (Exception fault) when (fault is InvalidDataException or BadHttpRequestException)
            {
                return Results.Text("That was more than can be sent here.", statusCode: StatusCodes.Status413PayloadTooLarge);
            }

            return await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context)
                ? await next(call)
                : context.RequestServices.GetRequiredService<Notes>().Say(page, new("This page was too old. Nothing was done; please do it once more.", Bad: true));
        });

    private sealed class Waiting(TimeSpan wait) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext) => Limits.TooOften(httpContext, wait);
    }
}
