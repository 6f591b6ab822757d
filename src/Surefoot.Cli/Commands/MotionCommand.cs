using System.CommandLine;
using System.Globalization;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Moving;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot motion: where everybody is, many times a second.</summary>
internal static class MotionCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs: bodies, feet and hands through one repeat" };
        var rate = new Option<string?>("--rate") { HelpName = "N", Description = $"how many times a second; {MotionFile.UsualRate} unless told" };
        var tempo = new Option<string?>("--tempo") { HelpName = "N", Description = "counts a minute; else the middle of what the page says" };
        var file = new Option<string?>("--out") { HelpName = "FILE", Description = "the file to write" };
        var command = new PlainCommand("motion", "Says where bodies, feet and hands are through one repeat, smooth between the counts.")
        {
            Missing = "Say which page, for example: surefoot motion millpond.dance",
            Examples = [("surefoot motion millpond.dance", "lists where everybody is on each count"), ("surefoot motion millpond.dance --json --rate 30", "gives 30 samples a second to another program")],
        };
        command.Add(page);
        command.Add(json);
        command.Add(rate);
        command.Add(tempo);
        command.Add(file);
        command.SetAction(asked =>
        {
            if (Numbers.Whole(asked.GetValue(rate), "--rate", MotionFile.UsualRate, 1, MotionFile.FinestRate, screen) is not { } samples) return ExitCode.CouldNotRead;
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            if (Numbers.Whole(asked.GetValue(tempo), "--tempo", MotionFile.TempoOf(read.Reading), Numbers.SlowestTempo, Numbers.FastestTempo, screen) is not { } speed) return ExitCode.CouldNotRead;
            read.TellErrors(screen);
            if (!asked.GetValue(json))
            {
                Print(screen, MovingDance.Of(read.Reading.Score, read.Reading.Motion, read.Reading.Couple));
                return ExitCode.Fine;
            }

            return Output.Give(screen, Json.JsonOut.Compact(writer => MotionFile.Write(writer, read.Reading, samples, speed)), asked.GetValue(file), $"{read.Stem}.motion.json", readable: true);
        });
        return command;
    }

    private static void Print(Screen screen, MovingDance dance)
    {
        screen.Out.WriteLine(screen.Skin.Title(Cells.Harmless(dance.Score.Title)));
        screen.Say(dance.Score.Facts.Floor == Floor.Track
            ? "Metres along the line of dance and towards the centre, from where the lead begins; degrees to the left of the line of dance."
            : "Metres towards 12:00 and towards 9:00, from where the dance begins; degrees to the left of 12:00.");
        for (var count = 0; count <= dance.Score.Counts.Ceiling; count++)
        {
            var cells = dance.Dancers.Select(d => (d.Role, At: d.At(count))).Select(d => $"{(dance.Dancers.Count > 1 ? d.Role.Word() : ""),-7}{Metres(d.At.Middle.X)} {Metres(d.At.Middle.Y)} {Math.Round(d.At.Angle),5}°");
            screen.Out.WriteLine($"{(count == 0 ? "start" : count.ToString(CultureInfo.InvariantCulture)),5}   {string.Join("   ", cells)}");
        }
    }

    private static string Metres(double value) => (Math.Round(value, 2) + 0.0).ToString("0.00", CultureInfo.InvariantCulture).PadLeft(6);
}
