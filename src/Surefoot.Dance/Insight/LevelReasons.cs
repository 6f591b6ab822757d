using System.Globalization;

namespace Surefoot.Dance.Insight;

/// <summary>One thing a level is judged by.</summary>
/// <param name="Level">The level of dances that usually have as much of it.</param>
/// <param name="Says">In words: "40 counts to learn".</param>
public sealed record LevelReason(Level Level, string Says);

/// <summary>
/// What is looked at, each with its own level. Every bound is a working value, set so that an instructor's reasons
/// come out in her order; the handbook's one figure is that a beginners' lesson carries about 32 new counts.
/// </summary>
internal static class LevelReasons
{
    public static IEnumerable<LevelReason> Of(int counts, int? tempo, int hands, IReadOnlyList<RoleDifficulty> roles)
    {
        // The role that has more to do decides: both have to dance it.
        int Most(Func<RoleDifficulty, int> of) => roles.Max(of);
        var reasons = new List<LevelReason>
        {
            new(Up(Most(r => r.ToLearn), 16, 32, 48, 64), $"{Number(Most(r => r.ToLearn), "count")} to learn of {counts}"),
            Timing(counts, Most(r => r.HalfCounts), Most(r => r.QuarterCounts)),
            Turning(Most(r => r.QuarterTurns), Most(r => r.HalfTurns), Most(r => r.FullTurns)),
            Figures(roles),
        };
        if (tempo is { } fast)
        {
            var speed = (int)Math.Round((double)Most(r => r.Steps) / counts * fast);
            reasons.Add(new(Up(speed, 100, 145, 170, 190), $"{speed.ToString(CultureInfo.InvariantCulture)} steps a minute at {fast} counts"));
        }

        if (roles.Count > 1) reasons.Add(new(Up(hands, 0, 4, 10, 20), hands == 0 ? "the hands stay as they are" : $"{Number(hands, "change")} of hands"));
        return reasons.OrderByDescending(r => r.Level);
    }

    /// <summary>Two things that are hard make a dance hard, one alone does not: the level between the two hardest, the lower where they are apart by an odd step.</summary>
    public static Level Together(IReadOnlyList<LevelReason> hardestFirst) =>
        (Level)(((int)hardestFirst[0].Level + (int)hardestFirst[Math.Min(1, hardestFirst.Count - 1)].Level) / 2);

    private static LevelReason Timing(int counts, int halves, int quarters)
    {
        if (quarters > 0) return new(Level.Intermediate, $"{Number(quarters, "count")} with steps on the e or the a");
        if (halves == 0) return new(Level.AbsoluteBeginner, "every step on a whole count");
        return new(Up(halves * 100 / counts, -1, 34, 60, 101), $"{Number(halves, "count")} with a step on the half-count");
    }

    private static LevelReason Turning(int quarter, int half, int full)
    {
        var level = full > 4 ? Level.Advanced : full > 1 ? Level.Intermediate : half > 0 || full > 0 ? Level.Improver : quarter > 1 ? Level.Beginner : Level.AbsoluteBeginner;
        var said = new List<string>();
        if (full > 0) said.Add($"{full} all the way round");
        if (half > 0) said.Add($"{half} of half a turn or more");
        if (quarter > 0) said.Add($"{quarter} of less");
        return new(level, said.Count == 0 ? "no turns" : "turns: " + string.Join(", ", said));
    }

    // A level of figures is there when a fifth of the different figures asks for it: one showpiece is learned by anybody.
    private static LevelReason Figures(IReadOnlyList<RoleDifficulty> roles)
    {
        var (level, role) = roles.Select(r => (LevelOf(r), r)).MaxBy(r => r.Item1);
        var hard = role.Figures.Where(f => f.Level >= level).Select(f => f.Name).ToList();
        return new(level, level == Level.AbsoluteBeginner
            ? $"{Number(role.Figures.Count, "different figure")}, all of them plain"
            : $"{hard.Count} of {Number(role.Figures.Count, "different figure")} for {level.Word()}s or above: {string.Join(", ", hard.Take(4))}{(hard.Count > 4 ? " …" : "")}");
    }

    private static Level LevelOf(RoleDifficulty role)
    {
        for (var level = Level.Advanced; level > Level.AbsoluteBeginner; level--)
        {
            if (role.Figures.Count(f => f.Level >= level) * 5 >= Math.Max(1, role.Figures.Count)) return level;
        }

        return Level.AbsoluteBeginner;
    }

    private static Level Up(int value, params ReadOnlySpan<int> bounds)
    {
        var level = 0;
        foreach (var bound in bounds)
        {
            if (value > bound) level++;
        }

        return (Level)level;
    }

    private static string Number(int count, string one) => $"{count} {one}{(count == 1 ? "" : "s")}";
}
