using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Looks for what would mend an impossible stretch, by changing the dance in one modest way at a time and
/// solving it again. Only what works is offered.
/// </summary>
internal sealed class Repairs(CoupleSetting setting, ILinearSolver solver, OutOfPlace place)
{
    /// <summary>How many are offered.</summary>
    private const int Most = 2;

    /// <summary>How many lines of words, from the end of the repeat, are tried where only its end is out of place.</summary>
    private const int LinesBack = 6;

    /// <summary>On how many moments after the trouble taking hands again is tried.</summary>
    private const int TakeAgain = 6;

    /// <summary>Metres against the line of dance in a repeat that would be the next trouble. Working value, as for going backwards in a part.</summary>
    private const double Backwards = 0.5;

    private readonly List<Repair> _found = [];

    public ValueList<Repair> Find()
    {
        foreach (var kind in Enum.GetValues<RepairKind>())
        {
            // Less modest changes are not looked at once enough is found.
            if (_found.Count(r => r.Whole) >= Most) break;
            if (kind == RepairKind.LetGo) LetGo();
            else if (place.Kind == OutOfPlaceKind.Track) Both(kind);
            else if (place.Kind == OutOfPlaceKind.Loop) AtTheEnd(kind);
            else Stretch(kind);
        }

        // What only moves the trouble on is offered where nothing mends the whole repeat.
        // Letting go mends much and changes what the dance is; a change of steps is offered beside it.
        if (_found.Exists(r => r.Whole && r.Kind != RepairKind.LetGo)) return _found.Where(r => r.Whole).Take(Most).ToValueList();
        var letGo = _found.Where(r => r.Kind == RepairKind.LetGo).Take(1).ToList();
        return _found.Where(r => r.Kind != RepairKind.LetGo).Take(Most - letGo.Count).Concat(letGo).ToValueList();
    }

    // One dancer's words from the beginning of the proof to where they are furthest out; forward before back.
    private void Stretch(RepairKind kind)
    {
        foreach (var forward in kind is RepairKind.OtherWay or RepairKind.Shuffles ? (bool[])[true, false] : [false])
        {
            foreach (var role in setting.Score.Roles)
            {
                var (from, to) = WholeWords(role, place.From, place.Worst);
                // Of shuffles as few as will do.
                foreach (var last in kind == RepairKind.Shuffles ? (Count[])[from + Beats.One, from + Beats.Of(3)] : [to])
                {
                    if (Try(new Repair(kind, role.Role, from, last, forward, Whole: true))) return;
                }
            }
        }
    }

    private void AtTheEnd(RepairKind kind)
    {
        foreach (var role in setting.Score.Roles)
        {
            foreach (var (from, to) in LastLines(role))
            {
                if (Try(kind, role.Role, from, to)) return;
            }
        }
    }

    // The lane is left by both together.
    private void Both(RepairKind kind)
    {
        if (kind is not (RepairKind.OwnLength or RepairKind.OtherWay or RepairKind.OnTheSpot)) return;
        foreach (var (from, to) in LastLines(setting.Lead.Role))
        {
            if (Try(kind, null, from, to)) return;
        }
    }

    private bool Try(RepairKind kind, Role? role, Count from, Count to) =>
        (kind == RepairKind.OtherWay && Try(new Repair(kind, role, from, to, Forward: true, Whole: true))) || Try(new Repair(kind, role, from, to, Forward: false, Whole: true));

    private bool Try(Repair repair)
    {
        if (RepairedSteps.Of(setting.Score, repair) is not { } score || CoupleSetting.Of(score, setting.Limits) is not { } mended) return false;
        return Works(mended, repair.Kind == RepairKind.Shuffles ? repair : RepairedSteps.Trimmed(setting.Score, score, repair));
    }

    // True when the whole repeat is mended; a repair that mends only the trouble is kept as well.
    private bool Works(CoupleSetting mended, Repair repair)
    {
        var moments = mended.Moments;
        var whole = new CoupleProgram(mended);
        whole.Keep(0, moments.Count - 1);
        whole.ComeBack();
        if (place.Kind == OutOfPlaceKind.Track) whole.KeepTheLane();
        if (whole.Solve(solver) is { InPlace: true } places)
        {
            // A dance that goes round the room the wrong way is not mended.
            if (mended.Lane is not null && mended.Dance(places.Lead, places.Follow, places.FollowStart).Of(Role.Lead)!.Travel.X < -Backwards) return false;
            _found.Add(repair);
            return true;
        }

        if (place.Kind is OutOfPlaceKind.Track or OutOfPlaceKind.Loop || repair.Kind == RepairKind.LetGo) return false;
        var last = moments.FindLastIndex(m => m.At <= (repair.To > place.Worst ? repair.To : place.Worst));
        var part = new CoupleProgram(mended, last);
        part.Keep(0, last);
        if (part.Solve(solver) is { InPlace: true }) _found.Add(repair with { Whole = false });
        return false;
    }

    // Hands that are let go ask for nothing until they are taken again.
    private void LetGo()
    {
        if (place.Kind is not (OutOfPlaceKind.Hold or OutOfPlaceKind.Reach)) return;
        var moments = setting.Moments;
        var from = moments.FindIndex(m => m.At >= place.From);
        var worst = moments.FindIndex(m => m.At >= place.Worst);
        for (var again = worst + 1; again < moments.Count && again <= worst + TakeAgain; again++)
        {
            // What the page says of hands or holds there would no longer be true.
            if (moments[again - 1].Stated is not null || moments[again - 1].Joined != moments[from].Joined) return;
            if (moments[again].Turning || moments[again - 1].Turning) continue;
            var free = new List<Moment>(moments);
            for (var m = from; m < again; m++) free[m] = moments[m] with { Where = new(null, true, moments[m].Where.Centre, double.PositiveInfinity) };
            if (Works(setting with { Moments = free }, new(RepairKind.LetGo, null, place.From, moments[again].At, false, true))) return;
        }
    }

    // Words are changed as a whole: from the first to the last action of every line that is touched.
    private static (Count From, Count To) WholeWords(RoleScore role, Count from, Count to)
    {
        var (first, last) = (from, to);
        for (var i = 0; i < role.Steps.Count; i++)
        {
            if (role.Steps[i].At < from || role.Steps[i].At > to) continue;
            var (a, b) = HandTimes.Stretch(role, i);
            if (role.Steps[a].At < first) first = role.Steps[a].At;
            if (role.Steps[b].At > last) last = role.Steps[b].At;
        }

        return (first, last);
    }

    private static IEnumerable<(Count From, Count To)> LastLines(RoleScore role)
    {
        var i = role.Steps.Count - 1;
        for (var line = 0; line < LinesBack && i >= 0; line++)
        {
            var (first, last) = HandTimes.Stretch(role, i);
            yield return (role.Steps[first].At, role.Steps[last].At);
            i = first - 1;
        }
    }
}
