using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring.Laying;

/// <content>Repeats: which words are danced again, where, and how they differ.</content>
internal sealed partial class PartLayer
{
    private void LayRepeat(RepeatLine line)
    {
        var group = line.Group is { } given ? Shifted(given) : null;
        var at = group?.First ?? Count.At(_plan.Length + 1);
        if (SourceOf(line, group) is not { } source)
        {
            if (line.WholeDance && group is null)
            {
                // "Repeat" at the end: the dance begins again, as every dance does.
                _plan.Rows.Add(new("", at, Beats.Zero, RowKind.Repeat, [new(null, page.Source.Words(line.Span))], line.Span));
                return;
            }

            faults.Add(new(LayingFaultKind.RepeatOfNothing, _plan.Index, at, at, null, Beats.Zero, Beats.Zero, line.What, null, page.Source.Words(line.What)));
            if (group is not null) foreach (var role in _plan.Roles) Cover(role, group, line.Span);
            return;
        }

        if (line.Unread is { } unread) faults.Add(new(LayingFaultKind.RepeatSaysMore, _plan.Index, at, at, null, Beats.Zero, Beats.Zero, unread, null, page.Source.Words(unread)));
        var (plan, from, length) = source;
        var times = line.Times;
        if (group is not null && group.Length != length * times)
        {
            var fits = (group.Length.Numerator % Math.Max(1, length.Numerator)) == 0 && line.Times == 1;
            if (fits) times = group.Length.Numerator / length.Numerator;
            else faults.Add(new(LayingFaultKind.Mismatch, _plan.Index, at, group.End, null, group.Length, length * times, line.What, group.Span, "repeat"));
        }

        var mirrored = line.Mirrored || (line.Starting is { } starting && StartOf(plan, from, length) is var first && (first ?? startFoot ?? Foot.Left) != starting);
        var to = at + (length * times);
        foreach (var role in _plan.Roles)
        {
            if (line.Block is { } only && only != role) continue;
            CopyMoves(plan, role, from, length, at, times, mirrored, line.Span);
        }

        CopyHands(plan, from, length, at, times, mirrored);
        foreach (var piece in line.Pieces)
        {
            if (piece is ClaimPiece claim) _plan.Claims.Add(new(claim.Claim, claim.Role, to - Shortly, _plan.Index, claim.Span));
            else if (piece is NotePiece note) _plan.Notes.Add(new(note.Text, null, _plan.Index, at, note.Span));
        }

        _plan.Repeats.Add(new(at, length * times, plan.Index, from, mirrored, default, line.Span) { Each = length });
        _open = line.But ? (at, to, from, _plan.Repeats.Count - 1) : null;
        var label = length * times == Beats.One ? at.Name : $"{at.Name}-{(to - Beats.One).Name}";
        _plan.Rows.Add(new(label, at, length * times, RowKind.Repeat, [new(null, RepeatWords(line, group))], line.Span));
    }

    private string RepeatWords(RepeatLine line, CountGroup? group)
    {
        var from = group is null ? line.Span.Start : group.Span.End;
        return page.Source.Text[from..line.Span.End].Trim(' ', ':', '.', '\t', '\u00A0');
    }

    private void CopyMoves(PartPlan plan, Role role, Count from, Beats length, Count at, int times, bool mirrored, TextSpan line)
    {
        var to = from + length;
        var copies = plan.Moves[(int)role].FindAll(m => m.Times.Count > 0 && Count.At(FirstWholeOf(m)) >= from && Count.At(FirstWholeOf(m)) < to);
        var covered = plan.Covered[(int)role].Keys.Where(c => Count.At(c) >= from && Count.At(c) < to).ToList();
        for (var n = 0; n < times; n++)
        {
            var shift = (at - from) + (length * n);
            foreach (var move in copies)
            {
                _plan.Moves[(int)role].Add(move with
                {
                    Times = move.Times.Select(t => t + shift).ToValueList(),
                    End = move.End + shift,
                    Mirrored = move.Mirrored ^ mirrored,
                    Repeated = true,
                    RepeatedBy = line,
                });
                foreach (var time in move.Times) _plan.Slots[(int)role].Add(time + shift);
            }

            foreach (var count in covered) _plan.Covered[(int)role].TryAdd((Count.At(count) + shift).Whole, line);
        }
    }

