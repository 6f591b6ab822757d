using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Likeness;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot like: the dances of a folder that are most like one.</summary>
internal static class LikeCommand
{
    /// <summary>Dances that are shown where nobody says how many.</summary>
    private const int UsualMost = 10;

    /// <summary>Dances with less than this in common are not shown: any two share a few walks. Working value.</summary>
    private const double Least = 0.1;

    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var among = new Option<string?>("--among") { HelpName = "FOLDER", Description = "where to look; else the page's own folder" };
        var most = new Option<string?>("--most") { HelpName = "N", Description = $"how many dances at most; else {UsualMost}" };
        var command = new PlainCommand("like", "Finds the dances most like one: the same under another name, versions of it, dances that share a part.")
        {
            Missing = "Say which page, for example: surefoot like millpond.dance --among notebook",
            Examples = [("surefoot like millpond.dance --among notebook", "looks through every page of a folder")],
        };
        command.Add(page);
        command.Add(among);
        command.Add(most);
        command.SetAction(asked =>
        {
            if (Numbers.Whole(asked.GetValue(most), "--most", UsualMost, 1, 1000, screen) is not { } number) return ExitCode.CouldNotRead;
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            if (read.Reading.Score.Sections.Count == 0)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance to compare.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            return Show(screen, read, asked.GetValue(among) ?? (Path.GetDirectoryName(Path.GetFullPath(read.File.Path)) ?? "."), number);
        });
        return command;
    }

    private static int Show(Screen screen, OnePage asked, string folder, int most)
    {
        var (others, troubles) = ManyDances.In(folder, Path.GetFullPath(asked.File.Path), screen);
        foreach (var trouble in troubles) trouble.Tell(screen.Err);
        var index = new NearestDances();
        for (var i = 0; i < others.Count; i++) index.Put(i, DanceSteps.Of(others[i].Score));
        var near = index.Ask(DanceSteps.Of(asked.Reading.Score), most).Where(n => n.Share >= Least).ToList();
        var told = near.ConvertAll(n => (Other: others[(int)n.Key], Verdict: Verdict.Of(asked.Reading.Score, others[(int)n.Key].Score)));
        var (title, of) = (Cells.Harmless(asked.Reading.Score.Title), Prose.Number(others.Count, "other dance"));
        screen.Out.WriteLine(screen.Skin.Title(told.Count == 0 ? $"No dance there is like {title}."
            : told.TrueForAll(t => t.Verdict.Kind == VerdictKind.Different) ? $"No dance of {of} is a version of {title} or shares a part with it. Nearest:"
            : $"Like {title}, of {of}:"));
        foreach (var (other, verdict) in told) LikenessPrinter.Line(screen, other.Path, other.Score, verdict);

        return troubles.Count > 0 ? ExitCode.CouldNotRead : ExitCode.Fine;
    }
}
