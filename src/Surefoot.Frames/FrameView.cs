namespace Surefoot.Frames;

/// <summary>From where a dance is pictured, and how.</summary>
/// <param name="Cameras">One or two of <see cref="CameraNames"/>; two stand beside each other in the picture.</param>
/// <param name="Width">Of the picture, in pixels; likewise the height.</param>
/// <param name="Role">The one who is shown alone, "lead" or "follow"; everybody when null.</param>
/// <param name="Look">"light", "dark" or "dim".</param>
/// <param name="Traces">True for prints of the last steps on the floor.</param>
public sealed record FrameView(IReadOnlyList<string> Cameras, int Width, int Height, string? Role = null, string Look = "light", bool Traces = true)
{
    public static IReadOnlyList<string> CameraNames { get; } = ["back", "side", "above", "partner"];
}
