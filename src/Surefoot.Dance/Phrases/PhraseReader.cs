using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <summary>
/// Turns the words of a line into pieces: moves, hands, claims, notes. It knows words, not feet: whether
/// a foot is free is found out when the score is made.
/// </summary>
public sealed class PhraseReader(string text, FigureBook book, Floor floor)
{
    private readonly List<Item> _items = new(32);
    private List<Piece> _pieces = [];

    private Move? _earlier;

    /// <summary>Reads the actions of a stretch of a line into pieces, in order.</summary>
    /// <param name="earlier">The last move of the line above, when this one goes on with it.</param>
    public List<Piece> Read(ReadOnlySpan<Token> tokens, Move? earlier = null)
    {
        _pieces = [];
        _earlier = earlier;
        var from = 0;
        var i = 0;
        while (i < tokens.Length)
        {
            if (tokens[i].Kind != TokenKind.Open)
            {
                i++;
                continue;
            }

            var close = ClosingOf(tokens, i);
            // "(L)" and "(R)" are only another way to write the foot.
            if (close == i + 2 && IsSide(tokens[i + 1]))
            {
                i = close + 1;
                continue;
            }

            var inner = tokens[(i + 1)..Math.Min(close, tokens.Length)];
            var span = tokens[i].Span.Join(tokens[Math.Min(close, tokens.Length - 1)].Span);
            ReadPhrases(tokens[from..i]);
            if (close >= tokens.Length) _pieces.Add(new OpenBracketPiece(tokens[i].Span));
            ReadBracket(inner, span);
            i = from = close + 1;
        }

        if (from < tokens.Length) ReadPhrases(tokens[from..]);
        Settle(_pieces);
        return _pieces;
    }

