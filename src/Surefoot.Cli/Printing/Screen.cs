using System.Text;

namespace Surefoot.Cli.Printing;

/// <summary>
/// Where words go: what was asked for to the one side, remarks to the other. Plain text is the truth,
/// colour a skin over it that only a terminal gets.
/// </summary>
public sealed class Screen(TextWriter output, TextWriter remarks) : IDisposable
{
    // Prose wider than this is hard to read, however wide the window is.
    private const int WidestProse = 100;

    public TextWriter Out { get; } = output;

    public TextWriter Err { get; } = remarks;

    public Skin Skin { get; init; } = Skin.Plain;

    public Skin RemarkSkin { get; init; } = Skin.Plain;

    /// <summary>True when what is asked for appears on a terminal and not in a file.</summary>
    public bool OnTerminal { get; init; }

    public bool RemarksOnTerminal { get; init; }

    /// <summary>Where prose is broken, or null when it is not: lines that go to a file stay whole.</summary>
    public int? Width { get; init; }

    /// <summary>Everything written goes out as UTF-8 with plain line ends, on every machine.</summary>
    public static Screen OfProcess()
    {
        var terminal = !Console.IsOutputRedirected;
        var remarks = !Console.IsErrorRedirected;
        if ((terminal || remarks) && OperatingSystem.IsWindows()) Console.OutputEncoding = Encoding.UTF8;
        return new(Writer(Console.OpenStandardOutput(), 1 << 14), Writer(Console.OpenStandardError(), 256))
        {
            OnTerminal = terminal,
            RemarksOnTerminal = remarks,
            Skin = terminal && Skin.Allowed() ? Skin.Coloured : Skin.Plain,
            RemarkSkin = remarks && Skin.Allowed() ? Skin.Coloured : Skin.Plain,
            Width = terminal ? Math.Clamp(WindowWidth() - 1, 40, WidestProse) : null,
        };
    }

    /// <summary>Writes a paragraph, broken at the edge of the window.</summary>
    /// <param name="indent">Blanks before every line.</param>
    /// <param name="hanging">Blanks before every line but the first, where they differ.</param>
    public void Say(string text, int indent = 0, int? hanging = null)
    {
        foreach (var line in Prose.Wrap(text, Width, indent, hanging ?? indent)) Out.WriteLine(line);
    }

    public void Dispose()
    {
        Out.Flush();
        Err.Flush();
    }

    private static StreamWriter Writer(Stream stream, int buffer) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), buffer) { NewLine = "\n", AutoFlush = buffer < 1024 };

    private static int WindowWidth()
    {
        try
        {
            return Console.WindowWidth > 0 ? Console.WindowWidth : WidestProse;
        }
        catch (IOException)
        {
            return WidestProse;
        }
    }
}
