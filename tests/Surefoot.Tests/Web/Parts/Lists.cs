using Bunit;
using Surefoot.Library;
using Surefoot.Web.Components.Parts;
using Surefoot.Web.Listing;

namespace Surefoot.Tests.Web.Parts;

/// <summary>The shelf's list, and what it says when there is nothing to list.</summary>
public class Lists : Part
{
    private IRenderedComponent<DanceList> List(ShelfQuestion asked, int all, int total, bool whole = true, params ShelfItem[] dances) =>
        Render<DanceList>(p => p.Add(l => l.Answer, new(asked, all, total, whole, [.. dances.Select(d => new Found(d, 1, whole, null))], new Dictionary<long, string> { [1] = "Autumn" })));

    [Fact]
    public void It_says_how_many_there_are_and_shows_them_in_order()
    {
        var list = List(new(), 2, 2, true, Dance("Amber Gate", 1), Dance("Bent Nail", 2));
        Assert.Equal("2 dances", list.Find("[data-part=tally]").TextContent);
        Assert.Equal(["Amber Gate", "Bent Nail"], list.FindAll("ul.dances > li .called > a").Select(a => a.TextContent));
        Assert.Empty(list.FindAll("nav, .empty"));
        // One notebook needs no name beside each dance.
        Assert.DoesNotContain("Autumn", Words(list));
    }

    [Theory]
    [InlineData("nail", 1, true, "1 dance found")]
    [InlineData("nail", 3, true, "3 dances found")]
    [InlineData("nail", 1, false, "No dance has all of that; this one comes nearest")]
    [InlineData("nail", 3, false, "No dance has all of that; 3 come near")]
    [InlineData("", 1, true, "1 dance")]
    public void What_was_found_is_said_as_it_is(string words, int total, bool whole, string says)
    {
        Assert.Equal(says, List(new() { Words = words }, 9, total, whole, Dance()).Find("[data-part=tally]").TextContent);
    }

    [Fact]
    public void An_empty_library_says_where_to_begin()
    {
        var list = List(new(), 0, 0);
        Assert.Contains("There are no dances here yet.", Words(list));
        Assert.Equal("/bring", list.Find(".empty a").GetAttribute("href"));
    }

    [Fact]
    public void Nothing_found_says_what_finds_more_and_leads_back()
    {
        var list = List(new() { Words = Harm }, 40, 0);
        NothingActs(list);
        Assert.Contains("Fewer words find more", Words(list));
        Assert.Equal(["link Show all dances"], Heard(list));
        Assert.Contains("None of the 40 dances is like that.", Words(List(new() { Level = "advanced" }, 40, 0)));
    }

    [Fact]
    public void A_page_beyond_the_end_leads_to_the_beginning_of_the_same_list()
    {
        var list = List(new() { Words = "nail", Page = 9 }, 90, 60);
        Assert.Equal("/?q=nail", list.Find(".empty a").GetAttribute("href"));
        Assert.Empty(list.FindAll("nav"));
    }

    [Fact]
    public void Its_pages_keep_what_was_asked()
    {
        var list = List(new() { Words = "nail & gate", Sort = SortBy.Counts, Page = 2 }, 200, 101, true, Dance());
        Assert.Equal("Pages of the list", Parts.Heard.Name(list.Find("nav")));
        Assert.Contains("Page 2 of 3", Words(list));
        Assert.Equal(["/?q=nail%20%26%20gate&sort=counts", "/?q=nail%20%26%20gate&sort=counts&page=3"], list.FindAll("nav a").Select(a => a.GetAttribute("href")!));
        Assert.Equal(["Before", "Next"], list.FindAll("nav a").Select(a => a.TextContent));
        Assert.Equal(["/?q=nail%20%26%20gate&sort=counts&page=2"], list.FindAll("input[name=back][form=deeds]").Select(i => i.GetAttribute("value")!));
        Assert.Equal(["Next"], List(new(), 51, 51, true, Dance()).FindAll("nav a").Select(a => a.TextContent));
    }
}
