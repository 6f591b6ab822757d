using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Scoring.Laying;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Transcribe.Trying;

namespace Surefoot.Transcribe.Wording;

/// <summary>A phrase in a page's words.</summary>
/// <param name="Text">What the page says.</param>
/// <param name="Moves">What it asks for; empty where it speaks of no step.</param>
/// <param name="Unknown">Words nobody could make sense of; they are not in <paramref name="Text"/>.</param>
/// <param name="Length">How many counts it takes by itself; 0 where it fills what there is.</param>
internal sealed record PhraseRead(string Text, IReadOnlyList<Move> Moves, IReadOnlyList<string> Unknown, Beats Length)
{
    /// <summary>How long it is danced once, where it fills what there is: one polka step takes two counts, one march step one.</summary>
    public Beats Once { get; init; } = Beats.One;

    /// <summary>Words that were read as others which they nearly are: what was written, and what it was read as.</summary>
    public IReadOnlyList<string> Mended { get; init; } = [];

    /// <summary>True where somebody told what all of it means: then no other reading is looked for.</summary>
    public bool Told { get; init; }
}

/// <summary>Reads phrases with the page's own reader once their words are the page's.</summary>
internal sealed class PhraseWords(FigureBook book, StandIns? told = null)
{
    private static readonly Regex Bracket = new(@"\([^()]*\)", RegexOptions.CultureInvariant);

