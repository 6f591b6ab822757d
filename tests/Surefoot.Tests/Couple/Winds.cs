using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;

namespace Surefoot.Tests.Couple;

/// <summary>
/// How arms lie, against figures made by hand for shoulders 0.20 m from the middle and two dancers of 1.70 m in
/// the middle of their holds; here they are 0.1955 m from it, which turns no
/// direction by more than 12 degrees.
/// </summary>
public class Winds
{
    private const double Tolerance = 12;
    private static readonly (double, double) Statures = (1.70, 1.70);

    /// <summary>Hold before, pair, his and her turn in eighths, where she is afterwards in the floor's frame, winds before and after (lead, follow).</summary>
    public static TheoryData<string, Pairs, int, int, double, double, int[]> Made => new()
    {
        { "sweetheart", Pairs.RightRight, 0, -4, 0.10, -0.45, [76, 233, 68, 68] },
        { "sweetheart", Pairs.LeftLeft, 0, -4, 0.15, -0.40, [-53, 104, -81, 279] },
        { "sweetheart", Pairs.RightRight, 0, -8, 0.15, -0.40, [76, 233, 76, -127] },
        { "sweetheart", Pairs.LeftLeft, 0, -8, 0.15, -0.40, [-53, 104, -53, 464] },
        { "sweetheart", Pairs.RightRight, -4, -4, -0.15, -0.40, [76, 233, -53, 104] },
        { "sweetheart", Pairs.LeftLeft, -4, -4, -0.15, -0.40, [-53, 104, 76, 233] },
        { "sweetheart", Pairs.RightRight, -8, -8, 0.15, -0.40, [76, 233, -284, -127] },
        { "sweetheart", Pairs.LeftLeft, -8, -8, 0.15, -0.40, [-53, 104, 307, 464] },
        { "shadow", Pairs.RightRight, -4, 0, 0.45, 0, [24, 156, -156, 204] },
        { "shadow", Pairs.LeftLeft, -4, 0, 0.45, 0, [24, 156, 204, 204] },
        { "two hands", Pairs.LeftRight, 0, 4, 0.05, -0.38, [15, 15, -85, 265] },
        { "two hands", Pairs.RightLeft, 0, 4, 0.05, -0.38, [15, 15, 74, -254] },
        { "two hands", Pairs.LeftRight, 0, -8, 0.75, 0, [15, 15, 15, -345] },
        { "two hands", Pairs.RightLeft, 0, -8, 0.75, 0, [15, 15, 15, 375] },
        { "open", Pairs.RightLeft, 0, -8, 0, -0.65, [90, 90, 90, 450] },
        { "skaters", Pairs.RightRight, 0, 0, 0, -0.42, [90, 270, 90, 270] },
        { "wrap", Pairs.RightLeft, 0, 0, 0.05, -0.38, [74, -254, 74, -254] },
        { "left sweetheart", Pairs.LeftLeft, 0, 0, 0.15, 0.40, [76, 233, 76, 233] },
    };

    [Theory]
    [MemberData(nameof(Made))]
    public void Come_out_as_made_by_hand(string hold, Pairs pair, int leadTurn, int followTurn, double x, double y, int[] winds)
    {
        var start = Holds.Named(hold)!;
        var motion = new DanceMotion(
        [
            new(Role.Lead, [Standing(0, Spot.Origin, 0, 0), Standing(1, Spot.Origin, leadTurn, leadTurn)]),
            new(Role.Follow, [Standing(0, new(start.Ahead, start.Left), start.FollowTurn.Eighths, 0), Standing(1, new(x, y), start.FollowTurn.Eighths + followTurn, followTurn)]),
        ]);
        Moment At(int count) => new(Count.At(count), count, count, new(0), new(0), count > 0, start.Joined, Pairs.None, new(null, true, default, 1));
        var found = WindTrack.Of(motion, [At(0), At(1)], pair, HoldWinds.WholeTurns(start, pair), Statures);
        Assert.Equal(winds[0], found[0].Lead, Tolerance);
        Assert.Equal(winds[1], found[0].Follow, Tolerance);
        Assert.Equal(winds[2], found[1].Lead, Tolerance);
        Assert.Equal(winds[3], found[1].Follow, Tolerance);
    }

    private static Stance Standing(int count, Spot at, int facing, int turned) =>
        new(Count.At(count), new(at, new(facing)), new(at, new(facing)), at, new(facing), Weight.Both, count - 1, turned);
}
