using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight;

/// <summary>How much of a dance is new to somebody who learns it, in whole counts.</summary>
/// <param name="Bite">In bites of how many counts it is learned: what was danced before in one such stretch is not new.</param>
/// <param name="Counts">Length of one repeat of the dance.</param>
/// <param name="New">Counts that have to be learned.</param>
/// <param name="Mirrored">Counts danced again with the other foot: not free, but less than new.</param>
/// <param name="Changed">Counts of a repeat that differ from what they repeat; part of <paramref name="New"/>.</param>
public sealed record LearningLoad(Role Role, int Bite, int Counts, int New, int Mirrored, int Changed)
{
    /// <summary>How many of <see cref="New"/> somebody knows from other dances.</summary>
    public int Known { get; init; }

    /// <summary>
    /// The load of a role. Repeats are found in the steps, whether the page says "repeat" or writes them out: a bite
    /// that was danced before costs nothing, its mirror image half of new, a variation the counts that differ.
    /// </summary>
    /// <param name="bite">Counts of a bite; the usual 8 (12 in 3/4) when null.</param>
    /// <param name="known">Dances that are known already, for <see cref="Known"/>.</param>
    public static LearningLoad Of(DanceScore score, Role role, int? bite = null, IReadOnlyList<DanceScore>? known = null)
    {
        var size = bite ?? Bites.Sizes(score.Facts.Meter)[^1];
        if (score.Of(role) is not { } danced) return new(role, size, score.Counts.Ceiling, 0, 0, 0);
        var steps = CountSteps.Of(danced, score.Counts);
        var bites = Bites.Of(score, size);
        var (fresh, mirrored, changed) = Sum(steps, bites, []);
        var load = new LearningLoad(role, size, steps.Length, fresh, mirrored, changed);
        if (known is not { Count: > 0 }) return load;
        var others = known.Select(k => Same(k, role)).OfType<CountSteps[]>().ToList();
        return load with { Known = Math.Max(0, fresh - Sum(steps, bites, others).New) };
    }

    /// <summary>The same at every size of bite, from the smallest.</summary>
    public static ValueList<LearningLoad> AtEverySize(DanceScore score, Role role, IReadOnlyList<DanceScore>? known = null) =>
        Bites.Sizes(score.Facts.Meter).Select(size => Of(score, role, size, known)).ToValueList();

    /// <summary>What each bite costs a role: counts that are new, and counts that come again from the other foot.</summary>
    internal static List<(int New, int Mirrored, int Changed)> Costs(DanceScore score, RoleScore danced, List<Bite> bites, IReadOnlyList<DanceScore> known)
    {
        var steps = CountSteps.Of(danced, score.Counts);
        var others = known.Select(k => Same(k, danced.Role)).OfType<CountSteps[]>().ToList();
        return [.. bites.Select(bite => Cheapest(steps, bite, others))];
    }

    private static (int New, int Mirrored, int Changed) Sum(CountSteps[] steps, List<Bite> bites, List<CountSteps[]> known)
    {
        var (fresh, mirrored, changed) = (0, 0, 0);
        foreach (var bite in bites)
        {
            var cost = Cheapest(steps, bite, known);
            fresh += cost.New;
            mirrored += cost.Mirrored;
            changed += cost.Changed;
        }

        return (fresh, mirrored, changed);
    }

    private static (int New, int Mirrored, int Changed) Cheapest(CountSteps[] steps, Bite bite, List<CountSteps[]> known)
    {
        var best = (New: bite.Length, Mirrored: 0, Changed: 0);
        var taught = steps.AsSpan(bite.From, bite.Length);
        CountSteps[] turned = [.. taught.ToArray().Select(s => s.Mirrored)];
        // Where the page says "repeat", it says itself that the class knows it but for what differs; elsewhere a
        // stretch that shares less than three quarters is met as something new. Working value.
        var most = bite.Written ? bite.Length - 1 : bite.Length / 4;
        Look(steps.AsSpan(0, bite.From), taught);
        foreach (var dance in known) Look(dance, taught);
        return best;

        void Look(ReadOnlySpan<CountSteps> before, ReadOnlySpan<CountSteps> now)
        {
            for (var from = 0; from + now.Length <= before.Length; from++)
            {
                var stretch = before.Slice(from, now.Length);
                if (Differing(stretch, now, most) is { } plain) Take((plain, 0, plain));
                if (Differing(stretch, turned, most) is { } other) Take((other, now.Length - other, other));
            }
        }

        void Take((int New, int Mirrored, int Changed) cost)
        {
            if (Price(cost) < Price(best)) best = cost;
        }

        // A mirrored count is taken for half a new one. Working value.
        static int Price((int New, int Mirrored, int Changed) cost) => (2 * cost.New) + cost.Mirrored;
    }

    private static int? Differing(ReadOnlySpan<CountSteps> a, ReadOnlySpan<CountSteps> b, int most)
    {
        var differing = 0;
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] != b[i] && ++differing > most) return null;
        }

        return differing;
    }

    // Who dances by themselves has learned a line dance as a dancer, whatever their role in a couple.
    private static CountSteps[]? Same(DanceScore score, Role role) =>
        (score.Of(role) ?? score.Of(Role.Dancer) ?? score.Of(Role.Lead)) is { } danced ? CountSteps.Of(danced, score.Counts) : null;
}
