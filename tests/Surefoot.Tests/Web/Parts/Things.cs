using Bunit;
using Surefoot.Web.Components.Parts;

namespace Surefoot.Tests.Web.Parts;

/// <summary>Things beside a dance that can be taken away one by one.</summary>
public class Things : Part
{
    [Fact]
    public void Each_has_a_button_that_says_what_it_takes_away()
    {
        var list = Render<DropList>(p => p.Add(d => d.Way, "/details/7/films/drop").Add(d => d.Field, "film").Add(d => d.None, "No films yet.")
            .Add(d => d.Things, [("1", "From the side", "https://films.example/one"), ("2", Harm, null)]));
        Assert.Equal(["link From the side", "button Take away From the side", $"button Take away {Harm}"], Heard(list));
        Assert.Equal(["1", "2"], list.FindAll("form[action='/details/7/films/drop'] input[name=film]").Select(i => i.GetAttribute("value")!));
        NothingActs(list);
        // Whoever is led elsewhere cannot reach back into the studio.
        Assert.Equal(("_blank", "noopener noreferrer"), (list.Find("a").GetAttribute("target"), list.Find("a").GetAttribute("rel")));
    }

    [Fact]
    public void Nothing_there_is_said()
    {
        var list = Render<DropList>(p => p.Add(d => d.Way, "/x").Add(d => d.Field, "film").Add(d => d.None, "No films yet."));
        Assert.Equal("No films yet.", Words(list));
        Assert.Empty(list.FindAll("ul, form"));
    }

    [Fact]
    public void A_moment_is_told_to_machines_in_the_world_s_time()
    {
        var time = Render<Moment>(p => p.Add(m => m.At, new DateTimeOffset(2026, 3, 14, 20, 30, 5, TimeSpan.FromHours(1)))).Find("time");
        Assert.Equal(("2026-03-14T19:30:05Z", "1773516605000"), (time.GetAttribute("datetime"), time.GetAttribute("data-moment")));
        Assert.Contains("Mar", time.TextContent);
    }
}
