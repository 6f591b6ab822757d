using System.Text;

namespace Surefoot.Film.Notes;

/// <summary>The list of times that people paste under a film: a time and a name a line, the first at the film's beginning.</summary>
public static class TimeList
{
    public static string Of(FilmNotes notes)
    {
        var list = new StringBuilder();
        // Whoever reads such a list takes it for one only when it begins at nothing.
        if (notes.Chapters.Count == 0 || notes.Chapters[0].From.Thousandths >= 1000) list.Append("0:00 Welcome\n");
        var first = true;
        foreach (var chapter in notes.Chapters)
        {
            list.Append(first && chapter.From.Thousandths < 1000 ? "0:00" : chapter.From.Short).Append(' ').Append(chapter.Title.ReplaceLineEndings(" ")).Append('\n');
            first = false;
        }

        return list.ToString();
    }
}
