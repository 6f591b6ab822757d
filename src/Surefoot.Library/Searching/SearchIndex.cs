using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Searching;

/// <summary>
/// Every dance as numbers of words and of things danced. Each word of a question is compared with every known
/// word once; after that a dance is a walk over its numbers.
/// </summary>
internal sealed class SearchIndex
{
    // How much a word weighs where it stands. Working values: only their order matters, names first.
    private const byte InName = 16;
    private const byte InTag = 10;
    private const byte InFigure = 8;
    private const byte InFacts = 8;
    private const byte InSong = 6;
    private const byte InSteps = 4;
    private const byte InNotes = 2;

    // A half of what is asked for in one thing danced makes it worth looking at.
    private const double LeastOfPhrase = 0.5;

    // A word half right in a note is not worth showing beside the same word right in a name.
    private const double LeastOfBest = 0.1;

    private readonly Vocabulary _words = new();
    private readonly Dictionary<long, Entry> _entries = [];
    private readonly Dictionary<(char, string), int> _numbers = [];
    private readonly List<(char Who, int[] Words)> _danced = [];
    private readonly Dictionary<string, string[]> _otherNames = new(StringComparer.Ordinal);

    public void Put(Card card, string words, string moves)
    {
        if (card.Deleted || card.Item.IsFigures)
        {
            _entries.Remove(card.Item.Page);
            return;
        }

        var found = new Dictionary<int, byte>();
        var item = card.Item;
        Name(item.Title);
        Name(item.Name);
        foreach (var alias in item.Aliases) Name(alias);
        foreach (var tag in item.Tags) Add(tag, InTag);
        foreach (var figure in item.Figures)
        {
            Add(figure, InFigure);
            foreach (var other in OtherNames(figure)) Add(other, InFigure);
        }

        foreach (var hold in item.Holds) Add(hold, InFacts);
        Add(item.Level, InFacts);
        Add(item.ForCouples ? "partner partners couple couples" : "solo", InFacts);
        Add(item.Floor == Floor.Walls ? "line" : "circle", InFacts);
        foreach (var song in item.Songs) Add(song, InSong);
        Add(item.Learned, InNotes);
        Add(words, InNotes);
        var danced = new List<int>();
        var at = new List<float>();
        foreach (var line in moves.AsSpan().EnumerateLines())
        {
            var tab = line.IndexOf('\t');
            if (tab < 2) continue;
            var number = Danced(line[0], line[(tab + 1)..].ToString());
            danced.Add(number);
            at.Add(float.Parse(line[1..tab], CultureInfo.InvariantCulture));
            foreach (var word in _danced[number].Words) found.TryAdd(word, InSteps);
        }

        _entries[item.Page] = new(card, [.. found.Keys], [.. found.Values], [.. danced], [.. at]);

        // Two words of a name written as one: "weathervane" and "weather vane".
        void Name(string name)
        {
            var pieces = Pieces(name);
            for (var i = 0; i < pieces.Length; i++)
            {
                Put(pieces[i], InName);
                if (i > 0) Put(pieces[i - 1] + pieces[i], InName);
            }
        }

        void Add(string text, byte weight)
        {
            foreach (var piece in Pieces(text)) Put(piece, weight);
        }

        void Put(string word, byte weight)
        {
            var number = _words.Of(word);
            if (!found.TryGetValue(number, out var known) || known < weight) found[number] = weight;
        }
    }

    public List<Found> Search(Question question, long? notebook, int most)
    {
        var fits = new byte[question.Words.Count][];
        for (var i = 0; i < fits.Length; i++) fits[i] = _words.Match(question.Words[i]);
        Joined(question, fits);
        var phrases = question.Phrases.Select(p => Fits(p, question, fits)).ToList();
        var whole = new List<Found>();
        var nearly = new List<(Found Found, int Missing)>();
        foreach (var entry in _entries.Values)
        {
            if (notebook is { } one && entry.Card.Item.Notebook != one) continue;
            var score = Score(entry, question, fits, phrases, out var missing, out var at);
            if (missing == 0) whole.Add(new(entry.Card.Item, score, true, at));
            else if (score > 0) nearly.Add((new(entry.Card.Item, score, false, at), missing));
        }

        if (question.AsksNothing) return [];
        var least = LeastOfBest * whole.Select(f => f.Score).DefaultIfEmpty().Max();
        if (whole.Count > 0) return [.. whole.Where(f => f.Score >= least).OrderByDescending(f => f.Score).ThenBy(f => _entries[f.Dance.Page].Card.TitleKey, StringComparer.Ordinal).Take(most)];
        return
        [
            .. nearly.OrderBy(n => n.Missing).ThenByDescending(n => n.Found.Score)
                .ThenBy(n => _entries[n.Found.Dance.Page].Card.TitleKey, StringComparer.Ordinal).Select(n => n.Found).Take(most),
        ];
    }

