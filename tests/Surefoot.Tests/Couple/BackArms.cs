using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>Whose arm lies round a back: the partner's, as in sweetheart and skaters, or the own one, which is a hammerlock.</summary>
public class BackArms
{
    private static readonly (double, double) Alike = (1.70, 1.70);

    // Common practice: in these holds his arm lies round her, and her hand is by her own side.
    [Theory]
    [InlineData("sweetheart", Pairs.RightRight, HandHeight.Shoulder)]
    [InlineData("left sweetheart", Pairs.LeftLeft, HandHeight.Shoulder)]
    [InlineData("skaters", Pairs.RightRight, HandHeight.Low)]
    [InlineData("left skaters", Pairs.LeftLeft, HandHeight.Low)]
    public void His_arm_comes_round_to_her_side(string hold, Pairs pair, HandHeight height)
    {
        var wind = HoldWinds.Of(Holds.Named(hold)!, pair, 1, Alike);
        Assert.InRange(wind.Follow, 200, 280);
        Assert.Equal(90, BackArm.HandBehind(wind.Follow, wind.Apart, 1.70, ArmSpan.Of(height, Alike, CoupleLimits.Usual).Lead), 1e-6);
    }

    [Fact]
    public void Straight_behind_at_a_distance_her_hand_lies_at_her_spine() =>
        Assert.InRange(BackArm.HandBehind(190, 0.85, 1.70, ArmSpan.Of(HandHeight.Low, Alike, CoupleLimits.Usual).Lead), 130, 200);

    [Fact]
    public void A_longer_arm_of_the_partner_spares_the_own_one()
    {
        for (var wind = 135; wind <= 270; wind += 15)
        {
            for (var apart = 0.30; apart <= 1.0; apart += 0.1)
            {
                var before = 361.0;
                for (var arm = 0.10; arm <= 1.6; arm += 0.05)
                {
                    var hand = BackArm.HandBehind(wind, apart, 1.70, arm);
                    Assert.True(hand <= before + 1e-9, $"{wind} degrees, {apart} m, arm {arm} m: {before} to {hand}");
                    before = hand;
                }

                Assert.Equal(90, before, 1e-6);
            }
        }
    }

    [Theory]
    [InlineData("Hammerlock ½ right, starting left", "")]
    [InlineData("Lead: step in place L R L R. Follow: step back L ⅛ right, step back R ⅛ right, step forward L ⅛ right, step forward R ⅛ right", "arm-wind")]
    public void A_hammerlock_is_one_only_where_the_page_says_so(string steps, string problem)
    {
        foreach (var mirrored in (bool[])[false, true])
        {
            var page = Page("two hands", "same, left free", $"1-4  {steps}\n5-6  Step in place L R, keep right hand\n7-8  Lead: step in place L R. Follow: step in place L ¼ left, step in place R ¼ left\n9-10  Step in place L R, take both hands (two hands)", "lead LOD, follow RLOD")
                .Replace("1-4  Lead: step in place L R L R", "1-4  Lead: step in place L R L R, lower right hand, release left hand", StringComparison.Ordinal)
                .Replace("starting left", "starting left, lower right hand, release left hand", StringComparison.Ordinal);
            var told = Read(mirrored ? Mirrored(page) : page).Problems.Where(p => p.Severity != Dance.Problems.Severity.Hint).Select(p => p.Name);
            Assert.Equal(problem.Length == 0 ? [] : [problem], told);
        }
    }

    [Fact]
    public void No_page_asks_a_shoulder_to_go_further_round_than_a_hammerlock_goes()
    {
        var page = Page("two hands", "same, left free", "1-2  Step in place L R, lower right hand, release left hand\n3-6  Hammerlock full right, starting left\n7-8  Step in place L R, keep right hand\n9-12  Lead: step in place L R L R. Follow: step in place L ¼ left, step in place R ¼ left, step in place L ¼ left, step in place R ¼ left\n13-14  Step in place L R, take both hands (two hands)", "lead LOD, follow RLOD");
        var trouble = Assert.Single(Read(page).Couple!.Hands!.Troubles);
        Assert.Contains(trouble.Kind, (HandTroubleKind[])[HandTroubleKind.Wind, HandTroubleKind.Overhead]);
        Assert.True(trouble.Amount > 200, $"{trouble.Amount:0} degrees");
        Assert.False(trouble.Hammerlock);
    }

    // Common practice, no source: from crossed hands, right over left, a full turn to the right ends left over
    // right, and one to the left in a knot.
    [Theory]
    [InlineData("crossed hands", "right", -1)]
    [InlineData("crossed hands", "left", 3)]
    [InlineData("left crossed hands", "left", 1)]
    [InlineData("left crossed hands", "right", -3)]
    [InlineData("two hands", "right", -2)]
    [InlineData("two hands", "left", 2)]
    public void A_full_turn_under_both_pairs_twists_them(string hold, string way, int halves)
    {
        var reading = Read(Page(hold, "same, left free", $"1-4  Lead: step in place L R L R, raise both hands. Follow: step in place L ¼ {way}, step in place R ¼ {way}, step in place L ¼ {way}, step in place R ¼ {way}\n5-6  Step in place L R, lower both hands\n7-8  Step in place L R, keep both hands", "lead outside, follow inside"));
        Assert.Equal(halves, Assert.Single(reading.Couple!.Hands!.Troubles).Twist.Halves);
    }

    [Fact]
    public void Two_who_both_turn_under_come_out_clear()
    {
        var page = Page("two hands", "opposite, lead left free", "1-4  Lead: step in place L ¼ left, step in place R ¼ left, step in place L ¼ left, step in place R ¼ left, raise both hands. Follow: step in place R ¼ right, step in place L ¼ right, step in place R ¼ right, step in place L ¼ right\n5-6  Step in place L R (two hands)", "lead outside, follow inside");
        Assert.Empty(Read(page).Couple!.Hands!.Troubles);
    }

    [Fact]
    public void Every_hold_is_the_mirror_image_of_its_mirror_image()
    {
        foreach (var hold in Holds.All)
        {
            var mirror = Holds.Mirror(hold);
            Assert.Equal(hold, Holds.Mirror(mirror));
            Assert.Equal((hold.Ahead, -hold.Left, new Facing(-hold.FollowTurn.Eighths)), (mirror.Ahead, mirror.Left, new Facing(mirror.FollowTurn.Eighths)));
            Assert.Equal(hold.Joined.Mirrored(), mirror.Joined);
            foreach (var pair in PairsOf.Each.Where(p => hold.Joined.HasFlag(p)))
            {
                var (here, there) = (HoldWinds.Of(hold, pair, 1, Alike), HoldWinds.Of(mirror, pair.Mirrored(), 1, Alike));
                Assert.Equal((Math.Round(here.Lead, 6), Math.Round(here.Follow, 6), Math.Round(here.Apart, 6)), (Math.Round(there.Lead, 6), Math.Round(there.Follow, 6), Math.Round(there.Apart, 6)));
            }
        }
    }
}
