namespace Surefoot.Frames;

/// <summary>Where the browser is that draws.</summary>
public static class Chromium
{
    /// <summary>Says where it is when it is not on the path.</summary>
    public const string Setting = "SUREFOOT_CHROMIUM";

    private static readonly string[] Names = ["chromium", "chromium-browser"];

    /// <summary>The program; null where none is found.</summary>
    public static string? Find()
    {
        if (Environment.GetEnvironmentVariable(Setting) is { Length: > 0 } told) return File.Exists(told) ? told : null;
        var ending = OperatingSystem.IsWindows() ? ".exe" : "";
        return (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name + ending)))
            .FirstOrDefault(File.Exists);
    }
}
