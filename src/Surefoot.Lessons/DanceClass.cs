using Surefoot.Dance.Insight;

namespace Surefoot.Lessons;

/// <summary>Who comes to a lesson, by what they can: everybody, or a level. All lessons for the same are one class, which goes on where it stopped.</summary>
/// <param name="Level">Null for everybody.</param>
public readonly record struct DanceClass(Level? Level) : IComparable<DanceClass>
{
    public static DanceClass Everybody => default;

    /// <summary>As it is written: "beginners", "everybody".</summary>
    public string Words => Level switch
    {
        null => "everybody",
        Dance.Insight.Level.Intermediate => "intermediates",
        Dance.Insight.Level.Advanced => "advanced",
        { } level => level.Word() + "s",
    };

    /// <summary>
    /// New counts for which a lesson has room. The handbook has about 32 for beginners and twice that for experienced
    /// dancers, as working values; what lies between and below is ours.
    /// </summary>
    public int MostNew => Level switch
    {
        Dance.Insight.Level.AbsoluteBeginner => 24,
        Dance.Insight.Level.Improver => 48,
        Dance.Insight.Level.Intermediate or Dance.Insight.Level.Advanced => 64,
        _ => 32,
    };

    /// <summary>
    /// Minutes for eight new counts: said, walked, counted slowly and put to what came before. Working values, so
    /// that a full lesson's new counts take about 28 to 32 minutes.
    /// </summary>
    public int MinutesForEight => Level switch
    {
        Dance.Insight.Level.AbsoluteBeginner => 8,
        Dance.Insight.Level.Improver => 5,
        Dance.Insight.Level.Intermediate or Dance.Insight.Level.Advanced => 4,
        _ => 7,
    };

    /// <summary>Reads "beginners", "for beginners", "improver", "everybody", or gives null.</summary>
    public static DanceClass? Read(string words)
    {
        var said = words.Trim().ToLowerInvariant();
        if (said.StartsWith("for ", StringComparison.Ordinal)) said = said[4..].TrimStart();
        if (said is "everybody" or "everyone" or "all" or "all levels") return Everybody;
        if (Levels.Read(said) is { } level) return new(level);
        return said.EndsWith('s') && Levels.Read(said[..^1]) is { } one ? new(one) : null;
    }

    public int CompareTo(DanceClass other) => ((int?)Level ?? -1).CompareTo((int?)other.Level ?? -1);
}

/// <summary>Which dances a lesson is for.</summary>
[Flags]
public enum DanceKinds
{
    None = 0,

    /// <summary>Danced without a partner, in lines or round the room.</summary>
    Line = 1,

    Couples = 2,
    Both = Line | Couples,
}

public static class DanceKindWords
{
    /// <summary>As it is written: "line dances", "couples", "line dances and couples".</summary>
    public static string Words(this DanceKinds kinds) => kinds switch
    {
        DanceKinds.Line => "line dances",
        DanceKinds.Couples => "couples",
        _ => "line dances and couples",
    };

    public static DanceKinds? Read(string words)
    {
        var all = DanceKinds.None;
        foreach (var word in words.ToLowerInvariant().Split([" and ", "&", "+"], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            switch (word)
            {
                case "line dances" or "line dance" or "lines" or "line" or "line dancing":
                    all |= DanceKinds.Line;
                    break;
                case "couples" or "couple" or "couple dances" or "couples dances" or "partner dances" or "partners":
                    all |= DanceKinds.Couples;
                    break;
                case "all dances" or "any dances" or "all kinds":
                    all |= DanceKinds.Both;
                    break;
                default:
                    return null;
            }
        }

        return all == DanceKinds.None ? null : all;
    }
}
