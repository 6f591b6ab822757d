using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>A move with the moments at which its actions fall, as the page numbers its counts.</summary>
internal sealed record Placed(Move Move, ValueList<Count> Times);

/// <summary>
/// Lays the moves of one line on its counts. A plain group ("1-4") gives whole counts and lets figures
/// bring their own rhythm; a group such as "3&amp;4" names every moment itself.
/// </summary>
internal static class LineLayer
{
    // A line with more readings than this is not a line anybody would write.
    private const int MostReadings = 48;

    /// <param name="likeliest">Where nothing fits: the likeliest reading, to say what it takes.</param>
    /// <returns>The moves placed, and whether they fit.</returns>
    public static (List<Placed> Placed, bool Fits) Lay(IReadOnlyList<Move> moves, CountGroup group, Role role, FigureBook book, out List<Shape> likeliest)
    {
        likeliest = [];
        if (moves.Count == 0) return ([], true);
        var readings = new List<List<Shape>>();
        Readings(moves, 0, [], role, book, readings);
        if (group.Plain)
        {
            foreach (var reading in readings)
            {
                if (ByOwnRhythm(reading, group) is { } placed) return (placed, true);
            }
        }

        foreach (var reading in readings)
        {
            if (BySlots(reading, group.Slots) is { } placed) return (placed, true);
        }

        foreach (var reading in group.Lengths.Count > 0 ? readings : [])
        {
            // Slows and quicks may also be a figure's own rhythm: "QQSS Two step basic".
            if (ByOwnRhythm(reading, group) is { } placed) return (placed, true);
        }

        likeliest = readings[0];
        return (Squeezed(likeliest, group), false);
    }

    private static void Readings(IReadOnlyList<Move> moves, int at, List<Shape> sofar, Role role, FigureBook book, List<List<Shape>> into)
    {
        if (into.Count >= MostReadings) return;
        if (at == moves.Count)
        {
            into.Add([.. sofar]);
            return;
        }

        var move = moves[at];
        var next = at + 1 < moves.Count ? moves[at + 1] : null;
        if (next is not null && Closes(move, next))
        {
            Take(move with { Closing = next, Span = move.Span.Join(next.Span) }, at + 2);
        }

        if (at > 0 && WrittenJustBefore(move, moves[at - 1], role, book)) Take(move with { Skip = 1 }, at + 1);
        Take(move, at + 1);
        if (at > 0 && IsSound(move))
        {
            // "Touch L and clap" on one count: hands need no count of their own.
            sofar.Add(new(move, default, Beats.Zero, false, false));
            Readings(moves, at + 1, sofar, role, book, into);
            sofar.RemoveAt(sofar.Count - 1);
        }

        if (at > 0 && StepsJustBefore(move, moves[at - 1], role, book)) Take(move with { Skip = 1 }, at + 1);
        if (next is { OnlyTurn: true, HeadSaid: false, Figure: null } && move is { TurnAmount: 0, TurnTo: null, OnlyTurn: false })
        {
            // "Triple in place, ½ right": the turn alone is no action of its own.
            Take(move with { TurnAmount = next.TurnAmount, TurnSide = next.TurnSide, TurnSpan = next.TurnSpan, Span = move.Span.Join(next.Span) }, at + 2);
        }

        if (next is not null && JoinsTurn(move, next))
        {
            // "Turn ¼ left and step forward" on one count is one action.
            var joined = next with { TurnAmount = move.TurnAmount, TurnSide = move.TurnSide, TurnTo = move.TurnTo, TurnSpan = move.TurnSpan, Span = move.Span.Join(next.Span) };
            Take(joined, at + 2);
        }

        if ((next is not null || at > 0) && OnlyLooks(move))
        {
            // "Turn to LOD, walk forward R, L" over two counts: looking where they go needs no count of its own.
            sofar.Add(new(move, default, Beats.Zero, false, false));
            Readings(moves, at + 1, sofar, role, book, into);
            sofar.RemoveAt(sofar.Count - 1);
        }

        if (move.TurnMaySplit && move.Figure is null)
        {
            var step = move with { TurnAmount = 0, TurnSide = 0, TurnTo = null, TurnMaySplit = false };
            var turn = new Move
            {
                Span = move.TurnSpan ?? move.Span,
                HeadSaid = true,
                OnlyTurn = true,
                Verb = ActionKind.Turn,
                TurnAmount = move.TurnAmount,
                TurnSide = move.TurnSide,
                TurnTo = move.TurnTo,
                TurnSpan = move.TurnSpan,
            };
            foreach (var shape in Shape.Of(step, role, book))
            {
                sofar.Add(shape);
                sofar.Add(new(turn, [Beats.Zero], Beats.One, false, false));
                Readings(moves, at + 1, sofar, role, book, into);
                sofar.RemoveRange(sofar.Count - 2, 2);
            }
        }

        void Take(Move one, int then)
        {
            foreach (var shape in Shape.Of(one, role, book))
            {
                // A rock whose recover is written does not come back by itself.
                if (shape.Move.AndBack && then < moves.Count && moves[then] is { Figure: null, Verb: ActionKind.Recover }) continue;
                sofar.Add(shape);
                Readings(moves, then, sofar, role, book, into);
                sofar.RemoveAt(sofar.Count - 1);
            }
        }
    }

    /// <summary>The next move is the last count of this one's figure, said on its own.</summary>
    internal static bool Closes(Move move, Move next)
    {
        if (move.Figure is null || move.Closing is not null || next.Figure is not null || move.Times > 1) return false;
        foreach (var closing in move.Figure.Closings)
        {
            if (closing.Verb == next.Verb && !next.OnlyTurn && (next.Way is null || closing.Way is null || closing.Way == next.Way || next.Way == Direction.Together)) return true;
        }

        return false;
    }

