using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>
/// Reads a page into its tree. It never fails: a line that is none of the known kinds becomes a stray
/// line and keeps its words.
/// </summary>
public sealed class PageReader
{
    /// <summary>Words that open a part.</summary>
    public static readonly string[] HeadingWords = ["part", "section", "sec", "segment", "set", "tag", "bridge", "ending", "intro"];

    private readonly SourceText _source;
    private readonly FigureBook _book;
    private readonly LineReader _lines;
    private readonly Page _page;
    private readonly Dictionary<string, string> _headerKeys;
    private PartNode? _part;
    private Role? _block;
    private CountLine? _last;
    private int _parts;

    private PageReader(SourceText source, FigureBook book, Dictionary<string, string> headerKeys)
    {
        _source = source;
        _book = book;
        _headerKeys = headerKeys;
        Floor = HeadReader.FloorOf(source);
        _lines = new(source, book, Floor);
        _page = new() { Source = source };
    }

    private Floor Floor { get; }

    /// <summary>Reads a page with the words of a book; the page's own figures are laid over it.</summary>
    public static (Page Page, FigureBook Book) Read(string text, FigureBook book)
    {
        var source = new SourceText(text);
        var own = book.With(source, out var figureLines);
        var reader = new PageReader(source, own, HeadReader.KeysOf(book));
        reader.ReadLines(figureLines);
        return (reader._page, own);
    }

    private void ReadLines(List<LineNode> figureLines)
    {
        var figures = FigureReader.Heads(_source);
        var next = 0;
        for (var n = 0; n < _source.LineCount; n++)
        {
            if (next < figures.Count && n == figures[next].FromLine)
            {
                // The figures' own lines were read with the book; here they only take their place.
                var to = figures[next].ToLine;
                var span = TextSpan.Between(_source.Line(n).Start, _source.Line(to - 1).End);
                _page.Lines.AddRange(figureLines.Where(l => l.Span.Start >= span.Start && l.Span.Start <= span.End));
                if (_book.Named(figures[next].Figure.Name) is { } figure) _page.Figures.Add(figure);
                n = to - 1;
                next++;
                _last = null;
                continue;
            }

            var line = FigureReader.Trimmed(_source.Text, _source.Line(n));
            var node = ReadLine(line, _source.Line(n));
            _page.Lines.Add(node);
        }
    }

    private LineNode ReadLine(TextSpan line, TextSpan whole)
    {
        if (line.Length == 0)
        {
            _last = null;
            return new BlankLine(whole);
        }

        var words = _source.Slice(line);
        if (words[0] is '>' or '\u203A')
        {
            var note = new NoteLine(words[1..].Trim().ToString(), line);
            if (_part is null) _page.Notes.Add(note);
            else _part.Lines.Add(note);
            return note;
        }

        if (_part is null && _page.TitleSpan is null && IsTitle(line, words))
        {
            _page.Title = words.ToString();
            _page.TitleSpan = line;
            return new TitleLine(line);
        }

        var tokens = _lines.Cut(line);
        if (CallReader.Read(_source, _book, tokens, line) is { } call)
        {
            call.Block = _block;
            if (_part is null) _page.Calls.Add(call);
            else _part.Lines.Add(call);
            return call;
        }

        if (HeadingOf(tokens, line) is { } heading) return heading;
        if (HeaderOf(words, line) is { } header) return header;
        if (RoleLineOf(tokens, line) is { } role) return role;
        var next = 0;
        var group = CountGroup.Read(_source.Text, tokens, _book.Lexicon, ref next);
        var afterGroup = next;
        while (afterGroup < tokens.Length && tokens[afterGroup].Kind is TokenKind.Colon or TokenKind.Period or TokenKind.Close or TokenKind.Comma) afterGroup++;
        if (RepeatReader.Read(_source, _lines, _book, tokens[afterGroup..], group, line, out var rest) is { } repeat)
        {
            repeat.Block = _block;
            Part().Lines.Add(repeat);
            _last = null;
            if (rest is { } restSpan && _lines.CountLine(restSpan) is { } change)
            {
                change.Block = _block;
                Part().Lines.Add(change);
                _page.Lines.Add(repeat);
                return change;
            }

            return repeat;
        }

        if (group is not null && JoinedLines.In(_source.Text, tokens, _book.Lexicon) is { Count: > 0 } joints && Joined(line, joints) is { } joined) return joined;
        if (group is not null && _lines.CountLine(line) is { } counted)
        {
            counted.Block = _block;
            Part().Lines.Add(counted);
            return _last = counted;
        }

        if (_part is null && _page.TitleSpan is null && group is null)
        {
            _page.Title = words.ToString();
            _page.TitleSpan = line;
            return new TitleLine(line);
        }

        return Continued(tokens, line, whole);
    }

