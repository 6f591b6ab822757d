using Surefoot.Dance.Insight;

namespace Surefoot.Lessons.Planning;

/// <summary>What a lesson's parts take, in minutes. All are working values; the handbook has none but the new counts of a lesson.</summary>
public static class LessonMinutes
{
    /// <summary>Warming up and greeting. Guides for dancers ask for ten minutes and more before hard work; social dances begin gently.</summary>
    public const int WarmUp = 5;

    /// <summary>A dance that was finished before, danced to a song.</summary>
    public const int Review = 4;

    /// <summary>A dance that is begun: shown once to music.</summary>
    public const int Show = 3;

    /// <summary>A dance that goes on: what the class has of it already.</summary>
    public const int Recap = 3;

    /// <summary>A dance that is finished: to slow music, then at tempo.</summary>
    public const int ToMusic = 4;

    /// <summary>What was learned in a lesson once more, from the top to a slow song.</summary>
    public const int OnceMore = 4;

    /// <summary>Least for a bite, however little of it is new.</summary>
    public const int LeastBite = 2;

    /// <summary>
    /// For one bite: by its new counts, half as much for counts that come from the other foot, half as much again where
    /// lead and follow are taught one after the other, and a minute where it is danced again right away.
    /// </summary>
    public static int Of(TeachingBite bite, DanceClass who)
    {
        var halves = ((2 * bite.New) + bite.Mirrored) * (bite.RolesDiffer ? 3 : 2);
        // A new count has two halves, eight of them make the class's measure, and two stands for "once".
        var minutes = ((halves * who.MinutesForEight) + 31) / 32;
        return Math.Max(LeastBite, minutes) + (bite.Stretches.Count > 1 ? 1 : 0);
    }

    /// <summary>New counts as a lesson's room is measured: one from the other foot is half a new one. In halves.</summary>
    public static int HalfCounts(TeachingBite bite) => (2 * bite.New) + bite.Mirrored;
}
