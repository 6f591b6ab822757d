using Surefoot.Dance.Basics;

namespace Surefoot.Likeness;

/// <summary>How a count of one dance stands to the count of the other that it is laid beside.</summary>
public enum Fate
{
    /// <summary>Danced alike by everybody.</summary>
    Alike,

    /// <summary>Danced nearly alike: kin of the same action, or alike by one of the two.</summary>
    Near,

    /// <summary>Laid beside another, but danced otherwise.</summary>
    Other,

    /// <summary>Only one of the two has it.</summary>
    Alone,
}

/// <summary>A count laid beside another; whole counts of the repeat from 0, null where the other dance has none for it.</summary>
public readonly record struct Beside(int? First, int? Second, Fate Fate);

/// <summary>Two dances laid side by side.</summary>
/// <param name="Share">How much they have in common: 1 for the same steps, 0 for none. Both dances have the same say.</param>
/// <param name="Mirrored">True when they fit with the second begun on the other foot.</param>
/// <param name="Shift">Where the second begins its repeat, in counts after the first's, where they are the same going round; else 0.</param>
/// <param name="AlikeInFirst">Counts of the first that the second has too.</param>
/// <param name="AlikeInSecond">Counts of the second that the first has too.</param>
/// <param name="Rows">Every count of both, in the order of the first dance; the second's own counts where they come in it.</param>
public sealed record Compared(
    double Share, bool Mirrored, int Shift, int FirstLength, int SecondLength, int AlikeInFirst, int AlikeInSecond, ValueList<Beside> Rows, ValueList<bool> FirstAlike)
{
    /// <summary>Counts that differ, seen from whichever of the two has more of them.</summary>
    public int Differing => Math.Max(FirstLength - AlikeInFirst, SecondLength - AlikeInSecond);

    /// <summary>Lays two dances side by side; one without steps has nothing in common with any other.</summary>
    public static Compared Of(DanceSteps first, DanceSteps second)
    {
        if (first.Length == 0 || second.Length == 0) return new(0, false, 0, first.Length, second.Length, 0, 0, [], []);
        var plain = new Ways(first, second);
        var turned = new Ways(first, second.Mirrored);
        // Both ways round as good: as they are written.
        var mirrored = turned.Points > plain.Points;
        var ways = mirrored ? turned : plain;
        var there = ways.There.Pairs;
        var alikeInFirst = there.Where(ways.Alike).Select(p => p.Row).ToHashSet();
        var alikeInSecond = ways.Back.Pairs.Count(p => ways.Alike(new(p.Column, p.Row)));
        return new(
            Reckoning.Share(ways.Points, first.Length, second.Length),
            mirrored,
            ShiftOf(there, second.Length),
            first.Length,
            second.Length,
            alikeInFirst.Count,
            alikeInSecond,
            SideBySide.Rows(there, first.Length, second.Length, ways.PointsOf).ToValueList(),
            Enumerable.Range(0, first.Length).Select(alikeInFirst.Contains).ToValueList());
    }

    // The same way round all the time: then the second only begins elsewhere.
    private static int ShiftOf(List<Paired> pairs, int length)
    {
        if (pairs.Count == 0) return 0;
        var shift = (pairs[0].Column - pairs[0].Row % length + length) % length;
        return pairs.TrueForAll(p => (p.Column - p.Row % length + length) % length == shift) ? shift : 0;
    }

    /// <summary>The second found in the first, and the first in the second.</summary>
    private sealed class Ways
    {
        private readonly sbyte[] _points;
        private readonly int _columns;

        public Ways(DanceSteps first, DanceSteps second)
        {
            (_points, _columns) = (Reckoning.Points(first, second), second.Length);
            There = PassagesTraced.Best(_points, first.Length, second.Length, Gaps.Usual);
            Back = PassagesTraced.Best(Reckoning.Turned(_points, first.Length, second.Length), second.Length, first.Length, Gaps.Usual);
        }

        public (int Points, List<Paired> Pairs) There { get; }

        public (int Points, List<Paired> Pairs) Back { get; }

        public int Points => There.Points + Back.Points;

        public int PointsOf(Paired pair) => _points[(pair.Row * _columns) + pair.Column];

        public bool Alike(Paired pair) => PointsOf(pair) == Nearness.Alike;
    }
}
