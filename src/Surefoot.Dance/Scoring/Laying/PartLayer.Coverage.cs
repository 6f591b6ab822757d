using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring.Laying;

/// <content>Which counts each role has been given, twice, or not at all.</content>
internal sealed partial class PartLayer
{
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
}
