using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Film.Hearing;
using static Surefoot.Film.Alignment.Costs;

namespace Surefoot.Film.Alignment;

/// <summary>Steps and figures: what the page asks for next, something skipped, one step inside a figure, or another place.</summary>
internal sealed partial class Aligner
{
    private void Step(HeardMove said, int words, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        var ask = course.AskFrom(at);
        // Said once more than it is written: like what has just been done, or like what comes next.
        if (!said.Loose && (Alike(said, course, ask - 1) || Alike(said, course, ask))) Offer(s, s, _now[s] - OnceMore, Placing.Talk, -1, false);
        // Right after the same step it fits that one as well as it would fit another of its kind, further on.
        if (SaidJustNow(said) && Alike(said, course, ask - 1) && Fit.Of(said, course.Asks[ask - 1], _speaking) is { } twice) Offer(s, s, _now[s] + twice - SaidTwice, Placing.Talk, -1, false);
        var costs = 0.0;
        for (var left = 0; left <= MostLeftOut && ask < course.Asks.Count; left++)
        {
            var one = course.Asks[ask];
            if (Fit.Of(said, one, _speaking) is { } fits)
            {
                Offer(s, _base[c] + one.End, _now[s] - costs + fits, Placing.Ask, ask, false);
                // "Walk, walk": one word a step.
                if (one.Breaks.Count > 0 && words <= 2 && said.Sides.Count <= 1) Offer(s, _base[c] + one.Breaks[0], _now[s] - costs + 1.2, Placing.Step, ask, false);
            }

            if (one.Figure is not null && Fit.OfStep(said, one.Step) is { } begins) Offer(s, _base[c] + NextStep(course, one.First, one.End), _now[s] - costs + begins, Placing.Step, ask, false);
            costs += Skipping(course, ask);
            if (left == 0 && at > 0 && course.StageAt(at - 1) != one.Stage) costs += AcrossParts;
            var whole = course.Stages[one.Stage].First == at;
            ask = one.Again && one.AgainUntil > ask ? one.AgainUntil : ask + 1;
            // Nobody leaves out a whole part.
            if (whole && ask < course.Asks.Count && course.Asks[ask].Stage != one.Stage) costs += WholePart;
        }

        // The other dancer's own steps to where this one has come, without a word for whom: it was swallowed.
        var own = course.AskFrom(at) - 1;
        for (var other = 0; other < _courses.Count; other++)
        {
            if (other == c || (Alike(said, course, own) && (said.Turn is null || course.Asks[own].Turned != 0)) || Twin(course, at, _courses[other]) is not (> 0 and var twin) || _courses[other].Moments[twin - 1] is not { Ask: >= 0 } last) continue;
            var theirs = _courses[other].Asks[last.Ask];
            OwnRow(said, s, c, other, twin);
            if (theirs.End == twin && !course.Asks.Any(a => a.Stage == theirs.Stage && a.Source == theirs.Source) && Fit.Of(said, theirs, _courses[other].Role) is { } fitting) Offer(s, _base[other] + twin, _now[s] - OtherDancer + fitting, Placing.Ask, last.Ask, false);
        }

        // Inside a figure, step by step.
        if (at < course.Moments.Count && course.Moments[at] is { Ask: >= 0 } moment && course.Asks[moment.Ask] is var inside && inside.First < at && inside.Figure is not null)
        {
            var steps = inside.Steps;
            var passed = Enumerable.Range(inside.First, at - inside.First).Count(m => course.Moments[m].Step >= 0);
            if (passed < steps.Count && Fit.OfStep(said, steps[passed]) is { } goes) Offer(s, _base[c] + NextStep(course, at, inside.End), _now[s] + goes, Placing.Step, moment.Ask, false);
            if (inside.Breaks.Count > 0 && words <= 2 && said.Sides.Count <= 1 && said.Figure is not null && Fit.Of(said with { Sides = [] }, inside, _speaking) is > 2 && passed < steps.Count
                && (said.Sides.Count == 0 || steps[passed].Foot.Single() == said.Sides[0]))
            {
                Offer(s, _base[c] + NextStep(course, at, inside.End), _now[s] + 1.2, Placing.Step, moment.Ask, false);
            }
        }

        // "One rock forward": the count was said before its step.
        var counted = at - 1;
        if (counted >= 0 && counted < course.Moments.Count && course.Moments[counted].Ask >= 0 && course.Asks[course.Moments[counted].Ask] is var just && just.First == counted && LastWasCount() && Fit.Of(said, just, _speaking) is { } again)
        {
            Offer(s, _base[c] + just.End, _now[s] + again - 0.5, Placing.Ask, course.Moments[counted].Ask, false);
        }
    }

