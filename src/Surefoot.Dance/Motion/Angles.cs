namespace Surefoot.Dance.Motion;

/// <summary>
/// Sines of angles between the eighths, for moments in the middle of a turn. Made from the table of eighths
/// and a short series, so that they come out alike on every machine; good to better than 1e-9.
/// </summary>
public static class Angles
{
    public static (double Sine, double Cosine) SineAndCosine(double degrees)
    {
        var eighth = (int)Math.Floor((degrees / 45) + 0.5);
        var rest = (degrees - (45.0 * eighth)) * (Math.PI / 180);
        var square = rest * rest;
        // Taylor to the eleventh power; |rest| is at most a sixteenth of a turn.
        var sine = rest * (1 - (square / 6 * (1 - (square / 20 * (1 - (square / 42 * (1 - (square / 72 * (1 - (square / 110))))))))));
        var cosine = 1 - (square / 2 * (1 - (square / 12 * (1 - (square / 30 * (1 - (square / 56 * (1 - (square / 90)))))))));
        var facing = new Basics.Facing(eighth);
        return ((facing.Sine * cosine) + (facing.Cosine * sine), (facing.Cosine * cosine) - (facing.Sine * sine));
    }
}
