using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>
/// Some who face the camera say left and right as those see it who watch. Where nearly all feet of a pass are the other ones,
/// that is said once, and not foot by foot.
/// </summary>
internal static class MirrorWords
{
    /// <summary>Fewest feet that have to be named, and the share of them that has to be the other one. Working values.</summary>
    private const int Fewest = 4;
    private const double Most = 0.7;

    /// <param name="found">Differences so far; those from <paramref name="first"/> on are of this pass.</param>
    /// <param name="named">How many steps of the pass were said with their feet.</param>
    /// <param name="side">From where the film shows it.</param>
    public static void ToldOnce(List<Difference> found, int first, int named, FilmSide side)
    {
        var feet = found.Skip(first).Where(d => d.Kind == DifferenceKind.OtherFoot).ToList();
        if (feet.Count < Fewest || feet.Count < Most * named) return;
        found.RemoveAll(feet.Contains);
        var facing = side == FilmSide.Front ? "You face the camera, and say" : "You say";
        found.Add(feet[0] with { Counts = "", Said = "", Says = $"{facing} left where the page has right, and right where it has left, {feet.Count} times from here on: as those see it who watch you." });
    }
}