    // The same where they are told all of a row of their own, from its first step on.
    private void OwnRow(HeardMove said, int s, int c, int other, int twin)
    {
        var (course, their) = (_courses[c], _courses[other]);
        var ask = their.AskFrom(twin);
        while (ask > 0 && their.Asks[ask - 1] is { Again: false } before && before.Stage == their.Moments[twin - 1].Stage && !course.Asks.Any(a => a.Stage == before.Stage && a.Source == before.Source)) ask--;
        for (; ask < their.Asks.Count && their.Asks[ask].End < twin; ask++)
        {
            if (Fit.Of(said, their.Asks[ask], their.Role) is { } fits && Fit.Clashes(said, their.Asks[ask]) == Clash.None) Offer(s, _base[other] + their.Asks[ask].End, _now[s] - OtherDancer + fits, Placing.Ask, ask, false);
        }
    }

    private bool BegunJustNow(Course course, int ask)
    {
        var (c, one) = (CourseOf(_bestState), course.Asks[ask]);
        var own = _courses[c].AskFrom(_bestState - _base[c]) - 1;
        return own >= 0 && one.First == course.Stages[one.Stage].First && _courses[c].Asks[own] is { } begun && begun.Stage == one.Stage && begun.First == _courses[c].Stages[begun.Stage].First;
    }

    // "Step" alone is hardly a word: it is alike where its way is.
    private static bool Alike(HeardMove said, Course course, int ask) => ask >= 0 && ask < course.Asks.Count
        && Fit.Of(said with { Sides = [], Way = said is { Figure: null, Kind: ActionKind.Step } ? said.Way : null, Turn = null }, course.Asks[ask]) is > 1.7;

    // The last thing said, short talk aside, was the same step.
    private bool SaidJustNow(HeardMove said)
    {
        if (said.Bare) return false;
        for (var i = _layers.Count - 2; i >= 0; i--)
        {
            if (_heard[i] is { Kind: HeardKind.Talk, Words: <= ShortTalk }) continue;
            return _heard[i].Move is { } before && before.SameHead(said) && before.Way == said.Way && before.Turn == said.Turn;
        }

        return false;
    }

    private bool LastWasCount() => _layers.Count > 1 && _heard[_layers.Count - 2].Kind == HeardKind.Number;

    private static int NextStep(Course course, int at, int end)
    {
        for (var m = at + 1; m < end; m++)
        {
            if (course.Moments[m].Step >= 0) return m;
        }

        return end;
    }

    private static double Skipping(Course course, int ask)
    {
        var one = course.Asks[ask];
        if (one.Again) return LeaveOutAgain;
        if (Silent(course, ask)) return 0;
        return one.End - one.First <= 1 || one.Steps.Count == 1 ? LeaveOutShort : LeaveOut;
    }

    /// <summary>A recover goes without saying after its rock, and a hold always.</summary>
    public static bool Silent(Course course, int ask) => course.Asks[ask].Figure is null
        && (course.Asks[ask].Step.Kind == ActionKind.Hold || (course.Asks[ask].Step.Kind == ActionKind.Recover && ask > 0 && course.Asks[ask - 1].Step.Kind == ActionKind.Rock));

    private void StepAnywhere(HeardMove said, double pause)
    {
        for (var c = 0; c < _courses.Count; c++)
        {
            var course = _courses[c];
            for (var ask = 0; ask < course.Asks.Count; ask++)
            {
                // To the very place where one is: it is the same step said twice.
                if (Fit.Of(said, course.Asks[ask], _speaking) is not { } fits || _base[c] + course.Asks[ask].End == _bestState) continue;
                // Nor to where a part was begun a moment ago: its first step is said once more.
                if (BegunJustNow(course, ask)) continue;
                var (one, stage) = (course.Asks[ask], course.Stages[course.Asks[ask].Stage]);
                var costs = one.First == stage.First ? JumpToStage : course.Moments[one.First].InPart.Value.IsWhole && (course.Moments[one.First].InPart.Whole - 1) % _countsTo == 0 ? JumpToEight : JumpAnywhere;
                Offer(_bestState, _base[c] + one.End, _best - costs + (one.First == stage.First ? pause : 0) + fits, Placing.Ask, ask, true);
            }
        }
    }
}
