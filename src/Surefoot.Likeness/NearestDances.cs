namespace Surefoot.Likeness;

/// <summary>A dance that was found.</summary>
/// <param name="Key">As it was put in.</param>
/// <param name="Share">What it has in common with the dance asked about, as <see cref="Compared.Share"/>.</param>
public readonly record struct NearDance(long Key, double Share);

/// <summary>
/// Finds the dances most like one among very many: those that share most short runs of counts are really compared, the
/// others are not. Takes about 2 kB a dance. Not for several threads at once.
/// </summary>
public sealed class NearestDances
{
    /// <summary>How many are really compared. More find hardly more that is true and take longer; measured in docs/performance.md.</summary>
    public const int UsualCandidates = 1000;

    /// <summary>How many of these are compared both ways, and not only one way; as many as are asked for, if that is more. Working value.</summary>
    private const int Finalists = 200;

    private readonly CountBook _book = new();
    private readonly RunIndex _runs = new();
    private readonly Dictionary<long, int> _places = [];
    private readonly List<(long Key, int[] Counts)> _dances = [];
    private readonly Stack<int> _free = [];

    public int Size => _places.Count;

    /// <summary>Puts a dance in, in place of one of the same key. One without steps is only taken out.</summary>
    public void Put(long key, DanceSteps dance)
    {
        Remove(key);
        if (dance.Length == 0) return;
        if (!_free.TryPop(out var place))
        {
            place = _dances.Count;
            _dances.Add(default);
        }

        _dances[place] = (key, _book.Numbers(dance));
        _places.Add(key, place);
        _runs.Put(place, dance);
    }

    public void Remove(long key)
    {
        if (!_places.Remove(key, out var place)) return;
        _runs.Remove(place, _book.Dance(_dances[place].Counts));
        _dances[place] = default;
        _free.Push(place);
    }

    /// <summary>The dances most like one, the nearest first; equal ones by key.</summary>
    /// <param name="most">How many at most.</param>
    /// <param name="among">Which keys may be found; all when null.</param>
    /// <param name="candidates">How many are compared at all.</param>
    public IReadOnlyList<NearDance> Ask(DanceSteps dance, int most, Func<long, bool>? among = null, int candidates = UsualCandidates)
    {
        if (dance.Length == 0) return [];
        var asked = new AskedDance(dance, _book);
        var likely = _runs.Likeliest(dance, candidates, among is null ? null : place => among(_dances[place].Key));
        var final = Math.Max(most, Finalists);
        if (likely.Count > final) likely = [.. likely.OrderByDescending(l => asked.ShareOneWay(_dances[l.Place].Counts, l.LooksPlain, l.LooksTurned)).Take(final)];
        return Sorted([.. likely.Select(l => new NearDance(_dances[l.Place].Key, asked.Share(_dances[l.Place].Counts, l.LooksPlain, l.LooksTurned)))], most);
    }

    /// <summary>The same with every dance really compared, both ways round: for measuring, and for small collections.</summary>
    public IReadOnlyList<NearDance> AskAll(DanceSteps dance, int most, Func<long, bool>? among = null)
    {
        var asked = new AskedDance(dance, _book);
        return Sorted([.. _places.Where(p => among is null || among(p.Key)).Select(p => new NearDance(p.Key, asked.Share(_dances[p.Value].Counts, plain: true, turned: true)))], most);
    }

    private static List<NearDance> Sorted(List<NearDance> found, int most)
    {
        found.Sort((a, b) => b.Share != a.Share ? b.Share.CompareTo(a.Share) : a.Key.CompareTo(b.Key));
        return found.Count > most ? found.GetRange(0, most) : found;
    }
}
