using CsCheck;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Outside;

/// <summary>Arms and bodies against published measurements of people.</summary>
public class PublishedBodies
{
    // ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), means and standard deviations in mm computed from its
    // open data: 4,082 men, 1,986 women.
    private const double ManStature = 1756.2, ManStatureSd = 68.6, WomanStature = 1628.5, WomanStatureSd = 64.2;
    private const double ManRaised = 2148.6, ManRaisedSd = 100.1, WomanRaised = 1972.9, WomanRaisedSd = 94.1;

    /// <summary>What the table has, its men's mean and its women's mean in mm.</summary>
    public static TheoryData<string, double, double, double> Measured => new()
    {
        { "straight arm to the grip: upper arm and forearm to the middle of the grip", Body.ArmToGrip, 335.2 + 349.0, 311.2 + 317.7 },
        { "half of biacromial breadth", Body.HalfShoulders, 415.7 / 2, 365.3 / 2 },
        { "acromial height", Body.ShoulderHeight, 1440.7, 1335.1 },
        { "acromial height less the upper arm", Body.ElbowHeight, 1440.7 - 335.2, 1335.1 - 311.2 },
        { "half of chest depth", Body.HalfDepth, 253.8 / 2, 247.4 / 2 },
        { "standing overhead grip", Body.RaisedGrip, ManRaised, WomanRaised },
        { "foot length", Body.FootLength, 271.2, 246.3 },
        { "foot breadth", Body.FootBreadth, 101.9, 92.7 },
    };

    [Theory]
    [MemberData(nameof(Measured))]
    public void Measures_are_the_mean_of_the_two_columns_of_ANSUR_II(string what, double fraction, double man, double woman)
    {
        Assert.True(what.Length > 0);
        Assert.Equal(((man / ManStature) + (woman / WomanStature)) / 2, fraction, 0.001);
    }

    // Drillis and Contini 1966, as given by Winter, Biomechanics and Motor Control: upper arm 0.186, forearm 0.146,
    // hand 0.108, shoulder height 0.818. A grip lies 0.6 of the hand's length behind the fingertips (Pheasant).
    [Fact]
    public void Arms_agree_with_Drillis_and_Contini_within_four_percent()
    {
        Assert.InRange(Body.ArmToGrip / (0.186 + 0.146 + (0.4 * 0.108)), 0.96, 1.04);
        Assert.InRange(Body.ShoulderHeight / 0.818, 0.96, 1.04);
        Assert.InRange(Body.ElbowHeight / (0.818 - 0.186), 0.96, 1.04);
    }

    // Shoulder to grip of British adults of 19 to 65 (Pheasant, Bodyspace): men 610, 665 and 715 mm at the 5th, 50th
    // and 95th percentile, women 555 and 600 mm at the 5th and 50th. The women's deviation follows from those two.
    [Fact]
    public void Arms_agree_with_the_shoulder_grip_length_of_British_adults()
    {
        Assert.InRange(Body.ArmToGrip * ManStature, 610, 715);
        Assert.InRange(Body.ArmToGrip * WomanStature, 555, 600 + (600 - 555));
        Assert.InRange(Body.ArmToGrip * ManStature / 665, 0.94, 1.06);
        Assert.InRange(Body.ArmToGrip * WomanStature / 600, 0.94, 1.06);
    }

    // Of random pairs of strangers in ANSUR II a man's raised grip clears a woman's head by 520 mm on average, 326 mm
    // at the 5th percentile and never less than nought; a woman's clears a man's by 216 mm on average, 26 mm at
    // the 5th percentile, less than nought for 3 percent and less than 100 mm for 16 percent.
    [Fact]
    public void Under_the_arms_of_random_pairs_there_is_as_much_room_as_measured()
    {
        var (he, she) = (Room(ManRaised, ManRaisedSd, WomanStature, WomanStatureSd), Room(WomanRaised, WomanRaisedSd, ManStature, ManStatureSd));
        Assert.Equal(520, he.Average(), 5.0);
        Assert.Equal(326, he[he.Length / 20], 10.0);
        Assert.InRange(he.Count(r => r < 0) / (double)he.Length, 0, 0.0005);
        Assert.Equal(216, she.Average(), 5.0);
        Assert.Equal(26, she[she.Length / 20], 10.0);
        Assert.Equal(0.03, she.Count(r => r < 0) / (double)she.Length, 0.01);
        Assert.Equal(0.16, she.Count(r => r < 100) / (double)she.Length, 0.02);
        // The same pairs under arms made from the fraction alone: everybody's arms as long as their stature has them.
        var (model, women) = (Room(Body.RaisedGrip * ManStature, Body.RaisedGrip * ManStatureSd, WomanStature, WomanStatureSd), Room(Body.RaisedGrip * WomanStature, Body.RaisedGrip * WomanStatureSd, ManStature, ManStatureSd));
        Assert.Equal(520, model.Average(), 15.0);
        Assert.Equal(216, women.Average(), 15.0);
        Assert.Equal(0.03, women.Count(r => r < 0) / (double)women.Length, 0.02);

        static double[] Room(double raised, double raisedSd, double stature, double statureSd)
        {
            var random = new PCG(1, 2014);
            return [.. Enumerable.Range(0, 20_000).Select(_ => raised + (raisedSd * Bell(random)) - stature - (statureSd * Bell(random))).Order()];
        }
    }