    // "Cross R over L, unwind ½": the figure's own first action was written out.
    private static bool WrittenJustBefore(Move move, Move before, Role role, FigureBook book)
    {
        if (move.Figure is not { OrMore: true, FreeAfter: "as told" } figure || before.Figure is not null) return false;
        var dance = FigureDancer.Rhythm(figure, move, role, book);
        return dance.Steps.Count > 1 && dance.Steps[0].Direction is Direction.Across or Direction.Behind
            && before.Way is Direction.Across or Direction.Behind;
    }

    private static bool IsSound(Move move) => move is { Figure: null, Feet.Count: 0, Times: 1 } && move.Verb is ActionKind.Clap or ActionKind.Snap;

    // "Step forward R, half pivot left": the figure's own first step was written out.
    private static bool StepsJustBefore(Move move, Move before, Role role, FigureBook book)
    {
        if (move.Figure is not { AnyCounts: false } figure || before is not { Figure: null, Verb: ActionKind.Step, Way: { } way }) return false;
        var dance = FigureDancer.Rhythm(figure, move, role, book);
        return dance.Steps.Count == 2 && dance.Steps[0].Kind == ActionKind.Step && dance.Steps[0].Direction == way;
    }

    private static bool OnlyLooks(Move move) => move is { OnlyTurn: true, Figure: null, EndsOn: null, TurnAmount: 0 } && (move.TurnTo is not null || move.ToPartner);

    private static bool JoinsTurn(Move move, Move next) =>
        move is { OnlyTurn: true, Figure: null, EndsOn: null } && next is { Figure: null, OnlyTurn: false, TurnAmount: 0 }
        && next.Verb.Rule() is WeightRule.Takes or WeightRule.Returns or WeightRule.FreeFootActs;

    private static List<Placed>? ByOwnRhythm(List<Shape> reading, CountGroup group)
    {
        var given = group.Length;
        var fixedLength = Beats.Zero;
        var fillers = 0;
        var stretchers = 0;
        foreach (var shape in reading)
        {
            if (shape.Fills) fillers++;
            else fixedLength += shape.Length;
            if (shape.Stretches) stretchers++;
        }

        var left = given - fixedLength;
        if (fillers == 0 && left != Beats.Zero && !(stretchers == 1 && left > Beats.Zero)) return null;
        if (fillers > 0 && (left < Beats.Of(fillers) || !(left / fillers).IsWhole)) return null;
        var share = fillers > 0 ? left / fillers : Beats.Zero;
        var placed = new List<Placed>(reading.Count);
        var at = group.First;
        foreach (var shape in reading)
        {
            if (shape.Slots == 0)
            {
                placed.Add(new(shape.Move, OnlyLooks(shape.Move) && !ReferenceEquals(shape, reading[^1]) ? [at] : LastTime(placed)));
                continue;
            }

            if (!shape.Fills)
            {
                var start = at;
                placed.Add(new(shape.Move, Moved(shape.Offsets, start)));
                at += shape.Length;
                if (shape.Stretches && fillers == 0) at += left;
                continue;
            }

            var times = new List<Count>();
            for (var unit = Beats.Zero; unit < share; unit += shape.Length)
            {
                foreach (var offset in shape.Offsets)
                {
                    if (unit + offset < share) times.Add(at + unit + offset);
                }

                if (shape.Length <= Beats.Zero) break;
            }

            placed.Add(new(shape.Move, times.ToValueList()));
            at += share;
        }

        return placed;
    }

    private static List<Placed>? BySlots(List<Shape> reading, ValueList<Count> slots)
    {
        var fixedSlots = 0;
        var fillers = 0;
        foreach (var shape in reading)
        {
            if (shape.Fills) fillers++;
            else fixedSlots += shape.Slots;
        }

        var left = slots.Count - fixedSlots;
        if (fillers == 0 ? left != 0 : left < fillers || left % fillers != 0) return null;
        return Take(reading, slots, fillers == 0 ? 0 : left / fillers);
    }

    private static List<Placed> Take(List<Shape> reading, ValueList<Count> slots, int share)
    {
        var placed = new List<Placed>(reading.Count);
        var next = 0;
        foreach (var shape in reading)
        {
            if (shape.Slots == 0)
            {
                placed.Add(new(shape.Move, OnlyLooks(shape.Move) && next < slots.Count ? [slots[next]] : LastTime(placed)));
                continue;
            }

            var take = shape.Fills ? share : shape.Slots;
            placed.Add(new(shape.Move, new(slots.AsSpan().Slice(next, take).ToArray())));
            next += take;
        }

        return placed;
    }

    private static ValueList<Count> LastTime(List<Placed> placed) =>
        placed.Count > 0 && placed[^1].Times.Count > 0 ? [placed[^1].Times[^1]] : default;

    // The line does not fit; it is reported, and its actions are spread over its counts so that feet can be followed on.
    private static List<Placed> Squeezed(List<Shape> reading, CountGroup group)
    {
        var actions = Math.Max(1, reading.Sum(s => s.Slots));
        var slots = new Count[actions];
        for (var i = 0; i < actions; i++) slots[i] = group.First + (group.Length * i / actions);
        return Take(reading, new(slots), 1);
    }

    private static ValueList<Count> Moved(ValueList<Beats> offsets, Count start)
    {
        var times = new Count[offsets.Count];
        for (var i = 0; i < times.Length; i++) times[i] = start + offsets[i];
        return new(times);
    }
}
