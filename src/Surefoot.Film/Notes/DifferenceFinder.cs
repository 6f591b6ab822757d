using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>Finds where something else was said than is written. What may have been misheard is left alone.</summary>
internal sealed partial class DifferenceFinder(DanceScore score, SourceText page, List<Course> courses)
{
    /// <summary>Seconds between two things that belong to one breath. Working value.</summary>
    private const double OneBreath = 5;

    /// <summary>Words of dances that are said of everything.</summary>
    private static readonly string[] Everyday = ["left", "right", "forward", "back", "half", "quarter", "side", "step", "steps", "together", "over", "place", "hands", "hand", "facing", "both", "with", "starting", "and", "the"];

    private readonly List<Difference> _found = [];

    // Recovers are said in this film, and not left to the rock.
    private bool _recovers;

    // The passes before and after the one that is looked at.
    private Pass? _before;
    private Pass? _after;

    public ValueList<Difference> In(List<Flow> flows)
    {
        var mirror = new Mirror();
        var passes = flows.SelectMany(f => f.Passes.Select(p => (Flow: f, Pass: p))).ToList();
        _recovers = passes.Exists(p => p.Pass.Items.Exists(i => i.How == Placing.Ask && courses[i.Course].Asks[i.Ask] is { Figure: null, Step.Kind: ActionKind.Recover }));
        for (var i = 0; i < passes.Count; i++)
        {
            var (flow, pass) = passes[i];
            (_before, _after) = (i > 0 ? passes[i - 1].Pass : null, i + 1 < passes.Count ? passes[i + 1].Pass : null);
            if (!pass.InTime) Relaying.In(pass, courses);
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
        return OneSlip.ToldOnce(_found).ToValueList();
    }

    // Enough of the part was heard to know that it is this part; words that talk uses as well are not enough.
    private bool Sound(Pass pass)
    {
        var heard = pass.Items.Where(i => i.How == Placing.Ask).ToList();
        if (heard.Count >= 2) return pass.Named || heard.Exists(i => i.Heard.Move is { Loose: false });
        return heard.Count == 1 && pass.Named && Small(pass);
    }

    // One or two things make the whole part.
    private bool Small(Pass pass) => courses[pass.Course].Asks.Count(a => a.Stage == pass.Stage && !a.Again) <= 2;

    private void Misnamed(Pass pass)
    {
        if (pass.Items.Find(i => i.How == Placing.Misnames) is not { } one || pass.MatchedCount < (Small(pass) ? 1 : 2)) return;
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
        if (clash == Clash.None || (speaking is null && OthersOwn(move, one))) return [];
        clash &= ~OfTheNext(pass, one, move);
        if (OfTheOneBefore(pass, one, move)) clash &= ~Clash.Feet;
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
    private Clash OfTheNext(Pass pass, Placed one, HeardMove move)
    {
        var next = pass.Items.SkipWhile(i => i != one).Skip(1).FirstOrDefault(i => i.Course == one.Course && i.How is Placing.Ask or Placing.Step or Placing.Count);
        var (course, own) = (courses[one.Course], courses[one.Course].Asks[one.Ask]);
        var until = next is null ? course.Stages[pass.Stage].End : next.Ask >= 0 && next.How == Placing.Ask ? course.Asks[next.Ask].First : next.Before;
        var clash = Clash.None;
        // Two alike beside each other, of which one was heard: the foot may as well be what is left of the other.
        if (next is { How: Placing.Ask } && !move.FeetBefore && move.Sides is [var last] && OfOneAlike(pass, next, last)) clash |= Clash.Feet;
        // "Rock back with left" for "rock back, recover with left".
        if (move.Sides is [var single] && !move.FeetBefore && RecoversBy(pass, one) is { } recover && recover.Feet.Count > 0 && recover.Feet[0] == single && recover.First < until) clash |= Clash.Feet;
        var unheard = course.Asks.Where((a, i) => a.Stage == pass.Stage && a.First >= one.After && a.First < until && !a.Again && !Aligner.Silent(course, i)).ToList();
        // The end of a part that runs on into the next one.
        if (next is null && _after is { GoesOn: true, Named: false } && _after.Items.Find(i => i.How is Placing.Ask or Placing.Step or Placing.Count) is { How: Placing.Ask, Jumped: false } begins && begins.Course == one.Course && course.Asks[begins.Ask].Stage == _after.Stage)
        {
            unheard.AddRange(course.Asks.Where((a, i) => a.Stage == _after.Stage && a.First < course.Asks[begins.Ask].First && !a.Again && !Aligner.Silent(course, i)));
        }

        if (unheard.Count == 0) return clash;
        // A way that was said before any foot belongs to the step that was said.
        if (move.Way is { } way && (move.WayAfterFeet || move.Sides.Count == 0) && !Fit.Goes(own, way) && unheard.Exists(a => Fit.Goes(a, way))) clash |= Clash.Way;
        // "Vine right" for "vine, touch right": the foot is the next one's, of which no more was heard.
        if (move.Sides.Count == 1 && !move.FeetBefore && unheard[0].PageSides.Count > 0 && unheard[0].PageSides[0] == move.Sides[0]) clash |= Clash.Feet;
        if (move.Sides.Count > Math.Max(1, own.Feet.Count)) clash |= Clash.Feet | Clash.TurnSide;
        // "Walk forward left, quarter right right" for "walk forward, triple quarter right": from the amount on it is the next one's, and the feet are hardly all this one's.
        if (own.Turned == 0 && move.Sides.Count > 1 && move.Turn is { } amount && unheard[0].Turned == amount) clash |= Clash.Feet;
        return clash;
    }

    // The recover after a rock, of which nothing was heard, where recovers are said otherwise.
    private Ask? RecoversBy(Pass pass, Placed rock)
    {
        var course = courses[rock.Course];
        if (rock.Ask + 1 >= course.Asks.Count || course.Asks[rock.Ask + 1] is not { Step.Kind: ActionKind.Recover } recover || !Aligner.Silent(course, rock.Ask + 1)) return null;
        return _recovers && !pass.Items.Exists(i => i.Ask == rock.Ask + 1 && i.Course == rock.Course) ? recover : null;
    }

    // What comes next is the first of several alike, and not all of them were heard: the first may be the one that was not.
    private bool OfOneAlike(Pass pass, Placed next, Foot foot)
    {
        var course = courses[next.Course];
        if (next.Heard.Move is not { } move || course.Asks[next.Ask] is not { Figure: null } first || first.Feet.Count == 0 || first.Feet[0] != foot) return false;
        var after = pass.Items.SkipWhile(i => i != next).Skip(1).FirstOrDefault(i => i.Course == next.Course && i.How is Placing.Ask or Placing.Step or Placing.Count);
        var until = after is null ? course.Stages[pass.Stage].End : after.How == Placing.Ask ? course.Asks[after.Ask].First : after.Before;
        return next.Ask + 1 < course.Asks.Count && course.Asks[next.Ask + 1] is { Again: false } other && other.Stage == first.Stage && other.First < until && other.Step.Kind == first.Step.Kind && Fit.Clashes(move, other) == Clash.None && Fit.Of(move, other) >= Fit.Of(move, first);
    }

    // "Left scuff" for "vine left, scuff": the foot is what is left of the one before.
    private bool OfTheOneBefore(Pass pass, Placed one, HeardMove move)
    {
        if (!move.FeetBefore) return false;
        var before = pass.Items.TakeWhile(i => i != one).LastOrDefault(i => i.Course == one.Course && i.How is not Placing.Talk);
        var course = courses[one.Course];
        return before is not null && course.Asks.Where((a, i) => a.First >= before.After && a.First < course.Asks[one.Ask].First && !a.Again && !Aligner.Silent(course, i)).LastOrDefault() is { } unheard
            && (unheard.PageSides.Contains(move.Sides[^1]) || unheard.Feet.Contains(move.Sides[^1]));
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
            if (beside is not null && !TalkBetween(pass, i, beside) && !SaidAgain(pass, i, before)) Add(one, DifferenceKind.OneTooMany, courses[beside.Course].Asks[beside.Ask], DifferenceWords.TooMany(one.Heard, courses[beside.Course].Asks[beside.Ask]));

            bool Same(Placed other) => other.Ask >= 0 && Fit.Of(move with { Sides = [] }, courses[other.Course].Asks[other.Ask]) is > 1.7;
        }
    }

    // "Walk forward, again, walk forward": it is said once more because it is danced once more.
    private static bool SaidAgain(Pass pass, int at, Placed? before) =>
        before is not null && pass.Items.Skip(pass.Items.IndexOf(before) + 1).Take(Math.Max(0, at - pass.Items.IndexOf(before) - 1)).Any(x => x.Heard.Kind == HeardKind.Again);

    private static bool TalkBetween(Pass pass, int at, Placed other)
    {
        var there = pass.Items.IndexOf(other);
        return pass.Items.Skip(Math.Min(at, there) + 1).Take(Math.Abs(at - there) - 1).Any(x => x.Heard.Kind == HeardKind.Talk && x.Heard.Words > Costs.ShortTalk);
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
