using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>Finds where something else was said than is written. What may have been misheard is left alone.</summary>
internal sealed class DifferenceFinder(DanceScore score, SourceText page, List<Course> courses)
{
    /// <summary>Seconds between two things that belong to one breath. Working value.</summary>
    private const double OneBreath = 5;

    /// <summary>Words of dances that are said of everything.</summary>
    private static readonly string[] Everyday = ["left", "right", "forward", "back", "half", "quarter", "side", "step", "steps", "together", "over", "place", "hands", "hand", "facing", "both", "with", "starting"];

    private readonly List<Difference> _found = [];

    public ValueList<Difference> In(List<Flow> flows)
    {
        var mirror = new Mirror();
        var passes = flows.SelectMany(f => f.Passes.Select(p => (Flow: f, Pass: p))).ToList();
        for (var i = 0; i < passes.Count; i++)
        {
            var (flow, pass) = passes[i];
            Misnamed(pass);
            if (!Sound(pass)) continue;
            var speaking = pass.Role;
            // Calls in time are cut short, and where one ends and the next begins is hard to tell.
            if (pass.InTime) continue;
            var (named, turned) = (0, new List<Difference>());
            foreach (var one in pass.Items)
            {
                if (one.Heard.Kind == HeardKind.Role && one.How == Placing.Turns) speaking = one.Heard.Role;
                if (one.How != Placing.Ask) continue;
                named += one.Heard.Move is { Sides.Count: > 0 } or { TurnSide: not null } ? 1 : 0;
                turned.AddRange(Clashes(pass, one, speaking));
            }

            mirror.Pass(pass.Side, named, turned);
            if (flow.How != ShownHow.Walked) continue;

            TooMany(pass);
            Missing(pass);
        }

        mirror.ToldOnce(_found);
        return _found.OrderBy(f => f.At).ToValueList();
    }

    // Enough of the part was heard to know that it is this part; words that talk uses as well are not enough.
    private bool Sound(Pass pass)
    {
        var heard = pass.Items.Where(i => i.How == Placing.Ask).ToList();
        if (heard.Count >= 2) return pass.Named || heard.Exists(i => i.Heard.Move is { Loose: false });
        return heard.Count == 1 && pass.Named && courses[pass.Course].Asks.Count(a => a.Stage == pass.Stage && !a.Again) <= 2;
    }

    private void Misnamed(Pass pass)
    {
        if (pass.Items.Find(i => i.How == Placing.Misnames) is not { } one || pass.MatchedCount < 2) return;
        var part = score.Parts[courses[pass.Course].Stages[pass.Stage].Part];
        var other = score.Parts[one.Heard.Parts[0]].Label;
        _found.Add(new(FilmTime.OfSeconds(one.Heard.From), DifferenceKind.OtherPart, part.Label, "", null, one.Heard.Said, $"You say {other}, but what you show is {part.Label}.", page.Place(part.Span.Start).Line, page.Words(page.Line(page.LineOf(part.Span.Start))).Trim()));
    }

    /// <returns>What was told in which left and right are changed over.</returns>
    private List<Difference> Clashes(Pass pass, Placed one, Role? speaking)
    {
        var ask = courses[one.Course].Asks[one.Ask];
        if (one.Heard.Move is not { } move || one.Jumped) return [];
        var clash = Fit.Clashes(move, ask, ask.Shared && speaking != Dance.Basics.Role.Follow);
        if (clash == Clash.None || (speaking is null && OthersOwn(move, one)) || OfTheNext(pass, one, move)) return [];
        var before = _found.Count;
        if (clash.HasFlag(Clash.Feet)) Add(one, DifferenceKind.OtherFoot, ask, DifferenceWords.Feet(one.Heard, ask));
        if (clash.HasFlag(Clash.TurnSide) && !clash.HasFlag(Clash.TurnAmount)) Add(one, DifferenceKind.OtherTurn, ask, DifferenceWords.Turn(one.Heard, ask, clash));
        var turned = _found.GetRange(before, _found.Count - before);
        if (clash.HasFlag(Clash.Way)) Add(one, DifferenceKind.OtherWay, ask, DifferenceWords.Way(one.Heard, ask));
        if (clash.HasFlag(Clash.TurnAmount)) Add(one, DifferenceKind.OtherTurn, ask, DifferenceWords.Turn(one.Heard, ask, clash));
        return turned;
    }

    // Nobody was named, and the other dancer does at that moment what was said.
    private bool OthersOwn(HeardMove move, Placed one)
    {
        var (course, ask) = (courses[one.Course], courses[one.Course].Asks[one.Ask]);
        var (from, to) = (course.Moments[ask.First].InPart.Value.ToDouble() - 1, course.Moments[ask.First].InPart.Value.ToDouble() + 1);
        return courses.Exists(c => c != course && c.Asks.Any(a => a.Stage == ask.Stage && !a.Shared && c.Moments[a.First].InPart.Value.ToDouble() is var at && at >= from && at <= to && a.Source != ask.Source
            && Fit.Of(move, a) > Math.Max(0, Fit.Of(move, ask) ?? 0) && Fit.Clashes(move, a) == Clash.None));
    }

