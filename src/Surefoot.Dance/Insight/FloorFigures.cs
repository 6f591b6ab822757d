using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;

namespace Surefoot.Dance.Insight;

/// <summary>What a dance needs of a floor, in metres.</summary>
/// <param name="Travel">From where one repeat begins to where the next one does, for the lead or the only dancer.</param>
/// <param name="Spacing">How far the same dance has to be apart from itself.</param>
/// <param name="Out">How far bodies come to the right of the line on which the lead begins (outwards in a circle); <paramref name="In"/> to its left.</param>
/// <param name="Back">How far bodies come behind where the lead begins, <paramref name="Ahead"/> before it; travel is part of it.</param>
public sealed record FloorFigures(Spot Travel, Spacing Spacing, double Out, double In, double Back, double Ahead)
{
    /// <summary>Room kept between rings, and between a ring and a wall, in metres. Working value.</summary>
    public const double Between = 0.3;

    /// <summary>A repeat that travels less than this, in metres, stays where it is. Working value.</summary>
    private const double Stays = 0.05;

    /// <summary>True when a repeat goes along or against the line of dance.</summary>
    public bool Travels => Math.Abs(Travel.X) >= Stays;

    /// <summary>From one lead to the next on a real floor: the usual distance, or what the dance needs where that is more.</summary>
    public double Apart => Math.Max(Spacing.Metres, Neighbours.UsualSpacing);

    /// <summary>Across the line of dance.</summary>
    public double Across => Out + In;

    public static FloorFigures? Of(MovingDance dance)
    {
        if (dance.Dancers.Count == 0) return null;
        var first = dance.Of(Role.Lead) ?? dance.Dancers[0];
        var start = first.At(0).Middle;
        var (low, high) = (start, start);
        var looks = (int)(dance.End * Neighbours.LooksACount);
        for (var i = 0; i < looks; i++)
        {
            foreach (var dancer in dance.Dancers)
            {
                var outline = Outlines.Room(dancer.At((double)i / Neighbours.LooksACount));
                var reach = new Spot(outline.Reach(new(0)), outline.Reach(new(2)));
                low = new(Math.Min(low.X, outline.Middle.X - reach.X), Math.Min(low.Y, outline.Middle.Y - reach.Y));
                high = new(Math.Max(high.X, outline.Middle.X + reach.X), Math.Max(high.Y, outline.Middle.Y + reach.Y));
            }
        }

        return new(first.At(dance.End).Middle - start, Neighbours.Least(dance), start.Y - low.Y, high.Y - start.Y, start.X - low.X, high.X - start.X);
    }

    /// <summary>The rings that fit into a room from the wall inwards, at most as many as asked for.</summary>
    public ValueList<Ring> Rings(Room room, int most)
    {
        var rings = new List<Ring>();
        for (var inset = Out + Between; rings.Count < most; inset += Across + Between)
        {
            // The whole couple has to fit, not only the line the lead is on.
            if (Ring.In(room, inset) is not { } ring || Ring.In(room, inset + In) is null) break;
            rings.Add(ring);
        }

        return rings.ToValueList();
    }
}
