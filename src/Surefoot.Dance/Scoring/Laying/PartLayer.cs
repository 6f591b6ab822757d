using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>Lays a part's lines on its counts, role by role, and keeps repeats as repeats.</summary>
internal sealed class PartLayer(Page page, FigureBook book, List<PartPlan> plans, List<LayingFault> faults, Foot? startFoot)
{
    // A moment just before a count: claims at the start of a line are about how they stand then.
    private static readonly Beats Shortly = Beats.Of(1, 64);

    private PartPlan _plan = null!;
    private (Count From, Count To, Count SourceFrom, int Index)? _open;

    public void Lay(PartPlan plan)
    {
        _plan = plan;
        _open = null;
        foreach (var line in plan.Node.Lines)
        {
            switch (line)
            {
                case CountLine counted:
                    LayLine(counted);
                    break;
                case RepeatLine repeat:
                    LayRepeat(repeat);
                    break;
                case NoteLine note:
                    plan.Notes.Add(new(note.Text, null, plan.Index, plan.Length > 0 ? Count.At(plan.Length) : null, note.Span));
                    break;
                case StrayLine stray:
                    foreach (var piece in stray.Pieces.OfType<NotePiece>()) plan.Notes.Add(new(piece.Text, null, plan.Index, Count.At(Math.Max(1, plan.Length)), piece.Span));
                    break;
            }
        }

        Gaps();
    }

    private void LayLine(CountLine line)
    {
        var group = Shifted(line.Group);
        var change = false;
        if (_open is { } open)
        {
            var length = open.To - open.From;
            if (group.First >= open.From - Beats.Half && group.End <= open.To)
            {
                change = true;
            }
            else if (group.First >= open.SourceFrom - Beats.Half && group.End <= open.SourceFrom + length)
            {
                // "but 7&8 …" may name the counts of what is repeated.
                group = Moved(group, open.From - open.SourceFrom);
                change = true;
            }
            else
            {
                _open = null;
            }
        }

        var overlaps = new List<Role>();
        var mismatches = new List<(Role Role, Beats Named, Beats Taken, TextSpan Span, string Words)>();
        foreach (var role in _plan.Roles)
        {
            var words = WordsOf(line, role);
            if (words is null) continue;
            if (change && words.Moves.Count > 0) Replace(role, group);
            var twice = words.Moves.Count > 0 && Cover(role, group, line.Span);
            if (twice) overlaps.Add(role);
            var (placed, fits) = LineLayer.Lay(words.Moves.ConvertAll(m => m.Move), group, role, book, out var likeliest);
            if (!fits && words.Moves.Exists(m => m.ForBoth) && words.Moves.FindAll(m => !m.ForBoth) is { Count: > 0 } own)
            {
                // "Walk forward L R L R, lady doing a full turn": hers stand in for what was said for both.
                var (alone, fitsAlone) = LineLayer.Lay(own.ConvertAll(m => m.Move), group, role, book, out _);
                if (fitsAlone) (placed, fits, words) = (alone, true, words with { Moves = own });
            }

            var unclear = words.Unclear;
            if (!fits && !unclear) mismatches.Add(Misfit(role, group, words, likeliest));
            for (var i = 0; i < placed.Count; i++)
            {
                var end = i + 1 < placed.Count && placed[i + 1].Times.Count > 0 ? placed[i + 1].Times[0] : group.End;
                var forBoth = role == Role.Follow && words.Moves.Exists(m => m.ForBoth && m.Move.Span.Start >= placed[i].Move.Span.Start && m.Move.Span.End <= placed[i].Move.Span.End);
                _plan.Moves[(int)role].Add(new(placed[i].Move, placed[i].Times, end, forBoth, line.Span, unclear || !fits || twice));
            }

            Stated(line, role, words, placed, group);
        }

        Report(LayingFaultKind.Overlap, overlaps, group, line);
        foreach (var same in mismatches.GroupBy(m => (m.Named, m.Taken, m.Span, m.Words)))
        {
            Role? role = same.Count() == _plan.Roles.Count && _plan.Roles.Count > 1 ? null : same.First().Role;
            faults.Add(new(LayingFaultKind.Mismatch, _plan.Index, group.First, group.End, role, same.Key.Named, same.Key.Taken, same.Key.Span, line.Group.Span, same.Key.Words));
        }

        if (change)
        {
            var stretch = _plan.Repeats[_open!.Value.Index];
            var roles = _plan.Roles.Where(r => WordsOf(line, r) is { Moves.Count: > 0 }).ToList();
            var added = roles.Count == _plan.Roles.Count
                ? [new CountStretch(Count.At(group.FirstWhole), group.End, null)]
                : roles.Select(r => new CountStretch(Count.At(group.FirstWhole), group.End, r));
            _plan.Repeats[_open.Value.Index] = stretch with { Changes = stretch.Changes.Concat(added).ToValueList() };
        }

        AddRow(line, group, change);
    }

