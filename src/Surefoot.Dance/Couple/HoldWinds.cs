using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>How the arms of a hold already lie round somebody before anybody turns.</summary>
public static class HoldWinds
{
    /// <summary>
    /// Whole turns that a pair of a hold has beyond the shortest way, for (lead, follow). In sweetheart, skaters
    /// and the like the lead's arm lies round her back to the hand on the far side; in the wrap her own left arm
    /// lies across her front, and in the hammerlock behind
    /// her back. In the mirror image of a hold the other arm lies so. Common practice.
    /// </summary>
    public static (int Lead, int Follow) WholeTurns(Hold? hold, Pairs pair) =>
        hold is null ? (0, 0) : (hold.Kind, hold.OtherWay ? pair.Mirrored() : pair) switch
        {
            ("sweetheart" or "skaters", Pairs.RightRight) => (0, 1),
            ("wrap", Pairs.RightLeft) => (0, -1),
            ("hammerlock", Pairs.RightLeft or Pairs.LeftLeft) => (0, 1),
            _ => (0, 0),
        };

    /// <summary>The winds of a pair when both stand in the very middle of a hold.</summary>
    public static Wind Of(Hold hold, Pairs pair, double scale, (double Lead, double Follow) statures) => WindTrack.At(
        new(Spot.Origin, 0), new(new Spot(hold.Ahead, hold.Left) * scale, hold.FollowTurn.Degrees), pair, WholeTurns(hold, pair), statures);
}
