using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Says by how much one dancer's steps are too short or too long for an impossible stretch: the stretch is
/// solved once more with that dancer's steps let go beyond their limits, at a high price.
/// </summary>
internal static class Shortfalls
{
    /// <summary>Metres beyond a limit that are rounding.</summary>
    private const double Bit = 0.005;

    /// <returns>For the dancer who is nearer to what is needed; nothing where no lengths at all would do.</returns>
    public static Shortfall? Of(CoupleSetting setting, ILinearSolver solver, Count first, Count last)
    {
        var from = setting.Moments.FindIndex(m => m.At >= first) - 1;
        var to = setting.Moments.FindLastIndex(m => m.At <= last);
        Shortfall? best = null;
        foreach (var role in (Role[])[Role.Lead, Role.Follow])
        {
            var program = new CoupleProgram(setting, to, role);
            program.Keep(from, to);
            if (program.Solve(solver) is not { InPlace: true } places) continue;
            var one = role == Role.Lead ? Of(setting.Lead, setting.LeadRoom, places.Lead.Lengths, first, last) : Of(setting.Follow, setting.FollowRoom, places.Follow.Lengths, first, last);
            if (one is not null && (best is null || Math.Abs(one.Needed - one.Limit) < Math.Abs(best.Needed - best.Limit))) best = one;
        }

        return best;
    }

    // Of the steps that go one way, those of the step that is furthest beyond its limit.
    private static Shortfall? Of(Footwork work, StepLength[] room, double[] lengths, Count first, Count last)
    {
        var (worst, most) = (-1, Bit);
        for (var i = 0; i < lengths.Length; i++)
        {
            if (!Counted(work, i, first, last) || Beyond(i) <= most) continue;
            (worst, most) = (i, Beyond(i));
        }

        if (worst < 0) return null;
        var tooFar = lengths[worst] < room[worst].Least;
        var direction = work.Role.Steps[worst].Direction;
        var (steps, needed, limit) = (0, 0.0, 0.0);
        for (var i = 0; i < lengths.Length; i++)
        {
            if (!Counted(work, i, first, last) || work.Role.Steps[i].Direction != direction) continue;
            steps++;
            needed += lengths[i];
            limit += tooFar ? room[i].Least : room[i].Most;
        }

        // Rounded to a millimetre, so that the same dance begun with another facing says the same.
        return new(work.Role.Role, steps, direction, Math.Round(needed, 3), Math.Round(limit, 3), tooFar);

        double Beyond(int i) => Math.Max(lengths[i] - room[i].Most, room[i].Least - lengths[i]);
    }

    private static bool Counted(Footwork work, int i, Count first, Count last)
    {
        var step = work.Role.Steps[i];
        return step.At >= first && step.At <= last && step.Kind == ActionKind.Step && step.Direction is not (Direction.InPlace or Direction.Together);
    }
}
