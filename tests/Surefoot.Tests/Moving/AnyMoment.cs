using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Moving;

/// <summary>Between the counts everybody moves as dancers do, and on the counts as the motion says.</summary>
public class AnyMoment
{
    private const double Step = 1.0 / 64;

    public static TheoryData<string> Dances => DemoNotebook.Dances;

    /// <summary>Those in which nobody hops, or jumps with both feet.</summary>
    public static TheoryData<string> Walked =>
        [.. DemoNotebook.Dances.Select(d => d.Data).Where(d => !DemoNotebook.Read(d).Score.Roles.Any(r => r.Steps.Any(s => s.Kind == ActionKind.Hop || s.Foot == FootUse.Both)))];

    private static MovingDance Moving(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        return MovingDance.Of(reading.Score, reading.Motion, reading.Couple);
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void On_each_count_everybody_is_where_the_motion_says(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        var moving = MovingDance.Of(reading.Score, reading.Motion, reading.Couple);
        foreach (var role in reading.Motion.Roles)
        {
            foreach (var stance in role.Stances)
            {
                var at = moving.Of(role.Role)!.At(stance.At.Value.ToDouble());
                // A sway takes the body towards the foot, which stays.
                var sways = stance.Step >= 0 && reading.Score.Of(role.Role)!.Steps[stance.Step].Kind is ActionKind.Sway or ActionKind.Bump;
                if (sways) Assert.InRange((stance.Middle - at.Middle).Length, 0, 0.08);
                else Near(stance.Middle, at.Middle);
                Assert.Equal(0, new Facing((int)Math.Round(at.Angle / 45)).Eighths - stance.Facing.Eighths);
                foreach (var foot in (Foot[])[Foot.Left, Foot.Right])
                {
                    // A foot in the air is not where it last stood.
                    if (stance.Weight.Free() == foot) continue;
                    Near(stance.Foot(foot).At, at.Foot(foot).At);
                    // Heels that part twist the feet; nothing else does.
                    var twist = Math.Abs(Math.IEEERemainder(at.Foot(foot).Angle - (45.0 * stance.Foot(foot).Facing.Eighths), 360));
                    Assert.InRange(twist, 0, stance.Step >= 0 && reading.Score.Of(role.Role)!.Steps[stance.Step].Kind == ActionKind.Swivel ? 30 : 1e-6);
                    if (stance.Weight.Free() is not null) Assert.True(at.Foot(foot).Weight > 0.99 || at.Foot(foot).Up > 0, $"{role.Role} {stance.At}");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void No_foot_slides_while_it_carries_weight(string dance)
    {
        var moving = Moving(dance);
        foreach (var dancer in moving.Dancers)
        {
            var before = dancer.At(0);
            for (var now = Step; now < moving.End; now += Step)
            {
                var at = dancer.At(now);
                foreach (var foot in (Foot[])[Foot.Left, Foot.Right])
                {
                    if (before.Foot(foot).Weight <= 0 || at.Foot(foot).Weight <= 0) continue;
                    Near(before.Foot(foot).At, at.Foot(foot).At);
                    Assert.Equal(0, at.Foot(foot).Up, 1e-9);
                }

                before = at;
            }
        }
    }

    [Theory]
    [MemberData(nameof(Walked))]
    public void Without_a_hop_or_a_jump_somebody_always_stands_on_the_floor(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        foreach (var dancer in Moving(dance).Dancers)
        {
            for (var now = 0.0; now < reading.Score.Counts.ToDouble(); now += Step)
            {
                var at = dancer.At(now);
                Assert.True(at.Left.Weight + at.Right.Weight > 0.999, $"{now}: {at.Left.Weight} and {at.Right.Weight}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Nothing_jumps(string dance)
    {
        var moving = Moving(dance);
        foreach (var dancer in moving.Dancers)
        {
            // A hundredth of a sixty-fourth of a count moves nothing by more than a hand's speed of 20 m a count.
            const double Instant = Step / 100, Most = 20 * Instant;
            for (var now = 0.0; now < moving.End; now += Step / 3)
            {
                var (a, b) = (dancer.At(now), dancer.At(now + Instant));
                var (handsA, handsB) = (moving.Hands(dancer.Role, now), moving.Hands(dancer.Role, now + Instant));
                Assert.True((a.Middle - b.Middle).Length < Most, $"middle at {now}");
                Assert.True(Math.Abs(a.Angle - b.Angle) < 4000 * Instant, $"facing at {now}");
                Assert.True((a.Left.At - b.Left.At).Length < Most && (a.Right.At - b.Right.At).Length < Most, $"foot at {now}");
                Assert.True(Math.Abs(a.Left.Up - b.Left.Up) < Most && Math.Abs(a.Right.Up - b.Right.Up) < Most, $"foot's height at {now}");
                Assert.True((handsA.Left.At - handsB.Left.At).Length < Most, $"left hand of the {dancer.Role} at {now}: {handsA.Left} {handsB.Left}");
                Assert.True((handsA.Right.At - handsB.Right.At).Length < Most, $"right hand of the {dancer.Role} at {now}: {handsA.Right} {handsB.Right}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Bodies_speed_up_and_slow_down_without_a_jerk(string dance)
    {
        foreach (var dancer in Moving(dance).Dancers)
        {
            const double Instant = 1e-4;
            for (var now = Step; now < 64; now += Step / 2)
            {
                var (a, b, c) = (dancer.At(now - Instant).Middle, dancer.At(now).Middle, dancer.At(now + Instant).Middle);
                // The speed before and after an instant differs by no more than the instant allows.
                Assert.True(((b - a) - (c - b)).Length / Instant < 0.05, $"at {now}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Joined_hands_are_in_one_place_and_within_both_arms(string dance)
    {
        var moving = Moving(dance);
        if (moving.Of(Role.Lead) is not { } lead) return;
        var follow = moving.Of(Role.Follow)!;
        for (var now = 0.0; now < moving.End; now += 1.0 / 8)
        {
            var (his, hers) = (moving.Hands(Role.Lead, now), moving.Hands(Role.Follow, now));
            foreach (var pair in PairsOf.Each)
            {
                var (a, b) = (pair.LeadHand() == Foot.Left ? his.Left : his.Right, pair.FollowHand() == Foot.Left ? hers.Left : hers.Right);
                if (a.Joined != pair || b.Joined != pair) continue;
                Within(lead, now, pair.LeadHand(), a, pair);
                Within(follow, now, pair.FollowHand(), b, pair);
            }
        }

        // Where a hand lies on the partner, as in a closed hold, there are two places; else there is one.
        void Within(MovingDancer dancer, double now, Foot hand, HandMoved at, Pairs pair)
        {
            var away = (at.At - dancer.At(now).Shoulder(hand, dancer.Stature)).Length;
            var reach = ArmReach.Across(at.Up, dancer.Stature);
            Assert.True(away <= reach + 0.08, $"{dancer.Role}'s {hand} hand ({pair}) is {away:0.00} m from the shoulder at {now}; the arm gives {reach:0.00} m");
        }
    }

    [Fact]
    public void The_same_moment_is_the_same_every_time()
    {
        var (one, two) = (Moving("circle/weathervane.dance"), Moving("circle/weathervane.dance"));
        for (var now = 0.0; now < one.End; now += 0.37)
        {
            Assert.Equal(one.Of(Role.Follow)!.At(now), two.Of(Role.Follow)!.At(now));
            Assert.Equal(one.Hands(Role.Follow, now), two.Hands(Role.Follow, now));
        }
    }

    private static void Near(Spot a, Spot b)
    {
        Assert.Equal(a.X, b.X, 1e-9);
        Assert.Equal(a.Y, b.Y, 1e-9);
    }
}
