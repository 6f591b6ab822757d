using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>Over whose head a pair of raised hands is.</summary>
internal static class UnderHands
{
    /// <summary>For each moment 1 for the lead's head, 0 for the follow's, a share where both turn or nobody does.</summary>
    public static double[] Of(PairTrack pair, DanceMotion motion, IReadOnlyList<Moment> moments, (double Lead, double Follow) statures)
    {
        var over = new double[moments.Count];
        Array.Fill(over, 0.5);
        var plain = WindTrack.Of(motion, moments, pair.Pair, (0, 0), statures);
        for (var m = 1; m < over.Length; m++)
        {
            if (pair.Heights[m] != HandHeight.Raised) continue;
            var last = m;
            while (last + 1 < over.Length && pair.Heights[last + 1] == HandHeight.Raised) last++;
            // Coming down is part of it: a pass may be made on that action.
            var end = Math.Min(last + 1, over.Length - 1);
            var (lead, follow) = (Passes(w => w.Lead), Passes(w => w.Follow));
            if (lead + follow == 0) (lead, follow) = (Turned(motion.Of(Role.Lead)!, moments[m - 1].LeadStance, moments[end].LeadStance), Turned(motion.Of(Role.Follow)!, moments[m - 1].FollowStance, moments[end].FollowStance));
            for (var k = m; k <= last && lead + follow > 0; k++) over[k] = (double)lead / (lead + follow);
            m = last;

            // Whole turns by which the arms lie otherwise at the end than bodies alone have wound them.
            int Passes(Func<Wind, double> whose) =>
                (int)Math.Abs(Math.Round(((whose(pair.Winds[end]) - whose(plain[end])) - (whose(pair.Winds[m - 1]) - whose(plain[m - 1]))) / 360));
        }

        return over;
    }

    private static int Turned(RoleMotion role, int from, int to)
    {
        var eighths = 0;
        for (var s = from + 1; s <= to; s++) eighths += Math.Abs(role.Stances[s].Turned);
        return eighths;
    }
}
