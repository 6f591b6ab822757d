using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <summary>
/// Reads the moves of one phrase, the words between two commas. Words may stand in any order a dancer
/// would put them: "rock L forward", "LF rocks fwd", "¼ turn left stepping R forward".
/// </summary>
internal sealed partial class MoveReader(
    string text, List<Item> items, int from, int to, Floor floor, FigureBook book, List<Piece> pieces, Move? before)
{
    private Move _move = new();
    private TextSpan? _span;
    private bool _head;
    private bool _turnHead;
    private bool _any;
    private bool _verbWay;
    private bool _starting;
    private int _number;
    private Part? _part;
    private bool _partPlural;
    private TextSpan? _note;
    private int _lastFootItem = -2;
    private bool _objectNext;
    private Direction? _outIn;

    private enum Part
    {
        Heel,
        Toe,
        Hip,
        Knee,
        Ball,
    }

    public void Read()
    {
        var i = from;
        // "Lady turns right": a role without a colon was already split off; a stray one is a note.
        while (i < to) i = ReadItem(i);
        Finish();
        if (_note is { } note) pieces.Add(new NotePiece(text.Substring(note.Start, note.Length), note));
    }

    private int ReadItem(int i)
    {
        var item = items[i];
        if (item.Kind is TokenKind.Fraction)
        {
            Touch(item);
            return TakeAmount(i, item.Value);
        }

        if (item.Kind == TokenKind.Clock)
        {
            Touch(item);
            _move.TurnTo = new(item.Value);
            _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
            return i + 1;
        }

        if (item.Kind is TokenKind.Number or TokenKind.Decimal) return TakeNumber(i);
        if (item.Kind != TokenKind.Word)
        {
            // Quotes, stars and the like carry no step and are kept with the phrase.
            Touch(item);
            return i + 1;
        }

        if (!item.Known)
        {
            if (IsUnit(item, out _))
            {
                Touch(item);
                return i + 1;
            }

            pieces.Add(new UnknownPiece(text.Substring(item.Span.Start, item.Span.Length), item.Span));
            _move.Unclear = true;
            _any = true;
            _span = Joined(_span, item.Span);
            return i + 1;
        }

        // "x2" is twice; "x" by itself is across.
        if (item.Is(SenseKind.Multiply) && (BesideNumber(i + 1) || BesideNumber(i - 1)))
        {
            Touch(item);
            return i + 1;
        }

        if (item.Is(SenseKind.Side, out var side)) return TakeSide(i, (Foot)side.Value);
        if (item.Is(SenseKind.Foot, out var foot))
        {
            Touch(item);
            if (_objectNext) _objectNext = false;
            else if (foot.Value is 0 or 1) AddFoot(i, (Foot)foot.Value);
            return i + 1;
        }

        if (item.Is(SenseKind.Figure) && item.Is(SenseKind.Amount, out var turned) && _head && !_turnHead)
        {
            // "Triple full turn right", "unwind a full turn".
            Touch(item);
            return TakeAmount(i, turned.Value);
        }

        if (item.Is(SenseKind.Figure, out var figure) && !PrefersVerb(item)) return TakeFigure(i, book.Figure(figure.Value));
        if (item.Is(SenseKind.Verb, out var verb)) return TakeVerb(i, (ActionKind)verb.Value, verb.Second);
        if (i + 2 < to && items[i + 1].Kind == TokenKind.Number && items[i + 2].Is(SenseKind.Counts) && item.Is(SenseKind.Way, out var over) && (Direction)over.Value == Direction.Across)
        {
            // "Over 4 counts" is how long, not where.
            Touch(item);
            return TakeNumber(i + 1);
        }

        if (item.Is(SenseKind.Way, out var way)) return TakeWay(i, (Direction)way.Value);
        if (item.Is(SenseKind.Rotation, out var rotation))
        {
            Touch(item);
            _move.TurnSide = rotation.Value == 0 ? 1 : -1;
            _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
            return i + 1;
        }

        if (item.Is(SenseKind.Amount, out var amount))
        {
            Touch(item);
            return TakeAmount(i, amount.Value);
        }

        if (item.Is(SenseKind.Face))
        {
            if (ClaimReader.FindFacing(items, i, to, floor, out var facing))
            {
                Touch(item);
                _move.TurnTo = facing;
                _move.TurnSpan = Joined(_move.TurnSpan, item.Span.Join(items[to - 1].Span));
                pieces.Add(new ClaimPiece(new FacingClaim(facing), null, item.Span.Join(items[to - 1].Span)));
                return to;
            }

            for (var k = i; k <= Math.Min(i + 2, to - 1); k++)
            {
                if (!items[k].Is(SenseKind.Relation, out var relation) || (Relation)relation.Value != Relation.FacingEachOther) continue;
                // "Turning to face partner", "face partner stepping side".
                _move.ToPartner = true;
                for (var t = i; t <= k; t++) Touch(items[t]);
                if (!_head) BecomeTurn(headSaid: true);
                return k + 1;
            }

            Touch(item);
            return i + 1;
        }

        if (item.Is(SenseKind.Part, out var part))
        {
            Touch(item);
            _part ??= (Part)part.Value;
            _partPlural |= text[item.Span.End - 1] is 's' or 'S';
            return i + 1;
        }

        if (item.Is(SenseKind.Slow) || item.Is(SenseKind.Quick))
        {
            Touch(item);
            _move.CountsEach = item.Is(SenseKind.Slow) ? 2 : 1;
            return i + 1;
        }

        if (item.Is(SenseKind.Times, out var times))
        {
            Touch(item);
            Repeated(times.Value);
            return i + 1;
        }

        if (item.Is(SenseKind.Number, out var number))
        {
            Touch(item);
            _number = number.Value;
            return i + 1;
        }

        if (item.Is(SenseKind.Small) || item.Is(SenseKind.Large))
        {
            Touch(item);
            _move.Size = new(item.Is(SenseKind.Small) ? StepSizeWord.Small : StepSizeWord.Large, 0);
            return i + 1;
        }

        if (item.Is(SenseKind.Starting))
        {
            Touch(item);
            _starting = true;
            return i + 1;
        }

        if (item.Is(SenseKind.NoWeight))
        {
            Touch(item);
            if (_move.Figure is null) _move.Verb = _move.Verb == ActionKind.Stomp ? ActionKind.StompUp : _head ? ActionKind.Touch : _move.Verb;
            return i + 1;
        }

        if (item.Is(SenseKind.Style) && !item.Is(SenseKind.Filler))
        {
            _note = Joined(_note, item.Span);
            return i + 1;
        }

        var spelled = text.AsSpan(item.Span.Start, item.Span.Length);
        if (spelled.Equals("up", StringComparison.OrdinalIgnoreCase) && _head && _move is { Figure: null, Verb: ActionKind.Stomp })
        {
            _move.Verb = ActionKind.StompUp;
            Touch(item);
            return i + 1;
        }

        var isIn = spelled.Equals("in", StringComparison.OrdinalIgnoreCase) && (i + 1 >= to || NextIsFoot(i));
        if (spelled.Equals("out", StringComparison.OrdinalIgnoreCase) || isIn)
        {
            if (_outIn is not null && !_head) NextMove();
            _outIn = isIn ? Direction.Together : Direction.Side;
            Touch(item);
            return i + 1;
        }

        if (item.Is(SenseKind.Facing, out var facingSense) && (Floor)facingSense.Second == floor && (_turnHead || _move.TurnSpan is not null) && _move.TurnTo is null)
        {
            _move.TurnTo = new(facingSense.Value);
            _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
            Touch(item);
            return i + 1;
        }

        // Fillers; words such as "wall" or "weight" that state nothing here count as fillers too.
        if (_any) _span = Joined(_span, item.Span);
        else _note = Joined(_note, item.Span);
        return i + 1;
    }

    private void Touch(Item item)
    {
        if (_note is { } fillers && !_any)
        {
            _span = Joined(_span, fillers);
            _note = null;
        }

        _any = true;
        _span = Joined(_span, item.Span);
    }

    private static TextSpan Joined(TextSpan? a, TextSpan b) => a is { } has ? has.Join(b) : b;

    private void NextMove()
    {
        Finish();
        _move = new();
        _span = null;
        _head = _turnHead = _any = _verbWay = _starting = _objectNext = false;
        _number = 0;
        _outIn = null;
        _part = null;
        _partPlural = false;
        _lastFootItem = -2;
    }
}
