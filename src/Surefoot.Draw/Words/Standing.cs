using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Words;

/// <summary>How the dancers stand at a joint of the dance, read from the score and put into words.</summary>
internal static class Standing
{
    /// <summary>Facing and weight of a role before the first action of a section, or at its start when the role rests there.</summary>
    public static RoleStart Before(RoleScore role, int section)
    {
        var at = role.Start;
        foreach (var step in role.Steps)
        {
            // The section decides and not the count: a pick-up "&1" is danced before its part's first beat.
            if (step.Section >= section) break;
            at = new(role.Role, step.Facing, step.Weight);
        }

        return at;
    }

    /// <summary>"both facing LOD": where they look alone, in short names.</summary>
    public static string Facings(IReadOnlyList<RoleStart> starts, Floor floor, RoleNames names) =>
        starts.Count == 0 ? ""
        : starts.Count == 1 ? $"facing {starts[0].Facing.Name(floor)}"
        : starts[0].Facing == starts[1].Facing ? $"both facing {starts[0].Facing.Name(floor)}"
        : $"{names.The(starts[0].Role)} facing {starts[0].Facing.Name(floor)}, {names.The(starts[1].Role)} {starts[1].Facing.Name(floor)}";

    /// <summary>"both facing the line of dance, left foot free"; the roles apart where they differ.</summary>
    /// <param name="full">True for the opening sentence, false for the short names a dancer reads while counting.</param>
    public static string Words(IReadOnlyList<RoleStart> starts, Floor floor, RoleNames names, bool full)
    {
        string Look(Facing facing) => full ? facing.Phrase(floor) : facing.Name(floor);
        if (starts.Count == 0) return "";
        var first = starts[0];
        if (starts.Count == 1) return $"facing {Look(first.Facing)}, {Free(first.Weight)}";
        var second = starts[1];
        // A sentence says "facing" and "the" each time; the short form drops what the ear fills in.
        var (facing, the) = full ? ("facing ", "the ") : ("", "");
        var look = first.Facing == second.Facing
            ? $"both facing {Look(first.Facing)}"
            : $"{names.The(first.Role)} facing {Look(first.Facing)}, {names.The(second.Role)} {facing}{Look(second.Facing)}";
        if (first.Weight == second.Weight)
        {
            return first.Facing == second.Facing ? $"{look}, {Free(first.Weight)}" : $"{look}, both with {With(first.Weight)}";
        }

        if (first.Facing != second.Facing)
        {
            return $"{names.The(first.Role)} facing {Look(first.Facing)} with {With(first.Weight)}, "
                + $"{names.The(second.Role)} {facing}{Look(second.Facing)} with {With(second.Weight)}";
        }

        return first.Weight.Free() is not null && second.Weight.Free() is { } other
            ? $"{look}, {names.The(first.Role)}’s {Free(first.Weight)}, {names.The(second.Role)}’s {other.Word()}"
            : $"{look}, {names.The(first.Role)} with {With(first.Weight)}, {names.The(second.Role)} with {With(second.Weight)}";

        string With(Weight weight) => weight.Free() is null ? Free(weight) : the + Free(weight);
    }

    private static string Free(Weight weight) => weight.Free() is { } foot ? $"{foot.Word()} foot free" : "weight on both feet";
}
