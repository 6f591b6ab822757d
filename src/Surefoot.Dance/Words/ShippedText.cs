using System.Reflection;

namespace Surefoot.Dance.Words;

/// <summary>The text files that travel inside the library: words, figures, explanations of problems.</summary>
public static class ShippedText
{
    private static readonly Assembly Home = typeof(ShippedText).Assembly;

    public static IEnumerable<string> Names(string folder) =>
        Home.GetManifestResourceNames().Where(n => n.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <exception cref="ArgumentException">There is no such text.</exception>
    public static string Read(string name)
    {
        using var stream = Home.GetManifestResourceStream(name) ?? throw new ArgumentException($"No text named {name} is shipped.", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
