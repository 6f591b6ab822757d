using Surefoot.Film.Hearing;
using static Surefoot.Film.Alignment.Costs;

namespace Surefoot.Film.Alignment;

/// <summary>What leads somewhere: a part named, the other dancer, "again".</summary>
internal sealed partial class Aligner
{
    // The part that was just gone through, when its end is where the next begins.
    private int Current(int s, int c)
    {
        var at = s - _base[c];
        return at == 0 ? 0 : _named ? _courses[c].StageAt(at) : _courses[c].StageAt(at - 1);
    }

    private void ToStage(int s, int c, int stage, double value, Placing how) => Offer(s, _base[c] + _courses[c].Stages[stage].First, value, how, -1, true);

    private void Part(Heard heard, int s, int c)
    {
        var course = _courses[c];
        var at = s - _base[c];
        var early = Unfinished(course, at) ? LeavingEarly : 0;
        if (heard.Parts.Count == 0)
        {
            // A part, and which one was not heard: what is done then says it.
            for (var stage = 0; stage < course.Stages.Count; stage++) ToStage(s, c, stage, _now[s] - early - UnknownPart, Placing.Leads);
            return;
        }

        var seen = new HashSet<int>();
        for (var stage = 0; stage < course.Stages.Count; stage++)
        {
            var one = course.Stages[stage];
            if (heard.Parts.Contains(one.Part))
            {
                var value = _now[s] - early + (heard.ByName ? 0.8 : 1.5) - (seen.Add(one.Part) ? 0 : DancedAgain);
                ToStage(s, c, stage, value, Placing.Leads);
                // Who begins a part begins with the lead, or with both.
                if (c > 0 && stage < _courses[0].Stages.Count && _courses[0].Stages[stage].Part == one.Part) ToStage(s, 0, stage, value, Placing.Leads);
            }
            else if (!heard.ByName && (one.First == at || stage == Current(s, c) + 1 || stage == NextNew(course, Current(s, c))))
            {
                // Where the next part would begin anyway, or all but, a name is hardly said of another.
                ToStage(s, c, stage, _now[s] - (one.First == at ? 0.7 : stage == NextNew(course, Current(s, c)) && NearlyAt(course, Current(s, c), at) ? MisnamingNext : Misnaming), Placing.Misnames);
            }
        }
    }

    // In the middle of a part, with steps before it ends that nobody has said.
    private static bool Unfinished(Course course, int at)
    {
        if (at == 0 || at >= course.Moments.Count || course.Moments[at].Stage != course.Moments[at - 1].Stage) return false;
        for (var ask = course.AskFrom(at); ask < course.Asks.Count && course.Asks[ask].Stage == course.Moments[at].Stage; ask++)
        {
            if (!course.Asks[ask].Again && !Silent(course, ask)) return true;
        }

        return false;
    }

    // Little of a part is left, or only what is danced again: "repeat that" is easily not heard.
    private static bool NearlyAt(Course course, int stage, int at) => course.Stages[stage].End - at <= NearlyOver
        || (course.AskFrom(at) is var ask && ask < course.Asks.Count && course.Asks[ask] is { Again: true } one && one.Stage == stage && (one.AgainUntil >= course.Asks.Count || course.Asks[one.AgainUntil].Stage != stage));

    // Parts are explained once, whatever the order in which they are danced.
    private static int NextNew(Course course, int stage)
    {
        for (var next = stage + 1; next < course.Stages.Count; next++)
        {
            if (!course.Stages.Take(next).Any(s => s.Part == course.Stages[next].Part)) return next;
        }

        return -1;
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
            if (same >= 0) Offer(s, _base[other] + same, _now[s] + (heard.Role is null && other > 0 ? 0 : 0.3) - (heard.Role is not null && other != c && BeginsAgain(to, same) ? OtherDancesAgain : 0), Placing.Turns, -1, other != c);
            if (heard.Role is null) continue;
            if (_named)
            {
                ToStage(s, other, current, _now[s] + 0.3, Placing.Turns);
                continue;
            }

            // Back to where the other's row, or the part, began.
            var ask = same >= 0 ? to.AskFrom(same) : -1;
            for (var back = 1; back <= 4 && ask - back >= 0 && to.Asks[ask - back].Stage == current; back++) Offer(s, _base[other] + to.Asks[ask - back].First, _now[s] + 0.3 - ((other == 0 ? LeadBackInTurn : BackInTurn) * back) - (to.Asks[ask - back].Shared || (other == 0 && SharedByFollow(to.Asks[ask - back])) ? SharedInTurn : 0), Placing.Turns, -1, true);
            ToStage(s, other, current, _now[s] - PartInTurn, Placing.Turns);
        }
    }

    // From here on words are danced that were danced before.
    private static bool BeginsAgain(Course course, int at)
    {
        var ask = course.AskFrom(at);
        return ask > 0 && ask < course.Asks.Count && course.Asks[ask] is { Again: true } one && one.First == at && !course.Asks[ask - 1].Again && course.Asks[ask - 1].Stage == one.Stage;
    }

    private bool SharedByFollow(Ask ask) => _courses.Count > 1 && _shared.Contains(ask.Source);

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

    // From the top; "at tempo" right after a part was named may be that part only.
    private void Top(int s, int c)
    {
        Offer(s, _base[c], _now[s] + 0.5, Placing.Leads, -1, true);
        if (_named && s > _base[c]) Offer(s, s, _now[s] + 0.5, Placing.Leads, -1, true);
    }

    // The part again from its beginning, or the whole run.
    private void Restart(int s, int c)
    {
        ToStage(s, c, Current(s, c), _now[s] + 0.5, Placing.Leads);
        ToStage(s, c, 0, _now[s] + 0.4, Placing.Leads);
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
}
