using Surefoot.Film.Captions;
using Surefoot.Film.Notes;
using Surefoot.Library;

namespace Surefoot.Web.Filming;

/// <summary>A dance and its film as their room shows them.</summary>
/// <param name="Kept">What is kept of the film; null where there is none.</param>
/// <param name="Notes">What the film shows; null without captions, or where the page has no steps yet.</param>
/// <param name="Lines">The page from its first part on, line by line.</param>
public sealed record FilmShown(PageInfo Page, string Title, bool HasSteps, FilmInfo? Kept, FilmNotes? Notes, IReadOnlyList<PageLine> Lines, NotebookSettings Settings);

/// <summary>A line of the page with the moments of the film that show it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Part">It is the heading of a part.</param>
/// <param name="Shown">Stretches in the order of the film.</param>
/// <param name="Otherwise">Places in the list of differences that are about this line, from 0.</param>
public sealed record PageLine(int Number, string Text, bool Part, IReadOnlyList<(FilmTime From, FilmTime To)> Shown, IReadOnlyList<int> Otherwise);
