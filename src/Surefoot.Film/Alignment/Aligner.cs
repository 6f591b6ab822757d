using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Alignment;

/// <summary>
/// Lays what was said along the dance by dynamic programming (Bellman 1957; the walk back is Viterbi's, 1967). A state is
/// the moment of a role's course that comes next; each thing said may move it on, lead it somewhere else, or be talk. The
/// way through with the best sum wins. All weights are working values (docs/film.md).
/// </summary>
internal sealed class Aligner
{
    private const double Never = double.NegativeInfinity;

    /// <summary>What is left out costs; a recover after its rock is heard without being said.</summary>
    private const double LeaveOut = 2.2;
    private const double LeaveOutShort = 1.4;
    private const double LeaveOutAgain = 0.6;
    private const int MostLeftOut = 4;

    /// <summary>Leaving out the end of a part, or the beginning of the next, without a word.</summary>
    private const double AcrossParts = 1.2;
    private const double JumpToStage = 6;
    private const double JumpToEight = 7;
    private const double JumpAnywhere = 8.5;
    private const double OtherDancer = 2.5;
    private const double Misnaming = 2.5;
    private const double Wrap = 1.5;

    private readonly List<Course> _courses;
    private readonly List<Heard> _heard;
    private readonly int _countsTo;
    private readonly double _slowest;
    private readonly int[] _base;
    private readonly int _states;
    private readonly List<Layer> _layers = [];
    private double[] _now;
    private Layer _layer;
    private double[] _next;
    private double _best;
    private int _bestState;

    // A part was named or is to be counted, and nothing has been done since: the state stands where that begins.
    private bool _named;

    private sealed record Layer(int[] From, byte[] How, int[] Ask, bool[] Jumped, bool[] Same);

    /// <param name="countsTo">How far counts are counted before they begin again at one.</param>
    /// <param name="slowest">Slowest tempo of the dance in counts a minute.</param>
    private Aligner(List<Course> courses, List<Heard> heard, int countsTo, double slowest)
    {
        (_courses, _heard, _countsTo, _slowest) = (courses, heard, countsTo, slowest);
        _base = new int[courses.Count];
        for (var c = 1; c < courses.Count; c++) _base[c] = _base[c - 1] + courses[c - 1].Moments.Count + 1;
        _states = _base[^1] + courses[^1].Moments.Count + 1;
        _now = new double[_states];
        _next = new double[_states];
        _layer = null!;
    }

    /// <summary>Where everything belongs, and how well it all fits: comparable between two hearings of one film.</summary>
    public static (List<Placed> Placed, double Score) Align(List<Course> courses, List<Heard> heard, int countsTo, double slowest) =>
        courses.Count == 0 || courses[0].Asks.Count == 0 ? ([], 0) : new Aligner(courses, heard, countsTo, slowest).Run();

    private (List<Placed>, double) Run()
    {
        Array.Fill(_now, Never);
        for (var c = 0; c < _courses.Count; c++)
        {
            foreach (var stage in _courses[c].Stages) _now[_base[c] + stage.First] = (c == 0 ? 0 : -0.5) - (stage.First == 0 ? 0 : 1);
        }

        var lastEnd = 0.0;
        foreach (var heard in _heard)
        {
            _layer = new(new int[_states], new byte[_states], new int[_states], new bool[_states], new bool[_states]);
            _layers.Add(_layer);
            Array.Fill(_next, Never);
            (_best, _bestState) = (Never, 0);
            for (var s = 0; s < _states; s++)
            {
                if (_now[s] > _best) (_best, _bestState) = (_now[s], s);
            }

            var pause = Math.Min(1.5, 0.4 * Math.Max(0, heard.From - lastEnd));
            Say(heard, pause);
            if (heard.Kind is HeardKind.Part or HeardKind.Tally) _named = true;
            else if (heard.Kind is HeardKind.Step or HeardKind.Number or HeardKind.Again or HeardKind.CountIn) _named = false;
            Relax();
            (_now, _next) = (_next, _now);
            if (heard.Kind != HeardKind.Talk) lastEnd = heard.To;
        }

        return (Back(), _now.Max());
    }