    private static double Score(Entry entry, Question question, byte[][] fits, List<double[]> phrases, out int missing, out int? at)
    {
        missing = 0;
        at = null;
        var score = 0.0;
        for (var typed = 0; typed < fits.Length; typed++)
        {
            var best = 0;
            var fit = fits[typed];
            var words = entry.Words;
            // "line" in "the line of dance" makes no line dance, and neither does a vine.
            var kind = Question.IsKind(question.Words[typed]);
            for (var i = 0; i < words.Length; i++)
            {
                var here = fit[words[i]];
                if (here == 0 || (kind && (here < Vocabulary.Form || entry.Weights[i] < InFacts))) continue;
                var worth = here * entry.Weights[i];
                if (worth > best) best = worth;
            }

            if (best == 0) missing++;
            score += best / 255.0;
        }

        var item = entry.Card.Item;
        foreach (var counts in question.Counts) Told(item.Counts >= counts.From && item.Counts <= counts.To, 1 - (Math.Abs(item.Counts - ((counts.From + counts.To) / 2)) / 100), ref score, ref missing);
        foreach (var tempo in question.Tempos) Told(item.TempoFrom <= tempo.To && item.TempoTo >= tempo.From, Near(item, tempo), ref score, ref missing);
        foreach (var (beats, unit) in question.Meters) Told(item.Meter.Beats == beats && item.Meter.Unit == unit, 1, ref score, ref missing);
        foreach (var walls in question.Walls) Told(item.Walls == walls, 1, ref score, ref missing);
        if (phrases.Count > 0)
        {
            var (order, from) = InOrder.Find(entry.Danced, entry.At, phrases);
            if (order <= 0) missing += phrases.Count;
            // More than words that stand somewhere: it is what was asked for.
            score += order * InName * phrases.Count;
            if (from is { } count) at = (int)count;
        }

        return score;
    }

    private static void Told(bool fits, double nearness, ref double score, ref int missing)
    {
        if (fits) score += InFacts * nearness;
        else missing++;
    }

    // Of two dances within reach the one whose middle is nearer comes first.
    private static double Near(ShelfItem item, Between tempo) =>
        1 - Math.Min(0.9, Math.Abs(((item.TempoFrom + item.TempoTo) ?? 0) - tempo.From - tempo.To) / 200.0);

    /// <summary>For every thing danced how much of a phrase it has.</summary>
    private double[] Fits(Phrase phrase, Question question, byte[][] fits)
    {
        var mine = phrase.Words.Select(w => fits[question.Words.IndexOf(w)]).ToList();
        var result = new double[_danced.Count];
        for (var i = 0; i < result.Length; i++)
        {
            var (who, words) = _danced[i];
            // His turn is not hers; what both do is hers too, but was hardly meant.
            var role = phrase.Who == ' ' || phrase.Who == who ? 1 : who == 'b' && phrase.Who != 'b' ? 0.6 : 0;
            if (role == 0) continue;
            var sum = 0.0;
            foreach (var fit in mine)
            {
                var best = 0;
                foreach (var word in words) best = Math.Max(best, fit[word]);
                sum += best / 255.0;
            }

            var share = sum / mine.Count;
            if (share >= LeastOfPhrase) result[i] = share * role;
        }

        return result;
    }

    // "weather vane" may be written as one word: where that fits, it does for both.
    private void Joined(Question question, byte[][] fits)
    {
        for (var i = 0; i + 1 < fits.Length; i++)
        {
            var both = _words.Match(question.Words[i] + question.Words[i + 1]);
            for (var word = 0; word < both.Length; word++)
            {
                if (both[word] < fits[i][word] && both[word] < fits[i + 1][word]) continue;
                fits[i][word] = Math.Max(fits[i][word], both[word]);
                fits[i + 1][word] = Math.Max(fits[i + 1][word], both[word]);
            }
        }
    }

    private int Danced(char who, string words)
    {
        if (_numbers.TryGetValue((who, words), out var number)) return number;
        _numbers[(who, words)] = number = _danced.Count;
        _danced.Add((who, [.. Pieces(words).Select(_words.Of).Distinct()]));
        return number;
    }

    private string[] OtherNames(string figure)
    {
        if (_otherNames.TryGetValue(figure, out var known)) return known;
        return _otherNames[figure] = FigureBook.Shipped.Named(figure) is { } named ? [.. named.OtherNames] : [];
    }

    private static string[] Pieces(string text) => Folding.Key(text).Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries);

    private sealed record Entry(Card Card, int[] Words, byte[] Weights, int[] Danced, float[] At);
}
