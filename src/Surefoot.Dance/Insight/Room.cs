namespace Surefoot.Dance.Insight;

/// <summary>A dance floor, in metres.</summary>
/// <param name="Short">The shorter side.</param>
/// <param name="Long">The longer side.</param>
public sealed record Room(double Short, double Long)
{
    /// <summary>Metres in a foot, exactly (international yard and pound agreement of 1959).</summary>
    public const double Foot = 0.3048;

    /// <summary>In square metres.</summary>
    public double Area => Short * Long;

    /// <summary>
    /// How many people a published factor gives for the floor, rounded down: International Building Code,
    /// Table 1004.5, assembly without fixed seats. A figure for leaving a building in time, not for dancing.
    /// </summary>
    /// <param name="squareFeet">Net square feet a person: 5 standing, 7 concentrated, 15 with tables.</param>
    public int OccupantLoad(double squareFeet) => (int)Math.Floor((Area / (Foot * Foot) / squareFeet) + 1e-9);
}
