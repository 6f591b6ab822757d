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
    public static double Gap(Outline one, Outline other)
    {
        var way = other.Middle - one.Middle;
        var (sineOne, cosineOne) = Angles.SineAndCosine(one.Angle);
        var (sineOther, cosineOther) = Angles.SineAndCosine(other.Angle);
        var best = double.NegativeInfinity;
        foreach (var (sine, cosine) in Ways)
        {
            var gap = (way.X * cosine) + (way.Y * sine)
                - one.Extent((cosine * cosineOne) + (sine * sineOne), (sine * cosineOne) - (cosine * sineOne))
                - other.Extent((cosine * cosineOther) + (sine * sineOther), (sine * cosineOther) - (cosine * sineOther));
            if (gap > best) best = gap;
        }

        return best;
    }

    /// <summary>How far the second would have to be shifted along the floor's first direction, from where it is, to be clear ahead of the first.</summary>
    public static double ClearAhead(Outline one, Outline other)
    {
        var way = other.Middle - one.Middle;
        var (sineOne, cosineOne) = Angles.SineAndCosine(one.Angle);
        var (sineOther, cosineOther) = Angles.SineAndCosine(other.Angle);
        var least = double.PositiveInfinity;
        foreach (var (sine, cosine) in Ways)
        {
            var missing = one.Extent((cosine * cosineOne) + (sine * sineOne), (sine * cosineOne) - (cosine * sineOne))
                + other.Extent((cosine * cosineOther) + (sine * sineOther), (sine * cosineOther) - (cosine * sineOther))
                - (way.X * cosine) - (way.Y * sine);
            // Beside each other already: no shift is needed at all.
            if (missing <= 0 && Math.Abs(cosine) < 1e-9) return double.NegativeInfinity;
            if (cosine > 1e-9 && missing / cosine < least) least = missing / cosine;
        }

        return least;
    }

    /// <summary>How far the outline goes from its middle in a direction of the floor.</summary>
    public double Reach(Basics.Facing way)
    {
        var (sine, cosine) = Angles.SineAndCosine(Angle);
        return Extent((way.Cosine * cosine) + (way.Sine * sine), (way.Sine * cosine) - (way.Cosine * sine));
    }

    // How far the outline goes in a direction of its own frame.
    private double Extent(double ahead, double aside) => Math.Sqrt((Ahead * Ahead * ahead * ahead) + (Aside * Aside * aside * aside));
}
