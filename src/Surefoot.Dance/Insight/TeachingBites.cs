using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight;

/// <summary>Cuts a dance into what is taught in one go.</summary>
internal sealed class TeachingBites(DanceScore score, IReadOnlyList<DanceScore> known)
{
    private readonly int _size = Bites.Sizes(score.Facts.Meter)[^1];
    private readonly List<Cut> _cuts = [];

    public ValueList<TeachingBite> All()
    {
        var bites = Bites.Of(score, _size);
        var costs = score.Roles.Where(r => r.Steps.Count > 0).Select(r => LearningLoad.Costs(score, r, bites, known)).ToList();
        if (costs.Count == 0) return [];
        for (var i = 0; i < bites.Count; i++)
        {
            var at = Stretch(bites[i]);
            Add(new(costs.Max(c => c[i].New), costs.Max(c => c[i].Mirrored), Differ(bites[i]), [at]));
        }

        foreach (var extra in score.Extras.DistinctBy(e => e.Part)) AddExtra(extra);
        return Named();
    }

    private BiteStretch Stretch(Bite bite)
    {
        var section = 0;
        while (section + 1 < score.Sections.Count && (score.Sections[section + 1].Start - Count.First).Floor <= bite.From) section++;
        return new(section, score.Sections[section].Part, bite.From - (score.Sections[section].Start - Count.First).Floor, bite.Length);
    }

    /// <summary>What costs nothing goes with what was taught before it, and so does a rest of less than half a bite of the same part.</summary>
    private void Add(Cut cut)
    {
        var before = _cuts.Count > 0 ? _cuts[^1] : null;
        var free = cut.New == 0 && cut.Mirrored == 0;
        var rest = before is not null && cut.At[0].Counts * 2 < _size && before.At[^1].Part == cut.At[0].Part && before.At[^1].Section == cut.At[0].Section;
        if (before is null || !(free || rest)) _cuts.Add(cut);
        else _cuts[^1] = new(before.New + cut.New, before.Mirrored + cut.Mirrored, before.Differ || cut.Differ, Joined(before.At, cut.At[0], rest && !free));
    }

    // A short rest is part of what is taught, so it stays one stretch with it.
    private static List<BiteStretch> Joined(List<BiteStretch> before, BiteStretch next, bool rest) =>
        rest && before is [var only] ? [only with { Counts = only.Counts + next.Counts }] : [.. before, next];

    private void AddExtra(ExtraScore extra)
    {
        var counts = score.Parts[extra.Part].Length.Ceiling;
        for (var from = 0; from < counts; from += _size)
        {
            var length = Math.Min(_size, counts - from);
            _cuts.Add(new(length, 0, score.Facts.ForCouples, [new(null, extra.Part, from, length)]));
        }
    }

    private ValueList<TeachingBite> Named()
    {
        var parts = _cuts.GroupBy(c => c.At[0].Part).ToDictionary(g => g.Key, g => g.Count());
        var seen = new Dictionary<int, int>();
        var all = new List<TeachingBite>();
        foreach (var cut in _cuts)
        {
            var part = cut.At[0].Part;
            seen[part] = seen.GetValueOrDefault(part) + 1;
            var name = score.Parts[part].Key is { Length: > 0 } key ? key : $"{all.Count + 1}";
            all.Add(new(parts[part] > 1 ? Numbered(name, seen[part]) : name, cut.New, cut.Mirrored, cut.Differ, cut.At.ToValueList()));
        }

        return all.ToValueList();
    }

    // "A2", but "1.2": a figure after a figure would read as another number.
    private static string Numbered(string name, int number) => char.IsAsciiDigit(name[^1]) ? $"{name}.{number}" : $"{name}{number}";

    private bool Differ(Bite bite)
    {
        if (score.Of(Role.Lead) is not { } lead || score.Of(Role.Follow) is not { } follow) return false;
        var (his, hers) = (CountSteps.Of(lead, score.Counts), CountSteps.Of(follow, score.Counts));
        for (var i = bite.From; i < bite.From + bite.Length; i++)
        {
            if (his[i] != hers[i]) return true;
        }

        return false;
    }

    private sealed record Cut(int New, int Mirrored, bool Differ, List<BiteStretch> At);
}
