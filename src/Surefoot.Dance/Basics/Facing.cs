namespace Surefoot.Dance.Basics;

/// <summary>
/// Where a dancer looks, in eighths of a turn to the left (0 to 7) of the floor's first direction:
/// the line of dance in a circle dance, 12:00 in a line dance.
/// </summary>
public readonly record struct Facing
{
    private static readonly string[] TrackNames =
        ["LOD", "diagonal inside LOD", "inside", "diagonal inside RLOD", "RLOD", "diagonal outside RLOD", "outside", "diagonal outside LOD"];

    private static readonly string[] ClockNames =
        ["12:00", "10:30", "9:00", "7:30", "6:00", "4:30", "3:00", "1:30"];

    // Exact to the last bit everywhere: facings are eighths, so no platform sine is ever asked.
    private const double Slant = 0.70710678118654752440;
    private static readonly double[] Cosines = [1, Slant, 0, -Slant, -1, -Slant, 0, Slant];

    public Facing(int eighths) => Eighths = ((eighths % 8) + 8) % 8;

    public int Eighths { get; }

    public static Facing Front => default;

    public double Cosine => Cosines[Eighths];

    public double Sine => Cosines[(Eighths + 6) % 8];

    public static Facing operator +(Facing a, Turn b) => new(a.Eighths + b.Eighths);

    /// <summary>The shortest turn that leads from <paramref name="b"/> to <paramref name="a"/>; half a turn counts as left.</summary>
    public static Turn operator -(Facing a, Facing b)
    {
        var left = new Facing(a.Eighths - b.Eighths).Eighths;
        return new(left > 4 ? left - 8 : left);
    }

    /// <summary>The trade's name: "LOD", "RLOD", "inside", "outside" in a circle, "12:00", "3:00" on a floor with walls.</summary>
    public string Name(Floor floor) => (floor == Floor.Track ? TrackNames : ClockNames)[Eighths];

    /// <summary>The same in words for a sentence: "the line of dance", "the wall at 3:00".</summary>
    public string Phrase(Floor floor) => floor == Floor.Walls
        ? ClockNames[Eighths]
        : Eighths switch
        {
            0 => "the line of dance",
            1 => "diagonally in along the line of dance",
            2 => "the inside of the circle",
            3 => "diagonally in against the line of dance",
            4 => "against the line of dance",
            5 => "diagonally out against the line of dance",
            6 => "the outside of the circle",
            _ => "diagonally out along the line of dance",
        };
}

/// <summary>The floor's frame: round the room along the line of dance, or four walls named by the clock.</summary>
public enum Floor
{
    Track,
    Walls,
}
