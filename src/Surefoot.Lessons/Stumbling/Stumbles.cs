using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;

namespace Surefoot.Lessons.Stumbling;

/// <summary>A place at which learners stumble, and over what.</summary>
/// <param name="At">The count of the repeat.</param>
/// <param name="Counts">The same counted in its part, as the lines of a sheet are: "3&amp;4".</param>
/// <param name="Says">What it is, as the rest of a sentence: "half-counts", "½ right".</param>
public sealed record Stumble(Count At, string Counts, string Says);

/// <summary>
/// Where learners stumble, found from the steps: at the joint with what came before, at turns of a quarter and more,
/// at half-counts, where the hands change, and where one foot acts twice in a row. What learners stumble over is
/// common practice, no source.
/// </summary>
public static class Stumbles
{
    /// <summary>Turns from this on are told: a quarter, in eighths. Working value.</summary>
    private const int LeastTurn = 2;

    public static ValueList<Stumble> Of(DanceScore score, TeachingBite bite)
    {
        var stretch = bite.Stretches[0];
        if (stretch.Section is not { } section) return [];
        var from = score.Sections[section].Start + Beats.Of(stretch.From);
        var found = new List<Stumble>();
        foreach (var role in score.Roles)
        {
            var who = score.Roles.Count > 1 ? $"{role.Role.Word()}: " : "";
            var near = new Near(score, section, role, from, from + Beats.Of(stretch.Counts));
            found.AddRange(near.All().Select(s => s with { Says = who + s.Says }));
        }

        found.AddRange(Hands(score, section, stretch));
        return Shared(found).OrderBy(s => s.At).ThenBy(s => s.Says, StringComparer.Ordinal).ToValueList();
    }

    /// <summary>What is the same for both roles is said once.</summary>
    private static IEnumerable<Stumble> Shared(List<Stumble> found)
    {
        const string lead = "lead: ", follow = "follow: ";
        var all = found.ToHashSet();
        foreach (var one in found)
        {
            if (one.Says.StartsWith(lead, StringComparison.Ordinal) && all.Contains(one with { Says = follow + one.Says[lead.Length..] })) yield return one with { Says = one.Says[lead.Length..] };
            else if (!one.Says.StartsWith(follow, StringComparison.Ordinal) || !all.Contains(one with { Says = lead + one.Says[follow.Length..] })) yield return one;
        }
    }

    private static IEnumerable<Stumble> Hands(DanceScore score, int section, BiteStretch stretch)
    {
        var first = Count.First + Beats.Of(stretch.From);
        foreach (var at in score.Hands.Where(h => h.Part == stretch.Part && h.Words.Verb is not (HandVerb.Keep or HandVerb.Placed) && h.At >= first && h.At < first + Beats.Of(stretch.Counts)).Select(h => h.At).Distinct())
        {
            yield return new(score.Sections[section].Start + (at - Count.First), at.Name, "the hands change");
        }
    }

    /// <summary>The steps of one role in a bite, with the one before it.</summary>
    private sealed class Near
    {
        private readonly Count _start;
        private readonly List<ScoreStep> _steps;
        private readonly ScoreStep? _before;

        public Near(DanceScore score, int section, RoleScore role, Count from, Count end)
        {
            _start = score.Sections[section].Start;
            _steps = [.. role.Steps.Where(s => s.Kind != ActionKind.Hold && s.At >= from && s.At < end)];
            _before = role.Steps.LastOrDefault(s => s.Kind != ActionKind.Hold && s.At < from);
        }

        public IEnumerable<Stumble> All() => [.. Joint(), .. Turns(), .. Halves(), .. SameFoot()];

        private IEnumerable<Stumble> Joint()
        {
            if (_before is not { } before || _steps.Count == 0) yield break;
            var first = _steps[0];
            yield return new(first.At, $"into {Named(first)}", $"from {StepWords.Of(before, before.Weight)} to {StepWords.Of(first, before.Weight)}");
        }

        private IEnumerable<Stumble> Turns()
        {
            for (var i = 0; i < _steps.Count;)
            {
                var (first, turn, until) = (_steps[i], Turn.None, i);
                // The steps of one figure turn together.
                while (until < _steps.Count && _steps[until].Source == first.Source && _steps[until].Figure == first.Figure && (until == i || first.Figure is not null)) turn += _steps[until++].Turn;
                if (Math.Abs(turn.Eighths) >= LeastTurn)
                {
                    var turning = _steps[i..until].FindAll(s => !s.Turn.IsNone);
                    yield return new(turning[0].At, turning.Count == 1 ? Named(turning[0]) : $"{Named(turning[0])}-{Named(turning[^1])}", $"the turn, {turn}");
                }

                i = until;
            }
        }

        /// <summary>Half-counts, each as the whole triple that people see: "3&amp;4".</summary>
        private IEnumerable<Stumble> Halves()
        {
            for (var i = 0; i < _steps.Count; i++)
            {
                if (_steps[i].At.Value.IsWhole) continue;
                var (first, last) = (i > 0 && _steps[i - 1].At.Value.IsWhole ? i - 1 : i, i);
                while (last + 1 < _steps.Count && !_steps[last].At.Value.IsWhole) last++;
                // "3", "3e", "3&", "4" is counted "3e&4": a count's parts are named without it.
                var counts = string.Concat(_steps[first..(last + 1)].Select((s, n) => n > 0 && !s.At.Value.IsWhole ? Named(s)[^1..] : Named(s)));
                yield return new(_steps[i].At, counts, _steps[first..(last + 1)].Exists(s => s.At.Value.Denominator > 2) ? "quarter-counts" : "half-counts");
                i = last;
            }
        }

        /// <summary>A touch, kick or the like, after which the same foot has to go.</summary>
        private IEnumerable<Stumble> SameFoot()
        {
            for (var i = 1; i < _steps.Count; i++)
            {
                if (_steps[i - 1].ChangesWeight || _steps[i - 1].Foot.Single() is not { } foot || _steps[i].Foot.Single() != foot || !_steps[i].ChangesWeight) continue;
                if (_steps[i - 1].Figure is { } figure && figure == _steps[i].Figure) continue;
                yield return new(_steps[i].At, $"{Named(_steps[i - 1])}-{Named(_steps[i])}", $"the {foot.Word()} foot twice, no weight on it at first");
            }
        }

        private string Named(ScoreStep step) => (Count.First + (step.At - _start)).Name;
    }
}
