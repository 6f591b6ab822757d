using System.CommandLine;
using System.Text.Json;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Words;
using Surefoot.Draw.Vocabulary;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot words: everything that can be written, and what a figure comes to from either foot.</summary>
internal static class WordsCommand
{
    public static Command Make(Screen screen)
    {
        var words = new Argument<string[]>("word") { HelpName = "WORD", Arity = ArgumentArity.ZeroOrMore, Description = "a word or a figure's name; without one, everything is listed" };
        var notebook = new Option<string?>("--notebook") { HelpName = "FOLDER", Description = "whose own figures count too; else those of the folder you are in" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("words", "Lists everything that can be written on a page, with what it means; for a figure, shows each step from the left and from the right foot.")
        {
            Examples = [("surefoot words", "lists all words and figures"), ("surefoot words sailor", "shows how a sailor step goes"), ("surefoot words coaster step", "names may have several words")],
        };
        command.Add(words);
        command.Add(notebook);
        command.Add(json);
        command.SetAction(asked =>
        {
            var folder = asked.GetValue(notebook);
            if (folder is not null && !Directory.Exists(folder))
            {
                new Trouble(folder, "there is no such folder.", "Name the folder that holds the hall's figure page.").Tell(screen.Err);
                return ExitCode.CouldNotRead;
            }

            var notebooks = new Notebooks();
            var book = notebooks.ForFolder(folder ?? ".");
            foreach (var trouble in notebooks.Troubles) trouble.Tell(screen.Err);
            var word = string.Join(' ', asked.GetValue(words) ?? []).Trim();
            return (word.Length > 0, asked.GetValue(json)) switch
            {
                (false, false) => All(screen, book),
                (false, true) => Json(screen, json => WordsJson.All(json, book)),
                (true, false) => One(screen, word, book),
                _ => WordsJson.Knows(word, book) ? Json(screen, json => WordsJson.One(json, word, book)) : Unknown(screen, word, book),
            };
        });
        return command;
    }

    private static int All(Screen screen, FigureBook book)
    {
        foreach (var group in WordGroups.All(book))
        {
            screen.Out.WriteLine(screen.Skin.Title(group.Name));
            foreach (var entry in group.Entries) Print(screen, entry);
            screen.Out.WriteLine();
        }

        screen.Say("More about one of them, and how a figure goes step by step: surefoot words WORD");
        return ExitCode.Fine;
    }

    private static void Print(Screen screen, Entry entry)
    {
        const int column = 24;
        screen.Say($"  {Cells.Pad(entry.Word, column)}  {entry.Meaning}".TrimEnd(), hanging: column + 4);
        if (entry.Also.Count > 0) screen.Say($"{new string(' ', column + 4)}also: {string.Join(", ", entry.Also)}", hanging: column + 10);
    }

    private static int Json(Screen screen, Action<Utf8JsonWriter> document)
    {
        JsonOut.Write(screen.Out, document);
        return ExitCode.Fine;
    }

    private static int One(Screen screen, string word, FigureBook book)
    {
        var found = WordGroups.Find(word, book);
        var figure = book.Named(word);
        if (found.Count == 0 && figure is null) return Unknown(screen, word, book);
        // The figure itself is told in full below.
        foreach (var (group, entry) in found.Where(f => figure is null || f.Entry.Word != figure.Name))
        {
            screen.Out.WriteLine(screen.Skin.Title(group));
            Print(screen, entry with { Also = entry.Also.Count > 40 ? [] : entry.Also });
            screen.Out.WriteLine();
        }

        if (figure is not null) Figure(screen, figure, book);
        return ExitCode.Fine;
    }

    private static int Unknown(Screen screen, string word, FigureBook book)
    {
        var near = NearWords.Of(word, book).Select(n => n.Word).ToList();
        screen.Err.WriteLine($"\"{Cells.Harmless(word)}\" is not a word that Surefoot knows.{(near.Count > 0 ? $" Nearest: {Prose.And(near, "or")}." : "")}");
        screen.Err.WriteLine("All words are listed by: surefoot words");
        return ExitCode.CouldNotRead;
    }

    private static void Figure(Screen screen, Figure figure, FigureBook book)
    {
        var length = figure.AnyCounts ? "as many counts as the line gives it" : Counts(figure);
        screen.Out.WriteLine($"{screen.Skin.Title(figure.Name)}  ({length})");
        screen.Say(Sentence(figure.Means), 2);
        if (figure.OtherNames.Count > 0) screen.Say($"Also written: {string.Join(", ", figure.OtherNames)}", 2);
        if (figure.Own) screen.Say(figure.Overrides ? "This notebook's own, in place of the one in the figure book." : "This notebook's own.", 2);
        else if (figure.Source.Length > 0) screen.Say($"Source: {figure.Source}", 2);
        foreach (var example in figure.Examples) screen.Say($"On a page: {example}", 2);
        foreach (var shown in FigureShown.All(figure, book))
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine("  " + screen.Skin.Title(Capital($"{(shown.Way.Length > 0 ? shown.Way + ", " : "")}starting {shown.From.Word()}")));
            var roles = shown.Score.Roles.Select(r => (r.Role, (IReadOnlyList<ScoreStep>)r.Steps)).ToList();
            StepTable.Print(StepTable.Rows(roles, at => at.Name, shown.Score.Facts.Floor, facings: false), 4, screen);
        }
    }

    private static string Counts(Figure figure)
    {
        var whole = Math.Max(figure.StatedCounts, figure.Versions.SelectMany(v => v.Lines).Select(l => l.Group.End.Whole - 1).DefaultIfEmpty(0).Max());
        return $"{whole} {(whole == 1 ? "count" : "counts")}{(figure.OrMore ? " or more" : "")}";
    }

    private static string Sentence(string text) => text.Length == 0 ? "" : Capital(text) + (text[^1] == '.' ? "" : ".");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
