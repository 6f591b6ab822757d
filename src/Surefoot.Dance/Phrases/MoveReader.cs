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
internal sealed class MoveReader(
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

    private int TakeVerb(int i, ActionKind verb, int way)
    {
        var item = items[i];
        var turns = verb is ActionKind.Turn;
        if (_head)
        {
            if (turns && _move.Figure is null && !_turnHead && _move.Verb != ActionKind.Hold)
            {
                // "Step R forward turning ¼ right": the turn belongs to the step.
                Touch(item);
                _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
                _move.TurnMaySplit = true;
                return i + 1;
            }

            if (turns && _move.Figure is not null)
            {
                Touch(item);
                _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
                return i + 1;
            }

            if (_turnHead && verb == ActionKind.Pivot)
            {
                // "½ pivot left".
                _move.Verb = verb;
                _move.OnlyTurn = _turnHead = false;
                Touch(item);
                return i + 1;
            }

            if (_turnHead && (verb.Rule() is not WeightRule.Stays))
            {
                // "Turn ¼ left stepping R forward".
                _turnHead = false;
                _move.OnlyTurn = false;
                _move.Verb = verb;
                _move.TurnSpan ??= _move.Span;
                Touch(item);
                SetVerbWay(way);
                return i + 1;
            }

            if (verb == ActionKind.Rock && _move is { Figure: null, Verb: ActionKind.Step } && _verbWay)
            {
                // "Cross rock" is a rock across.
                _move.Verb = ActionKind.Rock;
                Touch(item);
                return i + 1;
            }

            if (verb == ActionKind.Step && way >= 0 && _move is { Figure: null, Verb: ActionKind.Step, Way: null, Feet.Count: 0 })
            {
                // "Step cross L" is one step.
                Touch(item);
                SetVerbWay(way);
                return i + 1;
            }

            if (_part is not null || _move.Figure is null || verb != ActionKind.Step) NextMove();
            else
            {
                // "Jazz box step": the word adds nothing.
                Touch(item);
                return i + 1;
            }
        }

        Touch(item);
        _head = true;
        _move.HeadSaid = true;
        _move.Verb = verb;
        _turnHead = verb is ActionKind.Turn;
        _move.OnlyTurn = _turnHead;
        if (_turnHead) _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
        SetVerbWay(way);
        return i + 1;
    }

    private int TakeFigure(int i, Figure figure)
    {
        var item = items[i];
        if (_head && !_turnHead) NextMove();
        Touch(item);
        _head = true;
        _turnHead = false;
        _move.OnlyTurn = false;
        _move.HeadSaid = true;
        _move.Figure = figure;
        if (_move.Feet.Count > 0 && figure.NamesTurn) _move.SideOpen = true;
        return i + 1;
    }

    private int TakeWay(int i, Direction way)
    {
        var item = items[i];
        if (_move.Way is { } had && !_verbWay)
        {
            if (Combined(had, way) is { } both)
            {
                _move.Way = both;
                Touch(item);
                return i + 1;
            }

            if (_move.Feet.Count > 0 && NextIsFoot(i) && had == way)
            {
                Touch(item);
                _objectNext = true;
                return i + 1;
            }

            if (_move.Figure is null)
            {
                // "Side together side": each way is a step of its own.
                var verb = _head && _move.Verb is ActionKind.Step or ActionKind.Touch or ActionKind.Point or ActionKind.Tap ? _move.Verb : ActionKind.Step;
                NextMove();
                _move.Verb = verb;
            }
        }

        Touch(item);
        _verbWay = false;
        _move.Way = way;
        _objectNext = _move.Feet.Count > 0 && way is Direction.Across or Direction.Behind or Direction.Together or Direction.LockBehind or Direction.LockFront;
        return i + 1;
    }

    private int TakeSide(int i, Foot side)
    {
        var item = items[i];
        Touch(item);
        // "to the left side", "left side", "right diagonal"
        var wayNext = i + 1 < to && items[i + 1].Is(SenseKind.Way, out var way) ? (Direction?)way.Value : null;
        if (TurnsHere(i))
        {
            _move.TurnSide = side == Foot.Left ? 1 : -1;
            _move.TurnSpan = Joined(_move.TurnSpan, item.Span);
            return i + 1;
        }

        if (_objectNext)
        {
            _objectNext = false;
            return i + 1;
        }

        if (AfterTo(i) && _move.Figure is null)
        {
            if (_move.Feet.Count > 0 && _move.Way is Direction.Together or Direction.Across or Direction.Behind) return i + 1;
            if (_move.Feet.Count > 0 && _move.Way is null && item.Span.Length == 1 && wayNext is not (Direction.Side or Direction.DiagonalForward or Direction.DiagonalBack))
            {
                // "Drag L to R": to the other foot.
                _move.Way = Direction.Together;
                return i + 1;
            }

            _move.Towards = side;
            if (_move.Way is null || _verbWay) _move.Way ??= Direction.Side;
            if (wayNext is not Direction.Side) return i + 1;
            Touch(items[i + 1]);
            return i + 2;
        }

        if (_move.Figure is { } going && AfterTo(i) && going.Versions.Exists(v => v.Going == Direction.Side))
        {
            // "Shuffle to the right", "chassé to right side".
            _move.Way ??= Direction.Side;
            _move.Towards = side;
            if (wayNext is not Direction.Side) return i + 1;
            Touch(items[i + 1]);
            return i + 2;
        }

        if (wayNext is Direction.Side && (_move.Feet.Count > 0 || !NextIsFoot(i + 1)) && _move.Figure is null)
        {
            // "touch R to right side": the foot is named, the side is the way.
            _move.Towards = side;
            if (_move.Feet.Count == 0) AddFoot(i, side);
            return i + 1;
        }

        if (wayNext is Direction.DiagonalForward or Direction.DiagonalBack && _move.Feet.Count > 0) return i + 1;
        if (_move is { Figure: null, Verb: ActionKind.Swivel or ActionKind.Turn or ActionKind.Pivot } && _head)
        {
            if (_move.Verb == ActionKind.Swivel) AddFoot(i, side);
            else if (_move.TurnSide == 0) _move.TurnSide = side == Foot.Left ? 1 : -1;
            return i + 1;
        }

        if (_move.Figure is { } named && (named.NamesTurn || !named.UsualTurn.IsNone) && !_starting && _move.Feet.Count == 0 && _move.TurnSide == 0)
        {
            // "Pivot turn right": the way round, or the foot it starts on; the feet decide.
            AddFoot(i, side);
            _move.SideOpen = true;
            return i + 1;
        }

        // "forward right" after a named foot says nothing new.
        if (_move.Feet.Count > 0 && _lastFootItem != i - 1 && !items[i].Joined && !BetweenFeet(i) && _move.Figure is null) return i + 1;
        AddFoot(i, side);
        return i + 1;
    }

    private int TakeAmount(int i, int eighths)
    {
        _move.TurnAmount = eighths;
        _move.TurnSpan = Joined(_move.TurnSpan, items[i].Span);
        if (i > from && items[i - 1].Is(SenseKind.Side, out var prior) && _move.Feet.Count > 0 && _lastFootItem == i - 1
            && _move.TurnSide == 0 && (_turnHead || (_move.Feet.Count > 1 && !FollowedBySide(i))))
        {
            _move.Feet.RemoveAt(_move.Feet.Count - 1);
            _move.TurnSide = prior.Value == 0 ? 1 : -1;
        }

        // "½ turn to the left", "¼ left", "full left turn"
        var j = i + 1;
        while (j < to && (items[j].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value == ActionKind.Turn || (items[j].IsOnly(SenseKind.Filler) && FollowedBySide(j)))) j++;
        if (j < to && items[j].Is(SenseKind.Side, out var side) && !(j + 1 < to && items[j + 1].Is(SenseKind.FootNoun)))
        {
            _move.TurnSide = side.Value == 0 ? 1 : -1;
            Adopt(i, j);
            if (j + 1 < to && items[j + 1].Is(SenseKind.Verb, out var turn) && (ActionKind)turn.Value == ActionKind.Turn) Adopt(i, ++j);
            return j + 1;
        }

        if (j > i + 1) Adopt(i, j - 1);
        else if (!_head) BecomeTurn(headSaid: false);
        return j;

        void Adopt(int first, int last)
        {
            for (var k = first; k <= last; k++) Touch(items[k]);
            _move.TurnSpan = Joined(_move.TurnSpan, items[first].Span.Join(items[last].Span));
            if (!_head) BecomeTurn(headSaid: true);
        }
    }

    private void BecomeTurn(bool headSaid)
    {
        // Only while no foot or way was named: "R fwd ¼ right" is a step.
        if (_move.Feet.Count > 0 || _move.Way is not null || _part is not null) return;
        _head = true;
        _turnHead = true;
        _move.OnlyTurn = true;
        _move.Verb = ActionKind.Turn;
        _move.HeadSaid |= headSaid;
    }

    private int TakeNumber(int i)
    {
        var item = items[i];
        Touch(item);
        if (i + 1 < to && IsUnit(items[i + 1], out var metres))
        {
            _move.Size = new(StepSizeWord.Usual, item.Value * metres / (item.Kind == TokenKind.Decimal ? 1000 : 1));
            Touch(items[i + 1]);
            return i + 2;
        }

        if (i + 1 < to && items[i + 1].Is(SenseKind.Counts))
        {
            _move.CountsEach = item.Value;
            Touch(items[i + 1]);
            return i + 2;
        }

        if (i > from && items[i - 1].Is(SenseKind.Multiply) || (i + 1 < to && items[i + 1].Is(SenseKind.Multiply)))
        {
            Repeated(item.Value);
            return i + 1;
        }

        // "¼ turn on 3": the count on which the figure takes its turn anyway.
        if (i > from && items[i - 1].IsOnly(SenseKind.Filler) && _move.Figure is { Turns: TurnRule.OnCount } turning && turning.TurnsOn == Count.At(item.Value)) return i + 1;
        _number = item.Value;
        return i + 1;
    }

    private bool BesideNumber(int i) => i >= from && i < to && items[i].Kind == TokenKind.Number;

    private void Repeated(int times)
    {
        if (times is < 1 or > 64) return;
        if (!_head && _move.Feet.Count == 0 && _move.Way is null && before is not null) before.Times = times;
        else _move.Times = times;
    }

    private bool IsUnit(Item item, out double metres)
    {
        var word = text.AsSpan(item.Span.Start, item.Span.Length);
        metres = word.Equals("m", StringComparison.OrdinalIgnoreCase) || word.Equals("metre", StringComparison.OrdinalIgnoreCase)
            || word.Equals("metres", StringComparison.OrdinalIgnoreCase) || word.Equals("meters", StringComparison.OrdinalIgnoreCase) ? 1
            : word.Equals("cm", StringComparison.OrdinalIgnoreCase) ? 0.01 : 0;
        return metres > 0;
    }

    // "Full turn right, starting left": once a foot is named, the first side word was the way round.
    private static void SettleSide(Move move, TextSpan foot)
    {
        if (move.Feet.Count != 1) return;
        if (!move.SideOpen)
        {
            // "Vine left L", "chassé to the right R L R": the word is the way, the letters are the feet.
            if (move.Figure is null || move.Feet[0].Span.Length < 4 || foot.Length > 2) return;
            move.Towards = move.Feet[0].Foot;
            move.Feet.Clear();
            return;
        }

        if (move.TurnSide == 0) move.TurnSide = move.Feet[0].Foot == Foot.Left ? 1 : -1;
        move.Feet.Clear();
        move.SideOpen = false;
    }

    private void AddFoot(int i, Foot foot)
    {
        SettleSide(_move, items[i].Span);
        _move.Feet.Add(new(foot, items[i].Span));
        _lastFootItem = i;
        _starting = false;
    }

    private void SetVerbWay(int way)
    {
        if (way < 0) return;
        if (_move.Way is null)
        {
            _move.Way = (Direction)way;
            _verbWay = true;
        }
    }

    private static Direction? Combined(Direction a, Direction b) => (a, b) switch
    {
        (Direction.Forward, Direction.Side) or (Direction.Side, Direction.Forward) => Direction.DiagonalForward,
        (Direction.Back, Direction.Side) or (Direction.Side, Direction.Back) => Direction.DiagonalBack,
        (Direction.Forward, Direction.Across) or (Direction.Across, Direction.Forward) => Direction.ForwardAcross,
        (Direction.DiagonalForward, Direction.Forward) or (Direction.Forward, Direction.DiagonalForward) => Direction.DiagonalForward,
        (Direction.DiagonalForward, Direction.Back) or (Direction.Back, Direction.DiagonalForward) => Direction.DiagonalBack,
        (Direction.LockBehind, Direction.Behind) => Direction.LockBehind,
        (Direction.LockBehind, Direction.Across) => Direction.LockFront,
        (Direction.Across, Direction.Behind) => Direction.Behind,
        (Direction.InPlace, Direction.Together) or (Direction.Together, Direction.InPlace) => Direction.Together,
        _ => null,
    };

    // A side word right beside a turn is the way round.
    private bool TurnsHere(int i)
    {
        if (i + 1 < to && items[i + 1].Is(SenseKind.FootNoun)) return false;
        if (i + 1 < to && items[i + 1].Is(SenseKind.Verb, out var next) && (ActionKind)next.Value == ActionKind.Turn
            && !text.AsSpan(items[i + 1].Span.Start, items[i + 1].Span.Length).EndsWith("ing", StringComparison.OrdinalIgnoreCase))
        {
            return _move.TurnSide == 0;
        }

        var j = i - 1;
        while (j >= from && items[j].IsOnly(SenseKind.Filler)) j--;
        if (j < from || _move.TurnSide != 0) return false;
        if (items[j].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value is ActionKind.Turn or ActionKind.Pivot) return true;
        return (items[j].Kind == TokenKind.Fraction || items[j].Is(SenseKind.Amount)) && _move.TurnAmount > 0;
    }

    private bool AfterTo(int i)
    {
        var j = i - 1;
        while (j >= from && items[j].IsOnly(SenseKind.Filler))
        {
            var word = text.AsSpan(items[j].Span.Start, items[j].Span.Length);
            if (word.Equals("to", StringComparison.OrdinalIgnoreCase)) return true;
            if (!word.Equals("the", StringComparison.OrdinalIgnoreCase) && !word.Equals("your", StringComparison.OrdinalIgnoreCase)) return false;
            j--;
        }

        return false;
    }

    private bool FollowedBySide(int i)
    {
        var j = i + 1;
        while (j < to && (items[j].IsOnly(SenseKind.Filler) || (items[j].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value == ActionKind.Turn))) j++;
        return j < to && items[j].Is(SenseKind.Side);
    }

    private bool NextIsFoot(int i) => i + 1 < to && (items[i + 1].Is(SenseKind.Side) || items[i + 1].Is(SenseKind.Foot));

    private bool BetweenFeet(int i)
    {
        for (var k = _lastFootItem + 1; k < i; k++)
        {
            if (items[k].Kind is not (TokenKind.Dash or TokenKind.Slash or TokenKind.Open or TokenKind.Close)) return false;
        }

        return _lastFootItem >= 0;
    }

    // "hold" is a verb and part of a hold's name; "turn" alone is the atom even where a figure has the name too.
    private static bool PrefersVerb(Item item) => item.Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value is ActionKind.Turn;

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

    private void Finish()
    {
        if (!_any) return;
        _any = false;
        _move.Span = _span!.Value;
        if (_number > 0)
        {
            if (_move is { Figure: null, Verb: ActionKind.Hold } && _head) _move.CountsEach = _number;
            else if (_head || _move.Feet.Count > 0 || _move.Way is not null) _move.Units = _number;
        }

        if (_part is { } part) ApplyPart(part);
        if (_outIn is { } outIn && _move is { Figure: null, Way: null, OnlyTurn: false } && (!_head || _move.Verb is ActionKind.Step or ActionKind.Touch or ActionKind.Point or ActionKind.Jump))
        {
            // "Out R, out L, in R, in L".
            _move.Way = _move.Verb == ActionKind.Jump && _head ? (outIn == Direction.Side ? Direction.Apart : Direction.Together) : outIn;
        }

        if (_turnHead && _move.OnlyTurn && before is { TurnAmount: 0, TurnTo: null, OnlyTurn: false } turned && LastPiece() is MovePiece && IsParticiple(_move.Span))
        {
            // "Step forward L, turning ¼ left": the turn belongs to the step before the comma.
            (turned.TurnAmount, turned.TurnSide, turned.TurnTo) = (_move.TurnAmount, _move.TurnSide, _move.TurnTo);
            turned.TurnSpan = _move.Span;
            turned.Span = turned.Span.Join(_move.Span);
            return;
        }

        if (_head)
        {
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.Way is not null || _move.Towards is not null)
        {
            // Only a way and perhaps a foot: a step that way, or the same again.
            if (_move.Verb == default) _move.Verb = Continued();
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.Feet.Count > 0)
        {
            // "L" after "Walk R": the same again with that foot.
            if (before is { } last && LastPiece() is MovePiece or null && _move is { TurnAmount: 0, TurnTo: null })
            {
                SettleSide(last, _move.Feet[0].Span);
                if (_move.CountsEach > 0)
                {
                    // "Walk L quick, R quick, L slow": each foot has its own length.
                    for (var k = 0; k < last.Feet.Count; k++) last.Feet[k] = last.Feet[k] with { Counts = last.Feet[k].Counts > 0 ? last.Feet[k].Counts : Math.Max(1, last.CountsEach) };
                    last.CountsEach = 0;
                }

                last.Feet.AddRange(_move.Feet.Select(f => f with { Counts = _move.CountsEach }));
                last.Span = last.Span.Join(_move.Span);
                return;
            }

            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.TurnTo is not null || _move.TurnSide != 0)
        {
            _move.OnlyTurn = true;
            _move.Verb = ActionKind.Turn;
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.Unclear)
        {
            pieces.Add(new MovePiece(_move));
            return;
        }

        if (_move.CountsEach > 0 && before is not null && LastPiece() is MovePiece) before.CountsEach = _move.CountsEach;
        pieces.Add(new NotePiece(text.Substring(_move.Span.Start, _move.Span.Length), _move.Span));
    }

    // "turning …", "making …" go with what stands before them; "turn …" is an action of its own.
    private bool IsParticiple(TextSpan span)
    {
        var words = text.AsSpan(span.Start, span.Length);
        var blank = words.IndexOf(' ');
        return (blank < 0 ? words : words[..blank]).EndsWith("ing", StringComparison.OrdinalIgnoreCase);
    }

    // "Touch R forward, side, back" goes on touching; "rock back on R, forward on L" comes back.
    private ActionKind Continued()
    {
        if (before is not { Figure: null, OnlyTurn: false, Way: { } was } last || LastPiece() is not MovePiece || _move.Way is not { } way) return ActionKind.Step;
        var sameFoot = _move.Feet.Count == 0 || (last.Feet.Count > 0 && _move.Feet[0].Foot == last.Feet[^1].Foot);
        if (last.Verb is ActionKind.Touch or ActionKind.Tap or ActionKind.Point or ActionKind.Kick or ActionKind.Toe && sameFoot && way is not (Direction.Together or Direction.InPlace)) return last.Verb;
        if (last.Verb == ActionKind.Rock && way == was.TurnedRound() && way != was && !sameFoot) return ActionKind.Recover;
        return ActionKind.Step;
    }

    private Piece? LastPiece() => pieces.Count > 0 ? pieces[^1] : null;

    private void ApplyPart(Part part)
    {
        if (_move.Figure is not null) return;
        var kind = part switch
        {
            Part.Heel => ActionKind.Heel,
            Part.Toe => ActionKind.Toe,
            Part.Hip => ActionKind.Bump,
            Part.Knee => ActionKind.Hitch,
            _ => (ActionKind?)null,
        };
        if (kind is null) return;
        if (!_head)
        {
            _head = true;
            _move.HeadSaid = true;
            // "Heels apart" twists both feet; "R heel" is one foot's.
            _move.Verb = _partPlural && part is Part.Heel or Part.Toe ? ActionKind.Swivel : kind.Value;
        }
        else if (_move.Verb is ActionKind.Touch or ActionKind.Tap or ActionKind.Point && part is Part.Heel or Part.Toe)
        {
            _move.Verb = kind.Value;
        }
    }
}