    // Several lines of counts on one line of the page, each read as a line of its own.
    private CountLine? Joined(TextSpan line, List<int> joints)
    {
        var read = new List<CountLine>(joints.Count + 1);
        joints.Add(line.End);
        var from = line.Start;
        int? before = null;
        foreach (var joint in joints)
        {
            var to = joint;
            while (to > from && (Tokenizer.IsSpace(_source.Text[to - 1]) || _source.Text[to - 1] is ',' or ';' or '/' or '|')) to--;
            if (_lines.CountLine(TextSpan.Between(from, to)) is not { } counted) return null;
            read.Add(counted with { Block = _block, JoinedAfter = before });
            (from, before) = (joint, to);
        }

        Part().Lines.AddRange(read);
        // The last one is added by whoever reads the page line by line.
        _page.Lines.AddRange(read[..^1]);
        return _last = read[^1];
    }

    // The first line is the title, whatever words it is made of, when facts of the head come after it.
    private bool IsTitle(TextSpan line, ReadOnlySpan<char> words)
    {
        if (FigureReader.Key(words, out _) is { } own && (_headerKeys.ContainsKey(own.ToLowerInvariant()) || IsRoleWord(own))) return false;
        for (var n = _source.LineOf(line.Start) + 1; n < _source.LineCount; n++)
        {
            var next = FigureReader.Trimmed(_source.Text, _source.Line(n));
            if (next.Length == 0 || _source.Text[next.Start] == '>') continue;
            return FigureReader.Key(_source.Slice(next), out _) is { } key && _headerKeys.ContainsKey(key.ToLowerInvariant());
        }

        return false;
    }

    // "Follow: 4 walks" under counts of the lead's: four of them, and not count 4.
    private bool SaysHowMany(CountGroup group, ReadOnlySpan<Token> after)
    {
        if (_last is null || group.Slots.Count != 1 || !group.Plain || group.First == _last.Group.End || after.Length == 0 || after[0].Kind != TokenKind.Word) return false;
        var word = _source.Slice(after[0].Span);
        return word.Length > 4 && word[^1] == 's' && _book.Lexicon.Longest(after, 0, out var senses) > 0 && senses.Exists(s => s.Kind is SenseKind.Verb or SenseKind.Figure);
    }

    // "Follow: rock back L" or an indented line goes on with the counts above it.
    private LineNode Continued(ReadOnlySpan<Token> tokens, TextSpan line, TextSpan whole)
    {
        var indented = line.Start > whole.Start;
        var above = indented && _last is { Segments.Count: > 0 } ? _last.Segments[^1].Pieces : null;
        var segments = _lines.Segments(tokens, line, above?.OfType<MovePiece>().LastOrDefault()?.Move);
        if (above is not null) PhraseReader.Settle(above);
        if (segments.Count > 0 && segments[0].RoleSpan is not null && _lines.RoleAt(tokens, 0, true) is { } role)
        {
            // "Lead: 1-2 rock forward L": the role before the counts.
            var next = role.Last + 1;
            if (CountGroup.Read(_source.Text, tokens, _book.Lexicon, ref next) is { } group && !SaysHowMany(group, tokens[next..]))
            {
                var counted = new CountLine(group, _lines.Segments(tokens[next..], line), line) { Block = role.Role ?? _block };
                Part().Lines.Add(counted);
                return _last = counted;
            }
        }

        if (_last is not null && segments.Count > 0 && (indented || segments[0].RoleSpan is not null))
        {
            foreach (var segment in segments)
            {
                var continues = segment.RoleSpan is null && _last.Segments.Count > 0 ? _last.Segments[^1].Role : segment.Role;
                _last.Segments.Add(segment with { Role = continues });
            }

            return new StrayLine([], line);
        }

        var stray = new StrayLine([new NotePiece(_source.Words(line), line)], line);
        if (_part is not null) _part.Lines.Add(stray);
        return stray;
    }

    private PartNode Part()
    {
        if (_part is not null) return _part;
        _part = new() { Kind = PartKind.Part, Key = "", Label = "The dance", Span = default };
        _page.Parts.Add(_part);
        // On a page without headings they are the whole dance's.
        _part.Lines.AddRange(_page.Calls);
        _page.Calls.Clear();
        return _part;
    }

