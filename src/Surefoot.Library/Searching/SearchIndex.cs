using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Searching;

/// <summary>A dance that a search came upon.</summary>
/// <param name="Missing">How many things that were asked for it has not; 0 for none.</param>
/// <param name="At">For things danced one after the other: the count on which the first begins.</param>
internal readonly record struct Hit(Card Card, double Score, int Missing, int? At);

/// <summary>
/// Every word with the dances that have it, and every dance as numbers of things danced. Each word of a question is
/// compared with every known word once; after that only dances that have one of those are looked at.
/// </summary>
internal sealed class SearchIndex
{
    // How much a word weighs where it stands. Working values: only their order matters, names first.
    private const byte InName = 16;
    private const byte InTag = 10;
    private const byte InFigure = 8;
    private const byte InFacts = 8;
    private const byte InPart = 7;
    private const byte InSong = 6;
    private const byte InSteps = 4;
    private const byte InNotes = 2;

    // Words for what a page says without them.
    private const string ForCouples = "partner partners couple couples";
    private const string Alone = "solo";
    private const string OfLines = "line";
    private const string OfCircles = "circle";

    // A half of what is asked for in one thing danced makes it worth looking at.
    private const double LeastOfPhrase = 0.5;

    // A word half right in a note is not worth showing beside the same word right in a name.
    private const double LeastOfBest = 0.1;

    // Dances that were read anew leave an empty place behind; places are closed up when there are more empty ones
    // than this and than dances. Working value: a thousand empty places cost a search some microseconds.
    private const int MostEmpty = 1000;

    private readonly Vocabulary _words = new();
    private readonly Holders _holders = new();
    private readonly Dictionary<long, int> _places = [];
    private readonly List<Entry?> _entries = [];
    private readonly Dictionary<(char, string), int> _numbers = [];
    private readonly List<(char Who, int[] Words)> _danced = [];
    private readonly Dictionary<string, string[]> _otherNames = new(StringComparer.Ordinal);

