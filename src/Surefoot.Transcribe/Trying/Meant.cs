namespace Surefoot.Transcribe.Trying;

/// <summary>What words are tried as, where they alone do not tell whether they are a step.</summary>
internal enum TriedAs
{
    /// <summary>Talk, though they sound like a step.</summary>
    NoStep,

    /// <summary>A step, though they sound like talk.</summary>
    Step,

    /// <summary>A step that nobody understands: one count is waited for it.</summary>
    OneCount,

    /// <summary>What came just before, danced again.</summary>
    Again,
}

/// <summary>What a reading takes some words of a sheet for, against what it would take them for by themselves.</summary>
internal sealed class Meant
{
    private readonly Dictionary<string, TriedAs> _words;

    private Meant(Dictionary<string, TriedAs> words) => _words = words;

    /// <summary>All words are taken as they sound.</summary>
    public static Meant AsTheySound { get; } = new([]);

    /// <summary>What the words are tried as; null where they are taken as they sound.</summary>
    public TriedAs? this[string words] => _words.TryGetValue(words, out var tried) ? tried : null;

    /// <summary>All words that are tried as something, and as what.</summary>
    public IReadOnlyDictionary<string, TriedAs> Tried => _words;

    /// <summary>The same, and these words tried as well.</summary>
    public Meant With(Try one)
    {
        var words = new Dictionary<string, TriedAs>(_words, StringComparer.Ordinal);
        foreach (var word in one.Words) words[word] = one.As;
        return new(words);
    }
}

/// <summary>One thing to try.</summary>
/// <param name="Words">A phrase, or a sentence and its phrases.</param>
/// <param name="As">What they are tried as.</param>
/// <param name="Cost">How much better the dance has to come out for it.</param>
internal sealed record Try(IReadOnlyList<string> Words, TriedAs As, double Cost);
