using Surefoot.Dance.Text;

namespace Surefoot.Transcribe.Files;

/// <summary>The text of a file that somebody keeps sheets in: plain text, PDF, or a word processor's DOCX.</summary>
public static class SheetFile
{
    /// <summary>Bytes beyond which a file is not read: no sheet is that long. 32 MB.</summary>
    public const int Most = 32 << 20;

    /// <returns>The text, or what keeps the file from being read, as two sentences that go on after its name.</returns>
    public static (string? Text, NoPage? Trouble) Read(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (bytes.Length > Most) return (null, new("it is too large for a sheet.", "Is it the right file?"));
        return bytes switch
        {
            [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] => PdfText.Read(bytes),
            [(byte)'P', (byte)'K', 3, 4, ..] => DocxText.Read(bytes),
            _ => Plain(bytes),
        };
    }

    private static (string?, NoPage?) Plain(byte[] bytes)
    {
        var (text, _, trouble) = TextForms.Read(bytes);
        if (trouble is null) return (text, null);
        // Old sheets are often stored letter by letter in a byte; what is not text at all says so above.
        return Array.IndexOf(bytes, (byte)0) < 0 && bytes is not [0xD0, 0xCF, 0x11, 0xE0, ..] ? (System.Text.Encoding.Latin1.GetString(bytes), null) : (null, trouble);
    }
}
