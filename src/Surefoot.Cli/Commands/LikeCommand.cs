using System.CommandLine;
using System.Runtime.CompilerServices;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Likeness;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot like: the dances of a folder, or of a library, that are most like one.</summary>
internal static class LikeCommand
{
    /// <summary>Dances that are shown where nobody says how many.</summary>
    private const int UsualMost = 10;

    /// <summary>Dances with less than this in common are not shown: any two share a few walks. Working value.</summary>
    private const double Least = 0.1;

    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance; with --library also a dance of the library, by its title or name" };
        var among = new Option<string?>("--among") { HelpName = "FOLDER", Description = "where to look; else the page's own folder" };
        var library = new Option<string?>("--library") { HelpName = "FILE", Description = "the studio's library to look in instead of a folder" };
        var most = new Option<string?>("--most") { HelpName = "N", Description = $"how many dances at most; else {UsualMost}" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("like", "Finds the dances most like one: the same under another name, versions of it, dances that share a part.")
        {
            Missing = "Say which page, for example: surefoot like millpond.dance --among notebook",
            Examples =
            [
                ("surefoot like millpond.dance --among notebook", "looks through every page of a folder"),
                ("surefoot like millpond.dance --library surefoot.db", "asks the studio's library"),
                ("surefoot like \"Millpond\" --library surefoot.db", "the same for a dance that is in it"),
            ],
        };
        command.Add(page);
        command.Add(among);
        command.Add(library);
        command.Add(most);
        command.Add(json);
        command.SetAction(asked =>
        {
            if (Numbers.Whole(asked.GetValue(most), "--most", UsualMost, 1, 1000, screen) is not { } number) return ExitCode.CouldNotRead;
            if (asked.GetValue(library) is { } file)
            {
                if (asked.GetValue(among) is null) return InLibrary(screen, asked.GetValue(page)!, file, number, asked.GetValue(json));
                screen.Err.WriteLine("--among looks in a folder and --library in a library; say one of the two.");
                return ExitCode.CouldNotRead;
            }

            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            if (read.Reading.Score.Sections.Count == 0) return NoDance(screen, read.File.Path);
            read.TellErrors(screen);
            return InFolder(screen, read, asked.GetValue(among) ?? (Path.GetDirectoryName(Path.GetFullPath(read.File.Path)) ?? "."), number, asked.GetValue(json));
        });
        return command;
    }

    /// <summary>Says that a page holds nothing to compare.</summary>
    public static int NoDance(Screen screen, string path)
    {
        screen.Err.WriteLine($"{path} holds no dance to compare.");
        return ExitCode.CouldNotRead;
    }

    private static int InFolder(Screen screen, OnePage asked, string folder, int most, bool json)
    {
        var (others, troubles) = ManyDances.In(folder, Path.GetFullPath(asked.File.Path), screen);
        foreach (var trouble in troubles) trouble.Tell(screen.Err);
        var index = new NearestDances();
        for (var i = 0; i < others.Count; i++) index.Put(i, DanceSteps.Of(others[i].Score));
        var near = index.Ask(DanceSteps.Of(asked.Reading.Score), most).Where(n => n.Share >= Least).Select(n => others[(int)n.Key])
            .Select(o => new LikeFound(o.Score.Title, o.Path, null, Verdict.Of(asked.Reading.Score, o.Score)));
        new LikeAnswer(asked.Reading.Score.Title, asked.File.PortablePath, others.Count, [.. near]).Tell(screen, json);
        return troubles.Count > 0 ? ExitCode.CouldNotRead : ExitCode.Fine;
    }

    // A method of its own: what opens databases is loaded only when it is called.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int InLibrary(Screen screen, string page, string file, int most, bool json) => LikeInLibrary.Answer(screen, page, file, most, json);
}
