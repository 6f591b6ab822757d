using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Finds where bodies or feet of the two are in the same place once their places are known, and what would have
/// to be kept apart for them not to be. Solved again with that, they go round each other as dancers do.
/// </summary>
/// <param name="stay">True to have those who would go through each other stay on their own side; else they go past beside each other.</param>
internal sealed class Crowding(CoupleSetting setting, bool stay = false)
{
    /// <summary>Bodies may share so much, in metres for 1.70 m as everything here, before they are in each other's way: shoulders of a couple side by side do. Working value.</summary>
    private const double BodiesShare = 0.02;

    /// <summary>A gap that is kept between bodies, and between feet, in metres: what is rounded off between the moments that are looked at. Working values.</summary>
    private const double BodyGap = 0.02, FootGap = 0.01;

    /// <summary>They have passed once they are so far apart, in metres; they pass each other when she was before him and is behind him, a right angle and more between; and the side is open when it is less than that.</summary>
    private const double Clear = 0.45, Opposite = -0.2, Undecided = 0.08;

    /// <summary>Pieces into which the way between two moments is cut.</summary>
    private const int Pieces = 4;

    /// <summary>Middles further apart than this, in metres, have nothing near each other: bodies, legs and feet taken together. Working value.</summary>
    private const double Far = 1.15;

    private readonly double _farBodies = Trunks.Farthest(setting.Lead.Stature, setting.Follow.Stature);
    private readonly double _farFeet = Trunks.FarthestSoles(setting.Lead.Stature, setting.Follow.Stature);

    /// <summary>True once somebody was found to go through the partner, so that both ways out are worth trying.</summary>
    public bool Through { get; private set; }

    private readonly Look[] _lead = Looks(setting.Lead, setting.Frame);
    private readonly Look[] _follow = Looks(setting.Follow, setting.Frame);

    /// <summary>What is fixed of a stance, seen in the solver's frame: where body and feet look, in degrees, and which feet are on the floor.</summary>
    private readonly record struct Look(double Body, double Left, double Right);

    /// <summary>Everything that is too near in a solution, with the way in which it is least so.</summary>
    public List<Apart> In(CouplePlaces places)
    {
        var found = new List<Apart>();
        var his = setting.Lead.Middles(Spot.Origin, places.Lead.Lengths, places.Lead.Asides);
        var hers = setting.Follow.Middles(places.FollowStart, places.Follow.Lengths, places.Follow.Asides);
        var moments = setting.Moments;
        var seen = new Spot[moments.Count];
        for (var m = 0; m < seen.Length; m++) seen[m] = InFrame(hers[moments[m].FollowStance] - his[moments[m].LeadStance]);
        for (var m = 0; m < moments.Count; m++)
        {
            var (l, f) = (moments[m].LeadStance, moments[m].FollowStance);
            var (one, other) = (InFrame(his[l]), InFrame(hers[f]));
            if (seen[m].Length > Far * setting.Scale && (m == 0 || seen[m - 1].Length > Far * setting.Scale)) continue;
            var past = WayOut(seen, m);
            Bodies(found, past, one, _lead[l].Body, other, _follow[f].Body, [(Form.Middle(l), 1)], [(Form.Middle(f), 1)]);
            for (var k = 1; m > 0 && k < Pieces; k++)
            {
                // On the way from the moment before.
                var (l0, f0, part) = (moments[m - 1].LeadStance, moments[m - 1].FollowStance, (double)k / Pieces);
                Bodies(
                    found, past, (one * part) + (InFrame(his[l0]) * (1 - part)), Mix(_lead[l0].Body, _lead[l].Body, part), (other * part) + (InFrame(hers[f0]) * (1 - part)), Mix(_follow[f0].Body, _follow[f].Body, part),
                    [(Form.Middle(l), part), (Form.Middle(l0), 1 - part)], [(Form.Middle(f), part), (Form.Middle(f0), 1 - part)]);
            }

            foreach (var foot in (ReadOnlySpan<Foot>)[Foot.Left, Foot.Right])
            {
                foreach (var her in (ReadOnlySpan<Foot>)[Foot.Left, Foot.Right]) Feet(found, places, his, hers, l, foot, f, her);
            }
        }

        return found;
    }

