namespace Surefoot.Web.Network;

/// <summary>
/// A page that stays in touch keeps one line open for hours. When the passphrase changes all of them are closed;
/// whoever is signed in calls again, whoever is not is asked.
/// </summary>
internal sealed class HangingUp(RequestDelegate next, Passphrase passphrase)
{
    private static readonly PathString Lines = "/_blazor";

    public async Task InvokeAsync(HttpContext context)
    {
        if (!context.Request.Path.StartsWithSegments(Lines))
        {
            await next(context);
            return;
        }

        // Taken before anybody looks who is signed in: between the two nothing can be missed.
        using var closing = passphrase.Changed.Register(static line => ((HttpContext)line!).Abort(), context);
        await next(context);
    }
}

/// <summary>Looks now and then whether the passphrase was changed at the console, also while nobody asks for anything.</summary>
internal sealed class Looking(Passphrase passphrase, TimeProvider clock) : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(2);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Between, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken)) passphrase.LookAgain();
    }
}
