using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Figures;

/// <summary>Reads figure definitions, in shipped files, in a notebook's figure page and in pages, with one and the same reader.</summary>
public static class FigureReader
{
    /// <summary>The figures a text defines, by name only: each with the lines that belong to it.</summary>
    public static List<(Figure Figure, int FromLine, int ToLine)> Heads(SourceText source)
    {
        var found = new List<(Figure, int, int)>();
        Figure? open = null;
        var from = 0;
        var blank = false;
        for (var n = 0; n < source.LineCount; n++)
        {
            var line = source.Line(n);
            var words = source.Slice(line);
            var afterBlank = blank;
            blank = words.Trim(Blanks).Length == 0;
            if (Key(words, out var colon) is { } key && key.Equals("figure", StringComparison.OrdinalIgnoreCase))
            {
                Close(n);
                var name = words[(colon + 1)..];
                var paren = name.IndexOf('(');
                open = new((paren < 0 ? name : name[..paren]).Trim().ToString().ToLowerInvariant().Replace('\u2019', '\'')) { Home = source, Span = Trimmed(source.Text, line) };
                from = n;
            }
            else if (open is not null && (EndsFigure(words) || (afterBlank && StartsWithCount(words))))
            {
                // A figure ends at the next heading, or where counts go on after a blank line.
                Close(n);
            }
            else if (open is not null && Key(words, out colon) is { } also && also.Equals("also", StringComparison.OrdinalIgnoreCase))
            {
                open.OtherNames = open.OtherNames.Concat(words[(colon + 1)..].ToString().ToLowerInvariant()
                    .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToValueList();
            }
        }

        Close(source.LineCount);
        return found;

        void Close(int to)
        {
            if (open is not null && open.Name.Length > 0)
            {
                found.Add((open, from, to));
            }

            open = null;
        }
    }

    /// <summary>Reads the facts and the body of a figure; gives back its lines as nodes.</summary>
    public static List<LineNode> Fill(Figure figure, SourceText source, int fromLine, int toLine, FigureBook book)
    {
        var nodes = new List<LineNode>();
        var reader = new LineReader(source, book, Floor.Walls);
        FigureVersion? version = null;
        for (var n = fromLine; n < toLine; n++)
        {
            var span = Trimmed(source.Text, source.Line(n));
            if (span.Length == 0)
            {
                nodes.Add(new BlankLine(source.Line(n)));
                continue;
            }

            var words = source.Slice(span);
            if (words[0] is '>')
            {
                nodes.Add(new NoteLine(words[1..].Trim().ToString(), span));
                continue;
            }

            if (reader.CountLine(span) is { } line)
            {
                version ??= Add(new());
                version.Lines.Add(line);
                nodes.Add(line);
                continue;
            }

            if (IsVersion(words))
            {
                version = Add(ReadVersion(words.ToString(), book));
                nodes.Add(new FigureLine(figure, "version", words.ToString(), span, span));
                continue;
            }

            if (Key(words, out var colon) is { } key)
            {
                var value = words[(colon + 1)..].Trim().ToString();
                nodes.Add(new FigureLine(figure, key.ToString().ToLowerInvariant(), value, new(span.Start, colon), span));
                ReadFact(figure, key.ToString().ToLowerInvariant(), value, words.ToString(), source, span, colon, book);
                continue;
            }

            // "Follow: rock back" under a count line goes on with its counts.
            var segments = reader.Segments(reader.Cut(span), span);
            if (version is { Lines.Count: > 0 } && segments.Count > 0 && segments[0].RoleSpan is not null) version.Lines[^1].Segments.AddRange(segments);
            nodes.Add(new StrayLine(segments.SelectMany(s => s.Pieces).ToList(), span));
        }

        figure.NamesTurn = figure.Name.Contains("turn", StringComparison.Ordinal) || (figure.Versions.Count > 0 && Turns(figure.Versions[0]));
        return nodes;

        FigureVersion Add(FigureVersion one)
        {
            figure.Versions.Add(one);
            return one;
        }
    }

    private static bool Turns(FigureVersion version) => version.Lines.SelectMany(l => l.Segments).SelectMany(s => s.Pieces)
        .Any(p => p is MovePiece { Move: { Figure: null } move } && (move.TurnAmount > 0 || move.OnlyTurn || move.Verb == ActionKind.Pivot));

    private static void ReadFact(Figure figure, string key, string value, string words, SourceText source, TextSpan span, int colon, FigureBook book)
    {
        switch (key)
        {
            case "figure":
                ReadLength(figure, words);
                break;
            case "means":
                figure.Means = value;
                break;
            case "source":
                figure.Source = value;
                break;
            case "free after":
                figure.FreeAfter = value.ToLowerInvariant();
                break;
            case "example":
                figure.Examples = figure.Examples.Append(value).ToValueList();
                break;
            case "call":
                figure.Calls = figure.Calls.Append(new FigureCall(null, value)).ToValueList();
                break;
            case "call lead":
            case "call follow":
                figure.Calls = figure.Calls.Append(new FigureCall(key == "call lead" ? Role.Lead : Role.Follow, value)).ToValueList();
                break;
            case "unless told":
                figure.UsualWaySaid = true;
                break;
            case "turns":
                ReadTurns(figure, value);
                break;
            case "turn":
            case "closing":
                var reader = new LineReader(source, book, Floor.Walls);
                var from = span.Start + colon + 1;
                foreach (var piece in reader.Pieces(reader.Cut(TextSpan.Between(from, span.End))))
                {
                    if (piece is not MovePiece { Move: var move }) continue;
                    if (key == "closing") figure.Closings.Add(move);
                    else figure.UsualTurn = new(move.TurnAmount * (move.TurnSide == 0 ? -1 : move.TurnSide));
                }

                break;
        }
    }

    private static void ReadLength(Figure figure, string words)
    {
        var open = words.IndexOf('(', StringComparison.Ordinal);
        var inside = open < 0 ? "" : words[(open + 1)..].TrimEnd(')', ' ');
        if (inside.StartsWith("any", StringComparison.OrdinalIgnoreCase)) figure.AnyCounts = true;
        else if (int.TryParse(inside.Split(' ')[0], out var counts)) figure.StatedCounts = counts;
        figure.OrMore = inside.Contains("or more", StringComparison.OrdinalIgnoreCase);
    }

    private static void ReadTurns(Figure figure, string value)
    {
        var lower = value.ToLowerInvariant().Replace('\u2019', '\'');
        if (lower.StartsWith("either way", StringComparison.Ordinal))
        {
            figure.Turns = TurnRule.EitherWay;
            return;
        }

        if (lower.StartsWith("over", StringComparison.Ordinal))
        {
            figure.Turns = TurnRule.OverSteps;
            figure.TurnsRole = lower.Contains("follow", StringComparison.Ordinal) ? Role.Follow : lower.Contains("lead", StringComparison.Ordinal) ? Role.Lead : null;
            return;
        }

        if (!lower.StartsWith("on ", StringComparison.Ordinal)) return;
        figure.Turns = TurnRule.OnCount;
        var at = lower[3..].Trim();
        var whole = new string(at.TakeWhile(char.IsAsciiDigit).ToArray());
        figure.TurnsOn = new(Beats.Of(whole.Length > 0 ? int.Parse(whole) : 0) + (at.EndsWith('&') ? Beats.Half : Beats.Zero));
    }

    private static bool IsVersion(ReadOnlySpan<char> words) =>
        words.StartsWith("going ", StringComparison.OrdinalIgnoreCase) || words.StartsWith("turning ", StringComparison.OrdinalIgnoreCase);

    private static FigureVersion ReadVersion(string words, FigureBook book)
    {
        var version = new FigureVersion();
        foreach (var piece in words.TrimEnd(':').Split(',', StringSplitOptions.TrimEntries))
        {
            if (piece.StartsWith("turning ", StringComparison.OrdinalIgnoreCase))
            {
                version.Turning = piece.EndsWith("left", StringComparison.OrdinalIgnoreCase) ? 1 : -1;
            }
            else if (piece.StartsWith("going ", StringComparison.OrdinalIgnoreCase))
            {
                foreach (var sense in book.Lexicon.Find(piece[6..]))
                {
                    if (sense.Kind == SenseKind.Way) version.Going = (Direction)sense.Value;
                }
            }
        }

        return version;
    }

    private const string Blanks = " \t\u00A0\uFEFF";

    private static bool StartsWithCount(ReadOnlySpan<char> words)
    {
        var trimmed = words.TrimStart(Blanks);
        return trimmed.Length > 0 && (char.IsAsciiDigit(trimmed[0]) || trimmed[0] == '&');
    }

    private static bool EndsFigure(ReadOnlySpan<char> words)
    {
        var trimmed = words.Trim();
        foreach (var word in PageReader.HeadingWords)
        {
            if (trimmed.StartsWith(word, StringComparison.OrdinalIgnoreCase) && (trimmed.Length == word.Length || !char.IsLetter(trimmed[word.Length]))) return true;
        }

        // "Call 7-8: rock back" belongs to the dance; "Call: wheel" is a fact of the figure.
        return trimmed.StartsWith("[", StringComparison.Ordinal) || IsCall(trimmed);
    }

    private static bool IsCall(ReadOnlySpan<char> words)
    {
        var space = words.IndexOf(' ');
        return space > 0 && (words[..space].Equals("call", StringComparison.OrdinalIgnoreCase) || words[..space].Equals("calls", StringComparison.OrdinalIgnoreCase))
            && words.Contains(':') && char.IsAsciiDigit(words[space..].TrimStart()[0]);
    }

    /// <summary>The word before a colon at the start of a line, or nothing.</summary>
    internal static string? Key(ReadOnlySpan<char> words, out int colon)
    {
        colon = words.IndexOf(':');
        if (colon <= 0 || colon > 28) return null;
        var key = words[..colon].Trim(" \t\u00A0\uFEFF");
        if (key.Length == 0) return null;
        foreach (var c in key)
        {
            if (!char.IsLetter(c) && c is not (' ' or '\'' or '\u2019')) return null;
        }

        return key.ToString();
    }

    internal static TextSpan Trimmed(string text, TextSpan span)
    {
        var start = span.Start;
        var end = span.End;
        while (start < end && Tokenizer.IsSpace(text[start])) start++;
        while (end > start && Tokenizer.IsSpace(text[end - 1])) end--;
        return TextSpan.Between(start, end);
    }
}
