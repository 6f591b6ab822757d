namespace Surefoot.Web.Keeping;

/// <summary>What a window has in it, as it sends it to be kept.</summary>
/// <param name="Session">The window's own name for itself.</param>
/// <param name="Sequence">Counted up by the window with every text it sends.</param>
/// <param name="BasedOn">The version it had before it when the writing began.</param>
internal sealed record Written(string Session, long Sequence, int BasedOn, string Text, string Note = "", string Device = "")
{
    /// <summary>The draft of a window that was closed, which this window goes on with; it is needless once this one is on the disk.</summary>
    public Adopted? Adopted { get; init; }
}

/// <summary>A draft as it was when it was taken over.</summary>
internal sealed record Adopted(string Session, long Sequence);

/// <summary>A version that is to be the page again.</summary>
internal sealed record BroughtBack(int Version, string Device = "");