    // What hands do is danced again with the steps.
    private void CopyHands(PartPlan plan, Count from, Beats length, Count at, int times, bool mirrored)
    {
        var copies = plan.Hands.FindAll(h => h.At >= from - Beats.Half && h.At < from + length);
        for (var n = 0; n < times; n++)
        {
            foreach (var hands in copies)
            {
                var words = mirrored ? hands.Words.Mirrored() : hands.Words;
                _plan.Hands.Add(hands with { Words = words, At = hands.At + (at - from) + (length * n), Part = _plan.Index });
            }
        }
    }

    private (PartPlan Plan, Count From, Beats Length)? SourceOf(RepeatLine line, CountGroup? group)
    {
        if (line.PartKey is { } key)
        {
            var plan = plans.Find(p => string.Equals(p.Node.Key, key, StringComparison.OrdinalIgnoreCase) && !ReferenceEquals(p, _plan));
            if (plan is null || plan.Length == 0) return null;
            if (line.From is { } f && line.To is { } t && t >= f) return t <= plan.Length ? (plan, Count.At(f), Beats.Of(t - f + 1)) : null;
            return (plan, Count.First, Beats.Of(plan.Length));
        }

        if (line.From is { } from && line.To is { } to)
        {
            if (from < 0)
            {
                var back = Math.Min(-from, _plan.Length);
                return back > 0 ? (_plan, Count.At(_plan.Length - back + 1), Beats.Of(back)) : null;
            }

            var length = Beats.Of(to - from + 1);
            if (to < from) return null;
            var own = from - _plan.Offset;
            if (own >= 1 && to - _plan.Offset <= _plan.Length) return (_plan, Count.At(own), length);
            // Counts that run through the dance may lie in an earlier part.
            if (_plan.Offset > 0 || _plan.Length < to)
            {
                var before = 0;
                foreach (var plan in plans)
                {
                    if (ReferenceEquals(plan, _plan)) break;
                    if (plan.Node.Kind != PartKind.Part) continue;
                    if (from > before && to <= before + plan.Length) return (plan, Count.At(from - before), length);
                    before += plan.Length;
                }
            }

            return _plan.Length >= to && from >= 1 ? (_plan, Count.At(from), length) : null;
        }

        var held = _plan.Length;
        if (held == 0) return null;
        var asked = group?.Length ?? (_plan.Node.StatedCounts is { } stated && stated == held * 2 ? Beats.Of(held) : Beats.Zero);
        if (asked == Beats.Zero && (line.Starting is not null || line.Mirrored)) asked = Beats.Of(held);
        if (asked == Beats.Zero) return null;
        // What came just before, as far as it goes.
        var stretch = asked < Beats.Of(held) ? asked : Beats.Of(held);
        return (_plan, Count.At(held + 1) - stretch, stretch);
    }

    private static Foot? StartOf(PartPlan plan, Count from, Beats length)
    {
        foreach (var role in plan.Roles)
        {
            foreach (var move in plan.Moves[(int)role])
            {
                if (move.Times.Count == 0 || Count.At(FirstWholeOf(move)) < from || Count.At(FirstWholeOf(move)) >= from + length) continue;
                if (move.Move.Feet.Count > 0 && !move.Move.SideOpen) return move.Mirrored ? move.Move.Feet[0].Foot.Other() : move.Move.Feet[0].Foot;
            }

            // The lead's feet say how the words are meant.
            break;
        }

        return null;
    }
}
