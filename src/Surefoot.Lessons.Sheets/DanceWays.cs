using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Sheets;

/// <summary>A way from a lesson into the studio.</summary>
/// <param name="Words">What is pressed.</param>
/// <param name="Address">Where it leads, from the studio's root.</param>
public sealed record DanceWay(string Words, string Address);

/// <summary>The ways from what is danced in a lesson to its dance and to the screen for the floor; none where the dance lies in a folder.</summary>
public static class DanceWays
{
    /// <param name="bite">Which bite the floor begins with, from 0; null for where she was last.</param>
    public static ValueList<DanceWay> Of(Course course, int? bite) => course.Dance.Page is not { } page ? []
        : [new("On the floor", $"/on-the-floor/{page}{(bite is { } b ? Counts(course, b) : "")}"), new("The dance", $"/dance/{page}")];

    /// <summary>The counts of a bite through the repeat, as the screen for the floor takes them: "#9-16". What is danced outside the repeat is counted on behind it.</summary>
    private static string Counts(Course course, int bite)
    {
        var (score, stretch) = (course.Dance.Score, course.Bites[bite].Stretches[0]);
        var before = stretch.Section is { } section ? score.Sections[section].Start.Whole - 1 : score.BeforeExtra(stretch.Part);
        return before is { } counts ? $"#{counts + stretch.From + 1}-{counts + stretch.From + stretch.Counts}" : "";
    }
}
