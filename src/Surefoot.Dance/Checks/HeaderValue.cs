using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Checks;

/// <summary>A level or a kind of dance that is none: it is kept and printed, and nothing goes by it.</summary>
public sealed class HeaderValue : ICheck
{
    private static readonly string[] Kinds = ["partner", "line", "circle"];

    private static readonly string[] KindWords = ["partner", "partners", "couple", "couples", "line", "lines", "circle", "round", "wall", "walls", "solo", "contra", "figures", "mixer", "without"];

    private const string KindReason = "A kind is partner or line, circle, and how many walls, for example \"partner, circle\" or \"line, 4 walls\".";

    public string Name => "header-value";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.Page.Header("level") is { } level && Levels.Read(level.Value) is null) yield return Tell(dance.Page, level, "level", Levels.Words, $"Levels are {string.Join(", ", Levels.Words.SkipLast(1))} and {Levels.Words[^1]}.");
        if (dance.Page.Header("kind") is not { } kind) yield break;
        if (!Says(kind, KindWords))
        {
            yield return Tell(dance.Page, kind, "kind of dance", Kinds, KindReason);
            yield break;
        }

        // "Partner, cirlce": a slip beside a word that is known, which would be passed over without a word.
        foreach (var (word, at) in WordsOf(kind.Value))
        {
            var lower = word.ToLowerInvariant();
            if (lower.Length < 4 || KindWords.Contains(lower)) continue;
            if (NearWords.Nearest(lower, KindWords.Where(k => k[0] == lower[0]), 2) is not { } meant) continue;
            var span = new TextSpan(kind.ValueSpan.Start + at, word.Length);
            yield return new(
                Name, Severity.Hint, span, null, null, null, $"\"{word}\" is no kind of dance that Surefoot knows; it is printed as it stands, and nothing goes by it.",
                KindReason, default, [new Fix($"Did you mean: {meant}", Sureness.Likely, [new(span, meant)])], PageEnd.Word(span, word));
        }
    }

    private static IEnumerable<(string Word, int At)> WordsOf(string value)
    {
        for (var i = 0; i < value.Length; i++)
        {
            var from = i;
            while (i < value.Length && char.IsLetter(value[i])) i++;
            if (i > from) yield return (value[from..i], from);
        }
    }

    private Problem Tell(Page page, HeaderLine header, string what, IReadOnlyList<string> known, string reason)
    {
        var typed = header.Value.Trim(' ', '.').ToLowerInvariant();
        var meant = known.FirstOrDefault(k => typed.Length > 1 && k.StartsWith(typed, StringComparison.Ordinal))
            ?? known.FirstOrDefault(k => typed.Contains(k, StringComparison.Ordinal))
            ?? NearWords.Nearest(typed, known, 3);
        return new(
            Name, Severity.Hint, header.ValueSpan.Length > 0 ? header.ValueSpan : header.KeySpan, null, null, null,
            header.Value.Trim().Length == 0 ? $"No {what} is named here." : $"\"{header.Value.Trim()}\" is no {what} that Surefoot knows; it is printed as it stands, and nothing goes by it.",
            reason, default,
            meant is null ? default : [new Fix($"Did you mean: {meant}", Sureness.Likely, [new(header.ValueSpan, meant)])],
            header.Value.Trim() is { Length: > 0 } value ? PageEnd.Word(header.ValueSpan, value) : PageEnd.LineEnd(page, header.KeySpan.End, $"The {what} is still to write."));
    }

    private static bool Says(HeaderLine header, string[] words) =>
        header.Value.ToLowerInvariant().Split([' ', ',', ';', '/', '-', '(', ')', '.', '+'], StringSplitOptions.RemoveEmptyEntries).Any(words.Contains);
}
