using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight;

/// <summary>
/// What one dancer does within one whole count: on it, on its "e", "&amp;" and "a". Dances are compared count by
/// count, because counts are what instructors tell differences in.
/// </summary>
/// <param name="Packed">Four <see cref="CountStep"/>s, the one on the count in the lowest 16 bits.</param>
public readonly record struct CountSteps(ulong Packed)
{
    /// <summary>Moments within a count.</summary>
    public const int Moments = 4;

    public CountStep this[int moment] => new((ushort)(Packed >> (16 * moment)));

    public bool IsNothing => Packed == 0;

    /// <summary>True when something is done between this count and the next.</summary>
    public bool IsSplit => Packed >> 16 != 0;

    public CountSteps Mirrored
    {
        get
        {
            var mirrored = 0UL;
            for (var m = 0; m < Moments; m++) mirrored |= (ulong)this[m].Mirrored.Packed << (16 * m);
            return new(mirrored);
        }
    }

    /// <summary>The same with one more action at a moment.</summary>
    public CountSteps And(int moment, CountStep step)
    {
        var shift = 16 * moment;
        return new((Packed & ~(0xFFFFUL << shift)) | ((ulong)CountStep.Together(this[moment], step).Packed << shift));
    }

    /// <summary>A role's steps, one for each whole count of the repeat. A half-count before the first beat is danced at the repeat's end.</summary>
    /// <param name="counts">Length of the repeat.</param>
    public static CountSteps[] Of(RoleScore role, Beats counts)
    {
        var all = new CountSteps[counts.Ceiling];
        if (all.Length == 0) return all;
        foreach (var step in role.Steps)
        {
            var within = step.At.Value - Beats.Of(step.At.Whole);
            var at = (((step.At.Whole - 1) % all.Length) + all.Length) % all.Length;
            all[at] = all[at].And((within * Moments).Floor, CountStep.Of(step));
        }

        return all;
    }
}
