namespace Surefoot.Library;

/// <summary>Why something was not done, as a sentence; nothing was changed then.</summary>
public sealed record Refusal(string Why)
{
    internal static Refusal NoPage { get; } = new("That page is not there any more. It may have been put into the bin.");

    internal static Refusal NoNotebook { get; } = new("That notebook is not there any more.");
}
