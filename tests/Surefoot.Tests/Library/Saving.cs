using Surefoot.Library;
using Surefoot.Library.Keeping;

namespace Surefoot.Tests.Library;

/// <summary>Versions, drafts and two people on one page.</summary>
public class Saving
{
    private const string First = "Lamp Black Shuffle\nKind: line\n\n1-4  Vine right, touch L\n";
    private const string Second = "Lamp Black Shuffle\nKind: line\n\n1-4  Vine right, scuff L\n";
    private const string Third = "Lamp Black Shuffle\nKind: line\n\n1-4  Vine left, scuff R\n";

    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_page_is_called_by_its_title_and_begins_with_one_version(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(First);
        var info = await home.Library.Pages.OneAsync(page);
        Assert.Equal(("lamp-black-shuffle", 1, false), (info!.Name, info.Current, info.IsFigures));
        Assert.Equal(First, await home.Library.Pages.TextAsync(page));
        var version = Assert.Single(await home.Library.Pages.HistoryAsync(page));
        Assert.Equal((1, 0, home.Clock.Now), (version.Number, version.BasedOn, version.Saved));
        Assert.Equal("lamp-black-shuffle-2", (await home.Library.Pages.OneAsync(await home.AddAsync(First)))!.Name);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_kept_text_is_the_page_and_the_earlier_ones_stay(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(First);
        home.Clock.Now += TimeSpan.FromMinutes(3);
        Assert.Equal(new Kept(2), await home.Library.Pages.KeepAsync(page, 1, Second, new("Ada", "tablet", "scuff instead")));
        Assert.Equal(new NothingNew(2), await home.Library.Pages.KeepAsync(page, 2, Second));
        Assert.Equal(new NothingNew(2, Noted: true), await home.Library.Pages.KeepAsync(page, 2, Second, new(Note: "after the break")));
        Assert.Equal(new NothingNew(2, Noted: true), await home.Library.Pages.KeepAsync(page, 2, Second, new(Note: "scuff instead; after the break")));
        Assert.Equal(Second, await home.Library.Pages.TextAsync(page));
        Assert.Equal(First, await home.Library.Pages.TextAsync(page, 1));
        var newest = (await home.Library.Pages.HistoryAsync(page))[0];
        Assert.Equal(new VersionInfo(2, home.Clock.Now, "scuff instead; after the break", "Ada", "tablet", 1, null, null), newest);
        Assert.Equal(home.Clock.Now, (await home.Library.Pages.OneAsync(page))!.Changed);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_second_of_two_people_is_kept_beside_the_first(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(First);
        await home.Library.Pages.KeepAsync(page, 1, Second, new("Ada"));
        Assert.Equal(new KeptBeside(2, 3), await home.Library.Pages.KeepAsync(page, 1, Third, new("Ben")));
        Assert.Equal(Second, await home.Library.Pages.TextAsync(page));
        var history = await home.Library.Pages.HistoryAsync(page);
        Assert.Equal([(3, 2, "Ben"), (2, null, "Ada"), (1, (int?)null, "")], history.Select(v => (v.Number, v.BesideOf, v.By)));
        // Either can be made the page, and the other still stays.
        Assert.Equal(new Kept(4), await home.Library.Pages.BringBackAsync(page, 3));
        Assert.Equal(Third, await home.Library.Pages.TextAsync(page));
        var brought = (await home.Library.Pages.HistoryAsync(page))[0];
        Assert.Equal((4, 2, 3), (brought.Number, brought.BasedOn, brought.BroughtBack));
        Assert.Equal(Second, await home.Library.Pages.TextAsync(page, 2));
        Assert.IsType<NotKept>(await home.Library.Pages.BringBackAsync(page, 17));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Of_many_who_keep_at_once_one_is_the_page_and_none_is_lost(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(First);
        // Half of them through another program's library.
        var other = await home.AgainAsync();
        var texts = Enumerable.Range(0, 12).Select(n => $"{First}> {n}\n").ToList();
        var results = await Task.WhenAll(texts.Select((text, n) => Task.Run(() => (n % 2 == 0 ? home.Library : other).Pages.KeepAsync(page, 1, text))));
        Assert.Single(results.OfType<Kept>());
        Assert.Equal(11, results.OfType<KeptBeside>().Count());
        var history = await home.Library.Pages.HistoryAsync(page);
        Assert.Equal(Enumerable.Range(1, 13).Reverse(), history.Select(v => v.Number));
        var kept = new List<string>();
        foreach (var version in history) kept.Add((await home.Library.Pages.TextAsync(page, version.Number))!);
        Assert.Equal(texts.Append(First).Order(StringComparer.Ordinal), kept.Order(StringComparer.Ordinal));
        Assert.Equal(2, (await home.Library.Pages.OneAsync(page))!.Current);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_draft_is_kept_for_each_editor_and_late_ones_are_passed_over(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(First);
        var drafts = home.Library.Drafts;
        Assert.Null(await drafts.SaveAsync(page, "kitchen", 1, 1, "a"));
        Assert.Null(await drafts.SaveAsync(page, "kitchen", 3, 1, "abc"));
        Assert.Null(await drafts.SaveAsync(page, "kitchen", 2, 1, "ab"));
        Assert.Null(await drafts.SaveAsync(page, "kitchen", 3, 1, "abc"));
        home.Clock.Now += TimeSpan.FromSeconds(1);
        Assert.Null(await drafts.SaveAsync(page, "hall", 1, 1, "x"));
        Assert.Equal([("hall", "x"), ("kitchen", "abc")], (await drafts.OfAsync(page)).Select(d => (d.Session, d.Text)));
        await home.Library.Pages.KeepAsync(page, 1, Second, session: "kitchen");
        Assert.Equal(["hall"], (await drafts.OfAsync(page)).Select(d => d.Session));
        await drafts.ForgetAsync(page, "hall");
        Assert.Empty(await drafts.OfAsync(page));
        Assert.NotNull(await drafts.SaveAsync(page + 1000, "hall", 1, 1, "x"));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_cannot_be_kept_is_refused_alike(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(First);
        foreach (var bad in (string[])["a\0b", "half \uD83D letter", new string('é', (1 << 19) + 1)])
        {
            Assert.IsType<NotKept>(await home.Library.Pages.KeepAsync(page, 1, bad));
            Assert.NotNull(await home.Library.Drafts.SaveAsync(page, "hall", 1, 1, bad));
            Assert.NotNull((await home.Library.Pages.AddAsync(home.Notebook, bad)).Refusal);
        }

        Assert.Equal(new Kept(2), await home.Library.Pages.KeepAsync(page, 1, new string('é', 1 << 19)));
        Assert.Equal(new Kept(3), await home.Library.Pages.KeepAsync(page, 2, "\uFEFF" + Second));
        Assert.Equal(Second, await home.Library.Pages.TextAsync(page));
        Assert.IsType<NotKept>(await home.Library.Pages.KeepAsync(page, 3, First, new(By: new string('x', 500))));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Words_from_pages_are_never_commands(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        const string nasty = "'); DROP TABLE \"pages\"; -- %_\\ {0} $1 @p0 \" ’ 𝄞 é\r\n\tend";
        var page = await home.AddAsync(nasty);
        Assert.Null(await home.Library.Drafts.SaveAsync(page, "';--", 1, 1, nasty));
        Assert.Equal(nasty, (await home.Library.Drafts.OfAsync(page))[0].Text);
        Assert.Equal(nasty, await home.Library.Pages.TextAsync(page));
        Assert.IsType<Kept>(await home.Library.Pages.KeepAsync(page, 1, nasty + nasty, new("';--", "%", nasty), "';--"));
        Assert.Equal(nasty, (await home.Library.Pages.HistoryAsync(page))[0].Note);
        Assert.Empty(await home.Library.Drafts.OfAsync(page));
    }
}