    private void Say(Heard heard, double pause)
    {
        var talk = TalkCosts(heard);
        for (var s = 0; s < _states; s++)
        {
            // A way that is far behind does not catch up.
            if (_now[s] < _best - 30) continue;
            Offer(s, s, _now[s] - talk, Placing.Talk, -1, false);
            var c = CourseOf(s);
            switch (heard.Kind)
            {
                case HeardKind.Step: Step(heard.Move!, heard.Words, s, c); break;
                case HeardKind.Number: Number(heard, s, c); break;
                case HeardKind.CountIn: CountIn(heard, s, c); break;
                case HeardKind.Part: Part(heard, s, c); break;
                case HeardKind.Role: Turn(heard, s, c); break;
                case HeardKind.Again: Again(s, c); break;
                case HeardKind.Top: Offer(s, _base[c], _now[s] + 0.5, Placing.Leads, -1, true); break;
                case HeardKind.Tally: ToStage(s, c, Current(s, c), _now[s] + 0.5, Placing.Leads); break;
                default: break;
            }
        }

        if (heard.Kind == HeardKind.Step) StepAnywhere(heard.Move!, pause);
        if (heard is { Kind: HeardKind.Number, Number: 1 }) OneAnywhere(pause);
    }

    private static double TalkCosts(Heard heard) => heard.Kind switch
    {
        HeardKind.Step => heard.Move!.Bare ? 0.2 : heard.Move.Loose ? 0.5 : 1.5,
        HeardKind.Number => 0.25,
        HeardKind.CountIn => 1,
        HeardKind.Part => heard.ByName ? 0.1 : 0.8,
        HeardKind.Role => 0.2,
        HeardKind.Top or HeardKind.Tally => 0.2,
        _ => 0,
    };

