using Surefoot.Film.Captions;
using Surefoot.Film.Notes;

namespace Surefoot.Cli.Printing;

/// <summary>Shows what a film holds: its chapters, and what is said otherwise than it is written.</summary>
internal static class FilmPrinter
{
    public static void Notes(Screen screen, string file, FilmNotes notes)
    {
        screen.Out.WriteLine(screen.Skin.Title($"{Cells.Harmless(notes.Title)}, {notes.End.Short} of film"));
        foreach (var chapter in notes.Chapters)
        {
            Line(chapter.From, chapter.Title, 0);
            foreach (var inside in chapter.Inside) Line(inside.From, inside.Title, 4);
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine(screen.Skin.Title(notes.Differences.Count == 0 ? "What is said is what is written." : $"{Prose.Number(notes.Differences.Count, "difference")} between what is said and what is written:"));
        foreach (var one in notes.Differences)
        {
            var who = one.Role is { } role ? $" ({Dance.Basics.Roles.Word(role)})" : "";
            screen.Say($"{one.At.Short,7}  {one.Part}{(one.Counts.Length > 0 ? $", count {one.Counts}" : "")}{who}: {Cells.Harmless(one.Says)}", hanging: 9);
            screen.Say($"line {one.Line}: {Cells.Harmless(one.Written)}", indent: 9);
        }

        if (notes.Troubles.Count == 0) return;
        screen.Err.WriteLine($"{file}: {Prose.Number(notes.Troubles.Count, "thing")} in the caption file not as it should be.");
        foreach (var trouble in notes.Troubles) screen.Err.WriteLine($"  line {trouble.Line}: {Cells.Harmless(trouble.Says)}");

        void Line(FilmTime at, string title, int more) => screen.Out.WriteLine($"{at.Short,7}  {new string(' ', more)}{Cells.Harmless(title)}");
    }
}
