using System.Security.Cryptography;
using Surefoot.Transcribe;

namespace Surefoot.Web.Pasting;

/// <summary>What came in, as it came: pasted words, or a file with its own name.</summary>
/// <param name="FileName">Null where it was pasted.</param>
internal sealed record Brought(string? FileName, byte[] Bytes);

/// <summary>A sheet that somebody else typed, with what was read from it, until it is kept as a dance.</summary>
/// <param name="brought">As it came first; reading it again with other words does not change that.</param>
/// <param name="text">The words that were read, with "\n" between lines.</param>
/// <param name="notebook">The notebook the form named; null or empty for the person's own.</param>
/// <param name="read">What became of it.</param>
internal sealed class PastedSheet(Brought brought, string text, string? notebook, Transcript read)
{
    public string Word { get; } = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    public Brought Brought => brought;

    public string Text => text;

    public string? Notebook => notebook;

    public Transcript Read => read;

    /// <summary>The page as it stands in its box: as it was read, or as somebody left it.</summary>
    public string Page { get; set; } = read.Page;

    /// <summary>The reading before this one, where its page had been written on; null for none.</summary>
    public string? Before { get; init; }

    /// <summary>The dance it was kept as; null while it was not.</summary>
    public long? Kept { get; set; }
}
