namespace Surefoot.Likeness;

/// <summary>A dance that may be like another, by their runs.</summary>
/// <param name="Plain">Counts of both that lie in runs the other has too, of a thousand.</param>
/// <param name="Turned">The same with one of them in the mirror.</param>
internal readonly record struct Likely(int Place, int Plain, int Turned)
{
    public int Best => Math.Max(Plain, Turned);

    /// <summary>Whether it may fit as it is. Whichever foot fits better by the runs is tried; both where that is not plain. Working value.</summary>
    public bool LooksPlain => Plain * 2 >= Turned;

    /// <summary>Whether it may fit begun on the other foot.</summary>
    public bool LooksTurned => Turned * 2 >= Plain;
}

/// <summary>For every run the dances that have it, so that only dances with something in common are met at all.</summary>
internal sealed class RunIndex
{
    private readonly Dictionary<uint, List<Entry>> _dances = [];
    private readonly List<int> _lengths = [];
    private int[] _plain = [];
    private int[] _turned = [];

    /// <param name="place">A place that is free.</param>
    public void Put(int place, DanceSteps dance)
    {
        while (_lengths.Count <= place) _lengths.Add(0);
        _lengths[place] = dance.Length;
        foreach (var (run, tally) in StepRuns.Of(dance))
        {
            if (!_dances.TryGetValue(run, out var dances)) _dances.Add(run, dances = new(1));
            dances.Add(new(place, tally));
        }
    }

    public void Remove(int place, DanceSteps dance)
    {
        foreach (var run in StepRuns.Of(dance).Keys)
        {
            var dances = _dances[run];
            dances.RemoveAll(d => d.Place == place);
            if (dances.Count == 0) _dances.Remove(run);
        }
    }

    /// <summary>The dances that share most with one, in no order; fewer where fewer share anything.</summary>
    /// <param name="among">Which places may be named; all when null.</param>
    public List<Likely> Likeliest(DanceSteps dance, int most, Func<int, bool>? among)
    {
        Count(dance);
        var found = new List<Likely>();
        var tally = new int[1001];
        for (var place = 0; place < _lengths.Count; place++)
        {
            if ((_plain[place] | _turned[place]) == 0 || (among is not null && !among(place))) continue;
            // Two roles in each of both dances.
            var whole = 2 * (dance.Length + _lengths[place]);
            // Runs that are their own mirror images count for both ways, so that there can be more than all.
            var likely = new Likely(place, Math.Min(1000, 1000 * _plain[place] / whole), Math.Min(1000, 1000 * _turned[place] / whole));
            found.Add(likely);
            tally[likely.Best]++;
        }

        if (found.Count <= most) return found;
        var (least, taken) = (1000, 0);
        while (taken + tally[least] <= most) taken += tally[least--];
        // Of those that share as much as the last, the first ones.
        var room = most - taken;
        found.RemoveAll(f => f.Best < least || (f.Best == least && room-- <= 0));
        return found;
    }

    // What either has of the other's runs, counted as often as it dances them.
    private void Count(DanceSteps dance)
    {
        if (_plain.Length < _lengths.Count) (_plain, _turned) = (new int[_lengths.Capacity], new int[_lengths.Capacity]);
        Array.Clear(_plain);
        Array.Clear(_turned);
        foreach (var (run, own) in StepRuns.Of(dance))
        {
            if (!_dances.TryGetValue(run, out var dances)) continue;
            foreach (var (place, its) in dances)
            {
                _plain[place] += Shared(own.Plain, its.Plain) + Shared(own.Turned, its.Turned);
                _turned[place] += Shared(own.Plain, its.Turned) + Shared(own.Turned, its.Plain);
            }
        }

        static int Shared(int a, int b) => a > 0 && b > 0 ? a + b : 0;
    }

    private readonly record struct Entry(int Place, RunTally Tally);
}
