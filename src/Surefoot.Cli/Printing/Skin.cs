using System.Runtime.CompilerServices;
using Surefoot.Dance.Problems;

namespace Surefoot.Cli.Printing;

/// <summary>Colours over plain text, or none.</summary>
public sealed class Skin
{
    private readonly bool _on;

    private Skin(bool on) => _on = on;

    public static Skin Plain { get; } = new(on: false);

    public static Skin Coloured { get; } = new(on: true);

    public string Title(string text) => Paint("1", text);

    public string Faint(string text) => Paint("2", text);

    public string Gone(string text) => Paint("31", text);

    public string Come(string text) => Paint("32", text);

    public string Of(Severity severity, string text) => Paint(severity switch { Severity.Error => "1;31", Severity.Warning => "1;33", _ => "1;36" }, text);

    /// <summary>False when NO_COLOR is set or the terminal cannot show colours.</summary>
    internal static bool Allowed() => Environment.GetEnvironmentVariable("NO_COLOR") is null && TerminalKnowsCodes();

    /// <summary>True when the terminal understands more than letters, such as colours and going back a line.</summary>
    internal static bool TerminalKnowsCodes() =>
        OperatingSystem.IsWindows() ? WindowsKnowsCodes() : Environment.GetEnvironmentVariable("TERM") is { Length: > 0 } and not "dumb";

    private string Paint(string code, string text) => _on && text.Length > 0 ? $"\e[{code}m{text}\e[0m" : text;

    // Asking also switches an older Windows terminal to colours. Kept apart so that nothing is loaded elsewhere.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static bool WindowsKnowsCodes() => Spectre.Console.AnsiConsole.Profile.Capabilities.Ansi;
}
