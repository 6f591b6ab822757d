using Surefoot.Film.Hearing;
using static Surefoot.Film.Alignment.Costs;

namespace Surefoot.Film.Alignment;

/// <summary>Counts: going on by them, and being counted in.</summary>
internal sealed partial class Aligner
{
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
}
