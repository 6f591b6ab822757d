using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>Makes the calls of a dance: a pure function of its score and the book of figures.</summary>
public static class CallMaker
{
    public static CallSheet Make(DanceScore score, FigureBook figures)
    {
        var counts = score.Counts.Ceiling;
        if (counts == 0 || score.Roles.Count == 0) return CallSheet.None;
        var book = CallBook.Shipped;
        var written = WrittenCalls.ByPart(score);
        var roles = Units(score.Roles, score.Facts.Meter, figures, book);
        var calls = CallPlacing.Of(roles, counts, around: true);
        foreach (var (section, time, last) in Dancings(score))
        {
            var here = written[section.Part].Where(c => c.Time is null || c.Time == time || (c.Time == 0 && last));
            WrittenCalls.Put(calls, here, section.Start.Whole - 1, section.Mirrored, score.Roles.Count);
        }

        return new(
            WrittenCalls.Opening(CallPlacing.Opening(roles), score),
            Sorted(calls),
            CallNames.Of(roles, calls, counts).ToValueList(),
            score.Extras.Select(e => Extra(e, score, roles, written, figures, book)).ToValueList(),
            score.Events.Select(e => Wall(e, score, book)).OfType<WallCall>().ToValueList())
        {
            FromSteps = CallNames.Of(roles, [], counts).ToValueList(),
        };
    }

    private static List<(Role Role, List<CallUnit> Units)> Units(IEnumerable<RoleScore> roles, Meter meter, FigureBook figures, CallBook book) =>
        [.. roles.Select(r => (r.Role, CallUnits.Of(r, meter, figures, book)))];

    // Each dancing of a part, which one of its it is, and whether it is the last.
    private static IEnumerable<(Section Section, int Time, bool Last)> Dancings(DanceScore score)
    {
        var times = new int[score.Parts.Count];
        for (var s = 0; s < score.Sections.Count; s++)
        {
            var section = score.Sections[s];
            var last = true;
            for (var k = s + 1; k < score.Sections.Count; k++) last &= score.Sections[k].Part != section.Part;
            yield return (section, ++times[section.Part], last);
        }
    }

    private static ExtraCalls Extra(ExtraScore extra, DanceScore score, List<(Role, List<CallUnit>)> dance, List<ScoreCall>[] written, FigureBook figures, CallBook book)
    {
        var counts = score.Parts[extra.Part].Length.Ceiling;
        var units = Units(extra.Roles, score.Facts.Meter, figures, book);
        // What comes after it is the dance, but for an ending.
        if (score.Parts[extra.Part].Kind != Steps.PartKind.Ending)
        {
            for (var r = 0; r < units.Count && r < dance.Count; r++)
            {
                if (dance[r].Item2.Count > 0) units[r].Units.Add(dance[r].Item2[0] with { At = dance[r].Item2[0].At + Beats.Of(counts) });
            }
        }

        var calls = CallPlacing.Of(units, counts, around: false);
        WrittenCalls.Put(calls, written[extra.Part], 0, mirrored: false, units.Count);
        var danced = CallNames.Of(units, calls, counts).Where(n => n.At < Count.First + Beats.Of(counts));
        return new(extra.Part, extra.AfterWall, Sorted(calls), danced.ToValueList());
    }

    private static WallCall? Wall(PassEvent one, DanceScore score, CallBook book)
    {
        var (after, words) = one.Kind == PassEventKind.Restart
            ? (one.AfterCount, book.Restart)
            : (score.Counts.Ceiling, one.Part >= 0 ? score.Parts[one.Part].Label.ToLowerInvariant() : "");
        if (after < 1 || after > score.Counts.Ceiling || words.Length == 0) return null;
        var counts = Math.Min(after, Math.Min(2, Syllables.In(words)));
        return new(one.Wall, new(after - counts + 1, counts, null, words, Count.At(after + 1), false, false));
    }

    private static ValueList<Call> Sorted(List<Call> calls) => calls.OrderBy(c => c.From).ThenBy(c => c.Role).ToValueList();
}
