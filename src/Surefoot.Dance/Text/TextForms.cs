using System.Text;

namespace Surefoot.Dance.Text;

/// <summary>How a page's letters are stored.</summary>
public enum TextForm
{
    Utf8,
    Utf8WithMark,
    Utf16,
    Utf16Turned,
}

/// <summary>Why bytes are no page, and what to do about it; both are sentences that go on after the file's name.</summary>
public sealed record NoPage(string What, string Advice);

/// <summary>Tells text from what is none, and says why.</summary>
public static class TextForms
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private const string SaveAgain = "Open it where it was written and save it again as plain text, with UTF-8 as its encoding.";

    /// <summary>The text, or what keeps it from being one.</summary>
    public static (string Text, TextForm Form, NoPage? Trouble) Read(byte[] bytes)
    {
        try
        {
            return bytes switch
            {
                [0xEF, 0xBB, 0xBF, ..] => (Utf8.GetString(bytes, 3, bytes.Length - 3), TextForm.Utf8WithMark, NoText(bytes)),
                [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..] => ("", default, new("its letters are stored in a form Surefoot does not read.", SaveAgain)),
                [0xFF, 0xFE, ..] => (Wide(turned: false).GetString(bytes, 2, bytes.Length - 2), TextForm.Utf16, null),
                [0xFE, 0xFF, ..] => (Wide(turned: true).GetString(bytes, 2, bytes.Length - 2), TextForm.Utf16Turned, null),
                _ when NoText(bytes) is { } trouble => ("", default, trouble),
                _ => (Utf8.GetString(bytes), TextForm.Utf8, null),
            };
        }
        catch (DecoderFallbackException fault)
        {
            return ("", default, NotUtf8(bytes, fault.Index));
        }
    }

    public static byte[] Bytes(string text, TextForm form) => form switch
    {
        TextForm.Utf8WithMark => [0xEF, 0xBB, 0xBF, .. Utf8.GetBytes(text)],
        TextForm.Utf16 => [0xFF, 0xFE, .. Wide(turned: false).GetBytes(text)],
        TextForm.Utf16Turned => [0xFE, 0xFF, .. Wide(turned: true).GetBytes(text)],
        _ => Utf8.GetBytes(text),
    };

    private static UnicodeEncoding Wide(bool turned) => new(turned, byteOrderMark: false, throwOnInvalidBytes: true);

    private static NoPage? NoText(byte[] bytes)
    {
        const string plain = "Save the dance as plain text (UTF-8), with a name that ends in .dance.";
        var kind = bytes switch
        {
            [(byte)'P', (byte)'K', 3, 4, ..] => "this is a word processor's document (or a packed folder), not plain text.",
            [0xD0, 0xCF, 0x11, 0xE0, ..] => "this is a word processor's document, not plain text.",
            [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] => "this is a PDF, not plain text.",
            [(byte)'{', (byte)'\\', (byte)'r', (byte)'t', (byte)'f', ..] => "this is formatted text (RTF), not plain text.",
            [0xFF, 0xD8, 0xFF, ..] or [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => "this is a picture, not plain text.",
            _ => null,
        };
        if (kind is not null) return new(kind, plain);
        var zero = Array.IndexOf(bytes, (byte)0);
        if (zero < 0) return null;
        // Every other byte empty: wide letters without the mark that says so.
        var sample = bytes.AsSpan(0, Math.Min(bytes.Length, 512));
        return sample.Count((byte)0) * 3 > sample.Length && sample.Count((byte)0) * 3 < sample.Length * 2
            ? new("its letters are stored in a form Surefoot does not read (UTF-16 without its mark).", SaveAgain)
            : new("this is not a text file.", plain);
    }

    private static NoPage NotUtf8(byte[] bytes, int at)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..]) return new("some of its letters are damaged.", SaveAgain);
        var place = Math.Clamp(at + (bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0), 0, Math.Max(0, bytes.Length - 1));
        var line = bytes.AsSpan(0, place).Count((byte)'\n') + 1;
        var from = place;
        while (from > 0 && bytes[from - 1] is not ((byte)'\n' or (byte)'\r') && place - from < 24) from--;
        var words = Encoding.Latin1.GetString(bytes, from, place - from).TrimStart();
        var after = words.Length > 0 ? $", after \"{words.TrimEnd()}\"," : "";
        return new($"it is not UTF-8 text: line {line}{after} has a letter saved the old Windows way (often ½, é or a curly quote).", SaveAgain);
    }
}
