using Surefoot.Draw;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Sheets;

/// <summary>Everything a lesson's sheet says, in order, before anybody decides how it looks.</summary>
/// <param name="Opening">One sentence about the lesson.</param>
public sealed record LessonSheet(string Title, string Opening, ValueList<Station> Stations, string Care)
{
    public static LessonSheet Of(TermPlan plan, LessonPlan lesson, SheetOptions options) => new SheetMaker(plan, lesson, options).Make();
}

/// <summary>A stretch of a lesson.</summary>
/// <param name="Clock">When it begins: "19:05".</param>
/// <param name="Says">Sentences under the heading.</param>
/// <param name="Rows">The counts with their words; empty where no steps are taught.</param>
/// <param name="Advice">What to mind, each under a word: "Show it", "They stumble".</param>
public sealed record Station(
    ItemKind Kind, string Clock, int Minutes, string Heading, ValueList<string> Says, ValueList<StretchRow> Rows, bool ForCouples, ValueList<Advice> Advice)
{
    /// <summary>Where the studio has it; for the screen, not for paper.</summary>
    public ValueList<DanceWay> Ways { get; init; } = [];
}

/// <param name="Items">One or more short sentences.</param>
public sealed record Advice(string Word, ValueList<string> Items);
