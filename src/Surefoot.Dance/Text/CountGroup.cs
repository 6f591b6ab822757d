using Surefoot.Dance.Basics;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>The counts at the start of a line: "1", "1-2", "3&amp;4", "&amp;5", "1e&amp;a2", "17-24", "QQSS".</summary>
/// <param name="Slots">Every moment the group names, as the page numbers them.</param>
/// <param name="Plain">True when all are whole counts in a row.</param>
/// <param name="Lengths">For slows and quicks: how long each slot lasts; empty otherwise.</param>
public sealed record CountGroup(ValueList<Count> Slots, bool Plain, ValueList<int> Lengths, TextSpan Span)
{
    public Count First => Slots[0];

    /// <summary>The first whole count after the group.</summary>
    public Count End => Count.At(Slots[Slots.Count - 1].Whole + (Lengths.Count > 0 ? Lengths[Lengths.Count - 1] : 1));

    /// <summary>The first whole count the group touches; for "&amp;5" that is 5.</summary>
    public int FirstWhole
    {
        get
        {
            foreach (var slot in Slots)
            {
                if (slot.Value.IsWhole) return slot.Whole;
            }

            return Slots[0].Whole;
        }
    }

    public Beats Length => End - First;

    /// <summary>
    /// Reads a group from the first tokens of a line. Gives null, and moves nothing, when the line does
    /// not start with counts.
    /// </summary>
    public static CountGroup? Read(string text, ReadOnlySpan<Token> tokens, Lexicon lexicon, ref int next)
    {
        var i = next;
        if (i < tokens.Length && tokens[i].Kind == TokenKind.Word && Is(tokens[i], lexicon, SenseKind.Counts)) i++;
        var first = i;
        if (i < tokens.Length && ReadRhythm(text, tokens[i]) is { } rhythm)
        {
            next = i + 1;
            return rhythm;
        }

        var slots = new List<Count>(8);
        var last = 0;
        var range = false;
        var ranged = false;
        var end = i;
        while (i < tokens.Length)
        {
            var token = tokens[i];
            var number = token.Kind == TokenKind.Number ? token.Value : 0;
            if (number is > 0 and < 1000)
            {
                if (slots.Count > 0 && number != last + 1 && !(range && number > last)) break;
                if (ranged && !range && tokens[i - 1].Kind == TokenKind.Number && !LeadsToMore(tokens, i)) break;
                for (var n = range && last > 0 ? last + 1 : number; n <= number && slots.Count < 1000; n++) slots.Add(Count.At(n));
                last = number;
                range = false;
                end = ++i;
                continue;
            }

            range = false;
            var following = i + 1 < tokens.Length ? tokens[i + 1] : default;
            if (token.Kind is TokenKind.Amp or TokenKind.Plus)
            {
                if (last == 0 && following is { Kind: TokenKind.Number, Value: > 0 and < 1000 }) last = following.Value - 1;
                else if (last == 0 && slots.Count > 0) break;
                slots.Add(new(Beats.Of((last * 2) + 1, 2)));
                end = ++i;
                continue;
            }

            if (token is { Kind: TokenKind.Word, Length: 1 } && text[token.Start] is 'e' or 'a' or 'E' && QuarterAt(text, tokens, i, last) is { } quarter)
            {
                if (last == 0 && following.Kind == TokenKind.Number) last = following.Value - 1;
                slots.Add(new(Beats.Of(last) + quarter));
                end = ++i;
                continue;
            }

            var leadsOn = following is { Kind: TokenKind.Number } && slots.Count > 0;
            if (token.Kind == TokenKind.Dash && leadsOn && following.Value > last)
            {
                range = ranged = true;
                i++;
                continue;
            }

            if (token is { Kind: TokenKind.Word, Length: 3 } && leadsOn && following.Value == last + 1 && text.AsSpan(token.Start, 3).Equals("and", StringComparison.OrdinalIgnoreCase))
            {
                // "7 and 8" is "7&8".
                slots.Add(new(Beats.Of((last * 2) + 1, 2)));
                end = ++i;
                continue;
            }

            if (token.Kind == TokenKind.Word && leadsOn && text.AsSpan(token.Start, token.Length) is "through" or "thru" or "Through")
            {
                range = ranged = true;
                i++;
                continue;
            }

            if (token is { Kind: TokenKind.Word, Length: 2 } && leadsOn && text.AsSpan(token.Start, 2).Equals("to", StringComparison.OrdinalIgnoreCase))
            {
                range = ranged = true;
                i++;
                continue;
            }

            if (token.Kind is TokenKind.Comma or TokenKind.Slash && slots.Count > 0
                && ((leadsOn && following.Value == last + 1) || following.Kind == TokenKind.Amp))
            {
                i++;
                continue;
            }

            break;
        }

        if (slots.Count == 0) return null;
        slots.Sort();
        var plain = true;
        for (var k = 0; k < slots.Count; k++)
        {
            plain &= slots[k].Value.IsWhole && (k == 0 || slots[k] - slots[k - 1] == Beats.One);
        }

        var span = tokens[first].Span.Join(tokens[end - 1].Span);
        next = end;
        return new(slots.ToValueList(), plain, default, span);
    }

    /// <summary>The group moved so that its page number <paramref name="offset"/> + 1 is count 1.</summary>
    public CountGroup Less(int offset) =>
        offset == 0 ? this : this with { Slots = Slots.Select(s => s - Beats.Of(offset)).ToValueList() };

    private static Beats? QuarterAt(string text, ReadOnlySpan<Token> tokens, int i, int last)
    {
        var touchesLeft = i > 0 && tokens[i - 1].End == tokens[i].Start && tokens[i - 1].Kind is TokenKind.Number or TokenKind.Amp;
        var touchesRight = i + 1 < tokens.Length && tokens[i].End == tokens[i + 1].Start && tokens[i + 1].Kind is TokenKind.Number or TokenKind.Amp;
        if (!touchesLeft && !(touchesRight && last == 0) && !(touchesRight && last > 0)) return null;
        return text[tokens[i].Start] is 'a' ? Beats.Of(3, 4) : Beats.Of(1, 4);
    }

    // "1 2 3 step" and "1-2 3&4 rock" go on counting; in "1-2 3 walks" the 3 belongs to the walks.
    private static bool LeadsToMore(ReadOnlySpan<Token> tokens, int i) =>
        i + 1 < tokens.Length && tokens[i + 1].Kind is TokenKind.Amp or TokenKind.Dash or TokenKind.Plus or TokenKind.Colon;

    private static CountGroup? ReadRhythm(string text, Token token)
    {
        if (token.Kind != TokenKind.Word || token.Length < 2) return null;
        var lengths = new int[token.Length];
        for (var k = 0; k < token.Length; k++)
        {
            lengths[k] = text[token.Start + k] switch { 'S' => 2, 'Q' => 1, _ => 0 };
            if (lengths[k] == 0) return null;
        }

        var slots = new Count[token.Length];
        var at = 1;
        for (var k = 0; k < slots.Length; k++)
        {
            slots[k] = Count.At(at);
            at += lengths[k];
        }

        return new(new(slots), false, new(lengths), token.Span);
    }

    private static bool Is(Token token, Lexicon lexicon, SenseKind kind)
    {
        Span<Token> one = [token];
        return lexicon.Longest(one, 0, out var senses) == 1 && senses.Exists(s => s.Kind == kind);
    }
}
