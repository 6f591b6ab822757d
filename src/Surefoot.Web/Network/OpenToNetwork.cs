using System.Net;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Surefoot.Web.Network;

/// <summary>What a studio that is open to the network has more than one that is not: a second, encrypted line, and a door.</summary>
internal sealed class OpenToNetwork(NetworkFolder folder, TimeProvider clock) : IDisposable
{
    public Passphrase Passphrase { get; } = new(folder);

    public X509Certificate2 Certificate { get; } = OwnCertificate.Of(folder, clock);

    /// <summary>The own screen's line stays what it always is; the network's has the next number.</summary>
    public void Listen(KestrelServerOptions kestrel, int port)
    {
        kestrel.AddServerHeader = false;
        kestrel.Listen(IPAddress.Loopback, port);
        kestrel.ListenAnyIP(port switch { 0 => 0, 65535 => 65534, _ => port + 1 }, line => line.UseHttps(Certificate));
    }

    public void Add(IServiceCollection services)
    {
        services.AddSingleton(Passphrase);
        services.AddSingleton(Certificate);
        services.AddSingleton<Tries>();
        services.AddHostedService<Looking>();
        // Kept, so that tablets stay signed in when the studio is started again.
        services.AddDataProtection().SetApplicationName("surefoot").PersistKeysToFileSystem(folder.Keys);
        services.Configure<AntiforgeryOptions>(options => options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest);
        SigningIn.Add(services);
        Limits.Add(services);
    }

    /// <summary>Stands before everything that shows or changes something. The order matters: who is told to wait is asked nothing.</summary>
    public static void Use(WebApplication app)
    {
        app.UseMiddleware<HangingUp>();
        app.UseMiddleware<NotYet>();
        app.Use((context, next) =>
        {
            // What is seen signed in is not to be seen in the browser's store after signing out.
            context.Response.OnStarting(() =>
            {
                if (context.Response.Headers.CacheControl.Count == 0) context.Response.Headers.CacheControl = "no-store";
                return Task.CompletedTask;
            });
            return next(context);
        });
        app.UseAuthentication();
        app.UseRateLimiter();
        app.UseAuthorization();
    }

    public void Dispose()
    {
        Passphrase.Dispose();
        Certificate.Dispose();
    }
}