    private HeaderLine? HeaderOf(ReadOnlySpan<char> words, TextSpan line)
    {
        if (FigureReader.Key(words, out var colon) is not { } raw) return null;
        var known = _headerKeys.TryGetValue(raw.ToLowerInvariant(), out var key);
        if (!known && (_part is not null || IsRoleWord(raw))) return null;
        var value = words[(colon + 1)..];
        var leading = value.Length - value.TrimStart().Length;
        var header = new HeaderLine(
            known ? key! : raw, known, value.Trim().ToString(), new(line.Start, colon), TextSpan.Between(line.Start + colon + 1 + leading, line.End), line);
        _page.Headers.Add(header);
        return header;
    }

    private bool IsRoleWord(string word) => _book.Lexicon.Find(word).Any(s => s.Kind == SenseKind.Role);

    private RoleLine? RoleLineOf(ReadOnlySpan<Token> tokens, TextSpan line)
    {
        if (tokens.Length == 0) return null;
        // "Lead" alone on a line needs no colon.
        var alone = tokens.Length == 1 && tokens[0].Length >= 3 && IsRoleWord(_source.Words(tokens[0].Span)) ? _lines.RoleOf(tokens[0]) : null;
        if ((alone ?? _lines.RoleAt(tokens, 0, startsPhrase: false)) is not { } role || role.Last != tokens.Length - 1) return null;
        _block = role.Role;
        _last = null;
        return new(role.Role, line);
    }

    private HeadingLine? HeadingOf(ReadOnlySpan<Token> tokens, TextSpan line)
    {
        if (tokens.Length == 0) return null;
        var i = 0;
        PartKind? kind = null;
        (int, int)? range = null;
        var key = "";
        if (tokens[0].Kind == TokenKind.Word)
        {
            kind = KindOf(_source.Slice(tokens[0].Span));
            // "S1 Vines" is section 1.
            if (kind is null && tokens.Length > 1 && tokens[0].Length == 1 && _source.Text[tokens[0].Start] is 'S' or 's' && tokens[1].Kind == TokenKind.Number && tokens[1].Start == tokens[0].End) kind = PartKind.Part;
            if (kind is null) return null;
            // "Intro: 16 counts" is a fact of the head, "Set down R" is no heading.
            if (kind == PartKind.Intro && tokens.Length > 2 && tokens[1].Kind == TokenKind.Colon && tokens[2].Kind == TokenKind.Number) return null;
            i = 1;
            if (kind == PartKind.Part)
            {
                if (i < tokens.Length && IsKey(tokens[i]))
                {
                    key = _source.Words(tokens[i].Span).ToUpperInvariant();
                    i++;
                }
                else if (i < tokens.Length && tokens[i].Kind is not (TokenKind.Open or TokenKind.Colon))
                {
                    return null;
                }
            }
            else
            {
                key = _source.Words(tokens[0].Span);
                key = char.ToUpperInvariant(key[0]) + key[1..].ToLowerInvariant();
                if (i < tokens.Length && (tokens[i].Kind == TokenKind.Number || (tokens[i].Kind == TokenKind.Word && tokens[i].Length == 1)))
                {
                    key += " " + _source.Words(tokens[i].Span).ToUpperInvariant();
                    i++;
                }
                else if (i < tokens.Length && tokens[i].Kind == TokenKind.Word && tokens[i].Start < tokens[i - 1].End + 2 && tokens.Length > 6)
                {
                    return null;
                }
            }
        }
        else if (tokens[0].Kind == TokenKind.Open && RangeIn(tokens, 0) is { } found)
        {
            kind = PartKind.Part;
            range = found.Range;
            i = found.Next;
            key = $"{_parts + 1}";
        }

        if (kind is null) return null;
        while (i < tokens.Length && tokens[i].Kind is TokenKind.Colon or TokenKind.Dash or TokenKind.Period or TokenKind.Comma) i++;
        int? stated = null;
        var statedSpan = line;
        var nameStart = i < tokens.Length ? tokens[i].Start : line.End;
        var nameEnd = line.End;
        var pieces = new List<Piece>();
        for (var k = i; k < tokens.Length; k++)
        {
            if (tokens[k].Kind != TokenKind.Open) continue;
            var close = k;
            while (close < tokens.Length && tokens[close].Kind != TokenKind.Close) close++;
            var span = tokens[k].Span.Join(tokens[Math.Min(close, tokens.Length - 1)].Span);
            if (RangeIn(tokens, k) is { } inside && range is null)
            {
                range = inside.Range;
            }
            else
            {
                var claims = _lines.Pieces(tokens[k..Math.Min(close + 1, tokens.Length)]);
                foreach (var piece in claims)
                {
                    if (piece is ClaimPiece { Claim: LengthClaim length })
                    {
                        stated = length.Counts;
                        statedSpan = span;
                    }
                    else
                    {
                        pieces.Add(piece);
                    }
                }
            }

            if (k == i) nameStart = close + 1 < tokens.Length ? tokens[close + 1].Start : line.End;
            else nameEnd = Math.Min(nameEnd, tokens[k].Start);
            if (k == i) i = close + 1;
            k = close;
        }

        if (stated is null && StatedAtEnd(tokens[..], line) is { } plain && plain.Span.Start >= nameStart)
        {
            (stated, statedSpan) = plain;
            nameEnd = Math.Min(nameEnd, statedSpan.Start);
        }

        _parts++;
        var name = nameEnd > nameStart ? _source.Text[nameStart..nameEnd].Trim(' ', '\t', '\u00A0', ',', ':', '-', '\u2013', '\u2014') : "";
        if (kind == PartKind.Part && key.Length == 0) key = $"{_parts}";
        var opener = tokens[0].Kind == TokenKind.Word ? _source.Words(tokens[0].Span) : "Part";
        opener = opener.Length == 1 || opener.Equals("sec", StringComparison.OrdinalIgnoreCase) ? "Section" : char.ToUpperInvariant(opener[0]) + opener[1..].ToLowerInvariant();
        var label = kind == PartKind.Part ? $"{opener} {key}" : key;
        _part = new()
        {
            Kind = kind.Value,
            Key = key,
            Name = name,
            Label = label,
            Span = line,
            StatedCounts = stated,
            StatedSpan = statedSpan,
            StatedRange = range,
            HeadingPieces = pieces,
        };
        _page.Parts.Add(_part);
        _block = null;
        _last = null;
        return new(_part, line);
    }

