using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "Walk right, left. Right shuffle forward. (1-2, 3&amp;4)": a line's counts as a list at its end. Which words have which
/// of them follows from their order and from how many there are.
/// </summary>
internal static class CountsAtTheEnd
{
    private static readonly Regex List = new(@"\s*[(\[](?:counts?\s+)?(?<list>\d{1,2}\s?-\s?\d{1,2}|\d{1,2}[\d&\-]*(?:\s*,\s*&?\d{1,2}[\d&\-]*)+)[)\]]\s*\.?$", RegexOptions.CultureInvariant);

    private static readonly Regex Others = new(@"[(\[](?:counts?\s+)?\d(?!\d?:00)", RegexOptions.CultureInvariant);

    // A figure takes several counts by itself.
    private static readonly Regex Figure = new(@"\b(?:shuffle|triple|polka|coaster|sailor|chass[eé]|cha|vine|grapevine|mambo|samba|lock step|locking|ball.change|kick.ball|jazz box|step.touch|turn|pivot|monterey|x-?shuf|behind.side|scissors?|dorothy|anchor|lindy|weave|rock and cross|heel switch|toe switch|hip bump|walk \w+,? \w+)\w*\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // What a figure would cost as one step of several, and a step as a figure.
    private const int Unlikely = 3;

    /// <summary>The counts a line has as a list at its end, in order and without a gap; none where it ends otherwise.</summary>
    /// <param name="words">Comes back without them.</param>
    /// <param name="next">The count after those of the line before; a list that begins elsewhere is of the last words only.</param>
    public static List<CountLabel> In(ref string words, int next)
    {
        if (List.Match(words) is not { Success: true } list || Others.IsMatch(words[..list.Index])) return [];
        var labels = list.Groups["list"].Value.Split(',').Select(l => CountLabel.AtStart(l.Trim() + " ", 0, out _)).OfType<CountLabel>().ToList();
        if (labels.Count == 0 || (labels[0].From != 1 && labels[0].From != next) || labels.Zip(labels.Skip(1)).Any(p => p.Second.From != p.First.To + 1)) return [];
        words = words[..list.Index];
        return labels;
    }

    /// <returns>Nothing where its words do not go into its counts in one best way.</returns>
    public static List<(CountLabel Label, List<Phrase> Phrases)> Shared(List<CountLabel> labels, string words, Role? role, SheetLine line, Func<string, bool> speaks)
    {
        var carried = 0;
        var phrases = new List<Phrase>();
        foreach (var sentence in Sentences.Of(words, role, true))
        {
            if (sentence.Role != role || sentence.Label is not null || AgainWords.Of(sentence.Text) is not null || AgainWords.DoAgain(sentence.Text) is not null) return [];
            phrases.AddRange(Phrases.Of(sentence, line, ref carried));
        }

        return phrases.Exists(p => p.Label is not null || !speaks(p.Text)) ? [] : labels.Count == 1 ? [(labels[0], phrases)] : Shared(labels, phrases);
    }

    // The cheapest way of giving each label some of the words that follow each other.
    private static List<(CountLabel Label, List<Phrase> Phrases)> Shared(List<CountLabel> labels, List<Phrase> phrases)
    {
        var best = new (int Price, int From, bool Tie)?[labels.Count + 1, phrases.Count + 1];
        best[0, 0] = (0, 0, false);
        for (var l = 0; l < labels.Count; l++)
        {
            var units = labels[l].Name.Contains('&', StringComparison.Ordinal) ? labels[l].Length + labels[l].Name.Count(c => c == '&') : labels[l].Length;
            for (var p = 0; p < phrases.Count; p++)
            {
                if (best[l, p] is not { } so) continue;
                for (var take = 1; take <= units && p + take <= phrases.Count; take++)
                {
                    var figures = phrases.Skip(p).Take(take).Count(one => Figure.IsMatch(one.Text));
                    // As many steps as there are, or one figure for all of them.
                    var price = so.Price + (take == units ? (units > 1 ? figures * Unlikely : 0) : take == 1 ? (figures == 1 ? 0 : Unlikely) : (figures > 0 ? 1 : 2 * Unlikely));
                    ref var there = ref best[l + 1, p + take];
                    if (there is null || price < there.Value.Price) there = (price, p, so.Tie);
                    else if (price == there.Value.Price) there = there.Value with { Tie = true };
                }
            }
        }

        if (best[labels.Count, phrases.Count] is not { Tie: false } || best[labels.Count, phrases.Count]!.Value.Price > labels.Count * Unlikely / 2) return [];
        var shared = new List<(CountLabel, List<Phrase>)>();
        for (var (l, p) = (labels.Count, phrases.Count); l > 0; l--)
        {
            var from = best[l, p]!.Value.From;
            shared.Insert(0, (labels[l - 1], phrases.GetRange(from, p - from)));
            p = from;
        }

        return shared;
    }
}
