using Surefoot.Film.Captions;

namespace Surefoot.Film.Hearing;

/// <summary>Makes of the captions' words those that were meant: spelling evened out, mishearings undone.</summary>
internal static class Ear
{
    private static readonly string[] NumberWords = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen"];

    public static int? NumberOf(string word) => Array.IndexOf(NumberWords, word) is var n and > 0 ? n : null;

    public static List<Spoken> Understood(IReadOnlyList<HeardWord> heard, DanceWords dance)
    {
        var rules = SpokenRules.Shipped;
        var words = new List<Spoken>(heard.Count);
        foreach (var word in heard) Even(word, words);
        Rewrite(words, rules, dance);
        InPlace(words, dance);
        for (var i = 0; i < words.Count; i++)
        {
            var word = words[i].Word;
            if (rules.AlikeInCounting.TryGetValue(word, out var number) && Counting(words, i, NumberOf(number)!.Value)) words[i] = words[i] with { Word = number };
            // "Do not rush" asks for no brush.
            else if (!dance.Words.Contains(word) && !(i > 0 && words[i - 1].Word is "not" or "don't") && rules.Alike.TryGetValue(word, out var meant) && dance.Words.Contains(meant)) words[i] = words[i] with { Word = meant };
            else if (dance.Book.Lexicon.WordOf(word) < 0 && NumberOf(word) is null && dance.Nearest(word) is { } near) words[i] = words[i] with { Word = near };
        }

        return words;
    }

    private static void Even(HeardWord word, List<Spoken> into)
    {
        var text = word.Text.ToLowerInvariant().Replace('\u2019', '\'');
        var pieces = text.Split(['-', '/', '\u2013', '\u2014', ',', '.', ';', ':', '!', '?', '"', '(', ')', '\u201C', '\u201D', '\u2026', '>', '*'], StringSplitOptions.RemoveEmptyEntries);
        if (pieces.Length == 0) return;
        var each = (word.To - word.From) / pieces.Length;
        for (var i = 0; i < pieces.Length; i++)
        {
            var plain = pieces[i].Trim('\'') switch
            {
                "&" => "and",
                "1st" => "first",
                "2nd" => "second",
                "3rd" => "third",
                "4th" => "fourth",
                "5th" => "fifth",
                "6th" => "sixth",
                "7th" => "seventh",
                "8th" => "eighth",
                "½" => "half",
                "¼" => "quarter",
                var other => int.TryParse(other, out var n) && n > 0 && n < NumberWords.Length ? NumberWords[n] : other,
            };
            // "5678" is counted in one breath.
            if (plain.Length is > 2 and <= 8 && plain.All(c => c is >= '1' and <= '8'))
            {
                for (var k = 0; k < plain.Length; k++)
                {
                    var from = word.From + (each * i) + (each * k / plain.Length);
                    into.Add(new(NumberWords[plain[k] - '0'], from, from + (each / plain.Length), word.Line));
                }
            }
            else if (plain.Length > 0)
            {
                into.Add(new(plain, word.From + (each * i), word.From + (each * (i + 1)), word.Line));
            }
        }
    }

    private static void Rewrite(List<Spoken> words, SpokenRules rules, DanceWords dance)
    {
        foreach (var (from, to) in rules.Phrases)
        {
            // "To step" is a two step only where the dance has one.
            if (dance.Figures.Contains(string.Join(' ', from)) || (to[0] == "two" && !dance.Words.Contains("two")) || (to.Contains("cross", StringComparer.Ordinal) && !dance.Words.Contains("cross"))) continue;
            for (var i = 0; i + from.Length <= words.Count; i++)
            {
                var same = true;
                for (var k = 0; k < from.Length && same; k++) same = words[i + k].Word == from[k];
                if (!same || dance.BeginsInName(words, i)) continue;
                var (start, end, line) = (words[i].From, words[i + from.Length - 1].To, words[i].Line);
                words.RemoveRange(i, from.Length);
                for (var k = 0; k < to.Length; k++) words.Insert(i + k, new(to[k], start + ((end - start) * k / to.Length), start + ((end - start) * (k + 1) / to.Length), line));
            }
        }
    }

    // "Triple them place": the page has the word only in "in place", so that was meant, whatever was made of the "in".
    private static void InPlace(List<Spoken> words, DanceWords dance)
    {
        if (!dance.Words.Contains("place") || dance.HasAlone("place", after: "in")) return;
        for (var i = 1; i < words.Count; i++)
        {
            if (words[i].Word != "place" || words[i - 1].Word == "in") continue;
            var (word, before) = (words[i], words[i - 1]);
            if (before.Word is "the" or "that" or "them" or "an" or "and" or "on") words[i - 1] = before with { Word = "in" };
            else if (dance.Book.Lexicon.WordOf(before.Word) >= 0 && word.From - before.To < 0.5) words.Insert(i++, word with { Word = "in", To = word.From });
        }
    }

    // "to" is a two where a one stands before it or a three comes after.
    private static bool Counting(List<Spoken> words, int at, int number)
    {
        var before = at > 0 ? Near(at - 1, -1) : null;
        var after = at + 1 < words.Count ? Near(at + 1, 1) : null;
        return before == number - 1 || after == number + 1 || (number == 1 && before is 6 or 8) || (number is 6 or 8 && after == 1);

        int? Near(int i, int step)
        {
            if (words[i].Word is "and" && i + step >= 0 && i + step < words.Count) i += step;
            return NumberOf(words[i].Word) ?? (SpokenRules.Shipped.AlikeInCounting.TryGetValue(words[i].Word, out var alike) ? NumberOf(alike) : null);
        }
    }
}
