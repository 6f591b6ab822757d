using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Surefoot.Dance.Couple;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Solver;
using Surefoot.Library;
using Surefoot.Solver;
using Surefoot.Web.Calling;
using Surefoot.Web.Components;
using Surefoot.Web.Deeds;
using Surefoot.Web.Filming;
using Surefoot.Web.Keeping;
using Surefoot.Web.Listing;
using Surefoot.Web.Live;
using Surefoot.Web.Network;
using Surefoot.Web.OnTheFloor;
using Surefoot.Web.Pasting;
using Surefoot.Web.Printing;
using Surefoot.Web.Safety;
using Surefoot.Web.Teaching;
using Surefoot.Web.Watching;

namespace Surefoot.Web;

/// <summary>Puts the studio together: pages, live reading, and who may ask for them.</summary>
internal static class Studio
{
    /// <summary>The port when SUREFOOT_PORT does not say another; 0 takes any free one. A number nobody has registered.</summary>
    private const int UsualPort = 7350;

    /// <param name="library">The library; asked for by the first page that needs it, which waits until it is open.</param>
    /// <param name="open">The door, where others on the network may come in; null for this machine only.</param>
    public static WebApplication Build(Func<DanceLibrary> library, OpenToNetwork? open)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseStaticWebAssets();
        // This machine only needs no sign-in: nobody else can reach it.
        if (open is null) builder.WebHost.UseUrls($"http://127.0.0.1:{Port()}");
        else builder.WebHost.ConfigureKestrel(kestrel => open.Listen(kestrel, Port()));
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // It warns that keys are kept in the open; they are not kept, or lie in a folder that is closed to others.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // Why it did not open is said in one sentence, and not as a programmer would look for it.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        var services = builder.Services;
        services.AddSingleton(_ => library());
        services.AddSingleton<Shelves>();
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton<ILinearSolver, ProvenSolver>();
        services.AddSingleton<IWholeSolver, CpSatSolver>();
        services.AddSingleton<TermRoom>();
        services.AddSingleton<ThrownTerms>();
        services.AddSingleton<FilmRoom>();
        services.AddSingleton<Desks>();
        services.AddSingleton<UsualLook>();
        services.AddSingleton<Shelving>();
        services.AddSingleton<Notes>();
        services.AddSingleton<Bringing>();
        services.AddSingleton<WaitingCopies>();
        services.AddSingleton<PastedSheets>();
        services.AddScoped<Nonce>();
        services.AddDataProtection();
        if (open is null) services.Configure<KeyManagementOptions>(options => options.XmlRepository = new NoKeys());
        else open.Add(services);
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
        if (open is not null) OpenToNetwork.Use(app);
        app.UseAntiforgery();
        app.MapStaticAssets().Add(BeforeTheDoor);
        app.MapLive();
        app.MapKeeping();
        app.MapPrinting();
        app.MapWatching();
        app.MapOnTheFloor();
        app.MapShelf();
        app.MapBin();
        app.MapDetails();
        app.MapBring();
        app.MapPaste();
        app.MapTake();
        app.MapSettings();
        app.MapWords();
        app.MapTerms();
        app.MapFilm();
        app.MapCalls();
        if (open is not null) app.MapDoor();
        app.MapRazorComponents<Document>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null).WithStaticAssets();
        return app;
    }

    /// <summary>The address on this machine's own screen.</summary>
    public static string Address(WebApplication app) =>
        Addresses(app.Services.GetRequiredService<IServer>()).First(a => a.StartsWith("http:", StringComparison.Ordinal));

    /// <summary>The port of the network's line; null where there is none.</summary>
    public static int? NetworkPort(IServer server) =>
        Addresses(server).FirstOrDefault(a => a.StartsWith("https:", StringComparison.Ordinal)) is { } line ? BindingAddress.Parse(line).Port : null;

    private static ICollection<string> Addresses(IServer server) => server.Features.Get<IServerAddressesFeature>()!.Addresses;

    // What the sign-in page looks like may be seen by whoever sees it.
    private static void BeforeTheDoor(EndpointBuilder file)
    {
        if (file is RouteEndpointBuilder { RoutePattern.RawText: "mark.svg" or "dist/studio.css" or "dist/look.js" or "dist/door.js" }) file.Metadata.Add(new Plainly());
    }

    private static int Port() =>
        int.TryParse(Environment.GetEnvironmentVariable("SUREFOOT_PORT"), out var port) && port is >= 0 and <= 65535 ? port : UsualPort;
}
