namespace Surefoot.Dance.Motion;

/// <summary>A body or a foot seen from above, as an ellipse: half its measure ahead and half aside, in metres.</summary>
public readonly record struct Outline(Spot Middle, double Angle, double Ahead, double Aside)
{
    /// <summary>Directions in which two outlines are tried against each other; more find less of a gap between them.</summary>
    private const int Directions = 32;

    private static readonly (double Sine, double Cosine)[] Ways = [.. Enumerable.Range(0, Directions).Select(i => Angles.SineAndCosine(360.0 * i / Directions))];

    /// <summary>
    /// The gap between two outlines in metres; negative by as much as one would have to be moved to clear the other.
    /// Good to a few millimetres where they are near each other, and never more than it is.
    /// </summary>
    public static double Gap(Outline one, Outline other) => Between(one, other).Gap;

    /// <summary>True when the gap between two outlines is at least so much. The same answer as <see cref="Gap"/> gives, mostly from the first direction that is tried.</summary>
    public static bool IsClear(Outline one, Outline other, double gap)
    {
        var away = other.Middle - one.Middle;
        var (sineOne, cosineOne) = Angles.SineAndCosine(one.Angle);
        var (sineOther, cosineOther) = Angles.SineAndCosine(other.Angle);
        // The way from one to the other is nearly always the widest, and then its neighbours.
        var first = Directions + (int)Math.Round(Math.Atan2(away.Y, away.X) * Directions / (2 * Math.PI));
        for (var k = 0; k < Directions; k++)
        {
            var (sine, cosine) = Ways[(first + (k % 2 == 0 ? k / 2 : -(k + 1) / 2) + Directions) % Directions];
            var both = one.Extent((cosine * cosineOne) + (sine * sineOne), (sine * cosineOne) - (cosine * sineOne))
                + other.Extent((cosine * cosineOther) + (sine * sineOther), (sine * cosineOther) - (cosine * sineOther));
            if ((away.X * cosine) + (away.Y * sine) - both >= gap) return true;
        }

        return false;
    }

    /// <summary>The gap, with the direction from the first to the second along which it is measured and how far both together reach along it.</summary>
    public static (double Gap, Spot Way, double Reach) Between(Outline one, Outline other)
    {
        var away = other.Middle - one.Middle;
        var (sineOne, cosineOne) = Angles.SineAndCosine(one.Angle);
        var (sineOther, cosineOther) = Angles.SineAndCosine(other.Angle);
        var (best, way, reach) = (double.NegativeInfinity, Spot.Origin, 0.0);
        foreach (var (sine, cosine) in Ways)
        {
            var both = one.Extent((cosine * cosineOne) + (sine * sineOne), (sine * cosineOne) - (cosine * sineOne))
                + other.Extent((cosine * cosineOther) + (sine * sineOther), (sine * cosineOther) - (cosine * sineOther));
            var gap = (away.X * cosine) + (away.Y * sine) - both;
            if (gap > best) (best, way, reach) = (gap, new(cosine, sine), both);
        }

        return (best, way, reach);
    }

    /// <summary>The same along the one of the tried directions that is nearest to a way.</summary>
    public static (double Gap, Spot Way, double Reach) Along(Outline one, Outline other, Spot way)
    {
        var (nearest, most) = (Spot.Origin, double.NegativeInfinity);
        foreach (var (sine, cosine) in Ways)
        {
            var along = (way.X * cosine) + (way.Y * sine);
            if (along > most) (nearest, most) = (new(cosine, sine), along);
        }

        var reach = one.ReachAlong(nearest) + other.ReachAlong(nearest);
        var away = other.Middle - one.Middle;
        return ((away.X * nearest.X) + (away.Y * nearest.Y) - reach, nearest, reach);
    }

    /// <summary>How far the second would have to be shifted along the floor's first direction, from where it is, to be clear ahead of the first.</summary>
    /// <param name="enough">An answer below this may be any number that is not more than it.</param>
    public static double ClearAhead(Outline one, Outline other, double enough = double.NegativeInfinity)
    {
        var way = other.Middle - one.Middle;
        var (sineOne, cosineOne) = Angles.SineAndCosine(one.Angle);
        var (sineOther, cosineOther) = Angles.SineAndCosine(other.Angle);
        var least = double.PositiveInfinity;
        foreach (var (sine, cosine) in Ways)
        {
            // Backwards nobody is ahead.
            if (cosine < -1e-9) continue;
            var missing = one.Extent((cosine * cosineOne) + (sine * sineOne), (sine * cosineOne) - (cosine * sineOne))
                + other.Extent((cosine * cosineOther) + (sine * sineOther), (sine * cosineOther) - (cosine * sineOther))
                - (way.X * cosine) - (way.Y * sine);
            // Beside each other already: no shift is needed at all.
            if (missing <= 0 && Math.Abs(cosine) < 1e-9) return double.NegativeInfinity;
            if (cosine > 1e-9 && missing / cosine < least) least = missing / cosine;
            if (least <= enough) return least;
        }

        return least;
    }

    /// <summary>How far the outline goes from its middle in a direction of the floor.</summary>
    public double Reach(Basics.Facing way) => ReachAlong(new(way.Cosine, way.Sine));

    private double ReachAlong(Spot way)
    {
        var (sine, cosine) = Angles.SineAndCosine(Angle);
        return Extent((way.X * cosine) + (way.Y * sine), (way.Y * cosine) - (way.X * sine));
    }

    // How far the outline goes in a direction of its own frame.
    private double Extent(double ahead, double aside) => Math.Sqrt((Ahead * Ahead * ahead * ahead) + (Aside * Aside * aside * aside));
}
