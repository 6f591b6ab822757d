using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>Lays a part's lines on its counts, role by role, and keeps repeats as repeats.</summary>
internal sealed partial class PartLayer(Page page, FigureBook book, List<PartPlan> plans, List<LayingFault> faults, Foot? startFoot)
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
                case CallLine call:
                    plan.Calls.Add(Called(call, plan.Index, plan.Offset));
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

    /// <param name="offset">What the page's numbers are ahead of the part's.</param>
    public static ScoreCall Called(CallLine line, int part, int offset) => new(
        part, line.Group is { } group ? group.FirstWhole - offset : 0, line.Group is { } counts ? counts.Slots[^1].Whole - offset : 0, line.Whose, line.Time, line.Words, line.None, line.Span, line.Unread)
    {
        Opening = line.Group is null,
    };

    private void LayLine(CountLine line)
    {
        var group = Shifted(line.Group, Only(line));
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

    internal static int FirstWholeOf(LaidMove move) => move.Times[0].Value.IsWhole ? move.Times[0].Whole
        : move.Times.Count > 1 && move.Times[1].Value.IsWhole && move.Times[1] - move.Times[0] < Beats.One && move.Times[0] < Count.First ? move.Times[1].Whole
        : Math.Max(1, move.Times[0].Whole);

    /// <param name="whose">Whom alone its line is for; null where it is for both.</param>
    private CountGroup Shifted(CountGroup group, Role? whose = null)
    {
        // Slows and quicks carry no numbers: they go on where the part stands, or where the one dancer stands in it.
        var danced = whose is { } role ? _plan.Covered[(int)role].Keys.DefaultIfEmpty(0).Max() : _plan.Length;
        if (group.Lengths.Count > 0) return Moved(group, Beats.Of(danced));
        // An "&" by itself is the half-count after what has been danced.
        if (group.Slots is [var only] && only < Count.First) return Moved(group, Beats.Of(danced));
        return group.Less(_plan.Offset);
    }

    private static Role? Only(CountLine line)
    {
        var roles = line.Segments.Select(s => s.RoleSpan is null ? s.Role ?? line.Block : s.Role).Distinct().ToList();
        return roles is [{ } only] ? only : null;
    }

    private static CountGroup Moved(CountGroup group, Beats by) => group with { Slots = group.Slots.Select(s => s + by).ToValueList() };

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
