using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// What Surefoot adds to a row of a couple's sheet: what the hands have to do where the page is silent, and the
/// hold where it changes. The author's words come first: nothing they say is said again.
/// </summary>
internal sealed class OurLines
{
    private readonly DanceScore _score;
    private readonly CoupleSolution _couple;
    private readonly HandsSolved _hands;
    private readonly RoleNames _names;
    private readonly HoldChanges _holds;

    private OurLines(DanceScore score, CoupleSolution couple, HandsSolved hands, RoleNames names)
    {
        (_score, _couple, _hands, _names) = (score, couple, hands, names);
        _holds = new(score, couple, names);
    }

    /// <returns>Nothing without a couple that can be in place: what its hands do is then not known.</returns>
    public static OurLines? Of(DanceScore score, CoupleSolution? couple, RoleNames names) =>
        couple is { Hands: { } hands } ? new(score, couple, hands, names) : null;

    /// <summary>The hold before a section as it stands in a sentence: "in sweetheart", "with right hands joined".</summary>
    public string? Before(int section)
    {
        var hold = _holds.Before(section);
        if (hold.Name is { } name) return HoldPhrases.In(name);
        return "with " + HandPhrases.Joined(hold.Joined, Pairs.None, _names);
    }

    /// <param name="row">A row of a part.</param>
    /// <param name="end">Where the row ends, counted in the part; later than its own end where it shares the line with a longer one.</param>
    /// <param name="feetOnly">True where the author's words are not printed: then theirs and ours could not be told apart, and only holds are.</param>
    public IReadOnlyList<OurLine> Of(int part, PartRow row, Count end, bool feetOnly)
    {
        var lines = new List<OurLine>();
        var hands = feetOnly ? "" : EachTime(part, mirroredToo: true, section => Hands(section, row, end));
        if (hands.Length > 0) lines.Add(new(OurLine.Hands, hands));
        var holds = EachTime(part, mirroredToo: false, section => _holds.In(section, row, end, told: !feetOnly, ours: hands.Length > 0));
        if (holds.Length > 0) lines.Add(new(OurLine.Hold, holds));
        return lines;
    }

    /// <summary>A part may be danced more than once in a repeat; where the times differ, each says which it is.</summary>
    /// <param name="mirroredToo">False for words that another side of the body would make untrue.</param>
    private string EachTime(int part, bool mirroredToo, Func<Section, string> words)
    {
        var first = FeetWords.FirstDancing(_score, part);
        if (first < 0) return "";
        var told = new List<(int Time, string Words)>();
        var time = 0;
        foreach (var section in _score.Sections)
        {
            if (section.Part != part) continue;
            time++;
            if (!mirroredToo && section.Mirrored != _score.Sections[first].Mirrored) continue;
            told.Add((time, words(section)));
        }

        if (told.TrueForAll(t => t.Words == told[0].Words)) return told[0].Words;
        return string.Join("; ", told.Where(t => t.Words.Length > 0).Select(t => $"the {Numbers.Ordinal(t.Time)} time {t.Words}"));
    }

    private string Hands(Section section, PartRow row, Count end)
    {
        var ahead = section.Start - Count.First;
        WrittenHands? written = null;
        var kept = new List<HandSuggestion>();
        foreach (var one in _hands.Suggestions)
        {
            if (one.At < row.From + ahead || one.At >= end + ahead) continue;
            written ??= new(_score, _couple.Moments, section, row.From, end);
            if (written.Covers(one) || IsTwisted(one) || SaidAbove(one, section, row)) continue;
            kept.Add(section.Mirrored ? one with { Pair = one.Pair.Mirrored() } : one);
        }

        return kept.Count == 0 ? "" : SuggestionWords.Of(kept, ahead, row.From, _names);
    }

    /// <summary>What would cross the arms is a problem of the page, told by its check, and no advice to print.</summary>
    private bool IsTwisted(HandSuggestion one)
    {
        foreach (var trouble in _hands.Troubles)
        {
            if (trouble.Kind != HandTroubleKind.Twisted || !trouble.Pair.HasFlag(one.Pair) || one.At < trouble.At) continue;
            // The trouble is told where its turning begins.
            var goesOn = true;
            foreach (var moment in _couple.Moments)
            {
                if (moment.At >= trouble.At && moment.At <= one.At) goesOn &= moment.Turning;
            }

            if (goesOn) return true;
        }

        return false;
    }

    /// <summary>Under "repeat 1-8" all that was said of 1-8 holds again; a line that differs has its own.</summary>
    private bool SaidAbove(HandSuggestion one, Section section, PartRow row)
    {
        if (row.Kind != RowKind.Repeat || StretchOf(_score, section.Part, row) is not { } stretch) return false;
        var inPart = one.At - (section.Start - Count.First);
        foreach (var change in stretch.Changes)
        {
            if (inPart >= change.From && inPart < change.To) return true;
        }

        if (SourceOf(_score, section, stretch) is not { } source) return false;
        var at = source.Start + (stretch.SourceFrom - Count.First) + (inPart - stretch.From);
        foreach (var other in _hands.Suggestions)
        {
            if (other.At == at && other.Verb == one.Verb && other.Pair == (stretch.Mirrored ? one.Pair.Mirrored() : one.Pair)) return true;
        }

        return false;
    }

    public static RepeatedStretch? StretchOf(DanceScore score, int part, PartRow row)
    {
        foreach (var stretch in score.Parts[part].Repeats)
        {
            if (stretch.Span == row.Span && stretch.From == row.From) return stretch;
        }

        return null;
    }

    /// <summary>The dancing of the words that a stretch repeats: in the same part its own, else the first.</summary>
    public static Section? SourceOf(DanceScore score, Section section, RepeatedStretch stretch)
    {
        if (stretch.SourcePart == section.Part) return section;
        var first = FeetWords.FirstDancing(score, stretch.SourcePart);
        return first < 0 ? null : score.Sections[first];
    }
}
