using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;
using Surefoot.Film.Notes;

namespace Surefoot.Film;

/// <summary>The whole way from a film's captions and a dance's page to notes about the film.</summary>
public static class FilmReader
{
    /// <summary>Counts a minute that are taken where the page names no tempo: a middle country-western one. Working value.</summary>
    private const int UsualTempo = 100;

    /// <summary>How much better a film has to fit with the foot before its step, which fewer people say. Working value.</summary>
    private const double FootBefore = 1.03;

    /// <summary>What a few wrong feet in a short film may cost, which would not be wrong the other way. Working value.</summary>
    private const double OneWrongFoot = 4;

    /// <param name="captions">The text of a WebVTT or SRT file.</param>
    /// <param name="reading">The dance.</param>
    /// <param name="book">The words and figures in force on its page; those that come with Surefoot when null.</param>
    /// <param name="calls">What is called for a figure; the dance's own call sheet when null.</param>
    /// <param name="called">What chapters and captions call the dancers; lead and follow when null.</param>
    public static FilmNotes Read(string captions, Reading reading, FigureBook? book = null, ICalls? calls = null, RolesCalled? called = null)
    {
        var file = CaptionReader.Read(captions);
        var known = (book ?? FigureBook.Shipped).With(reading.Page.Source);
        var score = reading.Score;
        var dance = new DanceWords(score, known);
        var courses = CourseMaker.Of(score, reading.Page.Source, known);
        var slowest = score.Facts.TempoFrom ?? UsualTempo;
        var words = SpokenWords.Of(file);
        // Some say the foot before its step and some after it: heard both ways, the way that fits the page better counts.
        var after = Aligner.Align(courses, SpeechReader.Read(words, dance, feetFirst: false), dance.CountsTo, slowest);
        var before = Aligner.Align(courses, SpeechReader.Read(words, dance, feetFirst: true), dance.CountsTo, slowest);
        var placed = before.Score > (courses.Exists(WritesFootBefore) ? after.Score : (after.Score * FootBefore) + OneWrongFoot) ? before.Placed : after.Placed;
        bool WritesFootBefore(Course course) => course.Asks.Count(a => a.FootBefore) * 2 > course.Asks.Count(a => a.PageSides.Count == 1);
        var end = file.Cues.Count == 0 ? 0 : file.Cues.Max(c => c.To.Seconds);
        var flows = Flow.Of(PassMaker.Of(placed, courses), courses, slowest);
        return new(
            score.Title,
            FilmTime.OfSeconds(end),
            new ChapterMaker(score, courses, end, called ?? RolesCalled.Usual).Of(flows),
            StretchMaker.Of(flows, score, courses, end),
            new DifferenceFinder(score, reading.Page.Source, courses).In(flows),
            RunCaptions.Of(flows, courses, calls ?? new SheetCalls(reading.Calls), called ?? RolesCalled.Usual, end),
            file.Troubles)
        {
            Lines = LineMaker.Of(flows, courses, reading.Page.Source, end),
        };
    }
}
