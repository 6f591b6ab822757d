using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Transcribe;
using Surefoot.Transcribe.Files;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot read: other people's sheets become pages.</summary>
internal static class ReadCommand
{
    public static Command Make(Screen screen)
    {
        var files = new Argument<string[]>("files") { HelpName = "FILE", Description = "sheets somebody typed: plain text, PDF or DOCX", Arity = ArgumentArity.OneOrMore };
        var told = new Option<string?>("--words") { HelpName = "FILE", Description = "the hall's own words: lines such as \"frobble => hitch\"; a library's export has them" };
        var beside = new Option<bool>("--beside") { Description = "shows every line of the sheet with what became of it" };
        var write = new Option<bool>("--write") { Description = "writes each page beside its sheet, where there is none yet" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("read", "Turns a sheet that somebody typed in their own way into a page, and says what was assumed and what was not understood.")
        {
            Missing = "Say which sheet, for example: surefoot read \"old sheet.txt\"",
            Examples =
            [
                ("surefoot read \"old sheet.txt\"", "shows the page, and what to look at"),
                ("surefoot read sheet.pdf --beside", "shows line by line what was understood"),
                ("surefoot read sheets/*.docx --write", "writes a page beside each"),
                ("surefoot read sheet.txt --words hall-words.rules", "reads what only this hall says as it means it"),
            ],
        };
        command.Add(files);
        command.Add(told);
        command.Add(beside);
        command.Add(write);
        command.Add(json);
        command.SetAction(asked =>
        {
            var (worst, all, notebooks) = (ExitCode.Fine, new List<(string File, Transcript Read)>(), new Notebooks());
            IReadOnlyList<SheetWord> words = [];
            if (asked.GetValue(told) is { } list)
            {
                (var own, var whole) = WordsOf(list, screen);
                if (own is null) return ExitCode.CouldNotRead;
                words = own;
                if (!whole) worst = ExitCode.CouldNotRead;
            }

            foreach (var file in asked.GetValue(files)!)
            {
                if (Read(file, words, notebooks, screen) is not { } read)
                {
                    worst = ExitCode.CouldNotRead;
                    continue;
                }

                all.Add((file, read));
                if (asked.GetValue(json)) continue;
                if (asked.GetValue(write) && !Write(file, read, screen)) worst = ExitCode.CouldNotRead;
                if (asked.GetValue(beside)) TranscriptPrinter.Beside(screen, read);
                else if (!asked.GetValue(write)) screen.Out.Write(read.Page);
                TranscriptPrinter.Doubts(screen, file, read);
            }

            foreach (var trouble in notebooks.Troubles) trouble.Tell(screen.Err);
            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => TranscriptJson.Write(writer, all));
            return worst;
        });
        return command;
    }

    private static Transcript? Read(string path, IReadOnlyList<SheetWord> words, Notebooks notebooks, Screen screen)
    {
        var (bytes, trouble) = PageFiles.Sheet(path, SheetFile.Most);
        if (bytes is not null)
        {
            var (text, none) = SheetFile.Read(bytes);
            if (text is not null) return SheetReader.Read(text, notebooks.For(path), words);
            trouble = new(path, none!.What, none.Advice);
        }

        trouble!.Tell(screen.Err);
        return null;
    }

    // Lines that cannot be read are told; sheets are read with the others.
    private static (IReadOnlyList<SheetWord>? Words, bool Whole) WordsOf(string path, Screen screen)
    {
        var (file, trouble) = PageFiles.Read(path);
        if (file is null)
        {
            trouble!.Tell(screen.Err);
            return (null, false);
        }

        var (words, troubles) = SheetWords.Read(file.Text);
        foreach (var (line, says) in troubles) screen.Err.WriteLine($"{path}, line {line}: {Cells.Harmless(says)}");
        return ([.. words], troubles.Count == 0);
    }

    private static bool Write(string file, Transcript read, Screen screen)
    {
        var page = Path.ChangeExtension(file, PageFiles.Ending);
        if (File.Exists(page))
        {
            new Trouble(page, "there is a page of that name already, so it was left as it is.", "Rename one of the two.").Tell(screen.Err);
            return false;
        }

        if (PageFiles.Write(page, read.Page) is { } trouble)
        {
            trouble.Tell(screen.Err);
            return false;
        }

        screen.Say($"{page} is written.");
        return true;
    }
}
