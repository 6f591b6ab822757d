using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>On which counts of which part a call stands, for whom, and in which dancing of the part.</summary>
/// <param name="Part">Index of the part; -1 for what is called before the dance.</param>
/// <param name="From">First whole count in the part, from 1.</param>
/// <param name="To">Last whole count in the part.</param>
/// <param name="Role">For whom; null for everybody.</param>
/// <param name="Time">In which dancing of the part only, from 1; 0 for the last; null for all.</param>
public sealed record CallPlace(int Part, int From, int To, Role? Role, int? Time)
{
    /// <summary>True for what is called before the dance begins.</summary>
    public bool Opening => Part < 0;
}

/// <summary>
/// Writes calls into a page's text as their own lines, "Call 7-8: rock back", and takes them out; every other line stays as it is.
/// Whoever uses it reads the page again and looks whether the call is heard where it was meant: a page may number its counts in a
/// way of its own.
/// </summary>
public static class CallWriting
{
    /// <summary>
    /// The place at which a call of the repeat is written. One that the page has keeps its own; on the last counts of a part that
    /// is danced several times a call is for one dancing only, because something else comes after each.
    /// </summary>
    /// <param name="section">Which dancing of the repeat the counts belong to; -1 for before the dance.</param>
    /// <param name="from">First count, through the repeat.</param>
    public static CallPlace PlaceOf(DanceScore score, int section, int from, int counts, Role? role)
    {
        if (section < 0) return new(-1, 0, 0, role, null);
        var here = score.Sections[section];
        var first = from - (here.Start.Whole - 1);
        var last = first + counts - 1;
        var (time, times) = (score.Sections.Take(section + 1).Count(s => s.Part == here.Part), score.Sections.Count(s => s.Part == here.Part));
        var own = score.Calls.FirstOrDefault(c => !c.Opening && c.Part == here.Part && c.From == first && c.To == last && Whose(c, score) == role && (c.Time is null || c.Time == time || (c.Time == 0 && time == times)));
        if (own is not null) return new(here.Part, first, last, role, own.Time);
        var leadsOn = last >= score.Parts[here.Part].Length.Ceiling && times > 1;
        return new(here.Part, first, last, role, leadsOn ? time : null);
    }

    /// <summary>The text without the page's own calls at a place.</summary>
    public static string Without(SourceText source, DanceScore score, CallPlace place)
    {
        var (lines, end) = Lines(source);
        foreach (var line in Own(source, score, place)) lines.RemoveAt(line);
        return string.Join(end, lines);
    }

    /// <summary>The text with a call at a place, in the line of the page's own call there, else after the last line of its part.</summary>
    /// <param name="was">The place of the call that it replaces.</param>
    /// <param name="words">What is called; null where nothing is to be called.</param>
    /// <param name="saysBoth">True where a call for everybody says so, because it may stand among the lines of one dancer.</param>
    public static string With(SourceText source, Page page, DanceScore score, CallPlace was, CallPlace place, string? words, bool saysBoth)
    {
        var (lines, end) = Lines(source);
        var own = Own(source, score, was);
        var part = place.Opening ? 0 : place.Part;
        var at = own.Count > 0 ? own[^1] : part < page.Parts.Count && page.Parts[part].Lines.Count > 0 ? source.LineOf(Math.Max(0, page.Parts[part].Lines.Max(l => l.Span.End) - 1)) + 1 : lines.Count;
        foreach (var line in own) lines.RemoveAt(line);
        lines.Insert(Math.Min(at, lines.Count), $"Call {Counts(score, place)}{(place.Role is { } role ? $", {role.Word()}" : saysBoth ? ", both" : "")}{Time(place.Time)}: {words ?? "none"}");
        return string.Join(end, lines);
    }

    private static string Counts(DanceScore score, CallPlace place)
    {
        if (place.Opening) return "before the dance";
        var offset = score.Parts[place.Part].CountOffset;
        return place.From == place.To ? $"{place.From + offset}" : $"{place.From + offset}-{place.To + offset}";
    }

    private static string Time(int? time) => time switch
    {
        null => "",
        0 => ", last time",
        1 => ", 1st time",
        2 => ", 2nd time",
        3 => ", 3rd time",
        var n => $", {n}th time",
    };

    /// <summary>The lines of the page's own calls at a place, the last first.</summary>
    private static List<int> Own(SourceText source, DanceScore score, CallPlace place) =>
        [.. score.Calls.Where(c => c.Opening == place.Opening && Whose(c, score) == place.Role && (place.Opening || (c.Part == place.Part && c.From <= place.To && c.To >= place.From && c.Time == place.Time)))
            .Select(c => source.LineOf(c.Span.Start)).Distinct().OrderDescending()];

    // In a dance without roles every call is for everybody.
    private static Role? Whose(ScoreCall call, DanceScore score) => score.Roles.Count == 1 ? null : call.Role;

    private static (List<string> Lines, string End) Lines(SourceText source) =>
        ([.. Enumerable.Range(0, source.LineCount).Select(n => source.Words(source.Line(n)))], source.Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n");
}
