using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Scoring;
using Surefoot.Library;
using Surefoot.Library.Searching;
using Surefoot.Library.Sqlite;
using Surefoot.Solver;

namespace Surefoot.Cli.Commands;

/// <summary>Asks the studio's library which dances are like one. It answers from what it keeps of every dance and reads no pages but the ones it names.</summary>
internal static class LikeInLibrary
{
    public static int Answer(Screen screen, string page, string file, int most, bool json)
    {
        // Opening a library makes it where there is none; a name that was mistyped is not to become one.
        if (!File.Exists(file))
        {
            new Trouble(file, "there is no such library.", "The studio's own is surefoot/surefoot.db in your data folder.").Tell(screen.Err);
            return ExitCode.CouldNotRead;
        }

        try
        {
            return AnswerAsync(screen, page, file, most, json).GetAwaiter().GetResult();
        }
        catch (LibraryException fault)
        {
            screen.Err.WriteLine(fault.Message);
            return ExitCode.CouldNotRead;
        }
    }

    private static async Task<int> AnswerAsync(Screen screen, string page, string file, int most, bool json)
    {
        // What is missing of its index is made as the studio makes it, couples solved.
        using var library = await DanceLibrary.OpenAsync(new SqliteStore(file), new() { Solver = new ProvenSolver() });
        var (notebooks, all) = ((await library.Notebooks.AllAsync()).ToDictionary(n => n.Id, n => n.Name), (await library.Catalogue.ListAsync(new())).Dances);
        if (File.Exists(page))
        {
            if (OnePage.Read(page, screen) is not { } read) return ExitCode.CouldNotRead;
            if (read.Reading.Score.Sections.Count == 0) return LikeCommand.NoDance(screen, page);
            read.TellErrors(screen);
            Tell(read.Reading.Score.Title, read.File.PortablePath, all.Count, await library.Likes.OfAsync(read.Reading.Score, most));
            return ExitCode.Fine;
        }

        var named = all.Where(d => Same(d.Title, page) || Same(d.Name, page) || Same(d.Name[(d.Name.LastIndexOf('/') + 1)..], page)).ToList();
        if (named is [var asked])
        {
            Tell(asked.Title, Where(asked), all.Count - 1, await library.Likes.OfAsync(asked.Page, most));
            return ExitCode.Fine;
        }

        new Trouble(page, named.Count == 0 ? "there is no such page, and no dance of that title or name in the library." : $"{named.Count} dances in the library are called so.",
            named.Count == 0 ? await NearestAsync(library, page) : $"Say which: {string.Join(", ", named.Select(d => d.Name))}").Tell(screen.Err);
        return ExitCode.CouldNotRead;

        void Tell(string title, string where, int others, IReadOnlyList<LikeDance> likes) =>
            new LikeAnswer(title, where, others, [.. likes.Select(l => new LikeFound(l.Dance.Title, Where(l.Dance), l.Dance.Page, l.Verdict))]).Tell(screen, json);

        string Where(ShelfItem dance) => $"{notebooks.GetValueOrDefault(dance.Notebook, "a notebook in the bin")}, {dance.Name}";
    }

    private static async Task<string> NearestAsync(DanceLibrary library, string words) =>
        await library.Catalogue.SearchAsync(words, most: 1) is [var near] ? $"Did you mean: {near.Dance.Title}" : "The studio lists the dances of a library.";

    private static bool Same(string name, string asked) => string.Equals(name, asked.Trim(), StringComparison.OrdinalIgnoreCase);
}
