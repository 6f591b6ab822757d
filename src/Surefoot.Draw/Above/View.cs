using Surefoot.Dance.Motion;

namespace Surefoot.Draw.Above;

/// <summary>A stretch of floor on the picture: the floor's first direction is up, its left is left.</summary>
/// <param name="Scale">Picture units for a metre.</param>
internal sealed record View(Spot Low, Spot High, double Scale, double Margin)
{
    public double Width => ((High.Y - Low.Y) * Scale) + (2 * Margin);

    public double Height => ((High.X - Low.X) * Scale) + (2 * Margin);

    public double X(Spot at) => Margin + ((High.Y - at.Y) * Scale);

    public double Y(Spot at) => Margin + ((High.X - at.X) * Scale);
}