    // On which side she is to be while the two go through each other, or nothing where they do not: head to head the
    // nearest way out would lead to nothing.
    private Spot? WayOut(Spot[] seen, int m)
    {
        var (before, after) = (m, m);
        while (before > 0 && seen[before].Length < Clear * setting.Scale) before--;
        while (after < seen.Length - 1 && seen[after].Length < Clear * setting.Scale) after++;
        var (from, to) = (seen[before], seen[after]);
        if ((from.X * to.X) + (from.Y * to.Y) > Opposite * from.Length * to.Length) return null;
        Through = true;
        if (stay) return from * (1 / from.Length);
        var way = to - from;
        var beside = new Spot(-way.Y, way.X) * (1 / way.Length);
        var side = (seen[m].X * beside.X) + (seen[m].Y * beside.Y);
        // Too near to tell: by right hands they pass right shoulders, by left hands left. Seen from him her way past him is backwards.
        if (Math.Abs(side) < Undecided * setting.Scale)
        {
            var joined = setting.Frame.Mirrored ? setting.Moments[m].Joined.Mirrored() : setting.Moments[m].Joined;
            side = joined.HasFlag(Pairs.RightRight) && !joined.HasFlag(Pairs.LeftLeft) ? 1 : joined.HasFlag(Pairs.LeftLeft) && !joined.HasFlag(Pairs.RightRight) ? -1 : side;
        }

        return side < 0 ? beside * -1 : beside;
    }

    private void Bodies(List<Apart> found, Spot? past, Spot one, double looks, Spot other, double herLooks, (Form, double)[] lead, (Form, double)[] follow)
    {
        if ((one - other).Length > _farBodies) return;
        var (his, hers) = (Trunks.Of(one, looks, setting.Lead.Stature), Trunks.Of(other, herLooks, setting.Follow.Stature));
        if (Outline.IsClear(his, hers, -BodiesShare * setting.Scale)) return;
        var (gap, way, reach) = Outline.Between(his, hers);
        if (past is { } side) (gap, way, reach) = Outline.Along(his, hers, side);
        if (gap < 0) found.Add(new(lead, follow, way, reach + (BodyGap * setting.Scale), (BodyGap * setting.Scale) - gap));
    }

    private void Feet(List<Apart> found, CouplePlaces places, Spot[] his, Spot[] hers, int l, Foot foot, int f, Foot her)
    {
        var (one, other) = (setting.Lead.FootOf(l, foot).Place, setting.Follow.FootOf(f, her).Place);
        var (a, b) = (InFrame(one.Value(his, places.Lead.Lengths, places.Lead.Asides)), InFrame(other.Value(hers, places.Follow.Lengths, places.Follow.Asides)));
        if ((a - b).Length > _farFeet) return;
        var (gap, way, reach) = Outline.Between(
            Trunks.Sole(a, foot == Foot.Left ? _lead[l].Left : _lead[l].Right, setting.Lead.Stature), Trunks.Sole(b, her == Foot.Left ? _follow[f].Left : _follow[f].Right, setting.Follow.Stature));
        if (gap < 0) found.Add(new([(one, 1)], [(other, 1)], way, reach + (FootGap * setting.Scale), (FootGap * setting.Scale) - gap));
    }

    private static double Mix(double from, double to, double part) => from + ((to - from) * part);

    private Spot InFrame(Spot place) => place with { Y = place.Y * setting.Frame.Side };

    private static Look[] Looks(Footwork work, CoupleFrame frame)
    {
        var looks = new Look[work.Stances];
        var body = 45.0 * frame.Of(work.Role.Start.Facing).Eighths;
        for (var i = 0; i < looks.Length; i++)
        {
            // Angles run on, so that the middle of a turn lies between its ends.
            if (i > 0) body += 45.0 * work.Role.Steps[i - 1].Turn.Eighths * frame.Side;
            looks[i] = new(body, 45.0 * work.FootOf(i, Foot.Left).Looks.Eighths * frame.Side, 45.0 * work.FootOf(i, Foot.Right).Looks.Eighths * frame.Side);
        }

        return looks;
    }
}