    // A plain group is measured in counts, one such as "3&4" in actions.
    private (Role, Beats, Beats, TextSpan, string) Misfit(Role role, CountGroup group, RoleLineWords words, List<Shape> likeliest)
    {
        var named = group.Plain ? group.Length : Beats.Of(group.Slots.Count);
        var taken = group.Plain ? likeliest.Aggregate(Beats.Zero, (sum, shape) => sum + shape.Length) : Beats.Of(likeliest.Sum(s => s.Slots));
        var list = likeliest.Select(s => $"\"{page.Source.Words(s.Move.Span)}\" {(group.Plain ? s.Length : Beats.Of(s.Slots))}");
        return (role, named, taken, words.Span, (group.Plain ? "counts" : "actions") + ": " + string.Join(", ", list));
    }

    private void Report(LayingFaultKind kind, List<Role> roles, CountGroup group, CountLine line)
    {
        if (roles.Count == 0) return;
        Role? role = roles.Count == _plan.Roles.Count && _plan.Roles.Count > 1 ? null : roles[0];
        var other = _plan.Covered[(int)roles[0]].GetValueOrDefault(group.FirstWhole);
        faults.Add(new(kind, _plan.Index, group.First, group.End, role, Beats.Zero, Beats.Zero, line.Group.Span, other));
    }

    // Marks the counts as given; true when one of the moments was given already.
    private bool Cover(Role role, CountGroup group, TextSpan line)
    {
        var clash = false;
        foreach (var slot in group.Slots)
        {
            clash |= !_plan.Slots[(int)role].Add(slot);
            if (slot.Value.IsWhole) _plan.Covered[(int)role].TryAdd(slot.Whole, line);
        }

        for (var i = 0; i < group.Lengths.Count; i++)
        {
            for (var k = 1; k < group.Lengths[i]; k++) _plan.Covered[(int)role].TryAdd(group.Slots[i].Whole + k, line);
        }

        return clash;
    }

    private void Replace(Role role, CountGroup group)
    {
        _plan.Moves[(int)role].RemoveAll(m => m.Times.Count > 0 && FirstWholeOf(m) >= group.FirstWhole && FirstWholeOf(m) < group.End.Whole);
        foreach (var slot in _plan.Slots[(int)role].Where(s => s >= group.First && s < group.End).ToList()) _plan.Slots[(int)role].Remove(slot);
        for (var c = group.FirstWhole; c < group.End.Whole; c++) _plan.Covered[(int)role].Remove(c);
        _plan.Hands.RemoveAll(h => (h.Role is null || h.Role == role) && h.At >= group.First && h.At < group.End);
    }

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

        _plan.Repeats.Add(new(at, length * times, plan.Index, from, mirrored, default, line.Span));
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

    internal static int FirstWholeOf(LaidMove move) => move.Times[0].Value.IsWhole ? move.Times[0].Whole
        : move.Times.Count > 1 && move.Times[1].Value.IsWhole && move.Times[1] - move.Times[0] < Beats.One && move.Times[0] < Count.First ? move.Times[1].Whole
        : Math.Max(1, move.Times[0].Whole);

    private CountGroup Shifted(CountGroup group)
    {
        // Slows and quicks carry no numbers: they go on where the part stands.
        if (group.Lengths.Count > 0) return Moved(group, Beats.Of(_plan.Length));
        // An "&" by itself is the half-count after what has been danced.
        if (group.Slots is [var only] && only < Count.First) return Moved(group, Beats.Of(_plan.Length));
        return group.Less(_plan.Offset);
    }

    private static CountGroup Moved(CountGroup group, Beats by) => group with { Slots = group.Slots.Select(s => s + by).ToValueList() };

    private void Gaps()
    {
        var length = _plan.Length;
        var stretches = new Dictionary<Role, List<(int From, int To)>>();
        foreach (var role in _plan.Roles)
        {
            var covered = _plan.Covered[(int)role];
            var found = stretches[role] = [];
            for (var c = 1; c <= length; c++)
            {
                if (covered.ContainsKey(c)) continue;
                var from = c;
                while (c <= length && !covered.ContainsKey(c)) c++;
                found.Add((from, c - 1));
            }
        }

        foreach (var role in _plan.Roles)
        {
            foreach (var (from, to) in stretches[role])
            {
                var everybody = _plan.Roles.All(r => stretches[r].Contains((from, to)));
                if (everybody && role != _plan.Roles[0])
                {
                    Doubt(role, to + 1);
                    continue;
                }

                Doubt(role, to + 1);
                faults.Add(new(LayingFaultKind.Gap, _plan.Index, Count.At(from), Count.At(to + 1), everybody && _plan.Roles.Count > 1 ? null : role, Beats.Of(to - from + 1), Beats.Zero, GapSpan(from)));
            }
        }
    }

