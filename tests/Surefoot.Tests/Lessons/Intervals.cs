using Surefoot.Lessons.Reviewing;

namespace Surefoot.Tests.Lessons;

/// <summary>SM-2 against the handbook's worked values (published.md, section 8, computed from Woźniak's text).</summary>
public class Intervals
{
    [Fact]
    public void What_always_goes_well_comes_again_after_1_6_15_38_and_95_days()
    {
        var stands = Sm2.New;
        var days = new List<int>();
        for (var i = 0; i < 5; i++) days.Add((stands = stands.After(4)).Interval);
        Assert.Equal([1, 6, 15, 38, 95], days);
    }

    [Theory]
    [InlineData(5, 10)]
    [InlineData(4, 0)]
    [InlineData(3, -14)]
    public void The_factor_changes_by_the_published_amounts(int quality, int hundredths) =>
        Assert.Equal(250 + hundredths, Sm2.New.After(quality).Factor);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void What_did_not_pass_begins_again_with_its_factor(int quality)
    {
        var stands = Sm2.New.After(5).After(5).After(5).After(quality);
        Assert.Equal((280, 1), (stands.Factor, stands.Interval));
        Assert.Equal(6, stands.After(4).Interval);
    }

    [Fact]
    public void The_factor_never_falls_below_1_3()
    {
        var stands = Sm2.New;
        for (var i = 0; i < 20; i++) stands = stands.After(3);
        Assert.Equal(130, stands.Factor);
    }
}
