using Bunit;
using Surefoot.Web.Components.Parts;

namespace Surefoot.Tests.Web.Parts;

/// <summary>What somebody is offered who has nothing yet.</summary>
public class Beginnings : Part
{
    [Fact]
    public void The_greeting_offers_three_ways_to_begin()
    {
        var greeting = Render<Greeting>(p => p.Add(g => g.Notebooks, [Book(3, "Demo")]));
        Assert.Equal(
            ["heading Welcome to Surefoot", "button Put this away", "heading Write a dance", "text field Title", "group It is danced", "radio button by couples", "radio button in lines", "choice Into the notebook", "button Write it", "heading Look around first", "link Show the demo notebook", "heading Bring your own pages", "link Bring pages in", "link Paste a sheet"],
            Heard(greeting));
        Assert.Equal("/?notebook=3", greeting.FindAll("a")[0].GetAttribute("href"));
        Assert.Equal("Welcome to Surefoot", Parts.Heard.Name(Document(greeting).QuerySelector("section")!));
    }

    [Fact]
    public void Without_a_demo_notebook_nothing_leads_to_it()
    {
        Assert.DoesNotContain(Heard(Render<Greeting>()), h => h.Contains("demo", StringComparison.Ordinal));
    }

    [Fact]
    public void A_new_dance_asks_for_a_notebook_only_where_there_is_a_choice()
    {
        List<string> Offered(params Surefoot.Library.Notebook[] notebooks) => [.. Render<NewDance>(p => p.Add(n => n.Notebooks, notebooks)).FindAll("select option").Select(o => o.TextContent + (o.HasAttribute("selected") ? " *" : ""))];
        Assert.Empty(Offered());
        Assert.Empty(Offered(Book(2, "My dances")));
        Assert.Equal(["My dances (new)", "Demo"], Offered(Book(1, "Demo")));
        Assert.Equal(["Demo", "Autumn *"], Offered(Book(1, "Demo"), Book(2, "Autumn")));
    }

    [Fact]
    public void A_notebook_is_called_what_it_is_called()
    {
        NothingActs(Render<NotebookChoice>(p => p.Add(n => n.Notebooks, [Book(1, "Demo"), Book(2, Harm)])));
    }
}
