using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Text;
using Surefoot.Film;
using Surefoot.Film.Captions;
using Surefoot.Film.Notes;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot film: what a film's captions say of a dance.</summary>
internal static class FilmCommand
{
    // Captions of a whole evening are well below this.
    private const int Most = 8 << 20;

    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of the dance" };
        var captions = new Argument<string>("captions") { HelpName = "CAPTIONS", Description = "the film's captions: a WebVTT or SRT file, as video sites give them out" };
        var chapters = new Option<string?>("--chapters") { HelpName = "FILE", Description = "writes the chapters as a WebVTT file" };
        var counts = new Option<string?>("--captions") { HelpName = "FILE", Description = "writes counts and calls, where the dance is shown at tempo, as a WebVTT file" };
        var list = new Option<bool>("--list") { Description = "gives only the list of times that one pastes under a film" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("film", "Lays what is said in a film along the dance: which part is shown when, and where something else is said than is written.")
        {
            Missing = "Say which page and which captions, for example: surefoot film millpond.dance millpond.vtt",
            Examples =
            [
                ("surefoot film millpond.dance millpond.vtt", "lists the chapters, and what is said otherwise than written"),
                ("surefoot film millpond.dance millpond.srt --list", "the times to paste under the film"),
                ("surefoot film millpond.dance millpond.vtt --chapters chapters.vtt", "writes a chapter file"),
            ],
        };
        command.Add(page);
        command.Add(captions);
        command.Add(chapters);
        command.Add(counts);
        command.Add(list);
        command.Add(json);
        command.SetAction(asked =>
        {
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            var path = asked.GetValue(captions)!;
            if (Captions(path, screen) is not { } text) return ExitCode.CouldNotRead;
            if (read.Reading.Score.Sections.Count == 0)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance that a film could show.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            var notes = FilmReader.Read(text, read.Reading, read.Book);
            if (notes.Troubles.Any(t => t.Line == 1) && notes.End.Thousandths == 0)
            {
                new Trouble(path, "there are no captions with times in it.", "Take the file of captions that your video site gives out, WebVTT or SRT.").Tell(screen.Err);
                return ExitCode.CouldNotRead;
            }

            var wrote = Write(asked.GetValue(chapters), VttWriter.Chapters(notes.AllChapters), screen) & Write(asked.GetValue(counts), VttWriter.Captions(notes.Captions), screen);
            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => FilmJson.Write(writer, read.File.PortablePath, path.Replace('\\', '/'), notes));
            else if (asked.GetValue(list)) screen.Out.Write(TimeList.Of(notes));
            else FilmPrinter.Notes(screen, path, notes);
            return wrote ? ExitCode.Fine : ExitCode.CouldNotRead;
        });
        return command;
    }

    private static string? Captions(string path, Screen screen)
    {
        var (bytes, trouble) = PageFiles.Sheet(path, Most);
        if (bytes is not null)
        {
            var (text, _, none) = TextForms.Read(bytes);
            if (none is null) return text;
            trouble = new(path, none.What, "Take the file of captions that your video site gives out, WebVTT or SRT.");
        }

        trouble!.Tell(screen.Err);
        return null;
    }

    private static bool Write(string? file, string text, Screen screen)
    {
        if (file is null) return true;
        if (PageFiles.Write(file, text) is { } trouble)
        {
            trouble.Tell(screen.Err);
            return false;
        }

        screen.Err.WriteLine($"Written to {file}");
        return true;
    }
}
