using Surefoot.Library.Keeping;

namespace Surefoot.Library.Exchange;

/// <summary>A page about to be taken in, with everything read and looked at.</summary>
/// <param name="Kept">What an export knows of it beside its text, or null for a plain page.</param>
internal sealed record PagePlan(string File, string Name, string Text, KeptPlan? Kept);

/// <summary>A page's history and what is told beside it.</summary>
internal sealed record KeptPlan(PageFile Page, IReadOnlyList<(VersionFile Version, string Text)> Versions, IReadOnlyList<(DraftFile Draft, string Text)> Drafts, IReadOnlyList<(AttachmentFile Attachment, byte[]? Bytes)> Attachments)
{
    /// <summary>The captions of its film; null where it has no film, or they could not be read.</summary>
    public string? Captions { get; init; }
}

/// <summary>A notebook about to be taken in.</summary>
/// <param name="File">What an export knows of it, or null for a plain folder.</param>
internal sealed record NotebookPlan(NotebookFile? File, List<PagePlan> Pages)
{
    /// <summary>Its terms of lessons.</summary>
    public List<(string Path, TermFile Term, string Text)> Terms { get; init; } = [];
}
