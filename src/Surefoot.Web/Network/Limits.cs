using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace Surefoot.Web.Network;

/// <summary>
/// How often anybody may knock, right or wrong: per address, and all of the network together, so that many addresses
/// are no way around it and the studio never does nothing but look at passphrases. The machine's own screen is not
/// counted with the network: whoever knocks there without end cannot lock its owner out.
/// </summary>
internal static class Limits
{
    public const string Door = "door";

    /// <summary>Knocks of one address at once, and seconds for each further one. Working values.</summary>
    private const int OneAtOnce = 10, OneSeconds = 6;

    /// <summary>Knocks of the whole network at once, and seconds for each further one: a class of thirty comes in together. Working values.</summary>
    private const int AllAtOnce = 40, AllSeconds = 2;

    public static void Add(IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.AddPolicy(Door, context => RateLimitPartition.GetTokenBucketLimiter(Tries.Name(context.Connection.RemoteIpAddress), _ => Bucket(OneAtOnce, OneSeconds)));
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, bool>(context =>
            context.GetEndpoint()?.Metadata.GetMetadata<EnableRateLimitingAttribute>() is { PolicyName: Door } && !OwnScreen.Is(context)
                ? RateLimitPartition.GetTokenBucketLimiter(true, _ => Bucket(AllAtOnce, AllSeconds))
                : RateLimitPartition.GetNoLimiter(false));
        options.OnRejected = (rejected, _) => new(TooOften(
            rejected.HttpContext,
            rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out var wait) ? wait : TimeSpan.FromSeconds(OneSeconds)));
    });

    /// <summary>Answers that it was too often, and how long to wait.</summary>
    public static Task TooOften(HttpContext context, TimeSpan wait)
    {
        var seconds = (long)Math.Ceiling(Math.Max(1, wait.TotalSeconds));
        context.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        return PlainPage.WriteAsync(
            context,
            StatusCodes.Status429TooManyRequests,
            "A moment, please",
            $"That was tried too often. Please wait {Said(seconds)}, then try again.",
            ("/sign-in", "Try again"));
    }

    private static string Said(long seconds) => seconds switch
    {
        1 => "a second",
        < 90 => $"{seconds} seconds",
        _ => $"{(seconds + 59) / 60} minutes",
    };

    private static TokenBucketRateLimiterOptions Bucket(int atOnce, int seconds) =>
        new() { TokenLimit = atOnce, TokensPerPeriod = 1, ReplenishmentPeriod = TimeSpan.FromSeconds(seconds), QueueLimit = 0, AutoReplenishment = true };
}
