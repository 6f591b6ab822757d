using Surefoot.Dance.Basics;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>What a film of a dance shows, and where it says something else than the page.</summary>
/// <param name="Title">Of the dance.</param>
/// <param name="End">Where the last caption ends.</param>
/// <param name="Captions">Counts and calls where the dance is shown at tempo.</param>
/// <param name="Troubles">What is not as it should be in the caption file.</param>
public sealed record FilmNotes(
    string Title,
    FilmTime End,
    ValueList<Chapter> Chapters,
    ValueList<Stretch> Stretches,
    ValueList<Difference> Differences,
    ValueList<TimedText> Captions,
    ValueList<CaptionTrouble> Troubles)
{
    /// <summary>Which line of the page is shown when; a line may be shown several times, and two at once where the dancers have lines of their own.</summary>
    public ValueList<ShownLine> Lines { get; init; }

    /// <summary>All chapters, outer before inner, for a chapter file.</summary>
    public ValueList<TimedText> AllChapters
    {
        get
        {
            var all = new List<TimedText>();
            Add(Chapters);
            return all.ToValueList();

            void Add(ValueList<Chapter> chapters)
            {
                foreach (var one in chapters)
                {
                    all.Add(new(one.From, one.To, one.Title));
                    Add(one.Inside);
                }
            }
        }
    }
}

/// <summary>A stretch that somebody may want to jump to.</summary>
/// <param name="Inside">Shorter ones that lie in it.</param>
public sealed record Chapter(FilmTime From, FilmTime To, string Title, ValueList<Chapter> Inside)
{
    /// <summary>Key of the part it shows, or null where it shows no single part.</summary>
    public string? Part { get; init; }

    /// <summary>For whom it is; null for everybody.</summary>
    public Role? Role { get; init; }

    public ShownHow How { get; init; }
}

public enum ShownHow
{
    /// <summary>Talk that is no step.</summary>
    Talk,
    /// <summary>Said or walked step by step.</summary>
    Walked,
    /// <summary>Counted in time, slower than it is danced.</summary>
    Counted,
    /// <summary>Danced at about the page's tempo.</summary>
    AtTempo,
}

/// <summary>Which counts of which part are shown for whom, from where and how.</summary>
/// <param name="Part">Label of the part; null for talk.</param>
/// <param name="FromCount">First whole count in the part; 0 for talk.</param>
/// <param name="Role">For whom; null for everybody.</param>
/// <param name="Tempo">Counts a minute where it is in time, else null.</param>
/// <param name="Sure">Share of what the page asks for there that was heard, 0 to 1.</param>
public sealed record Stretch(FilmTime From, FilmTime To, ShownHow How, string? Part, int FromCount, int ToCount, Role? Role, FilmSide Side, int? Tempo, double Sure);

/// <summary>A stretch in which a line of the page is shown.</summary>
/// <param name="Line">Of the page, from 1.</param>
public sealed record ShownLine(FilmTime From, FilmTime To, int Line);

public enum DifferenceKind
{
    /// <summary>A step or figure said once more than it is written.</summary>
    OneTooMany,
    OtherFoot,
    OtherWay,
    OtherTurn,
    Missing,
    OtherPart,
}

/// <summary>Something that was said otherwise than it is written.</summary>
/// <param name="Part">Label of the part.</param>
/// <param name="Counts">"3&amp;4", counted in the part; empty for a whole part.</param>
/// <param name="Said">The words as they were understood.</param>
/// <param name="Says">One plain sentence.</param>
/// <param name="Line">The page's line, from 1.</param>
/// <param name="Written">The page's words there.</param>
public sealed record Difference(FilmTime At, DifferenceKind Kind, string Part, string Counts, Role? Role, string Said, string Says, int Line, string Written);