    private void Step(HeardMove said, int words, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        var ask = course.AskFrom(at);
        var costs = 0.0;
        for (var left = 0; left <= MostLeftOut && ask < course.Asks.Count; left++)
        {
            var one = course.Asks[ask];
            if (Fit.Of(said, one) is { } fits)
            {
                Offer(s, _base[c] + one.End, _now[s] - costs + fits, Placing.Ask, ask, false);
                // "Walk, walk": one word a step.
                if (one.Breaks.Count > 0 && words <= 2 && said.Sides.Count <= 1) Offer(s, _base[c] + one.Breaks[0], _now[s] - costs + 1.2, Placing.Step, ask, false);
            }

            if (one.Figure is not null && Fit.OfStep(said, one.Step) is { } begins) Offer(s, _base[c] + NextStep(course, one.First, one.End), _now[s] - costs + begins, Placing.Step, ask, false);
            costs += Skipping(course, ask);
            if (left == 0 && at > 0 && course.StageAt(at - 1) != one.Stage) costs += AcrossParts;
            ask = one.Again && one.AgainUntil > ask ? one.AgainUntil : ask + 1;
        }

        // Inside a figure, step by step.
        if (at < course.Moments.Count && course.Moments[at] is { Ask: >= 0 } moment && course.Asks[moment.Ask] is var inside && inside.First < at && inside.Figure is not null)
        {
            var steps = inside.Steps;
            var passed = Enumerable.Range(inside.First, at - inside.First).Count(m => course.Moments[m].Step >= 0);
            if (passed < steps.Count && Fit.OfStep(said, steps[passed]) is { } goes) Offer(s, _base[c] + NextStep(course, at, inside.End), _now[s] + goes, Placing.Step, moment.Ask, false);
            if (inside.Breaks.Count > 0 && words <= 2 && said.Sides.Count <= 1 && said.Figure is not null && Fit.Of(said with { Sides = [] }, inside) is > 2 && passed < steps.Count
                && (said.Sides.Count == 0 || steps[passed].Foot.Single() == said.Sides[0]))
            {
                Offer(s, _base[c] + NextStep(course, at, inside.End), _now[s] + 1.2, Placing.Step, moment.Ask, false);
            }
        }

        // "One rock forward": the count was said before its step.
        var counted = at - 1;
        if (counted >= 0 && counted < course.Moments.Count && course.Moments[counted].Ask >= 0 && course.Asks[course.Moments[counted].Ask] is var just && just.First == counted && LastWasCount() && Fit.Of(said, just) is { } again)
        {
            Offer(s, _base[c] + just.End, _now[s] + again - 0.5, Placing.Ask, course.Moments[counted].Ask, false);
        }
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
        return one.End - one.First <= 1 ? LeaveOutShort : LeaveOut;
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
                if (Fit.Of(said, course.Asks[ask]) is not { } fits || _base[c] + course.Asks[ask].End == _bestState) continue;
                var (one, stage) = (course.Asks[ask], course.Stages[course.Asks[ask].Stage]);
                var costs = one.First == stage.First ? JumpToStage : course.Moments[one.First].InPart.Value.IsWhole && (course.Moments[one.First].InPart.Whole - 1) % _countsTo == 0 ? JumpToEight : JumpAnywhere;
                Offer(_bestState, _base[c] + one.End, _best - costs + (one.First == stage.First ? pause : 0) + fits, Placing.Ask, ask, true);
            }
        }
    }

    private void Number(Heard heard, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        if (heard.Number <= 0)
        {
            // Quick is one count, slow two.
            var wanted = heard.Number == 0 ? 1 : 2;
            for (var m = at; m < course.Moments.Count; m++)
            {
                if (course.Moments[m].Whole && --wanted == 0)
                {
                    Offer(s, _base[c] + m + 1, _now[s] + 0.6, Placing.Count, course.Moments[m].Ask, false);
                    return;
                }
            }

            return;
        }

        var passed = 0;
        for (var m = at; m < course.Moments.Count && passed <= 3; m++)
        {
            var moment = course.Moments[m];
            if (!moment.Whole) continue;
            if (Names(moment, heard.Number))
            {
                var half = m + 1 < course.Moments.Count && !course.Moments[m + 1].Whole;
                Offer(s, _base[c] + m + 1, _now[s] + 1 - (0.6 * passed) + (half == heard.AndAfter ? 0.2 : -0.2), Placing.Count, moment.Ask, false);
                break;
            }

            passed++;
        }

        // "Recover, two": the count of what was just said.
        for (var m = at - 1; m >= 0 && m >= at - 3; m--)
        {
            if (!course.Moments[m].Whole) continue;
            if (Names(course.Moments[m], heard.Number)) Offer(s, s, _now[s] + 0.1, Placing.Talk, -1, false);
            break;
        }
    }

    private bool Names(Moment moment, int number) => moment.InPart.Whole == number || ((moment.InPart.Whole - 1) % _countsTo) + 1 == number;

    private void OneAnywhere(double pause)
    {
        for (var c = 0; c < _courses.Count; c++)
        {
            foreach (var stage in _courses[c].Stages) Offer(_bestState, _base[c] + stage.First + 1, _best - JumpToStage + 1 + pause, Placing.Count, _courses[c].Moments[stage.First].Ask, true);
        }
    }

    // The part that was just gone through, when its end is where the next begins.
    private int Current(int s, int c)
    {
        var at = s - _base[c];
        return at == 0 ? 0 : _named ? _courses[c].StageAt(at) : _courses[c].StageAt(at - 1);
    }

    private void ToStage(int s, int c, int stage, double value, Placing how) => Offer(s, _base[c] + _courses[c].Stages[stage].First, value, how, -1, true);

    private void CountIn(Heard heard, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        var fast = heard.Beat > 0 && 60 / heard.Beat > 0.85 * _slowest;
        var current = Current(s, c);
        for (var stage = 0; stage < course.Stages.Count; stage++)
        {
            var first = course.Stages[stage].First;
            var value = _now[s] + (first == 0 ? 1.5 + (fast ? 0.8 : 0) : stage == current ? 1.5 + (fast ? 0 : 0.8) : first == at ? 1.5 : -0.5);
            ToStage(s, c, stage, value, Placing.Leads);
        }

        // It may be counting after all.
        if (at < course.Moments.Count && course.Moments[at].Whole && Names(course.Moments[at], _countsTo - 3) && at + 4 <= course.Moments.Count)
        {
            var (m, wanted) = (at, 4);
            for (; m < course.Moments.Count && wanted > 0; m++) wanted -= course.Moments[m].Whole ? 1 : 0;
            Offer(s, _base[c] + m, _now[s] + 2, Placing.Count, course.Moments[at].Ask, false);
        }
    }

    private void Part(Heard heard, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        var seen = new HashSet<int>();
        for (var stage = 0; stage < course.Stages.Count; stage++)
        {
            var one = course.Stages[stage];
            if (heard.Parts.Contains(one.Part))
            {
                ToStage(s, c, stage, _now[s] + (heard.ByName ? 0.8 : 1.5) - (seen.Add(one.Part) || one.First == at ? 0 : 0.4), Placing.Leads);
            }
            else if (!heard.ByName && (one.First == at || stage == Current(s, c) + 1))
            {
                // Where the next part would begin anyway, a name is hardly said of another.
                ToStage(s, c, stage, _now[s] - (one.First == at ? 0.7 : Misnaming), Placing.Misnames);
            }
        }
    }

    private void Turn(Heard heard, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        var current = Current(s, c);
        for (var other = 0; other < _courses.Count; other++)
        {
            if (heard.Role is { } role && _courses[other].Role != role) continue;
            var to = _courses[other];
            var same = Twin(course, at, to);
            if (same >= 0) Offer(s, _base[other] + same, _now[s] + (heard.Role is null && other > 0 ? 0 : 0.3), Placing.Turns, -1, other != c);
            if (heard.Role is null) continue;
            if (_named)
            {
                ToStage(s, other, current, _now[s] + 0.3, Placing.Turns);
                continue;
            }

            // Back to where the other's row, or the part, began.
            var ask = same >= 0 ? to.AskFrom(same) : -1;
            for (var back = 1; back <= 4 && ask - back >= 0 && to.Asks[ask - back].Stage == current; back++) Offer(s, _base[other] + to.Asks[ask - back].First, _now[s] + 0.3 - (0.05 * back), Placing.Turns, -1, true);
            ToStage(s, other, current, _now[s] + 0.2, Placing.Turns);
        }
    }

    /// <summary>The same count in another role's course; -1 where it has none.</summary>
    private static int Twin(Course a, int at, Course b)
    {
        if (ReferenceEquals(a, b)) return at;
        if (at >= a.Moments.Count) return b.Moments.Count;
        var moment = a.Moments[at];
        if (moment.Stage >= b.Stages.Count) return -1;
        for (var m = b.Stages[moment.Stage].First; m < b.Stages[moment.Stage].End; m++)
        {
            if (b.Moments[m].InPart >= moment.InPart) return m;
        }

        return -1;
    }

    private void Again(int s, int c)
    {
        var course = _courses[c];
        var ask = course.AskFrom(s - _base[c]);
        if (ask < course.Asks.Count && course.Asks[ask] is { Again: true } one)
        {
            var to = one.AgainUntil < course.Asks.Count && course.Asks[one.AgainUntil].Stage == one.Stage ? course.Asks[one.AgainUntil].First : course.Stages[one.Stage].End;
            Offer(s, _base[c] + to, _now[s] + 1, Placing.Again, ask, false);
            Offer(s, s, _now[s] + 0.9, Placing.Again, -1, false);
        }

        ToStage(s, c, Current(s, c), _now[s] - 1, Placing.Leads);
    }

    private int CourseOf(int s)
    {
        var c = _courses.Count - 1;
        while (_base[c] > s) c--;
        return c;
    }

    private void Offer(int from, int to, double value, Placing how, int ask, bool jumped)
    {
        if (value <= _next[to]) return;
        _next[to] = value;
        _layer.From[to] = from;
        _layer.How[to] = (byte)how;
        _layer.Ask[to] = ask;
        _layer.Jumped[to] = jumped;
        _layer.Same[to] = false;
    }

    // From the end of the repeat to its beginning, and, at a price, to the other dancer at the same count.
    private void Relax()
    {
        for (var c = 0; c < _courses.Count; c++)
        {
            var course = _courses[c];
            Slide(_base[c] + course.RepeatEnd, _base[c], Wrap);
            foreach (var stage in course.Stages.Where(s => s.Extra)) Slide(_base[c] + stage.End, _base[c], Wrap);
            for (var other = 0; other < _courses.Count; other++)
            {
                if (other == c) continue;
                for (var m = 0; m <= course.Moments.Count; m++)
                {
                    if (_next[_base[c] + m] > Never && Twin(course, m, _courses[other]) is var twin and >= 0) Slide(_base[c] + m, _base[other] + twin, OtherDancer);
                }
            }
        }
    }

    private void Slide(int from, int to, double costs)
    {
        if (_next[from] - costs <= _next[to] || (_layer.Same[from] && _layer.From[from] == to)) return;
        _next[to] = _next[from] - costs;
        _layer.From[to] = from;
        _layer.Same[to] = true;
    }

    private List<Placed> Back()
    {
        var state = 0;
        for (var s = 1; s < _states; s++)
        {
            if (_now[s] > _now[state]) state = s;
        }

        var placed = new Placed[_heard.Count];
        for (var i = _heard.Count - 1; i >= 0; i--)
        {
            var layer = _layers[i];
            var slid = false;
            for (var hops = 0; layer.Same[state] && hops < 8; hops++)
            {
                state = layer.From[state];
                slid = true;
            }

            var c = CourseOf(state);
            var from = layer.From[state];
            placed[i] = new(_heard[i], (Placing)layer.How[state], c, CourseOf(from) == c ? from - _base[c] : -1, state - _base[c], layer.Ask[state], layer.Jumped[state]);
            if (slid && i + 1 < placed.Length && placed[i + 1] is { } next) placed[i + 1] = next with { Jumped = next.Jumped };
            state = from;
        }

        return [.. placed];
    }
}
