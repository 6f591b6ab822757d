using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>Chapters: one for each part as it is shown, with the roles in it, and one for each run of the dance with its parts in it.</summary>
internal sealed class ChapterMaker(DanceScore score, List<Course> courses, double end, RolesCalled called)
{
    /// <summary>Seconds of talk at the beginning or the end that are a chapter of their own. Working value.</summary>
    private const double WorthAChapter = 4;

    public ValueList<Chapter> Of(List<Flow> flows)
    {
        var groups = new List<List<Flow>>();
        foreach (var flow in flows)
        {
            // Walking a part, counting it, walking it for the other dancer: one chapter.
            if (groups.Count > 0 && Part(groups[^1]) is { } part && Part([flow]) == part && !IsRun(flow) && !IsRun(groups[^1][0])) groups[^1].Add(flow);
            else groups.Add([flow]);
        }

        var chapters = new List<Chapter>();
        if (groups.Count == 0 || groups[0][0].From > WorthAChapter) chapters.Add(new(default, FilmTime.OfSeconds(groups.Count == 0 ? end : groups[0][0].From), "Welcome", []));
        for (var i = 0; i < groups.Count; i++)
        {
            var until = i + 1 < groups.Count ? groups[i + 1][0].From : groups[i][^1].To;
            if (i + 1 == groups.Count && end - until <= WorthAChapter) until = end;
            foreach (var chapter in One(groups[i], until)) chapters.Add(chapter);
        }

        if (groups.Count > 0 && end - groups[^1][^1].To > WorthAChapter) chapters.Add(new(FilmTime.OfSeconds(groups[^1][^1].To), FilmTime.OfSeconds(end), "Closing words", []));
        return chapters.Where(c => c.To > c.From).ToValueList();
    }

    /// <summary>The whole dance, or much of it, without stopping.</summary>
    public static bool IsRun(Flow flow) => flow.Passes[0].Whole || (flow.Passes.Select(p => p.Stage).Distinct().Count() > 1 && flow.How is ShownHow.AtTempo or ShownHow.Counted);

    private int? Part(List<Flow> group) => IsRun(group[0]) ? null : courses[group[^1].Passes[^1].Course].Stages[group[^1].Passes[^1].Stage].Part;

    private IEnumerable<Chapter> One(List<Flow> group, double until)
    {
        if (IsRun(group[0]))
        {
            yield return Run(group[0], until);
            yield break;
        }

        // Parts that are walked through one after the other without a word between are chapters all the same.
        var passes = group.SelectMany(f => f.Passes.Select(p => (Flow: f, Pass: p))).ToList();
        for (var i = 0; i < passes.Count;)
        {
            var next = i + 1;
            while (next < passes.Count && PartOf(passes[next].Pass) == PartOf(passes[i].Pass)) next++;
            var to = next < passes.Count ? passes[next].Pass.From : until;
            yield return Walked(passes.GetRange(i, next - i), to);
            i = next;
        }
    }

    private int PartOf(Pass pass) => courses[pass.Course].Stages[pass.Stage].Part;

    private Chapter Walked(List<(Flow Flow, Pass Pass)> passes, double until)
    {
        var part = PartOf(passes[0].Pass);
        var inside = new List<Chapter>();
        var from = passes[0].Pass.From;
        for (var i = 0; i < passes.Count; i++)
        {
            var (flow, pass) = passes[i];
            // What stands alone, and for everybody, is the chapter itself.
            if (passes.Count == 1 && pass.Role is null) break;
            var to = i + 1 < passes.Count ? passes[i + 1].Pass.From : until;
            if (to <= pass.From) continue;
            inside.Add(new(FilmTime.OfSeconds(pass.From), FilmTime.OfSeconds(to), Capital($"{(pass.Role is { } role ? called.Of(role) + ", " : "")}{(flow.How == ShownHow.Walked ? "step by step" : flow.How == ShownHow.Counted ? "with counts" : "at tempo")}{SideWords(pass.Side, passes[0].Pass.Side)}"), [])
            {
                Part = score.Parts[part].Key,
                Role = pass.Role,
                How = flow.How,
            });
        }

        var title = PartTitle(part) + (passes.TrueForAll(p => p.Pass.Role is not null && p.Pass.Role == passes[0].Pass.Role) ? $", {called.Of(passes[0].Pass.Role!.Value)}" : "") + SideWords(passes[0].Pass.Side, FilmSide.Unsaid);
        return new(FilmTime.OfSeconds(from), FilmTime.OfSeconds(until), title, inside.Count > 1 ? inside.ToValueList() : []) { Part = score.Parts[part].Key, Role = passes[0].Pass.Role, How = passes[0].Flow.How };
    }

    private Chapter Run(Flow flow, double until)
    {
        var inside = new List<Chapter>();
        var starts = flow.Passes.ConvertAll(p => p == flow.Passes[0] ? p.From : flow.Beat is null ? p.From : Math.Max(flow.From, flow.At(p, 0)));
        for (var i = 0; i < flow.Passes.Count; i++)
        {
            var (from, to) = (starts[i], i + 1 < flow.Passes.Count ? starts[i + 1] : until);
            if (to - from < 0.5 || to > until) continue;
            inside.Add(new(FilmTime.OfSeconds(from), FilmTime.OfSeconds(to), PartTitle(PartOf(flow.Passes[i])), []) { Part = score.Parts[PartOf(flow.Passes[i])].Key, How = flow.How });
        }

        var tempo = flow.How == ShownHow.AtTempo ? "at tempo" : "with counts";
        var start = flow.Passes[0].CountedIn is { } counted && !flow.Passes[0].Named ? counted : flow.From;
        return new(FilmTime.OfSeconds(start), FilmTime.OfSeconds(until), $"The dance {tempo}{SideWords(flow.Passes[0].Side, FilmSide.Unsaid)}", inside.ToValueList()) { How = flow.How };
    }

    private string PartTitle(int part)
    {
        var one = score.Parts[part];
        return one.Name.Length > 0 ? $"{one.Label}: {one.Name}" : one.Label;
    }

    private static string SideWords(FilmSide side, FilmSide known) => side == known ? "" : side switch
    {
        FilmSide.Back => ", from the back",
        FilmSide.Front => ", from the front",
        FilmSide.Side => ", from the side",
        FilmSide.Above => ", from above",
        _ => "",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