    [Fact]
    public void A_page_warns_of_low_arms_for_as_many_random_pairs_as_measured()
    {
        var random = new PCG(1, 15007);
        const int pairs = 300;
        var warned = 0;
        for (var i = 0; i < pairs; i++)
        {
            var (lead, follow) = (Math.Round((WomanStature + (WomanStatureSd * Bell(random))) / 1000, 3), Math.Round((ManStature + (ManStatureSd * Bell(random))) / 1000, 3));
            var page = Page("two hands", FormattableString.Invariant($"opposite, lead left free\nStature: lead {lead}, follow {follow}"), "1-4  Lead: step in place L R L R, release right hand. Follow: step in place R ¼ right under his left hand, step in place L ¼ right, step in place R ¼ right, step in place L ¼ right\n5-6  Step in place L R, take both hands (two hands)");
            var low = Read(page).Problems.Any(p => p.Name == "arm-low");
            Assert.Equal(lead * Body.RaisedGrip < follow + ArmSpan.OverTheHead, low);
            warned += low ? 1 : 0;
        }

        // Less than nought for 3 percent of pairs; here two centimetres of room are asked for as well.
        Assert.InRange(warned / (double)pairs, 0.005, 0.07);
    }

    public static TheoryData<string, Pairs, bool> AtTheShoulder
    {
        get
        {
            var all = new TheoryData<string, Pairs, bool>();
            foreach (var hold in Holds.All.Where(h => h.Kind is "closed" or "promenade" or "sweetheart" or "shadow" or "right side to right side"))
            {
                foreach (var pair in PairsOf.Each.Where(p => hold.Joined.HasFlag(p)))
                {
                    all.Add(hold.Name, pair, true);
                    all.Add(hold.Name, pair, false);
                }
            }

            return all;
        }
    }

    // Horizontal adduction 135 degrees across the front and horizontal abduction 30 to 45 degrees behind the line of
    // the shoulders: from memory, not read in a source. Abduction to 180 and flexion to 180 (AAOS, in the tables of
    // Davis's goniometry) leave the height of the shoulder to every arm.
    [Theory]
    [MemberData(nameof(AtTheShoulder))]
    public void Holds_at_the_shoulder_ask_no_shoulder_for_more_than_its_range(string name, Pairs pair, bool lead)
    {
        const double adduction = 135, abduction = 45, stature = Body.ReferenceStature;
        var hold = Holds.Named(name)!;
        var wind = HoldWinds.Of(hold, pair, 1, (stature, stature));
        var (his, hers) = (Shoulder(Spot.Origin, 0, pair.LeadHand()), Shoulder(new(hold.Ahead, hold.Left), hold.FollowTurn.Eighths, pair.FollowHand()));
        // The hands meet half way, and no nearer to either than the front of the chest; round a back, by the shoulder they come round to.
        var hand = wind.Follow > 130 ? hers + Ahead(hold.FollowTurn.Eighths, 0.10) : wind.Lead > 130 ? his + Ahead(0, 0.10) : (his + hers) * 0.5;
        hand = Before(Before(hand, Spot.Origin, 0), new(hold.Ahead, hold.Left), hold.FollowTurn.Eighths);
        var (shoulder, facing, side) = lead ? (his, 0, pair.LeadHand()) : (hers, hold.FollowTurn.Eighths, pair.FollowHand());
        var way = Spot.Origin.Moved(new(-facing), (hand - shoulder).X, (hand - shoulder).Y);
        var across = 90 - (Math.Atan2(way.Y * (side == Foot.Left ? 1 : -1), way.X) * 180 / Math.PI);
        // A bent elbow points outwards, and the upper arm with it: upper arm 0.191, forearm to the grip 0.197 of stature.
        var (upper, fore) = (0.191 * stature, 0.197 * stature);
        var reach = Math.Clamp(way.Length, Math.Abs(upper - fore) + 0.001, upper + fore);
        var bent = Math.Acos(Math.Clamp(((upper * upper) + (reach * reach) - (fore * fore)) / (2 * upper * reach), -1, 1)) * 180 / Math.PI;
        Assert.True(way.Length <= upper + fore + 0.01, $"{way.Length:0.00} m to the hand");
        // Somewhere between a straight line and the elbow all the way out there is room.
        Assert.True(across - bent <= adduction && across >= -abduction, $"{across - bent:0} to {across:0} degrees");
    }

    private static Spot Ahead(int facing, double metres) => Spot.Origin.Moved(new(facing), metres, 0);

    private static Spot Shoulder(Spot middle, int facing, Foot side) => middle.Moved(new(facing), 0, Body.HalfShoulders * Body.ReferenceStature * (side == Foot.Left ? 1 : -1));

    private static Spot Before(Spot hand, Spot middle, int facing)
    {
        var (seen, chest) = (Spot.Origin.Moved(new(-facing), (hand - middle).X, (hand - middle).Y), Body.HalfDepth * Body.ReferenceStature);
        return Math.Abs(seen.Y) < Body.HalfShoulders * Body.ReferenceStature && Math.Abs(seen.X) < chest ? middle.Moved(new(facing), chest, seen.Y) : hand;
    }

    // A number of the normal distribution, near enough: twelve even ones added up.
    private static double Bell(PCG random)
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++) sum += random.Next() / 4294967296.0;
        return sum;
    }
}