    // "Kick left back left right": the walk in between was swallowed, and its way and feet stand with the kick.
    private bool OfTheNext(Pass pass, Placed one, HeardMove move)
    {
        var next = pass.Items.SkipWhile(i => i != one).Skip(1).FirstOrDefault(i => i.Course == one.Course && i.How is Placing.Ask or Placing.Step or Placing.Count);
        var course = courses[one.Course];
        var until = next is null ? course.Stages[pass.Stage].End : next.Ask >= 0 && next.How == Placing.Ask ? course.Asks[next.Ask].First : next.Before;
        return course.Asks.Select((a, i) => (Ask: a, Index: i)).Any(x => x.Ask.Stage == pass.Stage && x.Ask.First >= one.After && x.Ask.First < until && !Aligner.Silent(course, x.Index) && !x.Ask.Again
            && ((move.Way is { } way && Fit.Goes(x.Ask, way) && !Fit.Goes(course.Asks[one.Ask], way)) || move.Sides.Count > Math.Max(1, course.Asks[one.Ask].Feet.Count)));
    }

    // A step that goes nowhere, beside one of its kind that does.
    private void TooMany(Pass pass)
    {
        for (var i = 0; i < pass.Items.Count; i++)
        {
            var one = pass.Items[i];
            if (one is not { How: Placing.Talk, Heard.Move: { Bare: false } move }) continue;
            var before = pass.Items.Take(i).LastOrDefault(x => x.How is Placing.Ask or Placing.Step);
            var after = pass.Items.Skip(i + 1).FirstOrDefault(x => x.How is Placing.Ask or Placing.Step);
            var beside = before is not null && one.Heard.From - before.Heard.To < OneBreath && Same(before) ? before : after is not null && after.Heard.From - one.Heard.To < OneBreath && Same(after) ? after : null;
            if (beside is not null && !TalkBetween(pass, i, beside)) Add(one, DifferenceKind.OneTooMany, courses[beside.Course].Asks[beside.Ask], DifferenceWords.TooMany(one.Heard, courses[beside.Course].Asks[beside.Ask]));

            bool Same(Placed other) => other.Ask >= 0 && Fit.Of(move with { Sides = [] }, courses[other.Course].Asks[other.Ask]) is > 1.7;
        }
    }

    private static bool TalkBetween(Pass pass, int at, Placed other)
    {
        var there = pass.Items.IndexOf(other);
        return pass.Items.Skip(Math.Min(at, there) + 1).Take(Math.Abs(at - there) - 1).Any(x => x.Heard.Kind == HeardKind.Talk && x.Heard.Words > 2);
    }

    private void Missing(Pass pass)
    {
        var last = new Placed?[courses.Count];
        var said = pass.Matched.Where(m => m.Ask >= 0 && !courses[m.Course].Asks[m.Ask].Again).Select(m => courses[m.Course].Asks[m.Ask].Source).ToHashSet();
        foreach (var one in pass.Items)
        {
            if (one.How is Placing.Leads or Placing.Misnames)
            {
                Array.Clear(last);
                last[one.Course] = one;
            }
            else if (one.How is Placing.Again)
            {
                last[one.Course] = one;
            }
            else if (one.How is Placing.Turns)
            {
                // Whoever is turned to begins there, or goes on from before.
                last[one.Course] ??= one;
            }
            else if (one.How is Placing.Ask or Placing.Step or Placing.Count)
            {
                var course = courses[one.Course];
                var first = one.Ask >= 0 && one.How == Placing.Ask ? course.Asks[one.Ask].First : one.Before;
                // Not announced: it goes on from where the part begins.
                if (last.All(l => l is null) && !one.Jumped && one.How == Placing.Ask && one.Before == course.Stages[pass.Stage].First && first > one.Before) Gap(pass, one with { After = one.Before, How = Placing.Leads }, one, course, one.Before, first, said);
                if (last[one.Course] is { } before && !one.Jumped && one.How == Placing.Ask && first > before.After) Gap(pass, before, one, course, before.After, first, said);
                last[one.Course] = one;
            }
        }

        // The end of the part, when the rest of it was said.
        var ends = courses.Select((_, c) => c).Where(c => last[c] is { How: Placing.Ask }).ToList();
        foreach (var c in ends)
        {
            var (course, stage) = (courses[c], courses[c].Stages[pass.Stage]);
            var heard = pass.Items.Where(i => i.Ask >= 0 && i.Course == c).Select(i => i.Ask).Distinct().Count();
            var all = course.Asks.Count(a => a.Stage == pass.Stage && !a.Again);
            if (!pass.BrokenOff && last[c]!.After < stage.End && heard * 2 >= all) Gap(pass, last[c]!, null, course, last[c]!.After, stage.End, said);
        }
    }

