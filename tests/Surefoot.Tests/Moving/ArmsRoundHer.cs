using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Moving;

/// <summary>
/// His arm lies round her, so she is a little ahead of him, and hands stay at the shoulders through a half turn as one.
/// Common practice, no source.
/// </summary>
public class ArmsRoundHer
{
    private static (MovingDance Moving, double Lead, double Follow) Moving(string dance)
    {
        var reading = DemoNotebook.Read($"circle/{dance}.dance");
        var moving = MovingDance.Of(reading.Score, reading.Motion, reading.Couple);
        return (moving, moving.Of(Role.Lead)!.Stature, moving.Of(Role.Follow)!.Stature);
    }

    private static double Ahead(MovingDance moving, double count)
    {
        var (lead, follow) = (moving.Of(Role.Lead)!.At(count), moving.Of(Role.Follow)!.At(count));
        return lead.Seen(follow.Middle).X;
    }

    // After each half turn, on the last of the steps that follow it; in a wrap all the way.
    [Theory]
    [InlineData("five-barns", new[] { 31.5, 35.5, 39.5, 43.5, 47.5 })]
    [InlineData("kettle-lid-shuffle", new[] { 40.0, 44, 48 })]
    [InlineData("folded-quilt", new[] { 2.0, 6, 10, 21, 22, 24 })]
    public void She_is_ahead_of_an_arm_round_her(string dance, double[] counts)
    {
        var moving = Moving(dance).Moving;
        Assert.All(counts, c => Assert.True(Ahead(moving, c) > -0.01, $"{Ahead(moving, c):F2} m ahead on {c}"));
        Assert.True(counts.Average(c => Ahead(moving, c)) > 0.05, $"{counts.Average(c => Ahead(moving, c)):F2} m ahead at the mean");
    }

    [Theory]
    [InlineData("five-barns", 33, 34)]
    [InlineData("five-barns", 37, 38)]
    [InlineData("nine-buckets-cha-cha", 17, 18)]
    [InlineData("tall-grass-cha-cha", 17, 18)]
    public void Hands_stay_up_at_the_shoulders_through_a_half_turn_as_one(string dance, double from, double to)
    {
        var (moving, lead, follow) = Moving(dance);
        for (var now = from; now <= to; now += 1.0 / 16)
        {
            var hands = moving.Hands(Role.Follow, now);
            Assert.True(Math.Min(hands.Left.Up, hands.Right.Up) > 0.68 * (lead + follow) / 2, $"a hand at {Math.Min(hands.Left.Up, hands.Right.Up):F2} m on {now}");
        }
    }

    // Coming down from over her head they go before her face and not through her: no hand is in the middle of a trunk.
    [Theory]
    [InlineData("folded-quilt")]
    [InlineData("split-rail-cha-cha")]
    [InlineData("five-barns")]
    [InlineData("loose-shingle-schottische")]
    public void No_joined_hand_goes_through_a_body(string dance)
    {
        var (moving, _, follow) = Moving(dance);
        for (var now = 0.0; now < moving.End; now += 1.0 / 32)
        {
            var body = moving.Of(Role.Follow)!.At(now);
            var hands = moving.Hands(Role.Follow, now);
            foreach (var hand in (HandMoved[])[hands.Left, hands.Right])
            {
                if (hand.Joined == Pairs.None || hand.Up > Body.ShoulderHeight * follow || hand.Up < 0.55 * follow) continue;
                var seen = body.Seen(hand.At);
                var (u, v) = (seen.X / (0.06 * follow), seen.Y / (0.09 * follow));
                Assert.True((u * u) + (v * v) > 1, $"a hand {seen.X:F2} m ahead and {seen.Y:F2} m to the left of her middle on {now}");
            }
        }
    }
}