    /// <summary>Later words ("…, R, L") may have been added to a move; its piece grows with it.</summary>
    internal static void Settle(List<Piece> pieces)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            if (pieces[i] is MovePiece move && move.Span != move.Move.Span) pieces[i] = new MovePiece(move.Move);
        }

        // "Step R, pivot ½ left", "step L, scuff R", "step L, lock R": a step that something follows in front goes forward.
        var moves = pieces.OfType<MovePiece>().Select(p => p.Move).ToList();
        for (var i = 0; i + 1 < moves.Count; i++)
        {
            var (step, next) = (moves[i], moves[i + 1]);
            if (step is { Figure: null, Verb: ActionKind.Step, Way: null, Towards: null, OnlyTurn: false, TurnAmount: 0, WayTaken: false } && step.Feet.Count <= 1
                && (next.Verb is ActionKind.Pivot or ActionKind.Scuff or ActionKind.Brush || next.Way == Direction.LockBehind || (next is { OnlyTurn: true, HeadSaid: true } && next.TurnAmount is 2 or 4)) && next.Figure is null)
            {
                step.Way = Direction.Forward;
                step.WayTaken = true;
            }
        }
    }

    private static int ClosingOf(ReadOnlySpan<Token> tokens, int open)
    {
        var depth = 0;
        for (var i = open; i < tokens.Length; i++)
        {
            if (tokens[i].Kind == TokenKind.Open) depth++;
            else if (tokens[i].Kind == TokenKind.Close && --depth == 0) return i;
        }

        return tokens.Length;
    }

    private bool IsSide(Token token)
    {
        Span<Token> one = [token];
        return token.Kind == TokenKind.Word && book.Lexicon.Longest(one, 0, out var senses) == 1 && senses.Exists(s => s.Kind == SenseKind.Side);
    }

    private void ReadBracket(ReadOnlySpan<Token> inner, TextSpan span)
    {
        var items = new List<Item>(8);
        Items.Read(inner, book.Lexicon, items);
        if (items.Count == 0)
        {
            _pieces.Add(new NotePiece(text.Substring(span.Start, span.Length), span));
            return;
        }

        // "(R L R)" gives the feet of the move before it.
        if (items.TrueForAll(i => i.Is(SenseKind.Side) || i.Kind is TokenKind.Comma or TokenKind.Dash or TokenKind.Slash) && LastMove() is { } move)
        {
            // "Chassé to the right (R L R)": the list says more than a side word or a first foot before it.
            var listed = items.Count(i => i.Is(SenseKind.Side));
            if (move.Feet.Count == 1 && move.Feet[0].Span.Length > 2 && move.Figure is { NamesTurn: true } && move.TurnSide == 0) move.TurnSide = move.Feet[0].Foot == Foot.Left ? 1 : -1;
            else if (move.Feet.Count == 1 && move.Feet[0].Span.Length > 2) move.Towards ??= move.Feet[0].Foot;
            if (move.Feet.Count > 0 && listed == 1)
            {
                move.Span = move.Span.Join(span);
                return;
            }

            move.Feet.Clear();
            move.SideOpen = false;
            foreach (var item in items)
            {
                if (item.Is(SenseKind.Side, out var side)) move.Feet.Add(new((Foot)side.Value, item.Span));
            }

            move.Span = move.Span.Join(span);
            return;
        }

        if (items.Exists(i => i.Is(SenseKind.NoWeight)) && LastMove() is { Figure: null } unweighted)
        {
            // "Stomp R (no weight)".
            if (unweighted.Verb == ActionKind.Stomp) unweighted.Verb = ActionKind.StompUp;
            else if (unweighted.Verb is ActionKind.Step) unweighted.Verb = ActionKind.Touch;
            _pieces.Add(new NotePiece(text.Substring(span.Start, span.Length).Trim('(', ')', '[', ']', ' '), span));
            return;
        }

        if (TimesIn(items) is > 1 and <= 16 and var times)
        {
            // "Step R, touch L, step L, touch R (x2)": all of it again.
            var again = _pieces.OfType<MovePiece>().ToList();
            for (var n = 1; n < times; n++) _pieces.AddRange(again.Select(m => new MovePiece(m.Move.Mirrored().Mirrored())));
            _pieces.Add(new NotePiece(text.Substring(span.Start, span.Length), span));
            return;
        }

        var before = _pieces.Count;
        var missed = false;
        var start = 0;
        for (var i = 0; i <= items.Count; i++)
        {
            if (i < items.Count && items[i].Kind is not (TokenKind.Comma or TokenKind.Semicolon) && !items[i].IsOnly(SenseKind.And)) continue;
            if (i > start) missed |= !ClaimReader.Read(items, start, i, floor, book, bracket: true, _pieces);
            start = i + 1;
        }

        if (_pieces.Count == before || missed) _pieces.Add(new NotePiece(text.Substring(span.Start, span.Length).Trim('(', ')', '[', ']', ' '), span));
    }

    private static int TimesIn(List<Item> items) => items switch
    {
        [var one] when one.Is(SenseKind.Times, out var times) => times.Value,
        [var x, var n] when x.Is(SenseKind.Multiply) && n.Kind == TokenKind.Number => n.Value,
        [var n, var x] when x.Is(SenseKind.Multiply) && n.Kind == TokenKind.Number => n.Value,
        _ => 0,
    };

    private Move? LastMove()
    {
        for (var i = _pieces.Count - 1; i >= 0; i--)
        {
            if (_pieces[i] is MovePiece move) return move.Move;
        }

        return _earlier;
    }

    private void ReadPhrases(ReadOnlySpan<Token> tokens)
    {
        _items.Clear();
        Items.Read(tokens, book.Lexicon, _items);
        var start = 0;
        for (var i = 0; i <= _items.Count; i++)
        {
            if (i < _items.Count && _items[i].Kind == TokenKind.Colon && i + 1 < _items.Count && start < i)
            {
                // "Vine right: side, behind, side, touch": what follows the colon spells the figure out.
                ReadPhrase(start, i);
                if (_pieces.Count > 0 && _pieces[^1] is MovePiece { Move.Figure: not null })
                {
                    _pieces.Add(Note(i + 1, _items.Count));
                    return;
                }

                start = i + 1;
                continue;
            }

            if (i < _items.Count && !Separates(i)) continue;
            if (i > start) ReadPhrase(start, i);
            start = i + 1;
        }
    }

    private bool Separates(int i)
    {
        var item = _items[i];
        switch (item.Kind)
        {
            case TokenKind.Comma or TokenKind.Semicolon or TokenKind.Plus or TokenKind.Dash or TokenKind.Amp:
                return true;
            case TokenKind.Period:
                // "fwd. L" goes on; a stop before a capital or the end of the line separates.
                return i + 1 >= _items.Count || char.IsUpper(text[_items[i + 1].Span.Start]) || !_items[i + 1].HasSenses;
            case TokenKind.Slash:
                return true;
            default:
                return item.Is(SenseKind.And) || item.Is(SenseKind.Then);
        }
    }

    // Letters for feet at the end, right behind the word for hands.
    private int FeetAfterHands(int from, int to)
    {
        var feet = to;
        while (feet > from && _items[feet - 1].Span.Length <= 2 && (_items[feet - 1].Is(SenseKind.Side) || _items[feet - 1].Is(SenseKind.Foot))) feet--;
        return feet < to && feet > from && _items[feet - 1].Is(SenseKind.HandNoun) ? feet : to;
    }

    private void ReadPhrase(int from, int to)
    {
        if (HandReader.StartOf(_items, from, to) is var hands && hands < to)
        {
            if (hands > from) ReadPhrase(from, hands);
            if (FeetAfterHands(hands, to) is var feet && feet < to && _pieces.Count > 0 && _pieces[^1] is MovePiece)
            {
                // "Full turn under right hands L R": the letters are the feet of the turn.
                ReadPhrase(feet, to);
                to = feet;
            }

            _pieces.Add(HandReader.Read(_items, hands, to, text));
            AddUnknown(hands, to);
            return;
        }

        // "facing RLOD" and "weight on left" may stand outside brackets too.
        for (var i = from; i < to; i++)
        {
            if (_items[i].Is(SenseKind.Face) && ClaimReader.FindFacing(_items, i, to, floor, out _) && !PartOfTurn(from, i))
            {
                if (i > from) ReadPhrase(from, i);
                if (ClaimReader.Read(_items, i, to, floor, book, bracket: false, _pieces)) return;
                AddUnknown(i, to);
                _pieces.Add(Note(i, to));
                return;
            }

            if (!_items[i].Is(SenseKind.Weight)) continue;
            if (i > from) ReadPhrase(from, i);
            if (ClaimReader.WeightIn(_items, i, to) is { } weight)
            {
                if (LastMove() is { } told && MayBeTold(told)) told.EndsOn = weight;
                _pieces.Add(new ClaimPiece(new WeightClaim(weight), null, _items[i].Span.Join(_items[to - 1].Span)));
            }
            else
            {
                _pieces.Add(Note(i, to));
            }

            return;
        }

        if (SizeOf(from, to) is { } size && _pieces.OfType<MovePiece>().ToList() is [.., { Move: var last }] before)
        {
            foreach (var piece in before.Where(p => p.Move.Size == default)) piece.Move.Size = size;
            last.Span = last.Span.Join(_items[from].Span.Join(_items[to - 1].Span));
            return;
        }

        new MoveReader(text, _items, from, to, floor, book, _pieces, LastMove()).Read();
    }

    // "Walk L, R, big steps": how all before it on the line is stepped, and no step more.
    private StepSize? SizeOf(int from, int to)
    {
        StepSize? size = null;
        var steps = false;
        for (var i = from; i < to; i++)
        {
            var item = _items[i];
            var word = text.AsSpan(item.Span.Start, item.Span.Length);
            if (item.Is(SenseKind.Small) || item.Is(SenseKind.Large)) size = new(item.Is(SenseKind.Small) ? StepSizeWord.Small : StepSizeWord.Large, 0);
            else if (word.Equals("steps", StringComparison.OrdinalIgnoreCase)) steps = true;
            else if (!item.Is(SenseKind.Filler) && !(i == from && word.Equals("taking", StringComparison.OrdinalIgnoreCase))) return null;
        }

        return steps ? size : null;
    }

    private void AddUnknown(int from, int to)
    {
        for (var k = from; k < to; k++)
        {
            if (_items[k].Kind == TokenKind.Word && !_items[k].Known) _pieces.Add(new UnknownPiece(text.Substring(_items[k].Span.Start, _items[k].Span.Length), _items[k].Span));
        }
    }

    private bool PartOfTurn(int from, int face)
    {
        for (var i = from; i < face; i++)
        {
            if (_items[i].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value is ActionKind.Turn or ActionKind.Pivot) return true;
            if (_items[i].Kind == TokenKind.Fraction || _items[i].Is(SenseKind.Amount)) return true;
        }

        return false;
    }

    private static bool MayBeTold(Move move) =>
        move.Figure is { FreeAfter: "as told" }
        || (move.Figure is null && (move.OnlyTurn || move.Verb is ActionKind.Turn or ActionKind.Pivot or ActionKind.Jump or ActionKind.Swivel or ActionKind.Sway or ActionKind.Bump or ActionKind.Step or ActionKind.Stomp));

    private NotePiece Note(int from, int to)
    {
        var span = _items[from].Span.Join(_items[to - 1].Span);
        return new(text.Substring(span.Start, span.Length), span);
    }
}
