namespace Surefoot.Draw.Feet;

/// <summary>
/// The five tones of a foot picture. Nothing is told by a tone alone: shape, line and hatching say the same
/// on a copier that knows only black.
/// </summary>
/// <param name="Ink">What is done now.</param>
/// <param name="Soft">The foot stood on meanwhile.</param>
/// <param name="Faint">Where a foot came from, and feet at rest.</param>
/// <param name="Floor">The panel.</param>
/// <param name="Paper">The ground, and letters on dark soles.</param>
internal sealed record Palette(string Ink, string Soft, string Faint, string Floor, string Paper)
{
    public static Palette Light { get; } = new("#1c1b19", "#a3a19b", "#b5b2aa", "#f4f2ec", "#ffffff");

    public static Palette Dark { get; } = new("#f1eee6", "#85827b", "#6b6963", "#2a2927", "#191817");

    /// <summary>Takes its tones from the page around it, so that a sheet can go dark on a screen.</summary>
    public static Palette Page { get; } = new("var(--ink)", "var(--soft)", "var(--faint)", "var(--floor)", "var(--paper)");
}
