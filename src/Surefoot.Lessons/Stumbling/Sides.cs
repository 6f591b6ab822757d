using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;

namespace Surefoot.Lessons.Stumbling;

/// <summary>From which side a bite is shown. Facing away from the class for footwork, then from the side for size and direction: common practice, no source.</summary>
public static class Sides
{
    public static string Of(DanceScore score, TeachingBite bite)
    {
        var stretch = bite.Stretches[0];
        if (stretch.Section is not { } section) return "Your back to the class.";
        var from = score.Sections[section].Start + Beats.Of(stretch.From);
        var steps = score.Roles.SelectMany(r => r.Steps).Where(s => s.At >= from && s.At < from + Beats.Of(stretch.Counts)).ToList();
        var along = steps.Exists(s => s.ChangesWeight && s.Direction is Direction.Forward or Direction.Back or Direction.DiagonalForward or Direction.DiagonalBack);
        var turned = score.Roles.Any(r => Math.Abs(Turned(r, from, from + Beats.Of(stretch.Counts))) % 8 == 4);
        var first = score.Facts.ForCouples
            ? "Lead and follow each once by themselves with your back to them, then as a couple in the middle of the ring"
            : "Your back to the class, so that left is left";
        return first + (along ? "; again from the side, for how far the steps go" : "") + (turned ? ". After the half turn you look at them: name the foot, not the side" : "") + ".";
    }

    private static int Turned(RoleScore role, Count from, Count end)
    {
        var eighths = 0;
        foreach (var step in role.Steps)
        {
            if (step.At >= from && step.At < end) eighths += step.Turn.Eighths;
        }

        return eighths;
    }
}
