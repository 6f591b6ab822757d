using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Bunit;
using Surefoot.Library;
using Surefoot.Web.Components.Parts;
using Surefoot.Web.Listing;

namespace Surefoot.Tests.Web.Parts;

/// <summary>The form that finds, sorts and narrows down.</summary>
public class Sieve : Part
{
    private IRenderedComponent<ShelfSieve> Drawn(ShelfQuestion asked, ShelfChoices choices) => Render<ShelfSieve>(p => p.Add(s => s.Asked, asked).Add(s => s.Choices, choices));

    private static string Chosen(IRenderedComponent<ShelfSieve> sieve, string name) => ((IHtmlSelectElement)sieve.Find($"select[name={name}]")).SelectedOptions.Single().TextContent;

    [Fact]
    public void Every_field_has_a_name_and_it_is_known_as_a_search()
    {
        var sieve = Drawn(new(), Choices(Book(1, "Autumn")));
        Assert.Equal(
            ["search", "search field Find a dance", "button Find", "choice Sorted by", "tick box the other way round", "disclosure Narrow down", "choice Danced", "choice Level", "choice Meter", "choice Counts", "group Counts a minute", "number field from", "number field to", "choice State", "link Everything again"],
            Heard(sieve));
        Assert.Equal("q-hint", sieve.Find("#q").GetAttribute("aria-describedby"));
        Assert.Contains("The spelling need not be right", sieve.Find("#q-hint").TextContent);
        Assert.Equal("get", sieve.Find("form").GetAttribute("method"));
    }

    [Fact]
    public void Only_what_there_is_to_choose_from_is_asked()
    {
        var two = Drawn(new(), Choices(Book(1, "Autumn"), Book(2, Harm)) with { Of = new([], [], [], [Harm]) });
        Assert.Contains("choice Notebook", Heard(two));
        Assert.Contains("choice Tag", Heard(two));
        Assert.Equal([Harm], two.FindAll("select[name=tag] option:not([value])").Select(o => o.TextContent));
        NothingActs(two);
        // The notebook of a bookmark stays a choice.
        Assert.Contains("choice Notebook", Heard(Drawn(new() { Notebook = 1 }, Choices(Book(1, "Autumn")))));
    }

    [Fact]
    public void What_was_asked_is_chosen_already()
    {
        var sieve = Drawn(
            new() { Words = "nail", ForCouples = true, Level = "advanced", Meter = new(3, 4), Counts = 48, TempoFrom = 90, State = "doubtful", Sort = SortBy.Tempo, Descending = true },
            Choices(Book(1, "Autumn")));
        Assert.Equal("nail", sieve.Find("#q").GetAttribute("value"));
        Assert.Equal(["tempo", "by couples", "advanced", "3/4", "48", "warnings only"], new[] { "sort", "kind", "level", "meter", "counts", "state" }.Select(n => Chosen(sieve, n)));
        Assert.Equal("90", sieve.Find("input[name=from]").GetAttribute("value"));
        Assert.True(sieve.Find("input[name=down]").IsChecked());
        Assert.Equal(" (6)", sieve.Find("[data-part=narrowing]").TextContent);
        Assert.True(sieve.Find("details").HasAttribute("open"));
    }

    [Fact]
    public void Where_nothing_was_asked_it_is_folded_and_sorts_as_is_usual()
    {
        Assert.Equal("title", Chosen(Drawn(new(), Choices()), "sort"));
        Assert.Equal("what fits best", Chosen(Drawn(new() { Words = "nail" }, Choices()), "sort"));
        var sieve = Drawn(new(), Choices());
        Assert.False(sieve.Find("details").HasAttribute("open"));
        Assert.Equal("", sieve.Find("[data-part=narrowing]").TextContent);
    }
}
