using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Library.Store;
using Surefoot.Likeness;

namespace Surefoot.Library.Searching;

/// <summary>What a list and a search need to know of a page, made from its reading.</summary>
internal static class Facts
{
    public static ShelfRow Of(Reading reading)
    {
        var score = reading.Score;
        var facts = score.Facts;
        var row = new ShelfRow
        {
            Title = score.Title,
            IsFigures = HeadReader.IsFigurePage(reading.Page.Source.Text),
            ForCouples = facts.ForCouples,
            Floor = facts.Floor,
            Walls = facts.Walls,
            Counts = score.Counts.Ceiling,
            MeterBeats = facts.Meter.Beats,
            MeterUnit = facts.Meter.Unit,
            TempoFrom = facts.TempoFrom,
            TempoTo = facts.TempoTo,
            Level = facts.Level ?? "",
            Holds = string.Join('\n', HoldsOf(score)),
            Figures = string.Join('\n', FiguresOf(score)),
            Moves = Moves.Written(Moves.Of(score, reading.Page.Source)),
            Words = string.Join('\n', WordsOf(reading)),
            Steps = DanceSteps.Of(score).ToBytes(),
        };
        foreach (var problem in reading.Problems)
        {
            if (problem.Severity == Severity.Error) row.Errors++;
            else if (problem.Severity == Severity.Warning) row.Warnings++;
            else row.Hints++;
        }

        return row;
    }

    /// <summary>Every hold the page names, in the order in which the couple comes to it.</summary>
    private static List<string> HoldsOf(DanceScore score)
    {
        var holds = new List<string>();
        Add(score.Facts.Hold);
        foreach (var hands in score.Hands) Add(hands.Words.Hold);
        foreach (var claim in score.Claims) Add((claim.Claim as HoldClaim)?.Hold);
        return holds;

        void Add(string? hold)
        {
            if (hold is not null && !holds.Contains(hold)) holds.Add(hold);
        }
    }

    /// <summary>Every figure, once, in the order in which it is first danced.</summary>
    private static List<string> FiguresOf(DanceScore score) =>
        [.. score.Roles.SelectMany(r => r.Steps).Where(s => s.Figure is not null).OrderBy(s => s.At).Select(s => s.Figure!).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<string> WordsOf(Reading reading)
    {
        foreach (var name in reading.Score.Facts.OtherNames) yield return Line(name);
        foreach (var note in reading.Score.Notes) yield return Line(note.Text);
        foreach (var header in reading.Page.Headers)
        {
            if (!header.Known || header.Key is "by" or "music") yield return Line(header.Value);
        }

        // The figures a figure page defines are what it is looked for by.
        foreach (var figure in reading.Page.Figures) yield return Line(figure.Name);
    }

    private static string Line(string text) => text.Replace('\n', ' ').Replace('\r', ' ');
}
