using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Who opens the studio for the first time is greeted, once.</summary>
public class Greeted(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task The_first_start_says_what_there_is_to_do_and_goes_away_for_good()
    {
        await using var opened = await studio.OpenAsync("/");
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("Welcome to Surefoot");
        await Expect(opened.Page.Locator(".greeting h2")).ToHaveTextAsync(["Write a dance", "Look around first", "Bring your own pages"]);
        await opened.Page.GetByText("Put this away").ClickAsync();
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("Dances");
        await Expect(opened.Page.Locator(".note")).ToContainTextAsync("My dances");

        // For good, and not only in this browser.
        await using var later = await studio.OpenAsync("/");
        await Expect(later.Page.Locator(".greeting")).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }
}
