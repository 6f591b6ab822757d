namespace Surefoot.Tests.Support;

/// <summary>Some fonts write two or three letters as one sign; what is read back from paper has them then.</summary>
internal static class JoinedLetters
{
    // Unicode's Latin ligatures, U+FB00 to U+FB04. The compatibility form would do the same, but not without the machine's cultures.
    private static readonly (string Sign, string Letters)[] Signs = [("\uFB00", "ff"), ("\uFB01", "fi"), ("\uFB02", "fl"), ("\uFB03", "ffi"), ("\uFB04", "ffl")];

    public static string Apart(string text) => Signs.Aggregate(text, (t, s) => t.Replace(s.Sign, s.Letters, StringComparison.Ordinal));
}
