namespace Surefoot.Web.Network;

/// <summary>
/// Until a passphrase is chosen there is nothing to ask strangers for, so they are told to wait; the machine's own
/// screen is led to where it is chosen.
/// </summary>
internal sealed class NotYet(RequestDelegate next, Passphrase passphrase)
{
    public const string Page = "/first-passphrase";

    /// <summary>Where that page sends what was chosen.</summary>
    public const string Deed = "/door/first";

    public Task InvokeAsync(HttpContext context)
    {
        if (!passphrase.IsMissing)
        {
            if (context.Request.Path != Page && context.Request.Path != Deed) return next(context);
            context.Response.Redirect(SigningIn.Page);
            return Task.CompletedTask;
        }

        if (context.GetEndpoint()?.Metadata.GetMetadata<Plainly>() is not null) return next(context);
        if (!OwnScreen.Is(context)) return PlainPage.WriteAsync(context, StatusCodes.Status503ServiceUnavailable, "Not open yet", "The studio is not open yet. Whoever started it first chooses a passphrase, at its own screen.");
        if (context.Request.Path == Page || context.Request.Path == Deed) return next(context);
        context.Response.Redirect(Page);
        return Task.CompletedTask;
    }
}

/// <summary>On what anybody may have, always: how a page before the door looks.</summary>
internal sealed class Plainly : Microsoft.AspNetCore.Authorization.IAllowAnonymous;
