namespace Surefoot.Dance.Motion;

/// <summary>
/// A place on the floor in metres. In a circle dance x runs along the line of dance and y to the left
/// of it, towards the centre; in a line dance x runs towards 12:00 and y towards 9:00.
/// </summary>
public readonly record struct Spot(double X, double Y)
{
    public static Spot Origin => default;

    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The place <paramref name="forward"/> metres ahead and <paramref name="left"/> to the left, seen by somebody who looks that way.</summary>
    public Spot Moved(Basics.Facing facing, double forward, double left) => new(
        X + (facing.Cosine * forward) - (facing.Sine * left),
        Y + (facing.Sine * forward) + (facing.Cosine * left));

    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(Spot a, double by) => new(a.X * by, a.Y * by);
}
