using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Moving;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot floor: how far a dance travels and how many fit into a room.</summary>
internal static class FloorCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var room = new Option<string?>("--room") { HelpName = "SIZE", Description = "the floor, such as 12x18 in metres or 40x60ft" };
        var tempo = new Option<string?>("--tempo") { HelpName = "N", Description = "counts a minute; else the middle of what the page says" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("floor", "Says how far one repeat travels, how far couples must keep apart, and how many fit into a room.")
        {
            Missing = "Say which page, for example: surefoot floor millpond.dance",
            Examples = [("surefoot floor millpond.dance --room 12x18", "for a floor of 12 by 18 metres"), ("surefoot floor millpond.dance --room 40x60ft", "for a floor measured in feet")],
        };
        command.Add(page);
        command.Add(room);
        command.Add(tempo);
        command.Add(json);
        command.SetAction(asked =>
        {
            Room? floor = null;
            if (asked.GetValue(room) is { } size && (floor = RoomAsked.Read(size)) is null)
            {
                screen.Err.WriteLine($"After --room come two sides, such as 12x18 (metres) or 40x60ft, not \"{Cells.Harmless(size)}\".");
                return ExitCode.CouldNotRead;
            }

            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            if (Numbers.Whole(asked.GetValue(tempo), "--tempo", MotionFile.TempoOf(read.Reading), Numbers.SlowestTempo, Numbers.FastestTempo, screen) is not { } speed) return ExitCode.CouldNotRead;
            var figures = read.Reading.Score.Sections.Count == 0 ? null : FloorFigures.Of(MovingDance.Of(read.Reading.Score, read.Reading.Motion, read.Reading.Couple));
            if (figures is null)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance to measure.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => FloorJson.Write(writer, read.Reading, figures, floor, speed));
            else FloorPrinter.Print(screen, read.Reading, figures, floor, speed);
            return ExitCode.Fine;
        });
        return command;
    }
}
