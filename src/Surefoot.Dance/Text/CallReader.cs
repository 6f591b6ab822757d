using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>Reads "Call 7-8: rock back", "Call 15-16, follow, 2nd time: your turn", "Call 23: none", "Call before the dance: walk".</summary>
internal static class CallReader
{
    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];

    /// <summary>The line as a call, or null when it does not begin with the word, counts or "before the dance", and a colon.</summary>
    public static CallLine? Read(SourceText source, FigureBook book, ReadOnlySpan<Token> tokens, TextSpan line)
    {
        if (tokens.Length < 3 || tokens[0].Kind != TokenKind.Word || !Is(book, "call", source.Words(tokens[0].Span))) return null;
        var next = 1;
        var group = CountGroup.Read(source.Text, tokens, book.Lexicon, ref next);
        if (group is { Lengths.Count: > 0 }) return null;
        var after = group?.Span.End ?? OpeningEnd(source, book, tokens[0].Span.End, line.End);
        var colon = after < 0 ? -1 : source.Text.IndexOf(':', after, line.End - after);
        if (colon < 0) return null;
        var (role, roleSaid, time) = ((Role?)null, false, (int?)null);
        TextSpan? unread = null;
        foreach (var said in Pieces(source.Text, after, colon))
        {
            var words = source.Words(said).ToLowerInvariant();
            if (TimeOf(words) is { } nth) time = nth;
            else if (RoleOf(book, words) is { } whose) (role, roleSaid) = (whose.Role, true);
            else unread ??= said;
        }

        var call = Flat(source.Text[(colon + 1)..line.End]);
        var none = call.Length > 0 && Is(book, "nocall", call.TrimEnd('.'));
        return new(group, role, roleSaid, time, none ? "" : call, none, unread, line);
    }

    /// <summary>How a tidy page writes what stands between counts and colon.</summary>
    public static string Says(CallLine line, SourceText source) =>
        (line.RoleSaid ? ", " + (line.Role?.Word() ?? "both") : "")
        + (line.Time switch { null => "", 0 => ", last time", 1 => ", 1st time", 2 => ", 2nd time", 3 => ", 3rd time", var n => $", {n}th time" })
        + (line.Unread is { } unread ? ", " + source.Words(unread) : "");

    // Where "before the dance" ends, or -1 where something else stands there.
    private static int OpeningEnd(SourceText source, FigureBook book, int from, int to)
    {
        var end = source.Text.AsSpan(from, to - from).IndexOfAny(',', ':');
        if (end < 0) return -1;
        var said = string.Join(' ', source.Text.Substring(from, end).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return Is(book, "openingcall", said) ? from + end : -1;
    }

    private static IEnumerable<TextSpan> Pieces(string text, int from, int to)
    {
        for (var at = from; at < to;)
        {
            var comma = text.IndexOf(',', at, to - at);
            var end = comma < 0 ? to : comma;
            var piece = FigureReader.Trimmed(text, TextSpan.Between(at, end));
            if (piece.Length > 0) yield return piece;
            at = end + 1;
        }
    }

    // "2nd time", "second time", "last time".
    private static int? TimeOf(string words)
    {
        if (!words.EndsWith(" time", StringComparison.Ordinal)) return null;
        var which = words[..^5].Trim();
        if (which.StartsWith("the ", StringComparison.Ordinal)) which = which[4..];
        if (which == "last") return 0;
        if (Array.IndexOf(Ordinals, which) is var at and >= 0) return at + 1;
        var digits = which.TrimEnd('s', 't', 'n', 'd', 'r', 'h');
        return int.TryParse(digits, out var nth) && nth is > 0 and < 1000 && which.Length - digits.Length is 0 or 2 ? nth : null;
    }

    private static (Role? Role, bool Found)? RoleOf(FigureBook book, string words)
    {
        foreach (var sense in book.Lexicon.Find(words))
        {
            if (sense.Kind == SenseKind.Role) return (sense.Value switch { 0 => Role.Lead, 1 => Role.Follow, _ => null }, true);
        }

        return null;
    }

    private static bool Is(FigureBook book, string kind, string words)
    {
        foreach (var row in book.Rows)
        {
            if (row.Kind == kind && row.Spellings.Any(s => s.Equals(words, StringComparison.OrdinalIgnoreCase))) return true;
        }

        return false;
    }

    // What is called, without the quotes some put round it.
    private static string Flat(string words) =>
        string.Join(' ', words.Split(['"', '\u201C', '\u201D', ' ', '\t', '\u00A0', '\uFEFF'], StringSplitOptions.RemoveEmptyEntries));
}
