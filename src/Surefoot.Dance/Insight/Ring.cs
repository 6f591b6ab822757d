namespace Surefoot.Dance.Insight;

/// <summary>One way round a room: a rectangle with round corners, so far from the walls.</summary>
/// <param name="Inset">From the walls to the line the leads dance on, in metres.</param>
/// <param name="Lap">Once round, in metres.</param>
public sealed record Ring(double Inset, double Lap)
{
    /// <summary>Corners are danced round with this radius at most, in metres. Working value.</summary>
    private const double Corner = 3;

    /// <summary>The line round a room, or null where it does not fit.</summary>
    public static Ring? In(Room room, double inset)
    {
        var (across, along) = (room.Short - (2 * inset), room.Long - (2 * inset));
        if (across <= 0 || along <= 0) return null;
        var corner = Math.Min(Corner, across / 2);
        return new(inset, (2 * (across + along)) - ((8 - (2 * Math.PI)) * corner));
    }

    /// <summary>How many couples stand in it.</summary>
    public int Couples(double spacing) => (int)Math.Floor((Lap / spacing) + 1e-9);
}
