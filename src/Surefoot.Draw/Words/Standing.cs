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

    /// <summary>"both facing the line of dance, left foot free"; the roles apart where they differ.</summary>
    /// <param name="full">True for the opening sentence, false for the short names a dancer reads while counting.</param>
    public static string Words(IReadOnlyList<RoleStart> starts, Floor floor, RoleNames names, bool full)
    {
        string Look(Facing facing) => full ? facing.Phrase(floor) : facing.Name(floor);
        if (starts.Count == 0) return "";
        var first = starts[0];
        if (starts.Count == 1) return $"facing {Look(first.Facing)}, {Free(first.Weight)}";
        var second = starts[1];
        var look = first.Facing == second.Facing
            ? $"both facing {Look(first.Facing)}"
            : $"{names.The(first.Role)} facing {Look(first.Facing)}, {names.The(second.Role)} {Look(second.Facing)}";
        if (first.Weight == second.Weight)
        {
            return first.Facing == second.Facing ? $"{look}, {Free(first.Weight)}" : $"{look}, both with {Free(first.Weight)}";
        }

        return first.Facing == second.Facing
            ? $"{look}, {names.The(first.Role)}’s {Free(first.Weight)}, {names.The(second.Role)}’s {Free(second.Weight, true)}"
            : $"{names.The(first.Role)} facing {Look(first.Facing)} with {Free(first.Weight)}, "
                + $"{names.The(second.Role)} {Look(second.Facing)} with {Free(second.Weight)}";
    }

    private static string Free(Weight weight, bool again = false) => weight.Free() is { } foot
        ? again ? foot.Word() : $"{foot.Word()} foot free"
        : "weight on both feet";
}
