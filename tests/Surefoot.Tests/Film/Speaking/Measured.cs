using Surefoot.Film.Notes;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>A film's notes held against what is true of it.</summary>
/// <param name="Late">Chapters of the truth without one of their part within <see cref="Near"/>.</param>
/// <param name="Missed">Planted differences that were not told.</param>
/// <param name="False">Differences that were told and not planted.</param>
internal sealed record Measured(int Chapters, IReadOnlyList<TrueChapter> Late, int Planted, IReadOnlyList<Planted> Missed, IReadOnlyList<Difference> False, int Invented)
{
    /// <summary>Seconds within which a chapter has to start.</summary>
    public const double Near = 3;

    /// <summary>Seconds between a planted difference and where it is told: a phrase or two.</summary>
    private const double Beside = 6;

    public static Measured Of(SpokenFilm film, FilmNotes notes)
    {
        var all = notes.Chapters.Concat(notes.Chapters.SelectMany(c => c.Inside)).ToList();
        var late = film.Chapters.Where(t => !all.Exists(c => c.Part == t.Part && (t.Part is not null || c.How is ShownHow.AtTempo or ShownHow.Counted) && Math.Abs(c.From.Seconds - t.From) <= Near)).ToList();
        var invented = notes.Chapters.Count(c => c.How != ShownHow.Talk && !film.Chapters.Any(t => t.Part == c.Part && Math.Abs(c.From.Seconds - t.From) <= Near));
        var open = notes.Differences.ToList();
        var missed = new List<Planted>();
        foreach (var planted in film.Planted)
        {
            if (open.FirstOrDefault(d => Told(planted, d)) is { } told) open.Remove(told);
            else missed.Add(planted);
        }

        return new(film.Chapters.Count, late, film.Planted.Count, missed, open, invented);
    }

    // "The other foot" of a figure that goes sideways is the other way as well.
    private static bool Told(Planted planted, Difference told) => Math.Abs(told.At.Seconds - planted.At) <= Beside && (planted.Kind, told.Kind) switch
    {
        (Mistake.OneTooMany, DifferenceKind.OneTooMany) or (Mistake.OtherWay, DifferenceKind.OtherWay) or (Mistake.OtherTurn, DifferenceKind.OtherTurn)
            or (Mistake.Missing, DifferenceKind.Missing) or (Mistake.OtherPart, DifferenceKind.OtherPart) or (Mistake.OtherFoot, DifferenceKind.OtherFoot) => true,
        (Mistake.OtherFoot, DifferenceKind.OtherWay or DifferenceKind.OtherTurn) => true,
        _ => false,
    };
}
