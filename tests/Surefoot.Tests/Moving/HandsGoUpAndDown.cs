using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Moving;

/// <summary>Joined hands go up and come down calmly, and come down before they are let go. Common practice, no source.</summary>
public class HandsGoUpAndDown
{
    // A hand that takes a whole count for 0.9 m with least jerk goes at 15/8 of that at its fastest (Flash and Hogan 1985); half as much again is for heads that turn meanwhile.
    private const double Fastest = 0.9 * 15 / 8 * 1.5;

    private static (MovingDance Moving, CoupleSolution Couple) Of(string dance)
    {
        var reading = DemoNotebook.Read($"circle/{dance}.dance");
        return (MovingDance.Of(reading.Score, reading.Motion, reading.Couple), reading.Couple!);
    }

    [Theory]
    [InlineData("pebble-fence-polka", Foot.Right)]
    [InlineData("kettle-lid-shuffle", Foot.Right)]
    [InlineData("split-rail-cha-cha", Foot.Left)]
    [InlineData("folded-quilt", Foot.Left)]
    [InlineData("beeskep-waltz", Foot.Left)]
    [InlineData("five-barns", Foot.Right)]
    public void Hands_take_their_time(string dance, Foot hand)
    {
        var moving = Of(dance).Moving;
        var fastest = 0.0;
        for (var count = 1.0; count < moving.End - 0.05; count += 0.05) fastest = Math.Max(fastest, Math.Abs(Up(moving, hand, count + 0.05) - Up(moving, hand, count)) / 0.05);
        Assert.True(fastest > 0.5, "nothing is lifted");
        Assert.True(fastest < Fastest, $"{fastest:F2} m a count");
    }

    [Fact]
    public void Hands_are_down_before_they_are_let_go()
    {
        var (moving, couple) = Of("split-rail-cha-cha");
        var track = couple.Hands!.Pairs.Single(p => p.Pair == Pairs.LeftRight);
        var letGo = Enumerable.Range(1, couple.Moments.Count - 1).First(m => track.Heights[m] is null && couple.Moments[m].At > Count.At(30));
        var at = couple.Moments[letGo].At.Value.ToDouble();
        var shoulder = Body.ShoulderHeight * moving.Of(Role.Lead)!.Stature;
        Assert.True(Up(moving, Foot.Left, at - 1.5) > shoulder, "not up before");
        // While they still have each other.
        var last = Enumerable.Range(0, 100).Select(i => at - 1 + (i * 0.01)).Last(c => moving.Hands(Role.Lead, c).Left.Joined == Pairs.LeftRight);
        Assert.True(Up(moving, Foot.Left, last) < shoulder, $"{Up(moving, Foot.Left, last):F2} m on {last:F2}");
    }

    private static double Up(MovingDance moving, Foot hand, double count)
    {
        var (left, right) = moving.Hands(Role.Lead, count);
        return (hand == Foot.Left ? left : right).Up;
    }
}
