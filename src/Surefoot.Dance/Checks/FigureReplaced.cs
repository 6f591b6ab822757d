using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>A figure of the page or the notebook stands in for one that Surefoot brings along.</summary>
public sealed class FigureReplaced : ICheck
{
    public string Name => "figure-replaced";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var figure in dance.Page.Figures)
        {
            if (!figure.Overrides) continue;
            yield return new(
                Name, Severity.Hint, figure.Span, $"Figure: {figure.Name}", null, null,
                $"The page's own \"{figure.Name}\" is danced in place of the one in the figure book.",
                "Every line of this page that names it means the figure described here.");
        }
    }
}
