using System.Reflection;
using Microsoft.AspNetCore.Components;
using Surefoot.Web.Components.Pages;

namespace Surefoot.Tests.Web;

/// <summary>Every screen of the studio, with the addresses at which the tests look at it in every light and size.</summary>
internal static class Screens
{
    /// <summary>Rooms, by their route. "{report}" and the like are filled in by the test, which brings them about.</summary>
    public static readonly Dictionary<string, string[]> Rooms = new()
    {
        ["/"] = ["/", "/?q=shufle", "/?q=zzyzx", "/?state=broken&level=improver"],
        ["/bin"] = ["/bin", "/bin?gone=all"],
        ["/bring"] = ["/bring"],
        ["/bring/{Word}"] = ["{report}", "{bad}"],
        ["/paste"] = ["/paste"],
        ["/paste/{Word}"] = ["{sheet}"],
        ["/take"] = ["/take"],
        ["/take/back/{Word}"] = ["{copy}"],
        ["/terms"] = ["/terms"],
        ["/terms/{Id:long}"] = ["/terms/1"],
        ["/settings"] = ["/settings"],
        ["/details/{Id:long}"] = ["/details/3", "{refused}"],
        ["/no-such-page"] = ["/there-is-no-such-page"],
    };

    /// <summary>What belongs to a dance with a history, whose number takes the place of "{page}".</summary>
    public static readonly Dictionary<string, string[]> Kept = new()
    {
        ["/dance/{Address}/history"] = ["/dance/{page}/history", "/dance/{page}/history?version=2"],
        ["/compare"] = ["/compare", "/compare?a={page}", "/compare?a={page}.1&b={page}.3", "/compare?a={page}&b=1"],
        // Not a component: the sheet with a line of choices.
        ["/dance/{address}/print"] = ["/dance/{page}/print", "/dance/{page}/print?words=feet&type=large", "/dance/nine-buckets-cha-cha/print?sheet=calls"],
        ["/dance/{Address}/like"] = ["/dance/{page}/like", "/dance/nine-buckets-cha-cha/like"],
        ["/dance/{Address}/learn"] = ["/dance/{page}/learn", "/dance/five-barns/learn"],
        ["/dance/{Address}/calls"] = ["/dance/{page}/calls", "/dance/kettle-lid-shuffle/calls"],
        ["/dance/{Address}/watch"] = ["/dance/{page}/watch"],
        // The second one with captions: look at the test.
        ["/dance/{Address}/film"] = ["/dance/{page}/film", "/dance/nine-buckets-cha-cha/film"],
        ["/dance/{Address}"] = ["/dance/{page}"],
    };

    /// <summary>Screens that another test looks at as thoroughly, by their route, with the test's name.</summary>
    public static readonly Dictionary<string, string> Elsewhere = new()
    {
        // Only in a studio that is open to the network.
        ["/sign-in"] = nameof(Network.ComingIn),
        ["/first-passphrase"] = nameof(Network.ComingIn),
    };

    /// <summary>The routes of all pages that there are.</summary>
    public static IEnumerable<string> All =>
        typeof(Shelf).Assembly.GetTypes().SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template);
}
