using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot learn: what is new in a dance, and how hard it is.</summary>
internal static class LearnCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var knows = new Option<string?>("--knows") { HelpName = "PAGE", Description = "a dance that the class knows, or a folder of them" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("learn", "Says how many counts of a dance there are to learn, for each role, and what makes it easy or hard.")
        {
            Missing = "Say which page, for example: surefoot learn millpond.dance",
            Examples = [("surefoot learn millpond.dance", "what is new in it"), ("surefoot learn millpond.dance --knows tuesdays", "what is new to a class that knows the dances of a folder")],
        };
        command.Add(page);
        command.Add(knows);
        command.Add(json);
        command.SetAction(asked =>
        {
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            var score = read.Reading.Score;
            if (Difficulty.Of(score) is not { } difficulty)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance to learn.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            var (known, troubled) = ((List<DanceScore>?)null, false);
            if (asked.GetValue(knows) is { } folder)
            {
                var (dances, troubles) = ManyDances.In(folder, Path.GetFullPath(read.File.Path), screen);
                foreach (var trouble in troubles) trouble.Tell(screen.Err);
                (known, troubled) = ([.. dances.Select(d => d.Score)], troubles.Count > 0);
            }

            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => LearnJson.Write(writer, read.File.PortablePath, score, difficulty, known));
            else Say(screen, score, difficulty, known);
            return troubled ? ExitCode.CouldNotRead : ExitCode.Fine;
        });
        return command;
    }

    private static void Say(Screen screen, DanceScore score, Difficulty difficulty, List<DanceScore>? known)
    {
        screen.Out.WriteLine(screen.Skin.Title(Cells.Harmless(score.Title)));
        foreach (var line in LearningWords.ToLearn(score)) screen.Say(line);
        if (known is { Count: > 0 })
        {
            foreach (var line in LearningWords.Known(score, known)) screen.Say(line);
        }

        screen.Out.WriteLine();
        screen.Say(LearningWords.Suggested(difficulty, score.Facts.Level));
        foreach (var reason in difficulty.Reasons) screen.Say($"  {reason.Level.Word()}: {Cells.Harmless(reason.Says)}", hanging: 4);
    }
}
