using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Figures;

/// <summary>A version of a figure danced by itself from a free left foot: its steps and their rhythm.</summary>
/// <param name="Offsets">When each step falls, in counts after the figure's first count; an "&amp;" before it is -1/2.</param>
/// <param name="ByRole">True when the text gives lead and follow different words.</param>
internal sealed record FigureDance(ValueList<ScoreStep> Steps, ValueList<Beats> Offsets, Beats Length, bool ByRole)
{
    public static FigureDance Nothing { get; } = new(default, default, Beats.Zero, false);
}
