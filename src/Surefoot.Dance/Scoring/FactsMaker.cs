using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Scoring;

/// <summary>Makes the facts of a dance from the head of its page.</summary>
internal sealed class FactsMaker(Page page, FigureBook book)
{
    private readonly List<Token> _tokens = [];
    private readonly List<UnreadFact> _unread = [];

    public DanceFacts Make(Foot? firstFoot)
    {
        var floor = HeadReader.FloorOf(page.Source);
        var kind = Value("kind");
        var alone = kind is not null && (Says(kind, "no partner") || Says(kind, "without partner") || Says(kind, "solo"));
        var couples = !alone && (kind is null ? floor == Floor.Track : Says(kind, "partner") || Says(kind, "couple") || (floor == Floor.Track && !Says(kind, "line")));
        var told = MeterOf(Value("meter"));
        var meter = told ?? new(4, 4);
        var (from, to) = TempoOf(Value("tempo"));
        var hold = HoldOf(page.Header("hold"));
        var relation = Says(Value("feet") ?? "", "opposite") || (Value("feet") is null && Holds.Named(hold)?.Kind is "closed" or "promenade") ? FeetRelation.Opposite : FeetRelation.Same;
        var starts = Starts(floor, couples, hold, relation, firstFoot, out var footSaid);
        var (lead, follow) = (StatureOf(page.Header("stature"), Role.Lead), StatureOf(page.Header("stature"), Role.Follow));
        Misses("hold", hold is null);
        Misses("meter", told is null);
        Misses("tempo", from is null);
        Misses("walls", NumbersIn(Value("walls") ?? "").Count == 0);
        MissesHeights(page.Header("stature"));
        Misses("phrase", !IsPhrase(Value("phrase") ?? ""));
        _unread.Sort((a, b) => a.Span.Start.CompareTo(b.Span.Start));
        return new(
            couples,
            floor,
            WallsOf(kind, Value("walls")),
            meter,
            from,
            to,
            hold,
            Value("level")?.ToLowerInvariant(),
            PhraseOf(page.Header("phrase"), meter),
            relation,
            (Value("also") ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToValueList(),
            starts,
            footSaid || firstFoot is not null)
        {
            LeadStature = lead,
            FollowStature = follow,
            Unread = _unread.ToValueList(),
            Intro = Value("intro"),
            Music = Value("music"),
        };
    }

    // A line of the head of which nothing could be made; an empty one says nothing that could be missed.
    private void Misses(string key, bool missed)
    {
        if (missed && page.Header(key) is { } header && header.Value.Trim().Length > 0) _unread.Add(new(key, header.ValueSpan));
    }

    // "lead 1.85, follow 1.58", or one number for both; centimetres read too.
    private double? StatureOf(HeaderLine? header, Role role)
    {
        if (header is null) return null;
        double? found = null;
        var mine = true;
        foreach (var item in ItemsOf(header.ValueSpan))
        {
            if (item.Is(SenseKind.Role, out var who)) mine = who.Value == 2 || who.Value == (role == Role.Lead ? 0 : 1);
            if (mine && HeightOf(item) is { } metres) found = metres;
        }

        return found;
    }

    private static double? HeightOf(Item item) => item.Kind switch { TokenKind.Decimal => item.Value / 1000.0, TokenKind.Number => item.Value / 100.0, _ => 0 } is > 1.0 and < 2.4 and var metres ? metres : null;

    // "Lead tall, follow 1.58": what is said of each dancer, between the commas, has a height or is missed.
    private void MissesHeights(HeaderLine? header)
    {
        if (header is null) return;
        var items = ItemsOf(header.ValueSpan);
        var start = 0;
        for (var i = 0; i <= items.Count; i++)
        {
            if (i < items.Count && items[i].Kind is not (TokenKind.Comma or TokenKind.Semicolon)) continue;
            if (i > start && !items[start..i].Exists(item => HeightOf(item) is not null)) _unread.Add(new(header.Key, items[start].Span.Join(items[i - 1].Span)));
            start = i + 1;
        }
    }

    private ValueList<RoleStart> Starts(Floor floor, bool couples, string? hold, FeetRelation relation, Foot? firstFoot, out bool said)
    {
        var feet = Stated(page.Header("feet"), floor);
        var facing = Stated(page.Header("facing"), floor);
        said = feet.Exists(f => f.Claim is WeightClaim);
        Weight? WeightOf(Role role) => (feet.Find(f => f.Claim is WeightClaim && f.Role == role) ?? feet.Find(f => f.Claim is WeightClaim && f.Role is null))?.Claim is WeightClaim w ? w.Weight : null;
        Facing? FacingOf(Role role) => (facing.Find(f => f.Claim is FacingClaim && f.Role == role) ?? facing.Find(f => f.Claim is FacingClaim && f.Role is null))?.Claim is FacingClaim c ? c.Facing : null;
        var own = feet.Exists(f => f.Claim is WeightClaim && f.Role == Role.Follow);
        if (!couples)
        {
            var weight = WeightOf(Role.Dancer) ?? firstFoot?.Other().Weight() ?? Weight.Left;
            return [new(Role.Dancer, FacingOf(Role.Dancer) ?? Facing.Front, weight)];
        }

        var leadWeight = WeightOf(Role.Lead) ?? firstFoot?.Other().Weight() ?? Weight.Right;
        var leadFacing = FacingOf(Role.Lead) ?? (facing.Exists(f => f.Claim is RelationClaim) ? new(6) : Facing.Front);
        var followWeight = own ? WeightOf(Role.Follow)!.Value : relation == FeetRelation.Opposite ? leadWeight.Mirrored() : leadWeight;
        var ownFacing = facing.Exists(f => f.Claim is FacingClaim && f.Role == Role.Follow);
        var turn = Holds.Named(hold)?.FollowTurn ?? (facing.Exists(f => f.Claim is RelationClaim { Relation: Relation.FacingEachOther }) ? new(4) : Turn.None);
        var followFacing = ownFacing ? FacingOf(Role.Follow)!.Value : leadFacing + turn;
        return [new(Role.Lead, leadFacing, leadWeight), new(Role.Follow, followFacing, followWeight)];
    }

    private List<ClaimPiece> Stated(HeaderLine? header, Floor floor)
    {
        var found = new List<Piece>();
        if (header is null) return [];
        var items = ItemsOf(header.ValueSpan);
        var start = 0;
        for (var i = 0; i <= items.Count; i++)
        {
            if (i < items.Count && items[i].Kind is not (TokenKind.Comma or TokenKind.Semicolon or TokenKind.Period)) continue;
            if (i > start && !ClaimReader.Read(items, start, i, floor, book, bracket: false, found) && !(header.Key == "feet" && IsOfFeet(items, start, i)))
            {
                _unread.Add(new(header.Key, items[start].Span.Join(items[i - 1].Span)));
            }

            start = i + 1;
        }

        var claims = found.OfType<ClaimPiece>().ToList();
        // "Feet: same, left" and "Feet: right": the foot that starts.
        if (header.Key == "feet" && !claims.Exists(c => c.Claim is WeightClaim))
        {
            foreach (var item in items)
            {
                if ((item.Is(SenseKind.Side, out var side) || item.Is(SenseKind.Foot, out side)) && side.Value < 2)
                {
                    claims.Add(new(new WeightClaim(((Foot)side.Value).Other().Weight()), null, item.Span));
                    break;
                }
            }
        }

        return claims;
    }

    // "Same", "opposite", "left", "both start right": no fact by itself, and all that is asked for.
    private bool IsOfFeet(List<Item> items, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if ((items[i].Is(SenseKind.Side, out var side) || items[i].Is(SenseKind.Foot, out side)) && side.Value < 2) return true;
        }

        var said = page.Source.Words(items[from].Span.Join(items[to - 1].Span));
        return Says(said, "opposite") || Says(said, "same");
    }

