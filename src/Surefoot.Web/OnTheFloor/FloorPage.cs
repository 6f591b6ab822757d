using System.Net;

namespace Surefoot.Web.OnTheFloor;

/// <summary>The page of the screen for the dance floor, whole: it has to stand without the studio.</summary>
internal static class FloorPage
{
    /// <param name="data">What <see cref="FloorData"/> writes; its marks are harmless inside markup.</param>
    public static string Of(long page, string title, bool hasCounts, string data) => $"""
        <!DOCTYPE html>
        <html lang="en"><head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
        <meta name="color-scheme" content="dark">
        <meta name="theme-color" content="#070504">
        <title>{WebUtility.HtmlEncode(title)}, on the floor - Surefoot</title>
        <link rel="icon" href="/mark.svg" type="image/svg+xml">
        <link rel="stylesheet" href="/dist/on-the-floor.css">
        <script type="module" src="/dist/on-the-floor.js"></script>
        </head><body>
        <main data-floor-screen>
        <h1 class="unseen">{WebUtility.HtmlEncode(title)}, on the floor</h1>
        {(hasCounts ? Stage : $"<p class=\"nothing\">There are no counts on this page yet. Write some, and they can be called here.</p>")}
        <nav class="bar" aria-label="How it is danced"><span class="tools" data-part="tools"></span><a href="/dance/{page}" aria-label="Back to the dance">Back</a><span class="kept" data-part="kept"></span></nav>
        <p class="unseen" role="status" data-part="heard"></p>
        </main>
        <noscript><p class="nothing">This screen counts, and for that it needs the browser's scripts.</p></noscript>
        <script type="application/json" data-dance>{data}</script>
        </body></html>

        """;

    private const string Stage = """
        <button type="button" class="stage" data-part="stage">
        <span class="unseen">Count</span>
        <span class="count-room"><span class="count" data-part="count"></span></span>
        <span class="danced" data-part="danced"></span>
        <span class="unseen" data-part="when"></span>
        <span class="call" data-part="call"></span>
        <span class="unseen">Go on</span>
        </button>
        """;
}
