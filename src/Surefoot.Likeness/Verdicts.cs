using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Likeness;

public enum VerdictKind
{
    Same,
    Variant,
    SharesPart,
    Different,
}

/// <summary>What somebody would say who knows both dances.</summary>
/// <param name="Says">A sentence: "A variant: it differs in 8 counts."</param>
public sealed record Verdict(VerdictKind Kind, string Says, Compared Compared)
{
    /// <summary>Counts alike in a row of a part before it is told as shared: an 8. Working value.</summary>
    private const int Passage = 8;

    /// <summary>The verdict of the first dance on the second.</summary>
    public static Verdict Of(DanceScore first, DanceScore second) => Of(first, second, Compared.Of(DanceSteps.Of(first), DanceSteps.Of(second)));

    public static Verdict Of(DanceScore first, DanceScore second, Compared compared)
    {
        if (compared.FirstLength == 0 || compared.SecondLength == 0) return new(VerdictKind.Different, "There are no steps to compare.", compared);
        if (compared.Differing == 0) return new(VerdictKind.Same, Same(first, second, compared), compared);
        // More than half in common, and no more counts that differ than the longer one's half. Working values.
        if (compared.Share >= 0.5 && compared.Differing * 2 <= Math.Max(compared.FirstLength, compared.SecondLength))
        {
            return new(VerdictKind.Variant, $"A variant: differs in {Counts(compared.Differing)}{Foot(compared)}.", compared);
        }

        if (Shared(first, second, compared) is { Length: > 0 } shared) return new(VerdictKind.SharesPart, $"Shares {shared}{Foot(compared)}.", compared);
        return new(VerdictKind.Different, compared.AlikeInFirst == 0 ? "Another dance: no passage is alike." : $"Another dance: {Counts(compared.AlikeInFirst)} of {compared.FirstLength} alike, here and there.", compared);
    }

    private static string Same(DanceScore first, DanceScore second, Compared compared)
    {
        var name = string.Equals(first.Title, second.Title, StringComparison.OrdinalIgnoreCase) ? "The same dance" : "The same dance under another name";
        var longer = compared.FirstLength == compared.SecondLength ? "" : ", danced over more or fewer counts";
        var shift = compared.Shift > 0 ? $", begun {Counts(compared.Shift)} later in the repeat" : "";
        return $"{name}{longer}{shift}{Foot(compared)}.";
    }

    private static string Foot(Compared compared) => compared.Mirrored ? ", begun on the other foot" : "";

    /// <summary>"Part B (there Part C)", "counts 5 to 12 of Part A"; empty when nothing as long as that is shared.</summary>
    private static string Shared(DanceScore first, DanceScore second, Compared compared)
    {
        var said = new List<(string Name, string There, int Alike)>();
        foreach (var section in first.Sections)
        {
            var part = first.Parts[section.Part];
            var from = (section.Start - Count.First).Floor;
            var to = Math.Min(compared.FirstLength, from + part.Length.Ceiling);
            if (part.Kind != PartKind.Part || to <= from) continue;
            var alike = Enumerable.Range(from, to - from).Count(i => compared.FirstAlike[i]);
            string? name = null;
            var there = "";
            // Three quarters alike is still that part for whoever has danced it; working value.
            if (to - from >= Passage && alike * 4 >= (to - from) * 3) (name, there) = (Named(part), There(from, to));
            else if (Longest(from, to) is var (begin, end) && end - begin >= Passage) (name, there) = ($"counts {begin - from + 1} to {end - from} of {Named(part)}", There(begin, end));
            if (name is not null && !said.Exists(s => s.Name == name && s.There == there)) said.Add((name, there, alike));
        }

        // Two parts are like one of the other dance's: the one that is nearer to it is the shared one.
        return And([.. said.Where(s => s.There.Length == 0 || s.Alike == said.Where(o => o.There == s.There).Max(o => o.Alike)).Select(s => s.Name + s.There)]);

        (int From, int To) Longest(int from, int to)
        {
            var (best, begin) = ((From: from, To: from), from);
            for (var i = from; i <= to; i++)
            {
                if (i < to && compared.FirstAlike[i]) continue;
                if (i - begin > best.To - best.From) best = (begin, i);
                begin = i + 1;
            }

            return best;
        }

        string There(int from, int to)
        {
            var parts = compared.Rows
                .Where(r => r is { First: not null, Second: not null, Fate: Fate.Alike } && r.First >= from && r.First < to)
                .Select(r => second.PartAt(Count.At(r.Second!.Value + 1))?.Part)
                .OfType<PartScore>().GroupBy(p => p.Label).MaxBy(g => g.Count());
            return parts is null || parts.Key.Length == 0 ? "" : $" (there {parts.Key})";
        }
    }

    private static string Named(PartScore part) => part.Label.Length > 0 ? part.Label : "the dance";

    private static string Counts(int counts) => counts == 1 ? "1 count" : $"{counts} counts";

    private static string And(List<string> items) => items.Count < 2 ? string.Concat(items) : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";
}
