using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Tests.Support;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>Where both dancers are, solved together.</summary>
public class CoupleSolved
{
    public static TheoryData<string> CircleDances => [.. Root.Pages("demo", "dances", "circle").Select(p => Path.GetRelativePath(Root.At("demo", "dances"), p))];

    [Theory]
    [MemberData(nameof(CircleDances))]
    public void The_couples_of_the_demo_notebook_can_dance_their_dances(string dance)
    {
        var couple = DemoNotebook.Read(dance).Couple;
        Assert.NotNull(couple);
        Assert.Empty(couple.Impossible);
        foreach (var moment in couple.Moments) Assert.True(moment.Where.Has(Seen(couple, moment), 1e-6), $"out of place on count {moment.At}");
        Assert.True(couple.Moments[0].Where.Has(Seen(couple, couple.Moments[^1]), 1e-6), "the end is not where the start is");
    }

    [Fact]
    public void He_cannot_walk_away_while_she_rocks_on_the_spot()
    {
        var reading = Read(Page("sweetheart", "same, left free", "1-4  Lead: walk forward L R L R. Follow: rock forward L, recover R, rock back L, recover R"));
        var place = Assert.Single(reading.Couple!.Impossible);
        Assert.Equal(OutOfPlaceKind.Hold, place.Kind);
        Assert.Equal("sweetheart", place.Hold);
        Assert.InRange(place.Metres, 0.4, 0.6);
        Assert.Equal(Count.At(4), place.Worst);
        var problem = Assert.Single(reading.Problems, p => p.Name == "hold-place");
        Assert.Contains("0.5 m", problem.Message);
    }

    [Fact]
    public void In_closed_hold_he_goes_forward_and_she_goes_back()
    {
        var reading = Read(Page("closed", "opposite, lead left free", "1-4  Walk forward L R L R"));
        Assert.Empty(reading.Problems);
        Assert.All(reading.Couple!.Moments, m => Assert.Equal("closed", m.Where.Hold));
        Assert.True(reading.Motion.Of(Role.Lead)!.Travel.X > 1.5);
        Assert.Equal(reading.Motion.Of(Role.Lead)!.Travel.X, reading.Motion.Of(Role.Follow)!.Travel.X, 0.35);
    }

    [Fact]
    public void Where_usual_steps_will_do_nothing_is_asked_of_the_solver()
    {
        var page = Page("sweetheart", "same, left free", "1-2  Walk forward L, R\n3-4  Rock forward L, recover R");
        var reading = DanceReader.Read(page, null, new NoSolver());
        Assert.Equal(0, reading.Couple!.Effort);
        Assert.Empty(reading.Problems);
    }

    [Fact]
    public void A_hold_that_the_page_names_is_where_they_are()
    {
        var reading = Read(Page("sweetheart", "same, left free", "1-2  Step forward L, pivot ½ right\n3-4  Walk forward L, R (left sweetheart)\n5-6  Step forward L, pivot ½ left\n7-8  Walk forward R, L (sweetheart)"));
        Assert.Empty(reading.Couple!.Impossible);
        var moment = reading.Couple.Moments.Single(m => m.At == Count.At(4));
        Assert.Equal("left sweetheart", moment.Where.Hold);
        Assert.True(Seen(reading.Couple, moment).Y > 0.2);
    }

    [Fact]
    public void When_she_walks_round_him_she_goes_past_his_front_his_left_and_his_back()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "weathervane.dance"));
        Spot At(int count) => Seen(reading.Couple!, reading.Couple!.Moments.Single(m => m.At == Count.At(count)));
        Assert.True(At(34).X > 0.2);
        Assert.True(At(35).Y > 0.3);
        Assert.True(At(37).X < -0.3);
        Assert.True(At(40).Y < -0.3);
    }

    private sealed class NoSolver : ILinearSolver
    {
        public LinearSolution Solve(LinearProgram program) => throw new InvalidOperationException("nothing was to be solved");
    }
}