    private static readonly Regex Keeps = new(
        @"^\((?:(?:L|R|left|right)\b[\s,/-]*)+\)$|^\((?:facing|weight)\b|^\((?:left|right|L|R) (?:beside|next to)|^\(\d{1,2}:\d\d\)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Letters of the longest phrase that is read. Working value: the longest in the corpus has a third.</summary>
    private const int Longest = 300;

    private readonly Dictionary<string, PhraseRead> _read = new(StringComparer.Ordinal);

    /// <summary>What some words are tried as in the reading at hand.</summary>
    public Meant Meant { get; set; } = Meant.AsTheySound;

    // A step that nobody understands: its count is kept.
    private PhraseRead? _wait;

    public PhraseRead Read(string phrase)
    {
        if (Meant[phrase] is TriedAs.OneCount) return (_wait ??= Page("hold")) with { Unknown = Unread(phrase) };
        return AsItSounds(phrase);
    }

    private IReadOnlyList<string> Unread(string phrase) => AsItSounds(phrase).Unknown is { Count: > 0 } unknown ? unknown : [phrase];

    private PhraseRead AsItSounds(string phrase)
    {
        if (_read.TryGetValue(phrase, out var known)) return known;
        // Nobody says so much in one phrase; it is talk, and is told as not understood.
        if (phrase.Length > Longest) return _read[phrase] = new("", [], [phrase], Beats.Zero);
        // Brackets explain; feet in them ("(R L R)") and stated facts the page reads itself.
        var without = Bracket.Replace(phrase, m => Keeps.IsMatch(m.Value) ? m.Value : " ");
        var (words, mended) = Spelling.Mend(without, book);
        if (told is not null && StandIns.Stands(words)) return _read[phrase] = told.Read(words, Page) with { Mended = mended };
        return _read[phrase] = Page(SheetRules.Rewrite(words)) with { Mended = mended };
    }

    private static readonly Regex Talk = new(
        @"\b(?:hands?|arms?|holds? (?:her|his|follower|partner)|waist|shoulders?|hip(?! (?:bump|sway|roll|circle)s?\b)|elbow|palm|position|hold$|music|song|singing|vocals?|beats? of|measures?|bars?|partner's|variation|style|start when|wait for|usual|called|feet (?:hardly|together,?)|stand)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Waits = new(@"^(?:hold|pause)(?: \d{1,2}(?: counts?)?)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Feet = new(
        @"\b(?:L|R|LF|RF|left foot|right foot|steps?|touch\w*|close\w*|hop\w*|kick\w*|stomp\w*|march turning|(?:[Ss]huffle|[Tt]riple|[Pp]olka|[Cc]hass\w+) (?:[LR][ ,-]?){3}|(?:left|right)(?:,? (?:left|right)){1,})\b", RegexOptions.CultureInvariant);

    /// <summary>Whether words name something to dance, and do not only speak of hands, holds or music.</summary>
    public bool Speaks(string phrase)
    {
        if (Meant[phrase] is { } tried) return tried is not (TriedAs.NoStep or TriedAs.Again) && Read(phrase).Moves.Count > 0;
        var read = Read(phrase);
        if (read.Moves.Count == 0) return false;
        if (Waits.IsMatch(read.Text)) return true;
        if (Talk.IsMatch(phrase) && !Feet.IsMatch(read.Text)) return false;
        if (read.Moves.Any(m => m.Feet.Count > 0)) return true;
        // Without a foot, words that say how things are tell no step; nor do those of which hardly half is understood.
        if (Describes.IsMatch(WithoutAsides(phrase))) return false;
        if (read.Unknown.Count > 0 && read.Moves.All(m => !m.HeadSaid && m.Figure is null)) return false;
        var length = phrase.Split(' ').Length;
        return read.Unknown.Count * (read.Moves.Any(m => m.Figure is not null) ? 2 : 3) <= length;
    }

    // "Pivot 1/2 to left (you are looking back)": what is said in brackets is said of the step; a word or two before them may be said of anything.
    private static string WithoutAsides(string phrase) => Bracket.Replace(phrase, " ").Trim() is var open && open.Split(' ').Length > 2 ? open : phrase;

    private static readonly Regex Describes = new(
        @"\b(?:is|are|was|were|am|been|who|whose|which|anyone|anybody|everyone|someone|people|can|cannot|can't|could|would|should|must|stands?|standing|called|known|named|has|have|had|that's|there's|it's|you'll|we'll|we're|you're)\b(?!\s+(?:\w+\s+)?(?:stepped|walked|taken|made|done|danced|performed|closed|crossed|brought|drawn|turned|repeated|executed)\b)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Reads words that are a page's already.</summary>
    public PhraseRead Page(string words)
    {
        var pieces = Pieces(words);
        var unknown = pieces.OfType<UnknownPiece>().ToList();
        if (unknown.Count > 0)
        {
            var text = words;
            foreach (var piece in unknown.OrderByDescending(u => u.Span.Start)) text = text.Remove(piece.Span.Start - Head.Length, piece.Span.Length);
            text = Regex.Replace(text, @"\s+", " ").Trim(' ', ',');
            var rest = text.Length == 0 ? new("", [], [], Beats.Zero) : Page(text);
            return rest with { Unknown = [.. rest.Unknown, .. unknown.Select(u => u.Word)] };
        }

        var moves = pieces.OfType<MovePiece>().Select(p => p.Move).Where(Dances).ToList();
        // "Full turn right in three steps R L R": the feet are those of the steps.
        var own = InSteps.Match(words) is { Success: true } turn && Layout.NumberWords.Read(turn.Groups["n"].Value) is var n && turn.Groups["foot"].Captures.Count == n && OwnLength.Of(moves, book) > Beats.Of(n) ? Beats.Of(n) : OwnLength.Of(moves, book);
        return new(words, moves, [], own) { Once = OwnLength.Once(moves, book) };
    }

    private static readonly Regex InSteps = new(@"^(?:full|half) turn (?:left|right|L|R) in (?<n>two|three|four) steps(?:[ ,]+(?<foot>left|right|L|R))+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>
    /// How long phrases are one after another: a vine ends with the touch that is said after it, and both together take
    /// four counts. As long as the sum of theirs where they do not run into each other.
    /// </summary>
    public Beats Together(IReadOnlyList<string> texts, Beats sum)
    {
        if (texts.Count < 2 || !texts.Any(t => Page(t).Moves.Any(m => m.Figure is not null))) return sum;
        var whole = Page(string.Join(", ", texts));
        return whole.Unknown.Count == 0 && whole.Length > Beats.Zero && whole.Length < sum ? whole.Length : sum;
    }

    // "A" and "the" by themselves, or a single number, ask for nothing.
    private static bool Dances(Move move) => move.HeadSaid || move.Figure is not null || move.OnlyTurn || move.Feet.Count > 0 || move.Way is not null || move.Towards is not null;

    private const string Head = "Sheet\nKind: line\n\n1  ";

    private List<Piece> Pieces(string words)
    {
        var (page, _) = PageReader.Read(Head + words, book);
        return [.. page.Lines.OfType<CountLine>().SelectMany(l => l.Segments).SelectMany(s => s.Pieces)];
    }
}
