using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Likeness;

namespace Surefoot.Cli.Commands;

/// <summary>A dance that is like another.</summary>
/// <param name="Where">Its file, or its notebook and name in the library.</param>
/// <param name="Page">Its number in the library; null for a file.</param>
internal sealed record LikeFound(string Title, string Where, long? Page, Verdict Verdict);

/// <summary>What is like a dance.</summary>
/// <param name="Where">The file of the dance that was asked about, or its notebook and name in the library.</param>
/// <param name="Others">Dances that were looked through.</param>
internal sealed record LikeAnswer(string Title, string Where, int Others, IReadOnlyList<LikeFound> Found)
{
    public void Tell(Screen screen, bool json)
    {
        if (json)
        {
            JsonOut.Write(screen.Out, writer => LikeJson.Write(writer, this));
            return;
        }

        var (title, of) = (Title.Length > 0 ? Cells.Harmless(Title) : "a dance without a title", Prose.Number(Others, "other dance"));
        screen.Out.WriteLine(screen.Skin.Title(Found.Count == 0 ? $"No dance there is like {title}."
            : Found.All(f => f.Verdict.Kind == VerdictKind.Different) ? $"No dance of {of} is a version of {title} or shares a part with it. Nearest:"
            : $"Like {title}, of {of}:"));
        foreach (var found in Found) LikenessPrinter.Line(screen, found);
    }
}