    private string? HoldOf(HeaderLine? header)
    {
        if (header is null) return null;
        foreach (var item in ItemsOf(header.ValueSpan))
        {
            if (item.Is(SenseKind.Hold, out var hold)) return FigureBook.HoldName(hold.Value);
        }

        return null;
    }

    private List<Item> ItemsOf(TextSpan span)
    {
        _tokens.Clear();
        Tokenizer.Read(page.Source.Text, span, book.Lexicon, _tokens);
        var items = new List<Item>();
        Items.Read(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_tokens), book.Lexicon, items);
        return items;
    }

    private string? Value(string key) => page.Header(key)?.Value;

    private static bool Says(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static int? WallsOf(string? kind, string? walls)
    {
        if (walls is not null && NumbersIn(walls) is [var stated, ..]) return stated;
        if (kind is null || !Says(kind, "wall")) return null;
        if (NumbersIn(kind) is [var number, ..]) return number;
        if (Says(kind, "one")) return 1;
        if (Says(kind, "two")) return 2;
        return Says(kind, "four") ? 4 : null;
    }

    private static Meter? MeterOf(string? text)
    {
        if (text is not null && NumbersIn(text) is [var beats and > 0 and < 33, var unit and > 0 and < 33, ..]) return new(beats, unit);
        return null;
    }

    private static bool IsPhrase(string text) => Says(text, "any") || Says(text, "not checked") || NumbersIn(text).Count > 0;

    private static (int?, int?) TempoOf(string? text)
    {
        if (text is null) return (null, null);
        return NumbersIn(text) switch
        {
            [var only] when only > 0 => (only, only),
            [var a, var b, ..] when a > 0 && b > 0 => (Math.Min(a, b), Math.Max(a, b)),
            _ => (null, null),
        };
    }

    private static Phrasing PhraseOf(HeaderLine? header, Meter meter)
    {
        var usual = meter.Beats * 8;
        if (header is null) return new(usual, null, default, null);
        if (Says(header.Value, "any") || Says(header.Value, "not checked")) return new(0, null, default, header.Span);
        var after = header.Value.IndexOf("after", StringComparison.OrdinalIgnoreCase);
        var meets = after >= 0 && NumbersIn(header.Value[after..]) is [var n, ..] ? n : (int?)null;
        var numbers = NumbersIn(after >= 0 ? header.Value[..after] : header.Value);
        if (numbers.Count > 1) return new(numbers[0], meets, numbers.ToValueList(), header.Span);
        return new(numbers.Count == 1 && numbers[0] > 0 ? numbers[0] : usual, meets, default, header.Span);
    }

    private static List<int> NumbersIn(string text)
    {
        var found = new List<int>();
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiDigit(text[i])) continue;
            var value = 0;
            while (i < text.Length && char.IsAsciiDigit(text[i]))
            {
                if (value < 100_000) value = (value * 10) + text[i] - '0';
                i++;
            }

            found.Add(value);
        }

        return found;
    }
}
