using Surefoot.Dance.Insight;

namespace Surefoot.Likeness;

/// <summary>
/// How near two counts are, in points: <see cref="Alike"/> for the same, less for kin and for mirror images, below
/// nothing for counts that have nothing to do with each other. All points are working values; what was tried is in
/// docs/likeness.md.
/// </summary>
internal static class Nearness
{
    /// <summary>Points of a count that is danced alike by both roles.</summary>
    public const int Alike = 2 * RoleAlike;

    private const int RoleAlike = 4, RoleKin = 2, RoleMirrored = 1, RoleOtherWay = 0, RoleOther = -3;

    public static int Of(CountOfTwo a, CountOfTwo b) =>
        a.Lead == a.Follow && b.Lead == b.Follow ? 2 * Of(a.Lead, b.Lead) : Of(a.Lead, b.Lead) + Of(a.Follow, b.Follow);

    /// <summary>For one role.</summary>
    public static int Of(CountSteps a, CountSteps b)
    {
        if (a == b) return RoleAlike;
        if (a == b.Mirrored) return RoleMirrored;
        var (plainA, plainB) = (ActionKin.Plain(a), ActionKin.Plain(b));
        if (plainA == plainB) return RoleKin;
        if (plainA == plainB.Mirrored) return RoleOtherWay;
        // The same rhythm on the same feet, only another way.
        var (sum, moments) = (0, 0);
        for (var m = 0; m < CountSteps.Moments; m++)
        {
            if (plainA[m].IsNothing && plainB[m].IsNothing) continue;
            moments++;
            sum += Of(plainA[m], plainB[m]);
        }

        return moments == 0 ? RoleKin : (int)Math.Floor((double)sum / moments);
    }

    private static int Of(CountStep a, CountStep b)
    {
        if (a == b) return RoleKin;
        return ActionKin.Of(a) == ActionKin.Of(b) && a.Foot == b.Foot && a.Turn == b.Turn ? RoleOtherWay : RoleOther;
    }
}
