using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Film.Hearing;
using static Surefoot.Film.Alignment.Costs;

namespace Surefoot.Film.Alignment;

/// <summary>
/// Lays what was said along the dance by dynamic programming (Bellman 1957; the walk back is Viterbi's, 1967). A state is
/// the moment of a role's course that comes next; each thing said may move it on, lead it somewhere else, or be talk. The
/// way through with the best sum wins. All weights are working values (docs/film.md).
/// </summary>
internal sealed partial class Aligner
{
    private const double Never = double.NegativeInfinity;

    private readonly List<Course> _courses;
    private readonly List<Heard> _heard;
    private readonly int _countsTo;
    private readonly double _slowest;
    private readonly int[] _base;
    private readonly int _states;
    private readonly HashSet<TextSpan> _shared;
    private readonly List<Layer> _layers = [];
    private double[] _now;
    private Layer _layer;
    private double[] _next;
    private double _best;
    private int _bestState;

    // A part was named or is to be counted, and nothing has been done since: the state stands where that begins.
    private bool _named;

    // For whom it was last said to be, since the part was named.
    private Role? _speaking;

    private sealed record Layer(int[] From, byte[] How, int[] Ask, bool[] Jumped, bool[] Same);

    /// <param name="countsTo">How far counts are counted before they begin again at one.</param>
    /// <param name="slowest">Slowest tempo of the dance in counts a minute.</param>
    private Aligner(List<Course> courses, List<Heard> heard, int countsTo, double slowest)
    {
        (_courses, _heard, _countsTo, _slowest) = (courses, heard, countsTo, slowest);
        _shared = courses.Skip(1).SelectMany(c => c.Asks).Where(a => a.Shared).Select(a => a.Source).ToHashSet();
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
            if (heard.Kind is HeardKind.Part or HeardKind.Top or HeardKind.Tally or HeardKind.CountIn) _speaking = null;
            else if (heard.Kind == HeardKind.Role) _speaking = heard.Role;
            Say(heard, pause);
            if (heard.Kind is HeardKind.Part or HeardKind.Tally or HeardKind.Restart) _named = true;
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
            var c = CourseOf(s);
            // Who says "ladies" does not go on with the lead's steps.
            Offer(s, s, _now[s] - (heard is { Kind: HeardKind.Role, Role: { } role } && role != _courses[c].Role ? NotTurning : talk), Placing.Talk, -1, false);
            switch (heard.Kind)
            {
                case HeardKind.Step: Step(heard.Move!, heard.Words, s, c); break;
                case HeardKind.Number: Number(heard, s, c); break;
                case HeardKind.CountIn: CountIn(heard, s, c); break;
                case HeardKind.Part: Part(heard, s, c); break;
                case HeardKind.Role: Turn(heard, s, c); break;
                case HeardKind.Again: Again(s, c); break;
                case HeardKind.Top: Top(s, c); break;
                case HeardKind.Restart: Restart(s, c); break;
                case HeardKind.Tally: ToStage(s, c, Current(s, c), _now[s] + 0.5 - (Unfinished(_courses[c], s - _base[c]) ? LeavingEarly : 0), Placing.Leads); break;
                default: break;
            }
        }

        if (heard.Kind == HeardKind.Step) StepAnywhere(heard.Move!, pause);
        if (heard is { Kind: HeardKind.Number, Number: 1 }) OneAnywhere(pause);
    }

    private static double TalkCosts(Heard heard) => heard.Kind switch
    {
        HeardKind.Step => heard.Move!.Bare ? heard.Move.Sides.Count > 0 ? 0.5 : 0.2 : heard.Move.Loose ? 0.5 : 1.5,
        HeardKind.Number => 0.25,
        HeardKind.CountIn => 1,
        HeardKind.Part => heard.ByName || heard.Parts.Count == 0 ? 0.1 : 0.8,
        HeardKind.Role => 0.2,
        HeardKind.Top or HeardKind.Tally or HeardKind.Restart => 0.2,
        _ => 0,
    };

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