    private void Gap(Pass pass, Placed last, Placed? next, Course course, int from, int to, HashSet<TextSpan> said)
    {
        var left = course.Asks.Select((a, i) => (Ask: a, Index: i)).Where(x => x.Ask.First >= from && x.Ask.First < to && !x.Ask.Again && !said.Contains(x.Ask.Source) && !Aligner.Silent(course, x.Index)).ToList();
        if (left.Count is 0 or > 4) return;
        if (next is not null && next.Heard.From - last.Heard.To > OneBreath * (pass.InTurn ? 5 : 2)) return;
        // What is left of it shows that it was said: feet or a way too many beside it, or a word of the dance that fits nowhere.
        var asks = left.ConvertAll(l => l.Ask);
        if (Overfull(last, asks) || (next is not null && Overfull(next, asks)) || Remains(pass, last, next, asks)) return;
        // "From the side, so you can see": a way alone, far from the next step, is hardly one.
        if (next is not null && (last.Heard.Move is { Bare: true } || next.Heard.Move is { Bare: true }) && next.Heard.From - last.Heard.To > 2) return;
        var when = FilmTime.OfSeconds(last.How == Placing.Leads && next is not null ? next.Heard.From : last.Heard.To);
        var first = left[0].Ask;
        _found.Add(new(when, DifferenceKind.Missing, Label(first), Counts(course, first, left[^1].Ask), Role(course, first), "", DifferenceWords.Missing(left.ConvertAll(l => Written(l.Ask))), Line(first), Written(first)));
    }

    private bool Overfull(Placed one, List<Ask> left)
    {
        if (one is not { How: Placing.Ask, Heard.Move: { } move }) return false;
        var ask = courses[one.Course].Asks[one.Ask];
        var most = Math.Max(ask.Feet.Count, ask.PageSides.Count);
        // Of several feet people name all or the first: what else was named was said of something else.
        if (move.Sides.Count == 1 && ask.PageSides.Count > 1 && move.Sides[0] != ask.PageSides[0] && move.Sides[0] != ask.Feet.DefaultIfEmpty(ask.PageSides[0]).First()) return true;
        if (move.Sides.Count > 1 && move.Sides.Count < most && move.Sides.Count != ask.PageSides.Count && left[0].Feet.DefaultIfEmpty(move.Sides[0].Other()).First() == move.Sides[^1] && left[0].Steps.Count == 1) return true;
        // Which way round an amount turns that was not heard.
        var turning = move.Turn is null && ask.Turned != 0 && ask.TurnSide is { } round && move.Sides.Contains(ask.PageTurn ?? round) ? 1 : 0;
        return move.Sides.Count > most + turning || (move.Way is { } way && !Fit.Goes(ask, way)) || (move.Turn is not null && ask.Turned == 0)
            || (move.Way is Direction.InPlace && ask.Figure is null && !Written(ask).Contains("place", StringComparison.OrdinalIgnoreCase) && left.Exists(a => a.Figure is not null && Fit.Goes(a, Direction.InPlace)));
    }

    private bool Remains(Pass pass, Placed last, Placed? next, List<Ask> left)
    {
        var from = Math.Max(0, pass.Items.IndexOf(last) + 1);
        var to = next is null ? pass.Items.Count : pass.Items.IndexOf(next);
        // Of a figure with a longer name some of the name would be left.
        var written = left.SelectMany(a => a.Figure is { } name && name.Split(' ', '-') is { Length: > 1 } names ? names : page.Words(a.Source).ToLowerInvariant().Split(' ', ',', '.')).Where(w => w.Length > 3 && !Everyday.Contains(w)).ToHashSet(StringComparer.Ordinal);
        return pass.Items.Skip(from).Take(Math.Max(0, to - from)).Any(i => (next is not null || i.Heard.From - last.Heard.To < OneBreath / 2) && i.How == Placing.Talk && (i.Heard.Kind == HeardKind.Step || (i.Heard.Kind == HeardKind.Talk && SpokenRules.Shipped.WithoutTalk(i.Heard.Said).Split(' ') is var said && (said.Any(written.Contains) || (said.Length <= 4 && left[0].Steps.Count == 1 && left[0].Feet.Any(foot => said.Contains(foot.Word())))))));
    }

    private void Add(Placed one, DifferenceKind kind, Ask ask, string says)
    {
        var course = courses[one.Course];
        _found.Add(new(FilmTime.OfSeconds(one.Heard.From), kind, Label(ask), Counts(course, ask, ask), Role(course, ask), one.Heard.Said, says, Line(ask), Written(ask)));
    }

    // Words that both dancers share are for nobody in particular.
    private Role? Role(Course course, Ask ask) => courses.Count < 2 || courses.TrueForAll(c => c == course || c.Asks.Any(a => a.Source == ask.Source)) ? null : course.Role;

    private string Label(Ask ask) => score.Parts[courses[0].Stages[ask.Stage].Part].Label;

    private int Line(Ask ask) => page.Place(ask.Source.Start).Line;

    private string Written(Ask ask) => page.Words(ask.Source).Trim();

    private static string Counts(Course course, Ask first, Ask last)
    {
        var from = course.Moments[first.First].InPart.Name;
        var to = course.Moments[Math.Max(last.First, last.End - 1)].InPart.Name;
        return from == to ? from : $"{from}-{to}";
    }
}
