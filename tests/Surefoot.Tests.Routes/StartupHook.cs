using System.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

#pragma warning disable MA0047 // The runtime looks for this name outside of any namespace.

/// <summary>
/// Comes into the studio with the runtime (DOTNET_STARTUP_HOOKS) and writes down every address it answers to, once it
/// has started: so a test knows them from the running program, and an address that is added later cannot be forgotten.
/// Each line of the file that SUREFOOT_ROUTES names: the methods, a tab, and an address that fits the route.
/// </summary>
internal static class StartupHook
{
    public static void Initialize() => DiagnosticListener.AllListeners.Subscribe(new Hearing<DiagnosticListener>(listener =>
    {
        if (listener.Name == "Microsoft.Extensions.Hosting") listener.Subscribe(new Hearing<KeyValuePair<string, object?>>(Heard));
    }));

    private static void Heard(KeyValuePair<string, object?> said)
    {
        if (said is not { Key: "HostBuilt", Value: IHost host } || Environment.GetEnvironmentVariable("SUREFOOT_ROUTES") is not { } file) return;
        host.Services.GetRequiredService<IHostApplicationLifetime>().ApplicationStarted.Register(() =>
        {
            var routes = host.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
                .Select(e => $"{string.Join(',', e.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods ?? [])}\t{Fitting(e.RoutePattern)}");
            File.WriteAllLines(file + ".new", routes);
            File.Move(file + ".new", file);
        });
    }

    private static string Fitting(RoutePattern pattern) => "/" + string.Join('/', pattern.PathSegments.Select(s => string.Concat(s.Parts.Select(part => part switch
    {
        RoutePatternLiteralPart literal => literal.Content,
        RoutePatternSeparatorPart separator => separator.Content,
        RoutePatternParameterPart { ParameterPolicies: [{ Content: "long" or "int" }, ..] } => "1",
        _ => "lantern-swing",
    }))));

    private sealed class Hearing<T>(Action<T> act) : IObserver<T>
    {
        public void OnNext(T value) => act(value);

        public void OnCompleted()
        {
        }

        public void OnError(Exception error)
        {
        }
    }
}
