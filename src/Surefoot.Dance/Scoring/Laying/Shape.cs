using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>How many counts and actions a move takes in one of its readings.</summary>
/// <param name="Fills">True when it repeats its unit until the line's counts are used up.</param>
/// <param name="Stretches">True when its last action may be drawn out.</param>
internal sealed record Shape(Move Move, ValueList<Beats> Offsets, Beats Length, bool Fills, bool Stretches)
{
    public int Slots => Offsets.Count;

    /// <summary>The readings of a move standing by itself, the likeliest first.</summary>
    public static IEnumerable<Shape> Of(Move move, Role role, FigureBook book)
    {
        if (move.Figure is { } figure)
        {
            yield return OfFigure(move, figure, role, book);
            if (figure.Turns != TurnRule.EitherWay || move.Times > 1) yield break;
            // A turn that has a name of its own may also be danced on one count, or walked over more than it is written for.
            var dance = FigureDancer.Rhythm(figure, move, role, book);
            var own = dance.Steps.Sum(s => s.Turn.Eighths);
            if (dance.Steps.Count == 0 || !dance.Steps[0].ChangesWeight) yield break;
            var turn = move with { Figure = null, Verb = ActionKind.Turn, OnlyTurn = true, TurnAmount = move.TurnAmount > 0 ? move.TurnAmount : Math.Abs(own), Way = null };
            if (turn.TurnSide == 0) turn.TurnSide = TurnSideOf(move);
            if (turn.SideOpen) turn.Feet.Clear();
            if (turn.Feet.Count > 1)
            {
                // "Full turn right L R L": as many steps as feet.
                yield return new(turn with { InSteps = true }, Enumerable.Range(0, turn.Feet.Count).Select(n => Beats.Of(n)).ToValueList(), Beats.Of(turn.Feet.Count), false, false);
                yield break;
            }

            yield return new(turn, [Beats.Zero], Beats.One, false, false);
            yield return new(turn with { InSteps = true }, [Beats.Zero], Beats.One, true, false);
            yield break;
        }

        if (!move.OnlyTurn || move.CountsEach > 0)
        {
            yield return OfAtom(move);
            // "1-2 Side rock R" fills its two counts by coming back.
            if (move is { Verb: ActionKind.Rock, Times: 1, Units: 0, CountsEach: 0, Feet.Count: <= 1 })
            {
                yield return new(move with { AndBack = true }, [Beats.Zero, Beats.One], Beats.Of(2), false, false);
            }

            yield break;
        }

        if (move.Units > 1)
        {
            // "1½ turn right in 4 steps".
            yield return new(move with { InSteps = true }, Enumerable.Range(0, move.Units).Select(n => Beats.Of(n)).ToValueList(), Beats.Of(move.Units), false, false);
            yield break;
        }

        if (move.Feet.Count <= 1) yield return new(move, [Beats.Zero], Beats.One, false, false);
        // "Full turn right" over several counts is walked, turning a little with every step.
        yield return new(move with { InSteps = true }, [Beats.Zero], Beats.One, true, false);
    }

    private static int TurnSideOf(Move move) => move.SideOpen && move.Feet.Count > 0 ? (move.Feet[0].Foot == Foot.Left ? 1 : -1) : 0;

    private static Shape OfAtom(Move move)
    {
        var each = Math.Max(1, move.CountsEach);
        // "Hold 2 counts" is one hold, "slow" is one step; both last.
        var actions = Math.Max(1, move.Feet.Count) * Math.Max(1, move.Units) * move.Times;
        if (move.Units > 0 && move.Feet.Count > 0) actions = Math.Max(move.Units, move.Feet.Count) * move.Times;
        actions = Math.Min(actions, 256);
        if (EachItsOwn(move) is { } own) return own;
        var offsets = new Beats[actions];
        for (var i = 0; i < actions; i++) offsets[i] = Beats.Of(i * each);
        return new(move, new(offsets), Beats.Of(actions * each), false, false);
    }

    // "L quick, R quick, L slow": the page says how long each step is.
    private static Shape? EachItsOwn(Move move)
    {
        if (!move.Feet.Exists(f => f.Counts > 0)) return null;
        var offsets = new Beats[move.Feet.Count];
        var at = 0;
        for (var i = 0; i < offsets.Length; i++)
        {
            offsets[i] = Beats.Of(at);
            at += Math.Max(1, move.Feet[i].Counts);
        }

        return new(move, new(offsets), Beats.Of(at), false, false);
    }

    private static Shape OfFigure(Move move, Figure figure, Role role, FigureBook book)
    {
        var dance = FigureDancer.Rhythm(figure, move, role, book);
        var offsets = dance.Offsets.Skip(Math.Min(move.Skip, Math.Max(0, dance.Offsets.Count - 1))).ToList();
        var length = dance.Length;
        if (move.Skip > 0 && offsets.Count > 0)
        {
            var cut = offsets[0];
            length -= cut;
            for (var i = 0; i < offsets.Count; i++) offsets[i] -= cut;
        }

        if (figure.AnyCounts)
        {
            var single = offsets.Count == 1;
            if (single && EachItsOwn(move) is { } own) return own;
            var units = move.Units > 0 ? move.Units * move.Times : move.Times > 1 ? move.Times : single && move.Feet.Count > 1 ? move.Feet.Count : 0;
            if (units == 0) return new(move, new([.. offsets]), length, true, false);
            return Times(move, offsets, length, units, figure);
        }

        var times = move.Times * Math.Max(1, move.Units);
        if (times == 1 && OncePerFoot(move, figure, dance)) times = move.Feet.Count;
        return times == 1 ? new(move, new([.. offsets]), length, false, figure.OrMore) : Times(move, offsets, length, times, figure);
    }

    /// <summary>"Toe struts R, L": once for each foot named.</summary>
    public static bool OncePerFoot(Move move, Figure figure, FigureDance dance)
    {
        if (move.Feet.Count < 2 || figure.AnyCounts || figure.FreeAfter != "the other foot") return false;
        for (var i = 1; i < move.Feet.Count; i++)
        {
            if (move.Feet[i].Foot == move.Feet[i - 1].Foot) return false;
        }

        return dance.Steps.Count(s => s.ChangesWeight) < move.Feet.Count && dance.Steps.Count(s => s.Foot != FootUse.None) != move.Feet.Count + 1;
    }

    private static Shape Times(Move move, List<Beats> offsets, Beats length, int times, Figure figure)
    {
        times = Math.Min(times, 256);
        var all = new List<Beats>(offsets.Count * times);
        for (var n = 0; n < times; n++) all.AddRange(offsets.Select(o => o + (length * n)));
        return new(move, new([.. all]), length * times, false, figure.OrMore);
    }
}
