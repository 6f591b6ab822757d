namespace Surefoot.Dance.Basics;

/// <summary>
/// An amount of turning in eighths of a full turn, positive to the dancer's left
/// (counter-clockwise seen from above). Not cut at a full turn: 12 is one and a half to the left.
/// </summary>
public readonly record struct Turn(int Eighths)
{
    public static Turn None => default;

    public bool IsNone => Eighths == 0;

    /// <summary>The same turn seen in a mirror.</summary>
    public Turn Mirrored => new(-Eighths);

    public double Degrees => Eighths * 45.0;

    public static Turn operator +(Turn a, Turn b) => new(a.Eighths + b.Eighths);

    public static Turn operator -(Turn a) => new(-a.Eighths);

    /// <summary>"½ right", "1¼ left", "full turn right"; "no turn" for none.</summary>
    public override string ToString() =>
        IsNone ? "no turn" : $"{AmountName(Math.Abs(Eighths))} {(Eighths > 0 ? "left" : "right")}";

    /// <summary>"¼", "½", "full", "1½" for an amount in eighths.</summary>
    public static string AmountName(int eighths)
    {
        if (eighths == 8) return "full turn";
        var whole = eighths / 8;
        var part = (eighths % 8) switch { 1 => "⅛", 2 => "¼", 3 => "⅜", 4 => "½", 5 => "⅝", 6 => "¾", 7 => "⅞", _ => "" };
        return whole == 0 ? part : whole + part + (part.Length == 0 ? " turns" : "");
    }
}