    public void Put(Card card, string words, string moves)
    {
        if (_places.Remove(card.Item.Page, out var old)) _entries[old] = null;
        if (card.Deleted || card.Item.IsFigures) return;
        CloseUp();

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
        Add(item.ForCouples ? ForCouples : Alone, InFacts);
        Add(item.Floor == Floor.Walls ? OfLines : OfCircles, InFacts);
        foreach (var song in item.Songs) Add(song, InSong);
        Add(item.Learned, InNotes);
        Add(words, InNotes);
        var danced = new List<int>();
        var at = new List<float>();
        foreach (var line in moves.AsSpan().EnumerateLines())
        {
            var tab = line.IndexOf('\t');
            if (tab < 2) continue;
            if (line[0] == Moves.NameOfPart)
            {
                Add(line[(tab + 1)..].ToString(), InPart);
                continue;
            }

            var number = Danced(line[0], line[(tab + 1)..].ToString());
            danced.Add(number);
            at.Add(float.Parse(line[1..tab], CultureInfo.InvariantCulture));
            foreach (var word in _danced[number].Words) found.TryAdd(word, InSteps);
        }

        var place = _places[item.Page] = _entries.Count;
        _entries.Add(new(card, [.. danced], [.. at]));
        foreach (var (word, weight) in found) _holders.Add(word, place, weight);

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

    /// <summary>The dances that have all that is asked for or, where none has, those that have some of it; in no order.</summary>
    public List<Hit> Search(Question question, long? notebook)
    {
        if (question.AsksNothing) return [];
        var fits = new byte[question.Words.Count][];
        for (var i = 0; i < fits.Length; i++) fits[i] = _words.Match(question.Words[i]);
        Joined(question, fits);
        var scores = new double[_entries.Count];
        var missing = new int[_entries.Count];
        var best = new int[_entries.Count];
        for (var i = 0; i < fits.Length; i++)
        {
            // "line" in "the line of dance" makes no line dance, and neither does a vine.
            if (Question.IsKind(question.Words[i])) _holders.Best(fits[i], Vocabulary.Form, InFacts, best);
            else _holders.Best(fits[i], 1, 1, best);
            for (var place = 0; place < best.Length; place++)
            {
                if (best[place] == 0) missing[place]++;
                scores[place] += best[place] / 255.0;
            }
        }

        var phrases = question.Phrases.Select(p => Fits(p, question, fits)).ToList();
        var whole = new List<Hit>();
        var nearly = new List<Hit>();
        for (var place = 0; place < scores.Length; place++)
        {
            if (_entries[place] is not { } entry || (notebook is { } one && entry.Card.Item.Notebook != one)) continue;
            // Once there is one that has all, those that have a part are not shown.
            if (missing[place] > 0 && whole.Count > 0) continue;
            var hit = Facts(entry, question, phrases, scores[place], missing[place]);
            if (hit.Missing == 0) whole.Add(hit);
            else if (hit.Score > 0) nearly.Add(hit);
        }

        if (whole.Count == 0) return nearly;
        var least = LeastOfBest * whole.Max(h => h.Score);
        whole.RemoveAll(h => h.Score < least);
        return whole;
    }

    /// <summary>By what a dance was found, where its row does not show it.</summary>
    public IReadOnlyList<string> Why(Question question, Hit hit)
    {
        // In order of what is danced: the row says on which count.
        if (hit.At is not null || !_places.TryGetValue(hit.Card.Item.Page, out var place) || _entries[place] is not { } entry) return [];
        var fits = new byte[question.Words.Count][];
        for (var i = 0; i < fits.Length; i++) fits[i] = _words.Match(question.Words[i]);
        Joined(question, fits);
        var item = hit.Card.Item;
        List<int> seen = [.. Name(item.Title), .. Name(item.Name), .. item.Aliases.SelectMany(Name), .. item.Tags.SelectMany(Known), .. Known(item.Level), .. Known(item.ForCouples ? ForCouples : Alone), .. Known(item.Floor == Floor.Walls ? OfLines : OfCircles)];
        // A dance that has all that was asked for has the rest too, and these are the only words not gone through.
        return Reasons.Of(fits, seen, Told(), hit.Missing == 0 ? "names of parts, or notes" : null);

        IEnumerable<(IReadOnlyList<int> Words, string Says)> Told()
        {
            foreach (var figure in item.Figures) yield return ([.. Known(figure), .. OtherNames(figure).SelectMany(Known)], $"the figure {figure}");
            foreach (var hold in item.Holds) yield return ([.. Known(hold)], $"the hold {hold}");
            foreach (var song in item.Songs) yield return ([.. Known(song)], $"the song {song}");
            for (var i = 0; i < entry.Danced.Length; i++)
            {
                var (who, words) = _danced[entry.Danced[i]];
                // What hands do stands beside the steps they do it to: "full turn under right hands" is both, on one count.
                yield return ([.. words, .. Beside(i, who)], Reasons.Danced(who, entry.At[i]));
            }

            yield return ([.. Known(item.Learned)], "where it was learned");
        }

        IEnumerable<int> Beside(int one, char who)
        {
            for (var i = 0; i < entry.Danced.Length; i++)
            {
                if (i == one || Math.Abs(entry.At[i] - entry.At[one]) > 0.01) continue;
                var (other, words) = _danced[entry.Danced[i]];
                if (who != other && who != 'b' && other != 'b') continue;
                foreach (var word in words) yield return word;
            }
        }
    }

    /// <summary>The best first.</summary>
    public static IOrderedEnumerable<Hit> InOrderOfFit(IEnumerable<Hit> hits) =>
        hits.OrderBy(h => h.Missing).ThenByDescending(h => h.Score).ThenBy(h => h.Card.TitleKey, StringComparer.Ordinal).ThenBy(h => h.Card.Item.Page);

    // What is known of it beside its words: counts, tempo, meter, walls, and the order of what is danced.
    private static Hit Facts(Entry entry, Question question, List<double[]> phrases, double score, int missing)
    {
        int? at = null;
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

        return new(entry.Card, score, missing, at);
    }

    private void CloseUp()
    {
        if (_entries.Count - _places.Count <= Math.Max(MostEmpty, _places.Count)) return;
        var places = new int[_entries.Count];
        var next = 0;
        for (var place = 0; place < places.Length; place++)
        {
            places[place] = _entries[place] is null ? -1 : next++;
            if (_entries[place] is { } entry) _places[entry.Card.Item.Page] = places[place];
        }

        _entries.RemoveAll(e => e is null);
        _holders.Move(places);
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

    private IEnumerable<int> Known(string text) => Pieces(text).Select(_words.Known);

    // A name's words, and two of them as one: "chacha" is in "Cha-Cha".
    private IEnumerable<int> Name(string text)
    {
        var pieces = Pieces(text);
        return pieces.Concat(pieces.Zip(pieces.Skip(1), (one, other) => one + other)).Select(_words.Known);
    }

    private static string[] Pieces(string text) => Folding.Key(text).Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries);

    private sealed record Entry(Card Card, int[] Danced, float[] At);
}
