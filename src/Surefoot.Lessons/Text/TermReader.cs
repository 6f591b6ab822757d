using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Lessons.Text;

/// <summary>Reads a term file line by line: a head of facts, then lists under their headings.</summary>
internal sealed class TermReader
{
    /// <summary>No term is longer than this, in days; a year typed wrongly would else fill centuries with lessons. Two years.</summary>
    private const int LongestTerm = 731;

    private enum Part
    {
        Head,
        Evenings,
        Dances,
        Known,
        Reached,
        Told,
    }

    private static readonly Dictionary<string, Part> Headings = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Evenings"] = Part.Evenings,
        ["Slots"] = Part.Evenings,
        ["Every week"] = Part.Evenings,
        ["Dances"] = Part.Dances,
        ["To teach"] = Part.Dances,
        ["Known"] = Part.Known,
        ["Known already"] = Part.Known,
        ["Reached"] = Part.Reached,
        ["Told"] = Part.Told,
    };

    /// <summary>True for a line under which a list begins.</summary>
    internal static bool IsHeading(string line) => Headings.ContainsKey(line.Trim().TrimEnd(':').TrimEnd());

    /// <summary>True for the line under which the dances to teach stand.</summary>
    internal static bool IsDances(string line) => Headings.TryGetValue(line.Trim().TrimEnd(':').TrimEnd(), out var part) && part == Part.Dances;

    private readonly SourceText _source;
    private readonly TermProblems _problems = new();
    private readonly List<Piece> _closed = [];
    private readonly List<(Part Part, Piece Line)> _lines = [];
    private readonly List<string> _notes = [];
    private Piece _title;
    private Piece? _from;
    private Piece? _until;

    public TermReader(string text) => _source = new(text);

    public TermPage Read()
    {
        Sort();
        var title = _title.Words ?? "";
        if (Dates() is not var (from, until)) return new(_source, title, null, _problems.InOrder);
        var lines = new TermLines(from, until, _problems);
        var closed = _closed.SelectMany(lines.Closed).ToValueList();
        var slots = Each(Part.Evenings, lines.Slot);
        if (slots.Count == 0 && !_lines.Exists(l => l.Part == Part.Evenings)) _problems.Error("evenings-none", End(), "The term says no evening yet.", "Under the heading \"Evenings\" each line is one time of the week, as in: Tuesday 19:00, 45 minutes, beginners, line dances");
        var wishes = Each(Part.Dances, lines.Wish);
        var known = Each(Part.Known, lines.Known);
        var done = new DoneLines(from, _problems);
        return new(_source, title, new(title, from, until, closed, slots, wishes, known, Each(Part.Reached, done.Reached), Each(Part.Told, done.Told), _notes.ToValueList()), _problems.InOrder);
    }

    private ValueList<T> Each<T>(Part part, Func<Piece, T?> read)
        where T : class =>
        _lines.Where(l => l.Part == part).Select(l => read(l.Line)).OfType<T>().ToValueList();

    /// <summary>What each line is: title, fact, note, heading, or a line of a list.</summary>
    private void Sort()
    {
        var part = Part.Head;
        for (var n = 0; n < _source.LineCount; n++)
        {
            var line = Piece.Of(_source, _source.Line(n));
            if (line.IsEmpty) continue;
            if (line.Words[0] == '>') _notes.Add(line.From(1).Words);
            else if (Headings.TryGetValue(line.Words.TrimEnd(':').TrimEnd(), out var heading)) part = heading;
            else if (part == Part.Head) Head(line);
            else _lines.Add((part, line));
        }
    }

    private void Head(Piece line)
    {
        var colon = line.Words.IndexOf(':', StringComparison.Ordinal);
        var key = colon < 0 ? "" : line.Words[..colon].Trim().ToLowerInvariant();
        var value = line.From(colon + 1);
        switch (key)
        {
            case "from" or "first day" or "start":
                _from = value;
                break;
            case "until" or "to" or "last day" or "end":
                _until = value;
                break;
            case "closed":
                _closed.Add(value);
                break;
            case "" when _title.IsEmpty:
                _title = line;
                break;
            default:
                var near = Headings.Keys.FirstOrDefault(h => NearWords.Distance(line.Words.ToLowerInvariant(), h.ToLowerInvariant(), 2) <= 2);
                _problems.Error("line-stray", line.Span, $"\"{line.Words}\" stands before any heading, and is no fact of the term.", near is not null ? $"Did you mean the heading \"{near}\"?" : "The head says From, Until and Closed; then come the headings Evenings, Dances, Known, Reached.");
                break;
        }
    }

    private (DateOnly From, DateOnly Until)? Dates()
    {
        if (_from is not { } first || _until is not { } last)
        {
            _problems.Error("dates-missing", _title.IsEmpty ? End() : _title.Span, $"The term does not say {(_from is null ? _until is null ? "when it begins and ends" : "when it begins" : "when it ends")}.", "Two lines in the head say it, as in: From: 12 January 2027 and Until: 20 April 2027");
            return null;
        }

        var from = DateReader.Of(first.Words, null);
        if (from is null) Unread(first, "The year belongs to the first day of the term, as in: 12 January 2027");
        var until = DateReader.Of(last.Words, from?.Day);
        if (until is null && from is not null) Unread(last, "A day is written as in: 20 April 2027");
        if (from is not { } start || until is not { } end) return null;
        if (end.Day < start.Day)
        {
            _problems.Error("dates-turned", last.Span, $"The term ends on {DayWords.Full(end.Day)}, before it begins on {DayWords.Full(start.Day)}.", "Write a later day after Until.");
            return null;
        }

        if (end.Day.DayNumber - start.Day.DayNumber <= LongestTerm) return (start.Day, end.Day);
        _problems.Error("dates-long", last.Span, $"From {DayWords.Full(start.Day)} to {DayWords.Full(end.Day)} is more than two years.", "A term is planned up to two years long; is the year as meant?");
        return null;
    }

    private void Unread(Piece piece, string how) => _problems.Error("date-unread", piece.IsEmpty ? End() : piece.Span, piece.IsEmpty ? "A day is missing here." : $"\"{piece.Words}\" is no day Surefoot can read.", how);

    private TextSpan End() => new(Math.Max(0, _source.Text.Length - 1), Math.Min(1, _source.Text.Length));
}
