using System.Text.RegularExpressions;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Checks;
using Surefoot.Dance.Problems;
using Surefoot.Transcribe.Choosing;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Trying;

namespace Surefoot.Transcribe.Writing;

/// <summary>Collects what the writer has to look at.</summary>
internal sealed class DoubtFinder(List<Doubt> doubts)
{
    /// <summary>Problems of a page that say nothing about how a sheet was read.</summary>
    private static readonly HashSet<string> Quiet = ["phrase-odd", "header-unknown"];

    private static readonly string Assumption = new Assumptions().Name;

    private static readonly string SameFoot = new WeightSameFoot().Name;

    // Figures whose last count is a touch unless a page says what else it is.
    private static readonly Regex Rolls = new(@"^(?:three[- ]step turn|rolling (?:grape)?vine|(?:grape)?vine)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Claps = new(@"^(?:claps?|snaps?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OfSteps = new(@"\b(?:turns?|steps?|foot|feet|quarter|half|kicks?|touch|hops?|repeat|variation|or)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Begin with the right foot" is read for the foot that is free.
    private static readonly Regex Starts = new(@"^(?:begin|start)\w* (?:with|on) (?:the |your )?(?:left|right)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public void Find(SheetPlan plan, SheetFacts facts, Laying laying, FeetChosen feet, List<DraftPart> parts, Reading reading, PageWriter writer, Meant meant)
    {
        if (parts.Count == 0) doubts.Add(new(DoubtKind.DoesNotWork, 0, "No steps were found on this sheet."));
        if (laying.SecondListTaken) doubts.Add(new(DoubtKind.Assumed, 0, "There are two lists of counts and nobody is named. The first was taken for the lead, the second for the follow."));
        if (feet.Tie) doubts.Add(new(DoubtKind.TwoReadings, 0, "Two readings of the feet are equally good; the page shows one of them."));
        if (facts is { Couple: true, Hold: null }) doubts.Add(new(DoubtKind.Assumed, 0, "The sheet names no hold. None was taken."));
        if (facts is { Couple: true, FacingTaken: true, Facing: { } facing }) doubts.Add(new(DoubtKind.Assumed, 0, $"The sheet does not say where they look. Taken: {facing}."));
        Tried(plan, meant);
        foreach (var (line, says) in plan.Mended) Add(new(DoubtKind.Assumed, line, $"Assumed: {says}."));
        foreach (var (line, says) in laying.Taken) Add(new(DoubtKind.Assumed, line, $"Assumed: {says}."));
        foreach (var line in parts.SelectMany(p => p.Lines))
        {
            for (var i = 0; i + 1 < line.Phrases.Count; i++)
            {
                if (Rolls.IsMatch(line.Phrases[i].Text) && Claps.IsMatch(line.Phrases[i + 1].Text)) Add(new(DoubtKind.Assumed, line.From.Number, $"Assumed: \"{line.Phrases[i].Said}\" ends with a touch, as it usually does; the sheet names only the {line.Phrases[i + 1].Text}."));
            }

            if (line.AgainOf is { } first && Otherwise(first, line.Phrases) is { } other) Add(new(DoubtKind.Assumed, line.From.Number, $"Assumed: danced again as \"{other}\", which is not as it was read before."));
            foreach (var assumed in line.Assumed) Add(new(DoubtKind.Assumed, line.From.Number, $"Assumed: {assumed}."));
            foreach (var phrase in line.Phrases)
            {
                if (phrase.Unknown.Count > 0) Add(new(DoubtKind.NotUnderstood, line.From.Number, $"Not understood in \"{phrase.Said}\": {string.Join(", ", phrase.Unknown)}.") { Phrase = phrase.Said });
                else if (phrase.Text.Length == 0 && phrase.Said.Length > 0) Add(new(DoubtKind.Assumed, line.From.Number, $"\"{phrase.Said}\" {AsNote}") { Phrase = phrase.Said });
                if (phrase.Clashes > 0) Add(new(DoubtKind.DoesNotWork, line.From.Number, $"\"{phrase.Said}\": the foot for it is not free."));
            }
        }

        foreach (var aside in plan.Asides)
        {
            if (OfSteps.IsMatch(aside.Plain) && !Starts.IsMatch(aside.Plain)) Add(new(DoubtKind.Assumed, aside.Number, $"\"{aside.Plain}\" {AsNote}") { Phrase = aside.Plain });
        }

        if (facts.Counts is { } stated && parts.Count > 0 && reading.Score.Counts.Ceiling is var counts && counts != stated)
        {
            doubts.Add(new(DoubtKind.Disagrees, 0, $"The sheet speaks of {stated} counts, its steps take {counts}."));
        }

        foreach (var problem in reading.Problems)
        {
            if (Quiet.Contains(problem.Name)) continue;
            var from = writer.From[reading.Page.Source.LineOf(problem.Span.Start)];
            if (problem.Severity != Severity.Hint) Add(new(DoubtKind.DoesNotWork, from, problem.Message));
            if (problem.Name == SameFoot) Before(problem, from, reading, writer);
            // What the page takes where its words leave something out was left out on the sheet.
            else if (problem.Name == Assumption && from > 0) Add(new(DoubtKind.Assumed, from, problem.Message));
        }

        Moved(facts, laying, parts, reading, meant.Tried.Count > 0);
    }

    // Words that were not taken as they sound, because the dance comes out so.
    private void Tried(SheetPlan plan, Meant meant)
    {
        foreach (var (words, tried) in meant.Tried)
        {
            var of = plan.Parts.SelectMany(p => p.Groups).Where(g => g.Phrases.Exists(p => p.Text == words)).Select(g => g.Line).Concat(plan.Asides.Concat(plan.Passed).Where(p => p.Plain == words)).Concat(plan.Parts.SelectMany(p => p.Groups).Where(g => g.Said == words).Select(g => g.Line));
            foreach (var line in of.DistinctBy(l => l.Number))
            {
                var says = tried switch
                {
                    TriedAs.NoStep => "is talk",
                    TriedAs.Step => "is a step",
                    TriedAs.OneCount => "is a step of one count that is not understood",
                    _ => "has what came before it danced again",
                };
                Add(new(DoubtKind.Assumed, line.Number, $"Taken: \"{words}\" {says}, {ComesOut}") { Phrase = words });
            }
        }
    }

    private const string ComesOut = "because the dance comes out better so.";

    // What was closed without weight the first time, and with it the second: one of them is wrong.
    private static string? Otherwise(List<DraftPhrase> first, List<DraftPhrase> again)
    {
        for (var i = 0; i < first.Count && i < again.Count && first.Count == again.Count; i++)
        {
            if (WithoutFeet.Replace(first[i].Text, "") != WithoutFeet.Replace(again[i].Text, "")) return again[i].Text;
        }

        return null;
    }

    private static readonly Regex WithoutFeet = new(@"\b(?:left|right|L|R|LF|RF|LOD|RLOD|forward|back|inside|outside|[LR]{2,4})\b|\W+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Where two steps in a row are on the same foot, it may be the first that was read wrongly.
    private void Before(Problem problem, int from, Reading reading, PageWriter writer)
    {
        foreach (var related in problem.Related)
        {
            var line = writer.From[reading.Page.Source.LineOf(related.Span.Start)];
            if (line > 0 && line != from) Add(new(DoubtKind.Assumed, line, "Whether its last step takes the weight is not sure: what comes next is on the same foot."));
        }
    }

    // Where counts are not written beside the steps, one line misread moves all after it.
    private void Moved(SheetFacts facts, Laying laying, List<DraftPart> parts, Reading reading, bool tried)
    {
        foreach (var part in parts) Short(part);
        if (!tried && !laying.Reckoned && facts.Counts is { } stated && reading.Score.Counts.Ceiling == stated) return;
        foreach (var part in parts)
        {
            var unsure = false;
            foreach (var line in part.Lines)
            {
                var own = doubts.FindAll(d => d.Line == line.From.Number);
                if (unsure && !line.Labelled && own.Count == 0) Add(new(DoubtKind.Assumed, line.From.Number, "Its counts follow from the lines before it, and not all of those are sure."));
                unsure = !line.Labelled && (unsure || own.Exists(d => d.Kind is DoubtKind.NotUnderstood or DoubtKind.DoesNotWork || d.Says.EndsWith(AsNote, StringComparison.Ordinal) || d.Says.EndsWith(ComesOut, StringComparison.Ordinal)));
            }
        }
    }

    // Where one dancer's steps end before the other's, one was left out somewhere, and the others may come too soon.
    private void Short(DraftPart part)
    {
        if (!part.Lines.Exists(l => l.Role is not null)) return;
        var (lead, follow) = (End(Role.Lead), End(Role.Follow));
        if (lead == 0 || follow == 0 || lead == follow) return;
        var (role, name, by) = lead < follow ? (Role.Lead, "lead", follow - lead) : (Role.Follow, "follow", lead - follow);
        foreach (var line in part.Lines.Where(l => l.Role == role && !l.Labelled))
        {
            Add(new(DoubtKind.Assumed, line.From.Number, $"Its counts are not sure, because the {name}'s steps are {by} {(by == 1 ? "count" : "counts")} short."));
        }

        int End(Role one) => part.Lines.Where(l => l.Role is null || l.Role == one).Select(l => l.Counts.To).DefaultIfEmpty(0).Max();
    }

    private const string AsNote = "was taken for no step and is kept as a note.";

    private void Add(Doubt doubt)
    {
        if (!doubts.Contains(doubt)) doubts.Add(doubt);
    }
}
