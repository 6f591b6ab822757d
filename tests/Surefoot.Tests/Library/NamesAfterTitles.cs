using Surefoot.Library;

namespace Surefoot.Tests.Library;

/// <summary>A page that is called by its title goes on being called by it.</summary>
public class NamesAfterTitles
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_name_follows_a_new_title(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(Page("New dance"));
        await home.Library.Pages.KeepAsync(page, 1, Page("Seven Lamps"));
        Assert.Equal("seven-lamps", await NameAsync(home, page));
        Assert.Equal("seven-lamps", Assert.Single((await home.Library.Catalogue.ListAsync(new())).Dances).Name);
        // The words below change; the name has no reason to.
        await home.Library.Pages.KeepAsync(page, 2, Page("Seven Lamps") + "> twice\n");
        Assert.Equal("seven-lamps", await NameAsync(home, page));
        // The title it had comes back, and its name with it.
        Assert.IsType<Kept>(await home.Library.Pages.BringBackAsync(page, 1));
        Assert.Equal("new-dance", await NameAsync(home, page));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_name_that_is_taken_gets_a_number_and_nobody_loses_theirs(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var taken = await home.AddAsync(Page("Seven Lamps"));
        var page = await home.AddAsync(Page("New dance"), "circle/new-dance-3");
        var inFolder = await home.AddAsync(Page("Six Lamps"), "circle/seven-lamps");
        await home.Library.Pages.KeepAsync(page, 1, Page("Seven Lamps"));
        Assert.Equal("circle/seven-lamps-2", await NameAsync(home, page));
        // It has its number: a title that makes the same name changes nothing.
        await home.Library.Pages.KeepAsync(page, 2, Page("Seven Lamps!"));
        Assert.Equal("circle/seven-lamps-2", await NameAsync(home, page));
        Assert.Equal(("seven-lamps", "circle/seven-lamps"), (await NameAsync(home, taken), await NameAsync(home, inFolder)));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_name_that_somebody_gave_stays_and_so_does_that_of_a_text_kept_beside(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var named = await home.AddAsync(Page("Seven Lamps"), "tuesday/opener");
        await home.Library.Pages.KeepAsync(named, 1, Page("Eight Lamps"));
        Assert.Equal("tuesday/opener", await NameAsync(home, named));
        var page = await home.AddAsync(Page("Odd Lamps"));
        await home.Library.Pages.KeepAsync(page, 1, Page("Odd Lamps") + "> mine\n");
        Assert.IsType<KeptBeside>(await home.Library.Pages.KeepAsync(page, 1, Page("Even Lamps")));
        Assert.Equal("odd-lamps", await NameAsync(home, page));
    }

    private static string Page(string title) => $"{title}\nKind: line, 1 wall\nFeet: left free\n\nPart A (4 counts)\n1-4 Vine left, touch R together\n";

    private static async Task<string> NameAsync(Home home, long page) => (await home.Library.Pages.OneAsync(page))!.Name;
}
