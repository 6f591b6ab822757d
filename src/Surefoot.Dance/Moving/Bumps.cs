using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>Two bodies or two feet that would be in the same place.</summary>
/// <param name="At">The count at which it is worst, 0 before the first action.</param>
/// <param name="Metres">How far one would have to give way.</param>
/// <param name="Lead">The lead's foot, or null where it is the bodies; likewise the follow's.</param>
public sealed record Bump(double At, double Metres, Foot? Lead, Foot? Follow)
{
    public bool OfBodies => Lead is null;
}

/// <summary>Follows two partners through the repeat and finds where they would bump into each other.</summary>
public static class Bumps
{
    /// <summary>Bodies give way by so much without anybody calling it a bump, and feet by so much, in metres. Working values.</summary>
    public const double BodiesGive = 0.06, FeetGive = 0.04;

    /// <summary>The worst bump of every stretch in which there is one, bodies first at each.</summary>
    public static ValueList<Bump> Of(MovingDance dance)
    {
        if (dance.Of(Role.Lead) is not { } lead || dance.Of(Role.Follow) is not { } follow) return default;
        var found = new List<Bump>();
        Bump? bodies = null, feet = null;
        var looks = (int)(dance.End * Neighbours.LooksACount);
        for (var i = 0; i <= looks; i++)
        {
            var now = (double)i / Neighbours.LooksACount;
            var (his, hers) = (lead.At(now), follow.At(now));
            var body = Bodies(his, hers, lead.Stature, follow.Stature, now);
            Follow(ref bodies, body);
            // Where bodies bump, feet do too; it is told once.
            Follow(ref feet, body is null ? Feet(his, hers, lead.Stature, follow.Stature, now) : null);
        }

        Follow(ref bodies, null);
        Follow(ref feet, null);
        return found.OrderBy(b => b.At).ThenBy(b => b.OfBodies ? 0 : 1).ToValueList();

        // A stretch lasts as long as there is a bump at every look.
        void Follow(ref Bump? worst, Bump? now)
        {
            if (now is null)
            {
                if (worst is not null) found.Add(worst);
                worst = null;
            }
            else if (worst is null || now.Metres > worst.Metres + 1e-9)
            {
                worst = now;
            }
        }
    }

    private static Bump? Bodies(DancerMoved his, DancerMoved hers, double lead, double follow, double now)
    {
        if ((his.Middle - hers.Middle).Length > Trunks.Farthest(lead, follow)) return null;
        var (one, other) = (Outlines.Trunk(his, lead), Outlines.Trunk(hers, follow));
        return Outline.IsClear(one, other, -BodiesGive) ? null : new(now, -Outline.Gap(one, other), null, null);
    }

    private static Bump? Feet(DancerMoved his, DancerMoved hers, double lead, double follow, double now)
    {
        Bump? worst = null;
        foreach (var one in (ReadOnlySpan<Foot>)[Foot.Left, Foot.Right])
        {
            foreach (var other in (ReadOnlySpan<Foot>)[Foot.Left, Foot.Right])
            {
                var (a, b) = (his.Foot(one), hers.Foot(other));
                // A foot on its way goes round or over the other; where both stand there is no giving way.
                if (!a.Down || !b.Down || (a.At - b.At).Length > Trunks.FarthestSoles(lead, follow)) continue;
                var (his_, hers_) = (Outlines.Sole(a, lead), Outlines.Sole(b, follow));
                if (Outline.IsClear(his_, hers_, -FeetGive)) continue;
                var shared = -Outline.Gap(his_, hers_);
                if (worst is null || shared > worst.Metres) worst = new(now, shared, one, other);
            }
        }

        return worst;
    }
}
