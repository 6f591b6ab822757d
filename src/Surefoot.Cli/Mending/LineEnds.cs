namespace Surefoot.Cli.Mending;

/// <summary>Lines end in a page as they always did in it.</summary>
internal static class LineEnds
{
    /// <summary>New words with the line ends of the page they go into.</summary>
    public static string Like(string page, string words)
    {
        if (!words.Contains('\n', StringComparison.Ordinal)) return words;
        var windows = page.Contains("\r\n", StringComparison.Ordinal);
        var old = !windows && !page.Contains('\n', StringComparison.Ordinal) && page.Contains('\r', StringComparison.Ordinal);
        var plain = words.Replace("\r\n", "\n", StringComparison.Ordinal);
        return windows ? plain.Replace("\n", "\r\n", StringComparison.Ordinal) : old ? plain.Replace('\n', '\r') : plain;
    }
}
