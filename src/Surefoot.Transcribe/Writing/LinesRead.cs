using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Writing;

/// <summary>Says of every line of the sheet what became of it.</summary>
internal static class LinesRead
{
    /// <summary>What one assumption takes off how sure a line's reading is, and one step that does not work. Working values.</summary>
    private const double PerAssumption = 0.15, PerClash = 0.3;

    public static IEnumerable<LineRead> Of(List<SheetLine> lines, SheetPlan plan, List<DraftPart> parts, List<Doubt> doubts)
    {
        var drafts = parts.SelectMany(p => p.Lines).ToLookup(l => l.From.Number);
        foreach (var line in lines)
        {
            var kind = plan.Kinds.GetValueOrDefault(line.Number, LineKind.Blank);
            var mine = drafts[line.Number].ToList();
            var phrases = mine.SelectMany(l => l.Phrases).Where(p => p.Said.Length > 0).DistinctBy(p => p.Said).ToList();
            var unknown = phrases.SelectMany(p => p.Unknown).Distinct(StringComparer.OrdinalIgnoreCase).ToValueList();
            var (all, read) = (phrases.Count(p => p.Text.Length > 0 || p.Unknown.Count > 0), phrases.Count(p => p.Text.Length > 0 && p.Unknown.Count == 0));
            var assumed = mine.SelectMany(l => l.Assumed).Distinct(StringComparer.Ordinal).ToValueList();
            var broken = doubts.Count(d => d.Line == line.Number && d.Kind == DoubtKind.DoesNotWork);
            var sure = all == 0 ? 1 : (double)read / all;
            var became = mine.ConvertAll(l => $"{l.Counts.Name}  {string.Join(", ", l.Phrases.Where(p => p.Text.Length > 0).Select(p => p.Text))}");
            yield return new(
                line.Number, line.Text, kind, became.ToValueList(), Math.Max(0, sure - (PerAssumption * assumed.Count) - (PerClash * broken)), assumed, unknown, all, read);
        }
    }
}
