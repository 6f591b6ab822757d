using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Film.Alignment;

/// <summary>Lays a score out as it may be talked through.</summary>
internal static class CourseMaker
{
    public static List<Course> Of(DanceScore score, SourceText page, FigureBook book)
    {
        var courses = new List<Course>();
        foreach (var role in score.Roles)
        {
            var course = new Maker(score, page, book).Make(role);
            if (courses.Count > 0)
            {
                var leads = courses[0].Asks.Select(a => a.Source).ToHashSet();
                course = course with { Asks = course.Asks.Select(a => a with { Shared = leads.Contains(a.Source) }).ToValueList() };
            }

            courses.Add(course);
        }

        return courses;
    }

    private sealed class Maker(DanceScore score, SourceText page, FigureBook book)
    {
        private readonly List<Stage> _stages = [];
        private readonly List<Moment> _moments = [];
        private readonly List<Ask> _asks = [];

        public Course Make(RoleScore role)
        {
            for (var i = 0; i < score.Sections.Count; i++)
            {
                var section = score.Sections[i];
                var index = i;
                Lay(section.Part, extra: false, section.Start, role.Steps.Where(s => s.Section == index).ToList());
            }

            var seen = new HashSet<int>();
            foreach (var extra in score.Extras)
            {
                if (!seen.Add(extra.Part) || extra.Roles.FirstOrDefault(r => r.Role == role.Role) is not { } steps) continue;
                Lay(extra.Part, extra: true, Count.First, [.. steps.Steps]);
            }

            return new(role.Role, _stages.ToValueList(), _moments.ToValueList(), Marked());
        }

        private void Lay(int part, bool extra, Count start, List<ScoreStep> steps)
        {
            var stage = _stages.Count;
            var first = _moments.Count;
            var length = score.Parts[part].Length.Ceiling;
            var at = steps.Select(s => Count.First + (s.At - start)).Concat(Enumerable.Range(1, length).Select(Count.At)).Distinct().Order().ToList();
            foreach (var count in at) _moments.Add(new(stage, count, steps.FindIndex(s => Count.First + (s.At - start) == count), -1));
            var end = _moments.Count;
            _stages.Add(new(part, extra, first, end));
            for (var i = 0; i < steps.Count;)
            {
                var until = i + 1;
                while (until < steps.Count && steps[i].Figure is not null && steps[until].Figure == steps[i].Figure && steps[until].Source == steps[i].Source && steps[until].RepeatedBy == steps[i].RepeatedBy) until++;
                // A figure asked for twice in different places of the dance comes from the same words.
                Asked(stage, first, end, steps, start, i, until);
                i = until;
            }
        }

        private void Asked(int stage, int first, int end, List<ScoreStep> steps, Count start, int from, int until)
        {
            var at = MomentOf(steps[from]);
            var next = until < steps.Count ? MomentOf(steps[until]) : end;
            var step = steps[from];
            if (next <= at) next = Math.Min(end, at + 1);
            // "Vine right, touch left": the touch closes the vine and is asked for by itself.
            var inside = until < steps.Count && steps[until].Source is var own && own.Start > step.Source.Start && own.End <= step.Source.End;
            var words = page.Words(inside ? TextSpan.Between(step.Source.Start, steps[until].Source.Start) : step.Source);
            // A half waltz box turns nowhere.
            var (sides, ways, turn) = PageWords.Of(words, turns: steps.GetRange(from, until - from).Exists(s => !s.Turn.IsNone));
            var mirrored = step.Repeated && sides.Count > 0 && step.FootNamed && step.Foot.Single() is { } foot && foot != sides[0];
            for (var m = at; m < next; m++) _moments[m] = _moments[m] with { Ask = _asks.Count };
            var figure = until - from == 1 && step.Figure is { } name && !Names(words, name) ? null : step.Figure;
            _asks.Add(new(stage, at, next, figure, steps.GetRange(from, until - from).ToValueList(), mirrored ? [] : sides, ways, step.Source, step.Repeated) { Breaks = Breaks(figure, at, next), PageTurn = mirrored ? null : turn, FootBefore = PageWords.Of(words.TrimStart().Split(' ')[0], turns: false).Sides.Count > 0 });

            int MomentOf(ScoreStep one)
            {
                var count = Count.First + (one.At - start);
                for (var m = first; m < end; m++)
                {
                    if (_moments[m].InPart == count) return m;
                }

                return end;
            }
        }

        // "Vine left, brush R": the brush closes the vine, and is named by itself.
        private bool Names(string words, string name)
        {
            var lower = words.ToLowerInvariant();
            return (book.Named(name)?.OtherNames ?? []).Prepend(name).SelectMany(n => n.ToLowerInvariant().Split([' ', '-'])).Any(w => lower.Contains(w, StringComparison.Ordinal));
        }

        // Four walks are four times one walk; two switches twice one.
        private ValueList<int> Breaks(string? name, int first, int end)
        {
            if (name is null || book.Named(name) is not { } figure || !(figure.AnyCounts || figure.StatedCounts is 1)) return [];
            return Enumerable.Range(first + 1, Math.Max(0, end - first - 1)).Where(m => _moments[m].Step >= 0).ToValueList();
        }

        private ValueList<Ask> Marked()
        {
            for (var i = _asks.Count - 1; i >= 0; i--)
            {
                var joined = _asks[i].Again && i + 1 < _asks.Count && _asks[i + 1].Again && _asks[i + 1].Stage == _asks[i].Stage && _asks[i + 1].Step.RepeatedBy == _asks[i].Step.RepeatedBy;
                _asks[i] = _asks[i] with { AgainUntil = !_asks[i].Again ? i : joined ? _asks[i + 1].AgainUntil : i + 1 };
            }

            return _asks.ToValueList();
        }
    }
}
