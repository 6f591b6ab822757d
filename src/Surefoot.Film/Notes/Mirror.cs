using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>
/// Some who face the camera say left and right as those see it who watch. Where nearly all feet of a stretch are the other ones,
/// that is said once, and not foot by foot.
/// </summary>
internal sealed class Mirror
{
    /// <summary>Fewest differences, and the share of the steps said with left or right that has to differ. Working values.</summary>
    private const int Fewest = 4;
    private const double Most = 0.6;

    private readonly List<Stretch> _stretches = [];

    private sealed record Stretch(FilmSide Side, int Named, List<Difference> Turned);

    /// <param name="side">From where the film shows a pass.</param>
    /// <param name="named">How many of its steps were said with left or right.</param>
    /// <param name="turned">What was told of it in which left and right are changed over.</param>
    public void Pass(FilmSide side, int named, List<Difference> turned)
    {
        if (named > 0) _stretches.Add(new(side, named, turned));
    }

    /// <summary>Puts one difference in place of many.</summary>
    public void ToldOnce(List<Difference> found)
    {
        for (var i = 0; i < _stretches.Count;)
        {
            var until = i;
            while (until < _stretches.Count && _stretches[until].Side == _stretches[i].Side && _stretches[until].Turned.Count >= Most * _stretches[until].Named) until++;
            var all = _stretches.Skip(i).Take(until - i).SelectMany(s => s.Turned).OrderBy(d => d.At).ToList();
            if (all.Count >= Fewest)
            {
                found.RemoveAll(all.Contains);
                var says = _stretches[i].Side == FilmSide.Front ? "You face the camera and say" : "You say";
                found.Add(all[0] with
                {
                    Kind = DifferenceKind.OtherFoot,
                    Counts = "",
                    Said = "",
                    Says = $"{says} left for right and right for left, as those see it who watch: {all.Count} times, until {all[^1].At.Short}.",
                });
            }

            i = Math.Max(until, i + 1);
        }
    }
}
