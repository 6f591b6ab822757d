using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Feet;

/// <summary>Breaks a section into moments and the moments into lines.</summary>
internal static class PictureLines
{
    /// <param name="perLine">Counts in a line.</param>
    /// <param name="widest">How many panels fit side by side; a line of more is broken in two.</param>
    public static IReadOnlyList<PictureLine> Of(
        DanceScore score, DanceMotion motion, int section, FootPictureOptions options, int perLine, double widest)
    {
        var roles = DrawnRoles(score, options);
        var columns = Columns(score, motion, section, roles);
        if (options.LeaveOutRepeats) columns = WithoutRepeats(score, section, columns);
        columns = WithoutFillers(score, columns);
        var lines = new List<PictureLine>();
        foreach (var line in Broken(columns, perLine, widest))
        {
            lines.Add(new(line, roles.Count == 2 && line.TrueForAll(c => c.Says is not null || IsTogether(c))));
        }

        return lines;
    }

    /// <summary>Breaks at even numbers of counts, and a crowded line once more in its middle.</summary>
    private static IEnumerable<List<Column>> Broken(List<Column> columns, int perLine, double widest)
    {
        foreach (var line in columns.GroupBy(c => Math.Max(0, c.At.Whole - 1) / perLine))
        {
            List<Column> all = [.. line];
            if (perLine == 1 || all.Sum(c => c.Width) <= widest) yield return all;
            else foreach (var half in Broken(all, (perLine + 1) / 2, widest)) yield return half;
        }
    }

    public static IReadOnlyList<Role> DrawnRoles(DanceScore score, FootPictureOptions options)
    {
        var all = score.Roles.Select(r => r.Role).ToList();
        return score.Facts.ForCouples && options.Only is { } only && all.Contains(only) ? [only] : all;
    }

    private static bool IsTogether(Column column) =>
        column.Frames[0] is { } first && column.Frames[1] is { } second && first.SameAs(second);

    private static List<Column> Columns(DanceScore score, DanceMotion motion, int section, IReadOnlyList<Role> roles)
    {
        var offset = score.Sections[section].Start - Count.First;
        var moments = new SortedDictionary<Count, Frame?[]>();
        for (var r = 0; r < roles.Count; r++)
        {
            if (score.Of(roles[r]) is not { } steps || motion.Of(roles[r]) is not { } stances) continue;
            for (var i = 0; i < steps.Steps.Count; i++)
            {
                if (steps.Steps[i].Section != section) continue;
                var end = i;
                while (end + 1 < steps.Steps.Count && steps.Steps[end + 1].At == steps.Steps[i].At) end++;
                var at = steps.Steps[i].At - offset;
                if (!moments.TryGetValue(at, out var frames)) moments[at] = frames = new Frame?[roles.Count];
                var actions = Enumerable.Range(i, end - i + 1).Select(k => steps.Steps[k]).ToValueList();
                frames[r] = new(roles[r], actions, stances.Stances[i], stances.Stances[end + 1]);
                i = end;
            }
        }

        return [.. moments.Select(m => new Column(m.Key, m.Value, null))];
    }

    /// <summary>Leaves out moments at which a slow step only lasts on.</summary>
    private static List<Column> WithoutFillers(DanceScore score, List<Column> columns)
    {
        var kept = new List<Column>();
        foreach (var column in columns)
        {
            if (column.Says is not null)
            {
                kept.Add(column);
                continue;
            }

            Frame?[] frames = [.. column.Frames.Select(f => f is not null && OnlyFills(score, f) ? null : f)];
            if (Array.Exists(frames, f => f is not null)) kept.Add(column with { Frames = frames });
        }

        return kept;
    }

    private static bool OnlyFills(DanceScore score, Frame frame)
    {
        if (frame.Actions.Count != 1 || score.Of(frame.Role) is not { } role) return false;
        for (var i = 0; i < role.Steps.Count; i++)
        {
            if (ReferenceEquals(role.Steps[i], frame.Actions[0])) return Fillers.FillsSlow(score, role.Steps, i);
        }

        return false;
    }

    /// <summary>Puts words in place of moments that every drawn role dances again just as before.</summary>
    private static List<Column> WithoutRepeats(DanceScore score, int section, List<Column> columns)
    {
        var part = score.Parts[score.Sections[section].Part];
        var kept = new List<Column>();
        RepeatedStretch? open = null;
        var last = Count.First;
        foreach (var column in columns)
        {
            var stretch = StretchOf(part, column);
            if (stretch is not null && stretch == open)
            {
                last = column.At;
                kept[^1] = kept[^1] with { Says = Words(score, stretch, kept[^1].At, last) };
                continue;
            }

            open = stretch;
            kept.Add(stretch is null ? column : column with { Says = Words(score, stretch, column.At, column.At) });
        }

        return kept;
    }

    private static RepeatedStretch? StretchOf(PartScore part, Column column)
    {
        foreach (var frame in column.Frames)
        {
            if (frame is null) continue;
            foreach (var action in frame.Actions)
            {
                if (!action.Repeated) return null;
            }
        }

        foreach (var stretch in part.Repeats)
        {
            // The other way round a picture is not the same picture.
            if (!stretch.Mirrored && column.At >= stretch.From && column.At < stretch.From + stretch.Length) return stretch;
        }

        return null;
    }

    private static string Words(DanceScore score, RepeatedStretch stretch, Count from, Count to)
    {
        var back = stretch.From - stretch.SourceFrom;
        var source = Range(from - back, to - back);
        var elsewhere = score.Parts[stretch.SourcePart].Repeats.Contains(stretch) ? "" : $" of {score.Parts[stretch.SourcePart].Label}";
        return $"{Range(from, to)} as {source}{elsewhere}";
    }

    /// <summary>A stretch that ends between beats is said to its whole count: the half belongs to it.</summary>
    private static string Range(Count from, Count to) => from.Whole == to.Whole ? $"{from.Whole}" : $"{from.Whole}–{to.Whole}";
}
