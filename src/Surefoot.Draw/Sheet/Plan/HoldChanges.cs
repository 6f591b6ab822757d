using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>Where in the rows of a sheet the couple's hold becomes another.</summary>
internal sealed class HoldChanges
{
    /// <summary>A hold that lasts shorter than this in the middle of a row is only passed through: two counts. Working value.</summary>
    private static readonly Beats WorthALine = Beats.Of(2);

    /// <summary>A row of up to so many counts is danced as one: what it tells of holds is true at its end. Four counts; working value.</summary>
    private static readonly Beats ReadAtOnce = Beats.Of(4);

    private readonly DanceScore _score;
    private readonly RoleNames _names;
    private readonly CoupleSolution _couple;
    private readonly ValueList<HoldInForce> _all;

    /// <summary>For each moment what is in force, so that two moments with the same are told apart from two with another; see <see cref="Keys"/>.</summary>
    private readonly (string Key, bool Passing)[] _keys;

    public HoldChanges(DanceScore score, CoupleSolution couple, RoleNames names)
    {
        (_score, _couple, _names, _all) = (score, couple, names, HoldInForce.All(couple, names));
        _keys = Keys(_all);
    }

    /// <summary>What is in force when a section begins.</summary>
    public HoldInForce Before(int section)
    {
        var (lead, follow) = (_score.Of(Role.Lead)!, _score.Of(Role.Follow)!);
        var at = 0;
        for (var m = 1; m < _all.Count && IsBefore(lead, _couple.Moments[m].LeadStance) && IsBefore(follow, _couple.Moments[m].FollowStance); m++) at = m;
        return _all[at];

        // The section decides and not the count: a pick-up is danced before its part's first beat.
        bool IsBefore(RoleScore role, int stance) => stance == 0 || role.Steps[stance - 1].Section < section;
    }

    /// <summary>The holds into which a row brings the couple, "" where it leaves them as they were.</summary>
    /// <param name="told">False where the author's words are not on the sheet, so that they cannot tell it.</param>
    /// <param name="ours">True where a suggestion of ours on the same row says already what the hands do.</param>
    public string In(Section section, PartRow row, Count end, bool told, bool ours)
    {
        var ahead = section.Start - Count.First;
        var (first, last) = (LastBefore(row.From + ahead) + 1, LastBefore(end + ahead));
        if (first > last) return "";
        if (row.Kind == RowKind.Repeat) return AfterRepeat(section, row, last);
        var written = new WrittenHands(_score, _couple.Moments, section, row.From, end);
        var (before, now) = (_keys[first - 1].Key, _keys[first - 1].Key);
        var lines = new List<string>();
        for (var m = first; m <= last; m++)
        {
            if (_keys[m].Key == now) continue;
            now = _keys[m].Key;
            var until = m;
            while (until < last && _keys[until + 1].Key == now) until++;
            var left = until == last;
            // There and back within a row changes nothing for whoever dances on.
            if (left && now == before && lines.Count == 0) continue;
            if (!left && (_all[m].Name is null || _all[until + 1].At - _all[m].At < WorthALine)) continue;
            if (told && _all[m].Name is { } name && (written.Names(name) || NamedSoon(section, m, name))) continue;
            // On the way there are only hands to tell of, and only where nothing else on the row tells of them.
            if (left && _all[last].OnTheWay && _all[m].Name is null && ((told && written.TellsJoining) || ours)) continue;
            var words = _all[m].Name is null ? Unnamed(last, _all[first - 1].Joined) : _all[m].Words;
            lines.Add(left && (m == last || end - row.From <= ReadAtOnce) ? words : $"{words} from {(_all[m].At - ahead).Name}");
        }

        return string.Join("; ", lines);
    }

    // With the same hands as before only the way they stand is news.
    private string Unnamed(int m, Pairs before) => _all[m] switch
    {
        { OnTheWay: true } way => HandPhrases.Joined(way.Joined, Pairs.None, _names),
        { Place.Length: > 0 } stands when stands.Joined == before => stands.Place,
        var other => other.Words,
    };

    /// <summary>A repeat ends in the hold its words ended in before; only another is told.</summary>
    private string AfterRepeat(Section section, PartRow row, int last)
    {
        if (OurLines.StretchOf(_score, section.Part, row) is not { Changes.Count: 0 } stretch || OurLines.SourceOf(_score, section, stretch) is not { } source) return "";
        var before = LastBefore(source.Start + (stretch.SourceFrom - Count.First) + stretch.Length);
        if (_all[last].Name is not { } name || name == _all[before].Name) return "";
        return HoldPhrases.Now(name);
    }

    /// <summary>True when the author names the hold in a later row, while it is still in force: then the sheet has it already.</summary>
    private bool NamedSoon(Section section, int m, string name)
    {
        var until = m;
        while (until + 1 < _all.Count && _keys[until + 1].Key == _keys[m].Key) until++;
        var ahead = section.Start - Count.First;
        return new WrittenHands(_score, _couple.Moments, section, _all[m].At - ahead, _all[until].At - ahead + Beats.Of(1, 64)).Names(name);
    }

    private int LastBefore(Count at)
    {
        var (low, high) = (0, _all.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_all[middle].At < at) low = middle + 1;
            else high = middle;
        }

        return Math.Max(0, low - 1);
    }

    /// <summary>
    /// On the way with the same hands the old hold is still the one they are leaving; with other hands they have
    /// those and no hold. Standing without a name, hands and looks make the difference, and their height does not.
    /// </summary>
    private static (string Key, bool Passing)[] Keys(ValueList<HoldInForce> all)
    {
        var keys = new (string Key, bool Passing)[all.Count];
        for (var m = 0; m < keys.Length; m++)
        {
            var hold = all[m];
            if (hold.Name is { } name) keys[m] = (name, false);
            else if (m > 0 && hold.OnTheWay && hold.Joined == all[m - 1].Joined) keys[m] = keys[m - 1];
            else if (hold.OnTheWay) keys[m] = (hold.Joined.ToString(), true);
            else keys[m] = ($"{hold.Joined} {hold.Apart.Eighths}", false);
        }

        return keys;
    }
}
