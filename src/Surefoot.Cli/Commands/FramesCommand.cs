using System.CommandLine;
using System.Globalization;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Frames;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot frames: the dance as numbered pictures, from which any video program makes a film.</summary>
internal static class FramesCommand
{
    private const int UsualRate = 30, FastestRate = 120;

    private const int UsualWidth = 1280, UsualHeight = 720, Smallest = 64, Largest = 4096;

    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var camera = new Option<string[]>("--camera") { HelpName = "NAME", Description = "seen from the back, the side, above or the partner's eyes; twice for two beside each other" };
        var rate = new Option<string?>("--rate") { HelpName = "N", Description = $"pictures a second; {UsualRate} unless told" };
        var size = new Option<string?>("--size") { HelpName = "SIZE", Description = $"of a picture, in pixels; {UsualWidth}x{UsualHeight} unless told" };
        var role = new Option<string?>("--role") { HelpName = "ROLE", Description = "lead or follow, to see one alone" };
        var look = new Option<string?>("--look") { HelpName = "NAME", Description = "light, dark or dim; light unless told" };
        var from = new Option<string?>("--from") { HelpName = "COUNT", Description = "the count to begin with; else the start of the dance" };
        var to = new Option<string?>("--to") { HelpName = "COUNT", Description = "the count to end with; else the end of the repeat" };
        var tempo = new Option<string?>("--tempo") { HelpName = "N", Description = "counts a minute; else the middle of what the page says" };
        var folder = new Option<string?>("--out") { HelpName = "FOLDER", Description = "the folder to write to; else it has the page's name, with -frames" };
        var command = new PlainCommand("frames", "Draws both dancers as numbered PNG pictures for a video program. Needs the browser Chromium.")
        {
            Missing = "Say which page, for example: surefoot frames millpond.dance --camera back",
            Examples =
            [
                ("surefoot frames millpond.dance --camera back", "one repeat from the back, 30 pictures a second"),
                ("surefoot frames millpond.dance --camera back --camera side", "from both sides in one picture"),
                ("surefoot frames millpond.dance --role follow --from 9 --to 16", "her steps alone on counts 9 to 16"),
            ],
        };
        foreach (var option in (Option[])[camera, rate, size, role, look, from, to, tempo, folder]) command.Add(option);
        command.Add(page);
        command.SetAction(async (asked, cancelled) =>
        {
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            if (Numbers.Whole(asked.GetValue(rate), "--rate", UsualRate, 1, FastestRate, screen) is not { } pictures) return ExitCode.CouldNotRead;
            if (Numbers.Whole(asked.GetValue(tempo), "--tempo", MotionFile.TempoOf(read.Reading), Numbers.SlowestTempo, Numbers.FastestTempo, screen) is not { } speed) return ExitCode.CouldNotRead;
            if (View(asked.GetValue(camera) ?? [], asked.GetValue(size), asked.GetValue(role), asked.GetValue(look), screen) is not { } view) return ExitCode.CouldNotRead;
            var length = read.Reading.Score.Counts.ToDouble();
            if (length == 0)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance to picture.");
                return ExitCode.CouldNotRead;
            }

            // A stretch begins where the count before its first has ended, so that the first step is seen whole.
            if (Counted(asked.GetValue(from), "--from", 1, length, screen) is not { } first || Counted(asked.GetValue(to), "--to", length, length, screen) is not { } last) return ExitCode.CouldNotRead;
            if (last < first)
            {
                screen.Err.WriteLine($"Count {first:0.##} comes after count {last:0.##}: say the earlier one after --from.");
                return ExitCode.CouldNotRead;
            }

            if (Chromium.Find() is not { } browser)
            {
                screen.Err.WriteLine("The pictures are drawn in the browser Chromium, which was not found. Install it (on Debian: apt-get install chromium), or say where it is in SUREFOOT_CHROMIUM.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            return await Take(screen, read, browser, view, Counts(first - 1, last, speed, pictures), speed, asked.GetValue(folder) ?? $"{read.Stem}-frames", cancelled);
        });
        return command;
    }

    // Which count each picture shows.
    private static List<double> Counts(double from, double to, int tempo, int rate)
    {
        var pictures = (int)Math.Round((to - from) * 60 / tempo * rate) + 1;
        return [.. Enumerable.Range(0, pictures).Select(i => Math.Min(from + ((double)i / rate * tempo / 60), to))];
    }

    private static async Task<int> Take(Screen screen, OnePage read, string browser, FrameView view, List<double> counts, int tempo, string folder, CancellationToken cancelled)
    {
        try
        {
            Directory.CreateDirectory(folder);
            var motion = Json.JsonOut.Compact(writer => MotionFile.Write(writer, read.Reading, MotionFile.UsualRate, tempo));
            await using var taker = await FrameTaker.BeginAsync(browser, motion, view);
            await Progress.ThroughAsync(counts, screen, "drawing", async (count, i) =>
            {
                cancelled.ThrowIfCancellationRequested();
                await File.WriteAllBytesAsync(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{read.Stem}-{i + 1:000000}.png")), await taker.AtAsync(count), cancelled);
            });
        }
        catch (NoPictureException fault)
        {
            screen.Err.WriteLine(fault.Message);
            return ExitCode.CouldNotRead;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            PageFiles.Refused(folder, fault, "written").Tell(screen.Err);
            return ExitCode.CouldNotRead;
        }

        screen.Err.WriteLine($"{Prose.Number(counts.Count, "picture")} written to {folder}");
        return ExitCode.Fine;
    }

    private static FrameView? View(string[] cameras, string? size, string? role, string? look, Screen screen)
    {
        var known = FrameView.CameraNames;
        if (cameras.FirstOrDefault(c => !known.Contains(c, StringComparer.Ordinal)) is { } other)
        {
            screen.Err.WriteLine($"There is no camera \"{Cells.Harmless(other)}\". Say one of: {Prose.And(known)}");
            return null;
        }

        if (cameras.Length > 2)
        {
            screen.Err.WriteLine("One picture has room for two cameras.");
            return null;
        }

        if (role is not (null or "lead" or "follow"))
        {
            screen.Err.WriteLine($"After --role comes lead or follow, not \"{Cells.Harmless(role)}\".");
            return null;
        }

        if (look is not (null or "light" or "dark" or "dim"))
        {
            screen.Err.WriteLine($"After --look comes light, dark or dim, not \"{Cells.Harmless(look)}\".");
            return null;
        }

        var sides = (size ?? $"{UsualWidth}x{UsualHeight}").Split('x');
        if (sides.Length == 2 && Side(sides[0]) is { } width && Side(sides[1]) is { } height) return new(cameras.Length == 0 ? ["back"] : cameras, width, height, role, look ?? "light");
        screen.Err.WriteLine($"After --size come width and height in pixels from {Smallest} to {Largest}, such as {UsualWidth}x{UsualHeight}, not \"{Cells.Harmless(size!)}\".");
        return null;
    }

    private static int? Side(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var pixels) && pixels is >= Smallest and <= Largest ? pixels : null;

    private static double? Counted(string? text, string option, double usual, double length, Screen screen)
    {
        if (text is null) return usual;
        if (Asking.Counted.Read(text)?.Value.ToDouble() is { } count && count >= 1 && count <= length) return count;
        screen.Err.WriteLine($"After {option} comes a count from 1 to {length.ToString("0.##", CultureInfo.InvariantCulture)}, not \"{Cells.Harmless(text)}\".");
        return null;
    }
}
