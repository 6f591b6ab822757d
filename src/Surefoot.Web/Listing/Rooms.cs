using Surefoot.Web.Network;

namespace Surefoot.Web.Listing;

/// <summary>The rooms around the dances: pages that are drawn once and then stand still.</summary>
internal static class Rooms
{
    private static readonly string[] Still = ["/bin", "/bring", "/paste", "/take", "/settings", "/details", "/terms", SigningIn.Page, NotYet.Page];

    public static bool IsStill(PathString path) => path == "/" || path.Value!.Split('/') is [_, "dance", _, "watch" or "film"] || Array.Exists(Still, room => path.StartsWithSegments(room, StringComparison.Ordinal));
}
