using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Moving;

/// <summary>Which named hold the couple stands in, at each moment. While they turn none is asked of them; two who turn as one stay in theirs.</summary>
internal static class HeldOn
{
    /// <summary>So far from where a hold has her, in metres for 1.70 m, she still stands in it. Working value.</summary>
    private const double Near = 0.28;

    public static string?[] Of(DanceScore score, DanceMotion motion, IReadOnlyList<Moment> moments)
    {
        var scale = (OneDancer.StatureOf(score.Facts, Role.Lead) + OneDancer.StatureOf(score.Facts, Role.Follow)) / 2 / Body.ReferenceStature;
        var (leads, follows) = (motion.Of(Role.Lead)!.Stances, motion.Of(Role.Follow)!.Stances);
        var names = new string?[moments.Count];
        for (var m = 0; m < names.Length; m++)
        {
            var moment = moments[m];
            names[m] = !moment.Where.Wide ? moment.Where.Hold
                : m > 0 && Holds.Named(names[m - 1]) is { } hold && moment.Joined == hold.Joined && moment.Raised == Pairs.None && NearestHold.Looks(hold, moment.Apart) && StandsIn(hold, m) ? hold.Name : null;
        }

        return names;

        bool StandsIn(Hold hold, int m)
        {
            var (lead, follow) = (leads[moments[m].LeadStance], follows[moments[m].FollowStance]);
            return (follow.Middle - Spot.Origin.Moved(lead.Facing, hold.Ahead * scale, hold.Left * scale) - lead.Middle).Length <= Near * scale;
        }
    }
}
