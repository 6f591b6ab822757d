using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>The stated number of counts is not what the part holds.</summary>
public sealed class PartLength : ICheck
{
    public string Name => "part-length";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        for (var i = 0; i < dance.Page.Parts.Count; i++)
        {
            var node = dance.Page.Parts[i];
            var length = dance.Score.Parts[i].Length.Ceiling;
            var stated = PageEnd.Stated(node);
            if (stated == length || stated == 0 || (length == 0 && node.Lines.Count == 0)) continue;
            yield return node.StatedCounts is null ? Tell(dance, i, node.Span, stated, length, default) : Tell(dance, i, node.StatedSpan, stated, length, HasGaps(dance, i) ? default : Edit(dance, node.StatedSpan, stated, length));
        }

        foreach (var claim in dance.Score.Claims)
        {
            if (claim.Claim is not LengthClaim { Counts: var stated } || claim.Role is Role.Follow) continue;
            var length = dance.Score.Parts[claim.Part].Length.Ceiling;
            var sofar = claim.After.Whole;
            if (stated == length || stated == sofar) continue;
            yield return new(
                Name, Severity.Error, claim.Span, dance.LabelIn(claim.Part), dance.CountIn(claim.Part, Count.At(sofar)), null,
                $"The page says {Say.Counts(stated)} have been danced here, and it is {sofar}.",
                $"{dance.LabelIn(claim.Part) ?? "The part"} holds {Say.Counts(length)} in all.",
                default,
                Edit(dance, claim.Span, stated, sofar));
        }

        foreach (var figure in dance.Page.Figures)
        {
            if (figure.AnyCounts || figure.StatedCounts == 0) continue;
            foreach (var version in figure.Versions)
            {
                if (version.Lines.Count == 0) continue;
                var held = version.Lines.Max(l => l.Group.End.Whole) - 1;
                if (held == figure.StatedCounts || (figure.OrMore && held <= figure.StatedCounts)) continue;
                yield return new(
                    Name, Severity.Error, figure.Span, $"Figure: {figure.Name}", null, null,
                    $"The figure is said to have {Say.Counts(figure.StatedCounts)}, and it holds {held}.",
                    "Its lines count from 1 to the number stated.");
                break;
            }
        }

        if (dance.Page.Header("counts") is { } header && StatedForAll(dance.Page) is > 0 and var total && total != dance.Score.Counts.Ceiling)
        {
            yield return new(
                Name, Severity.Error, header.ValueSpan, null, null, null,
                $"The page says the dance has {Say.Counts(total)}, and its parts hold {dance.Score.Counts.Ceiling}.",
                "The parts add up to: " + string.Join(" + ", dance.Score.Sections.Select(s => dance.Score.Parts[s.Part].Length)) + ".",
                default,
                Edit(dance, header.ValueSpan, total, dance.Score.Counts.Ceiling),
                PageEnd.Short(dance, PageEnd.Part(dance.Page), "The whole dance", total, dance.Score.Counts.Ceiling));
        }
    }

    // With counts missing in the middle it is those that are wrong, and not the number.
    private static bool HasGaps(DanceCase dance, int part) => dance.Score.Faults.Any(f => f.Kind == LayingFaultKind.Gap && f.Part == part);

    /// <summary>The counts that the head states for the whole dance; 0 where it states none.</summary>
    internal static int StatedForAll(Page page) => page.Header("counts") is { } header ? FirstNumber(header.Value) ?? 0 : 0;

    private Problem Tell(DanceCase dance, int part, TextSpan span, int stated, int length, ValueList<Fix> fixes) => new(
        Name, Severity.Error, span, dance.LabelIn(part), null, null,
        $"{dance.LabelIn(part) ?? "The part"} is said to have {Say.Counts(stated)}, and it holds {length}.",
        length < stated ? $"{Say.Counts(stated - length)} {(stated - length == 1 ? "is" : "are")} missing, or the number is wrong." : $"{Say.Counts(length - stated)} more {(length - stated == 1 ? "is" : "are")} written than stated.",
        default,
        fixes,
        PageEnd.Short(dance, part, dance.LabelIn(part) ?? "The part", stated, length));

    private static ValueList<Fix> Edit(DanceCase dance, TextSpan span, int stated, int length)
    {
        var at = dance.Words(span).IndexOf(stated.ToString(), StringComparison.Ordinal);
        if (at < 0) return default;
        return [new($"Say {length} instead of {stated}", Sureness.Idea, [new(new(span.Start + at, stated.ToString().Length), length.ToString())])];
    }

    private static int? FirstNumber(string text)
    {
        var digits = new string(text.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(char.IsAsciiDigit).Take(6).ToArray());
        return digits.Length > 0 ? int.Parse(digits) : null;
    }
}
