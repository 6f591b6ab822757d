using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Surefoot.Dance.Couple;
using Surefoot.Library;
using Surefoot.Solver;
using Surefoot.Web.Components;
using Surefoot.Web.Deeds;
using Surefoot.Web.Keeping;
using Surefoot.Web.Listing;
using Surefoot.Web.Live;
using Surefoot.Web.Printing;
using Surefoot.Web.Safety;
using Surefoot.Web.Watching;

namespace Surefoot.Web;

/// <summary>Puts the studio together: pages, live reading, and who may ask for them.</summary>
internal static class Studio
{
    /// <summary>The port when SUREFOOT_PORT does not say another; 0 takes any free one. A number nobody has registered.</summary>
    private const int UsualPort = 7350;

    public static WebApplication Build(string[] args, DanceLibrary library)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseStaticWebAssets();
        // This machine only: the studio has no sign-in, and needs none where nobody else can reach it.
        builder.WebHost.UseUrls($"http://127.0.0.1:{Port()}");
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // It warns that keys are kept in the open; they are not kept.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        var services = builder.Services;
        services.AddSingleton(library);
        services.AddSingleton<Shelves>();
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton<ILinearSolver, GlopSolver>();
        services.AddSingleton<Desks>();
        services.AddSingleton<UsualLook>();
        services.AddSingleton<Shelving>();
        services.AddSingleton<Notes>();
        services.AddSingleton<Bringing>();
        services.AddSingleton<WaitingCopies>();
        services.AddScoped<Nonce>();
        services.AddDataProtection();
        services.Configure<KeyManagementOptions>(options => options.XmlRepository = new NoKeys());
        // What a page forgot to send is refused and not taken for nothing.
        services.ConfigureHttpJsonOptions(options => (options.SerializerOptions.RespectNullableAnnotations, options.SerializerOptions.RespectRequiredConstructorParameters) = (true, true));
        services.AddRazorComponents().AddInteractiveServerComponents();
        var app = builder.Build();
        app.UseMiddleware<OnlyHere>();
        app.UseMiddleware<ContentPolicy>();
        app.UseStatusCodePagesWithReExecute("/no-such-page", createScopeForStatusCodePages: true);
        app.Use((context, next) =>
        {
            // That is for people who look at pages; what a page sent is answered as it is.
            if (!HttpMethods.IsGet(context.Request.Method) && context.Features.Get<IStatusCodePagesFeature>() is { } pages) pages.Enabled = false;
            return next(context);
        });
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapLive();
        app.MapKeeping();
        app.MapPrinting();
        app.MapWatching();
        app.MapShelf();
        app.MapBin();
        app.MapDetails();
        app.MapBring();
        app.MapTake();
        app.MapSettings();
        app.MapRazorComponents<Document>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    public static string Address(WebApplication app) =>
        app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

    private static int Port() =>
        int.TryParse(Environment.GetEnvironmentVariable("SUREFOOT_PORT"), out var port) && port is >= 0 and <= 65535 ? port : UsualPort;
}