    // "Part A, 8 counts" states its length without brackets.
    private (int Counts, TextSpan Span)? StatedAtEnd(ReadOnlySpan<Token> tokens, TextSpan line)
    {
        for (var i = 1; i + 1 < tokens.Length; i++)
        {
            if (tokens[i].Kind != TokenKind.Number || tokens[i + 1].Kind != TokenKind.Word) continue;
            var word = _source.Slice(tokens[i + 1].Span);
            if (word.StartsWith("count", StringComparison.OrdinalIgnoreCase) && tokens[i + 1].End == line.End) return (tokens[i].Value, tokens[i].Span.Join(tokens[i + 1].Span));
        }

        return null;
    }

    private static PartKind? KindOf(ReadOnlySpan<char> word)
    {
        for (var i = 0; i < HeadingWords.Length; i++)
        {
            if (word.Equals(HeadingWords[i], StringComparison.OrdinalIgnoreCase))
            {
                return HeadingWords[i] switch
                {
                    "tag" => PartKind.Tag,
                    "bridge" => PartKind.Bridge,
                    "ending" => PartKind.Ending,
                    "intro" => PartKind.Intro,
                    _ => PartKind.Part,
                };
            }
        }

        return null;
    }

    private bool IsKey(Token token) =>
        token.Kind == TokenKind.Number
        || (token.Kind == TokenKind.Word && (token.Length == 1 || IsOrdinalWord(_source.Slice(token.Span))));

    private static bool IsOrdinalWord(ReadOnlySpan<char> word)
    {
        foreach (var one in (ReadOnlySpan<string>)["one", "two", "three", "four", "five", "six", "ii", "iii", "iv", "vi"])
        {
            if (word.Equals(one, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    private static ((int From, int To) Range, int Next)? RangeIn(ReadOnlySpan<Token> tokens, int open)
    {
        if (open + 4 >= tokens.Length) return null;
        if (tokens[open + 1].Kind != TokenKind.Number || tokens[open + 2].Kind != TokenKind.Dash || tokens[open + 3].Kind != TokenKind.Number) return null;
        return tokens[open + 4].Kind == TokenKind.Close ? ((tokens[open + 1].Value, tokens[open + 3].Value), open + 5) : null;
    }
}
