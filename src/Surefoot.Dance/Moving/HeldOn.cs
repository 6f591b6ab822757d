using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Moving;

/// <summary>
/// Which named hold the couple stands in, at each moment. While they turn none is asked of them; two who turn as one stay
/// in theirs, or come into the next one side by side or one behind the other.
/// </summary>
/// <param name="Names">For each moment the hold they stand in then, or null.</param>
/// <param name="Midway">For each moment the hold through which they come into it, half way, or null.</param>
internal sealed record HeldOn(string?[] Names, string?[] Midway)
{
    /// <summary>So far from where a hold has her, in metres for 1.70 m, she still stands in it. Working value.</summary>
    private const double Near = 0.28;

    /// <summary>The same while a last step brings them into it or a first one out of it.</summary>
    private const double OnTheWay = 0.45;

    // Who turn as one go from one of these into the other with no hand let go.
    private static readonly string[] OneFamily = ["sweetheart", "shadow", "lead in front"];

    public static HeldOn Of(DanceScore score, DanceMotion motion, IReadOnlyList<Moment> moments)
    {
        var scale = (OneDancer.StatureOf(score.Facts, Role.Lead) + OneDancer.StatureOf(score.Facts, Role.Follow)) / 2 / Body.ReferenceStature;
        var (leads, follows) = (motion.Of(Role.Lead)!.Stances, motion.Of(Role.Follow)!.Stances);
        var (names, midway) = (new string?[moments.Count], new string?[moments.Count]);
        for (var m = 0; m < names.Length; m++)
        {
            names[m] = !moments[m].Where.Wide ? moments[m].Where.Hold : m > 0 && Holds.Named(names[m - 1]) is { } before ? StillIn(before, m)?.Name : null;
            if (m > 0) midway[m] = Between(m);
        }

        // On the way into a hold hands that are joined already, and not up, are as in the hold once they stand there.
        for (var m = names.Length - 2; m >= 0; m--)
        {
            if (names[m] is null && SameFacings(m, m + 1) && Holds.Named(names[m + 1]) is { } next && Pairs.None != moments[m].Joined && (moments[m].Joined & ~next.Joined) == Pairs.None && Stand(next, m, OnTheWay)) names[m] = next.Name;
        }

        return new(names, midway);

        Hold? StillIn(Hold before, int m)
        {
            if (moments[m].Joined != before.Joined) return null;
            // A step out of it, nobody turning yet: hands that are not up stay as they are.
            if (SameFacings(m - 1, m) && Stand(before, m, OnTheWay)) return before;
            if (moments[m].Raised != Pairs.None) return null;
            if (Stand(before, m, Near)) return before;
            if (!OneFamily.Contains(before.Kind)) return null;
            return Holds.All.Where(h => OneFamily.Contains(h.Kind) && h.Joined == before.Joined && Stand(h, m, Near)).MinBy(h => Away(h, m));
        }

        bool Stand(Hold hold, int m, double near) => NearestHold.Looks(hold, moments[m].Apart) && Away(hold, m) <= near * scale;

        double Away(Hold hold, int m)
        {
            var (lead, follow) = (leads[moments[m].LeadStance], follows[moments[m].FollowStance]);
            return (follow.Middle - Spot.Origin.Moved(lead.Facing, hold.Ahead * scale, hold.Left * scale) - lead.Middle).Length;
        }

        bool SameFacings(int m, int n) => moments[m].Lead == moments[n].Lead && moments[m].Follow == moments[n].Follow;

        // Turned about as one, the one whom they turn towards is in front half way.
        string? Between(int m)
        {
            if (Holds.Named(names[m - 1]) is not { Kind: "sweetheart" } from || Holds.Named(names[m]) is not { Kind: "sweetheart" } to || from.OtherWay == to.OtherWay) return null;
            var turned = Turned(leads, moments[m - 1].LeadStance, moments[m].LeadStance);
            if (turned == 0 || turned != Turned(follows, moments[m - 1].FollowStance, moments[m].FollowStance)) return null;
            return turned > 0 == from.OtherWay ? "shadow" : "lead in front";
        }
    }

    private static int Turned(ValueList<Stance> stances, int from, int to)
    {
        var eighths = 0;
        for (var s = from + 1; s <= to; s++) eighths += stances[s].Turned;
        return eighths;
    }
}
