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

    /// <summary>What somebody said its words mean, on this sheet only.</summary>
    public IReadOnlyList<SheetWord> Corrections { get; init; } = [];

    /// <summary>What was typed into the form and could not be taken.</summary>
    public NotTaken Refused { get; set; } = NotTaken.Nothing;

    /// <summary>The page as it stands in its box: as it was read, or as somebody left it.</summary>
    public string Page { get; set; } = read.Page;

    /// <summary>The reading before this one, where its page had been written on; null for none.</summary>
    public string? Before { get; init; }

    /// <summary>The dance it was kept as; null while it was not.</summary>
    public long? Kept { get; set; }
}

/// <summary>A form that was not taken: all that was typed into it, so that it is not lost, and what is the matter.</summary>
/// <param name="Text">The sheet's text, as it was left in its box; null for as it is.</param>
/// <param name="Typed">By the names of the fields.</param>
/// <param name="Why">For fields that cannot be taken a sentence.</param>
public sealed record NotTaken(string? Text, IReadOnlyDictionary<string, string> Typed, IReadOnlyDictionary<string, string> Why)
{
    public static NotTaken Nothing { get; } = new(null, new Dictionary<string, string>(), new Dictionary<string, string>());

    public string? For(string field) => Typed.GetValueOrDefault(field);
}