    // Which foot is free after a gap nobody can know: what clashes there is not told again.
    private void Doubt(Role role, int from)
    {
        var moves = _plan.Moves[(int)role];
        var next = moves.FindIndex(m => m.Times.Count > 0 && m.Times[0] >= Count.At(from));
        if (next >= 0) moves[next] = moves[next] with { Doubtful = true };
    }

    // Underlines the line that has the count for the partner, else the line after the gap, else the heading.
    private TextSpan GapSpan(int from)
    {
        foreach (var line in _plan.Node.Lines.OfType<CountLine>())
        {
            var group = Shifted(line.Group);
            if (group.First.Whole <= from && group.End.Whole > from && group.Lengths.Count == 0) return line.Group.Span;
        }

        foreach (var line in _plan.Node.Lines.OfType<CountLine>())
        {
            if (line.Group.Lengths.Count == 0 && line.Group.Less(_plan.Offset).FirstWhole > from) return line.Group.Span;
        }

        return _plan.Node.Span.Length > 0 ? _plan.Node.Span : _plan.Node.Lines.Count > 0 ? _plan.Node.Lines[0].Span : new(0, page.Source.Text.Length);
    }

    private sealed record RoleLineWords(List<(Move Move, bool ForBoth)> Moves, TextSpan Span, bool Unclear);

    private static RoleLineWords? WordsOf(CountLine line, Role role)
    {
        var moves = new List<(Move, bool)>();
        TextSpan? span = null;
        var any = false;
        var unclear = false;
        foreach (var segment in line.Segments)
        {
            var whose = segment.RoleSpan is null ? segment.Role ?? line.Block : segment.Role;
            if (whose is { } only && only != role && role != Role.Dancer) continue;
            any = true;
            foreach (var piece in segment.Pieces)
            {
                // A bracket left open may have swallowed steps.
                unclear |= piece is OpenBracketPiece or UnknownPiece;
                if (piece is not MovePiece move) continue;
                moves.Add((move.Move, whose is null));
                span = span is { } has ? has.Join(move.Span) : move.Span;
            }
        }

        return any ? new(moves, span ?? line.Span, unclear || moves.Exists(m => m.Item1.Unclear)) : null;
    }

    private void Stated(CountLine line, Role role, RoleLineWords words, List<Placed> placed, CountGroup group)
    {
        foreach (var segment in line.Segments)
        {
            var whose = segment.RoleSpan is null ? segment.Role ?? line.Block : segment.Role;
            if (whose is { } only && only != role && role != Role.Dancer) continue;
            foreach (var piece in segment.Pieces)
            {
                switch (piece)
                {
                    case ClaimPiece claim when claim.Role is null || claim.Role == role:
                        Add(_plan.Claims, new ScoreClaim(claim.Claim, role, AfterWords(claim.Span, placed, group), _plan.Index, claim.Span));
                        break;
                    case HandsPiece hands:
                        var whom = whose is null && _plan.Roles.Count > 1 ? (Role?)null : role;
                        Add(_plan.Hands, new ScoreHands(hands.Words, whom, AtWords(hands.Span, placed, group), _plan.Index, hands.Span));
                        break;
                    case NotePiece note:
                        Add(_plan.Notes, new ScoreNote(note.Text, whose, _plan.Index, AtWords(note.Span, placed, group), note.Span));
                        break;
                }
            }
        }

        static void Add<T>(List<T> list, T value)
        {
            if (!list.Contains(value)) list.Add(value);
        }
    }

    private static Count AfterWords(TextSpan span, List<Placed> placed, CountGroup group)
    {
        var after = group.First - Shortly;
        foreach (var one in placed)
        {
            if (one.Move.Span.Start <= span.Start && one.Times.Count > 0 && one.Times[^1] > after) after = one.Times[^1];
        }

        return after;
    }

    private static Count AtWords(TextSpan span, List<Placed> placed, CountGroup group)
    {
        var at = group.First;
        foreach (var one in placed)
        {
            if (one.Move.Span.Start <= span.Start && one.Times.Count > 0) at = one.Times[0];
        }

        return at;
    }

    private void AddRow(CountLine line, CountGroup group, bool change)
    {
        var words = new List<RoleWords>();
        foreach (var segment in line.Segments)
        {
            var text = RowText.Of(page.Source, segment, book);
            var role = segment.RoleSpan is null ? segment.Role ?? line.Block : segment.Role;
            if (text.Length > 0) words.Add(new(role, text));
        }

        // Slows and quicks are printed as written: they carry no numbers that would have to be shifted.
        var shifted = group.Lengths.Count == 0 && (_plan.Offset != 0 || !ReferenceEquals(group, line.Group));
        var label = shifted ? RowText.Label(group) : page.Source.Words(line.Group.Span);
        _plan.Rows.Add(new(label, Count.At(group.FirstWhole), group.End - Count.At(group.FirstWhole), change ? RowKind.Change : RowKind.Written, words.ToValueList(), line.Span));
    }
}
