using Bunit;
using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Web.Components.Parts;

namespace Surefoot.Tests.Web.Parts;

/// <summary>Two versions side by side, seen and heard.</summary>
public class TwoVersions : Part
{
    private static readonly TextLine Same = new(LineFate.Stayed, 1, 1, "Bent Nail");

    private IRenderedComponent<DifferenceView> Shown(DanceDifference difference, NotebookSettings? settings = null) =>
        Render<DifferenceView>(p => p.Add(d => d.Difference, difference).Add(d => d.Settings, settings ?? new()));

    [Fact]
    public void What_is_danced_otherwise_is_a_table_for_each_part()
    {
        StepChange[] steps =
        [
            new("Part A", Count.At(3), Role.Lead, "touch right", "stomp right"),
            new("Part A", Count.At(4), Role.Follow, null, "hold"),
            new("Part B", Count.At(1), null, "walk left", null),
        ];
        var view = Shown(new(new([new("tempo", "108", "112")]), new(steps), new([Same])), new() { LeadWord = "Man", FollowWord = "Lady" });
        Assert.Contains("Tempo: 108, now 112", Words(view));
        Assert.Equal(["table Part A", "table Part B"], Heard(view).Where(h => h.StartsWith("table", StringComparison.Ordinal)));
        Assert.Equal(["Count", "Who", "Was", "Is now"], view.FindAll("table")[0].QuerySelectorAll("th[scope=col]").Select(h => h.TextContent));
        Assert.Equal(
            ["3 man touch right stomp right", "4 lady nothing hold", "1 both walk left nothing"],
            view.FindAll("tbody tr").Select(Parts.Heard.Words));
        Assert.Equal(["3", "4", "1"], view.FindAll("tbody th[scope=row]").Select(h => h.TextContent));
    }

    [Fact]
    public void Other_words_for_the_same_steps_are_told_from_no_change_at_all()
    {
        Assert.Contains("Nothing: the two say the same.", Words(Shown(new(default, default, new([Same])))));
        Assert.Contains("exactly the same is danced, in other words", Words(Shown(new(default, default, new([Same, new(LineFate.Went, 2, 0, "1-2 walk"), new(LineFate.Came, 0, 2, "1-2 step, step")])))));
    }

    [Fact]
    public void Lines_that_went_and_came_are_heard_as_such_and_long_stretches_are_counted()
    {
        var lines = Enumerable.Range(1, 30).Select(n => new TextLine(LineFate.Stayed, n, n, $"line {n}"))
            .Append(new(LineFate.Went, 31, 0, "walk")).Append(new(LineFate.Came, 0, 31, Harm)).ToArray();
        var view = Shown(new(default, default, new(lines)));
        var shown = view.FindAll(".lines li").Select(Parts.Heard.Words).ToList();
        Assert.Equal("28 lines alike", shown[0]);
        Assert.Equal(["29 29 line 29", "30 30 line 30", "31 − went: walk"], shown[1..4]);
        Assert.StartsWith("31 + came: ", shown[4], StringComparison.Ordinal);
        Assert.Equal("walk", view.Find("del").TextContent);
        Assert.Equal(Harm, view.Find("ins").TextContent);
        NothingActs(view);
    }
}
