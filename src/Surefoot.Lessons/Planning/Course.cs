using Surefoot.Dance;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Scoring;
using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>A dance there is a page of.</summary>
/// <param name="Names">Every name under which a term may call it; its title is the first.</param>
/// <param name="Calls">What is called in it, from its page and the figures of its notebook.</param>
public sealed record TermDance(ValueList<string> Names, DanceScore Score, CallSheet Calls)
{
    /// <param name="otherwise">Another name of it, such as its file's; its first where the page has no title.</param>
    public static TermDance Of(Reading reading, string? otherwise = null)
    {
        var names = (string?[])[reading.Score.Title, .. reading.Score.Facts.OtherNames, otherwise];
        return new(names.OfType<string>().Where(n => n.Length > 0).ToValueList(), reading.Score, reading.Calls);
    }

    public string Title => Names[0];

    /// <summary>Songs that are kept with the dance; those of the page's own "Music:" stand in its score.</summary>
    public ValueList<TermSong> Songs { get; init; }

    /// <summary>The number of its page in the studio, or null where it lies in a folder.</summary>
    public long? Page { get; init; }

    public DanceKinds Kind => Score.Facts.ForCouples ? DanceKinds.Couples : DanceKinds.Line;
}

/// <summary>A song that is kept with a dance.</summary>
/// <param name="Artist">May be empty.</param>
/// <param name="Tempo">Its own counts a minute, where somebody wrote them down.</param>
public sealed record TermSong(string Title, string Artist, double? Tempo)
{
    /// <summary>"Old Porch Reel (The Lanterns, 108)".</summary>
    public string Words
    {
        get
        {
            var behind = string.Join(", ", new[] { Artist, Tempo?.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) ?? "" }.Where(s => s.Length > 0));
            return behind.Length == 0 ? Title : $"{Title} ({behind})";
        }
    }
}

/// <summary>A dance with a class that learns it, or knows it.</summary>
/// <param name="Index">Its place among the courses of the term.</param>
/// <param name="Bites">What is taught, in order; what was known before the term has its bites too.</param>
/// <param name="Minutes">For each bite how long teaching it takes.</param>
/// <param name="By">The last day on which it may be finished, or null.</param>
/// <param name="After">Courses of the same class that are finished before this one is begun.</param>
/// <param name="Lessons">Lessons of the term in which it may be taught or danced again: its class's, for its kind of dance.</param>
public sealed record Course(
    int Index,
    TermDance Dance,
    DanceClass Class,
    ValueList<TeachingBite> Bites,
    ValueList<int> Minutes,
    DateOnly? By,
    ValueList<int> After,
    ValueList<int> Lessons,
    bool KnownBefore,
    Progress Progress,
    TextSpan Span)
{
    public bool Finished => Progress.Review is not null;

    public int NewCounts => Bites.Sum(b => b.New);
}

/// <summary>How far a class has come with a dance.</summary>
/// <param name="Done">For each bite whether the class has it.</param>
/// <param name="Begun">True once anything of it was taught, whether it stayed or not.</param>
/// <param name="Review">Where its reviews stand, once all bites are done; null before.</param>
/// <param name="Last">When it was finished or danced last; null where nobody said.</param>
public sealed record Progress(ValueList<bool> Done, bool Begun, Sm2? Review, DateOnly? Last);
