using System.Text;

namespace Surefoot.Library.Keeping;

/// <summary>What comes in is looked at here, once, so that both databases hold the same.</summary>
internal static class Door
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text to be kept, or why it cannot be.</summary>
    public static (string Text, Refusal? Refusal) Page(string text, LibraryLimits limits)
    {
        // The mark some programs put in front is no part of the page.
        if (text.StartsWith('\uFEFF')) text = text[1..];
        if (Fault(text) is { } fault) return ("", fault);
        return Strict.GetByteCount(text) > limits.PageBytes
            ? ("", new($"This page is longer than a page may be ({limits.PageBytes / 1024} kB)."))
            : (text, null);
    }

    /// <summary>A name, a title, a tag: one line.</summary>
    public static (string Text, Refusal? Refusal) Name(string? text, string what, LibraryLimits limits) => Line(text, what, limits.NameLength);

    /// <summary>A note or an address.</summary>
    public static (string Text, Refusal? Refusal) Note(string? text, string what, LibraryLimits limits)
    {
        text ??= "";
        if (Fault(text) is { } fault) return ("", fault);
        return text.Length > limits.NoteLength ? ("", TooLong(what, limits.NoteLength)) : (text.Trim(), null);
    }

    private static (string Text, Refusal? Refusal) Line(string? text, string what, int longest)
    {
        text ??= "";
        if (Fault(text) is { } fault) return ("", fault);
        var line = string.Join(' ', text.Split((char[])[' ', '\t', '\r', '\n', '\u00A0', '\u2028', '\u2029', '\u0085'], StringSplitOptions.RemoveEmptyEntries));
        return line.Length > longest ? ("", TooLong(what, longest)) : (line, null);
    }

    private static Refusal TooLong(string what, int longest) => new($"{what} is longer than it may be ({longest} letters).");

    // An empty sign is refused by one database and cuts texts short in other programs; half of a pair of
    // letters cannot be written to a file.
    internal static Refusal? Fault(string text)
    {
        if (text.Contains('\0')) return new("There are signs in it that are no letters. Was it copied from another kind of file?");
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i])) continue;
            if (i + 1 >= text.Length || !char.IsSurrogatePair(text[i], text[i + 1])) return new("Some of its letters are damaged.");
            i++;
        }

        return null;
    }
}
