using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <summary>Reads stated facts: where somebody looks, which foot is weighted or free, which hold, how many counts.</summary>
public static class ClaimReader
{
    /// <summary>Adds the claims found between two items; false when the words state no fact.</summary>
    public static bool Read(List<Item> items, int from, int to, Floor floor, FigureBook book, bool bracket, List<Piece> into)
    {
        var span = items[from].Span.Join(items[to - 1].Span);
        Role? role = null;
        var start = from;
        if (items[from].Is(SenseKind.Role, out var who))
        {
            role = who.Value switch { 0 => Role.Lead, 1 => Role.Follow, _ => null };
            start++;
            if (start < to && items[start].Kind == TokenKind.Colon) start++;
            if (start >= to) return false;
        }

        for (var i = start; i < to; i++)
        {
            if (!items[i].Known) return false;
        }

        var faces = false;
        for (var i = start; i < to; i++) faces |= items[i].Is(SenseKind.Face);
        if (WeightIn(items, start, to) is { } weight)
        {
            into.Add(new ClaimPiece(new WeightClaim(weight), role, span));
            return true;
        }

        if (FindFacing(items, start, to, floor, out var facing) && (faces || (OnlyFacing(items, start, to) && !SaysWhere(items, start, to))))
        {
            into.Add(new ClaimPiece(new FacingClaim(facing), role, span));
            return true;
        }

        for (var i = start; i < to; i++)
        {
            if (items[i].Is(SenseKind.Relation, out var relation) && (faces || to - start <= 2))
            {
                into.Add(new ClaimPiece(new RelationClaim((Relation)relation.Value), role, span));
                return true;
            }

            if (items[i].Kind == TokenKind.Number && i + 1 < to && items[i + 1].Is(SenseKind.Counts) && bracket)
            {
                into.Add(new ClaimPiece(new LengthClaim(items[i].Value), role, span));
                return true;
            }

            if (bracket && items[i].Is(SenseKind.Way, out var apart) && (Direction)apart.Value == Direction.Apart)
            {
                into.Add(new ClaimPiece(new FeetClaim(false), role, span));
                return true;
            }

            if (items[i].Is(SenseKind.Feet) && i + 1 < to && items[i + 1].Is(SenseKind.Way, out var way)
                && (Direction)way.Value is Direction.Together or Direction.Apart)
            {
                into.Add(new ClaimPiece(new FeetClaim((Direction)way.Value == Direction.Together), role, span));
                return true;
            }

            if (bracket && items[i].Is(SenseKind.Hold, out var hold) && OnlyHold(items, start, to))
            {
                into.Add(new ClaimPiece(new HoldClaim(FigureBook.HoldName(hold.Value)), role, span));
                return true;
            }
        }

        return false;
    }

    /// <summary>The facing named between two items: "LOD", "6:00", "3 o'clock", "the back wall".</summary>
    public static bool FindFacing(List<Item> items, int from, int to, Floor floor, out Facing facing)
    {
        for (var i = from; i < to; i++)
        {
            if (items[i].Kind == TokenKind.Clock)
            {
                facing = new(items[i].Value);
                return true;
            }

            if (items[i].Kind == TokenKind.Number && i + 1 < to && items[i + 1].Is(SenseKind.OClock) && items[i].Value is 3 or 6 or 9 or 12)
            {
                facing = new((8 - (items[i].Value % 12 / 3 * 2)) % 8);
                return true;
            }

            if (items[i].Is(SenseKind.Facing, out var sense) && (Floor)sense.Second == floor && !(items[i].Is(SenseKind.Filler) && to - from > 3))
            {
                facing = new(sense.Value);
                return true;
            }
        }

        facing = default;
        return false;
    }

    /// <summary>The weight stated: "weight on left", "left free", "weight even", "on right foot".</summary>
    public static Weight? WeightIn(List<Item> items, int from, int to)
    {
        var says = false;
        var free = false;
        Foot? foot = null;
        var even = false;
        for (var i = from; i < to; i++)
        {
            says |= items[i].Is(SenseKind.Weight) || items[i].Is(SenseKind.Free);
            free |= items[i].Is(SenseKind.Free);
            // "Centre" by itself is where somebody looks; "centred" is how the weight lies.
            even |= (items[i].Is(SenseKind.Even) && !items[i].Is(SenseKind.Facing)) || (says && items[i].Is(SenseKind.Pair, out var pair) && pair.Value == (int)HandPair.Both);
            if (items[i].Is(SenseKind.Side, out var side) || items[i].Is(SenseKind.Foot, out side)) foot ??= side.Value is 0 or 1 ? (Foot)side.Value : null;
        }

        if (even && foot is null) return Weight.Both;
        if (!says || foot is null) return null;
        return free ? foot.Value.Other().Weight() : foot.Value.Weight();
    }

    // "Man on inside" says where he stands, not where he looks.
    private static bool SaysWhere(List<Item> items, int from, int to)
    {
        for (var i = from; i + 1 < to; i++)
        {
            if (items[i].IsOnly(SenseKind.Filler) && items[i].Span.Length == 2 && items[i + 1].Is(SenseKind.Facing)) return true;
        }

        return false;
    }

    private static bool OnlyFacing(List<Item> items, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (items[i].Kind == TokenKind.Clock || items[i].Is(SenseKind.Facing) || items[i].Is(SenseKind.Filler) || items[i].Is(SenseKind.OClock)
                || items[i].Is(SenseKind.WallWord) || items[i].Is(SenseKind.Role) || items[i].Kind == TokenKind.Number) continue;
            return false;
        }

        return true;
    }

    private static bool OnlyHold(List<Item> items, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (items[i].Is(SenseKind.Hold) || items[i].Is(SenseKind.Filler) || items[i].Is(SenseKind.HandVerb) || items[i].Is(SenseKind.HandNoun)
                || items[i].Is(SenseKind.Role)) continue;
            return false;
        }

        return true;
    }
}
