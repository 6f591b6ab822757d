using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Feet;

/// <summary>The few words beside a panel: what a sole cannot show. A plain step has none.</summary>
internal static class FrameWords
{
    public static string Of(Frame frame)
    {
        var words = new List<string>();
        foreach (var action in frame.Actions)
        {
            var turning = action.Kind == ActionKind.Turn;
            if (action.Kind != ActionKind.Step && !turning) words.Add(action.Kind.Word());
        }

        var kinds = string.Join(", ", words);
        return frame.Turned.IsNone ? kinds : $"{kinds} {frame.Turned}".TrimStart();
    }
}
