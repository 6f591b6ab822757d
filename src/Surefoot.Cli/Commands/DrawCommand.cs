using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot draw: the feet count by count, or everybody at one count, seen from above.</summary>
internal static class DrawCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var part = new Option<string?>("--part") { HelpName = "NAME", Description = "one part alone, such as A" };
        var count = new Option<string?>("--count") { HelpName = "COUNT", Description = "everybody at one count, such as 15 or 3&: bodies, feet, arms and hands" };
        var file = new Option<string?>("--out") { HelpName = "FILE", Description = "the file to write; else it has the page's name, with .svg" };
        var command = new PlainCommand("draw", "Draws where the feet go, seen from above, as a picture in SVG.")
        {
            Missing = "Say which page, for example: surefoot draw millpond.dance",
            Examples = [("surefoot draw millpond.dance", "draws the whole dance"), ("surefoot draw millpond.dance --part B", "draws one part"), ("surefoot draw millpond.dance --count 15", "draws where both are on count 15")],
        };
        command.Add(page);
        command.Add(part);
        command.Add(count);
        command.Add(file);
        command.SetAction(asked =>
        {
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            var (score, motion) = (read.Reading.Score, read.Reading.Motion);
            if (score.Sections.Count == 0)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance to draw.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            if (asked.GetValue(count) is { } moment) return AtCount(screen, read, moment, asked.GetValue(part), asked.GetValue(file));
            if (asked.GetValue(part) is not { } name)
            {
                return Output.Give(screen, FootPicture.SvgOfDance(score, motion), asked.GetValue(file), $"{read.Stem}.svg", readable: false);
            }

            var section = Section(score, name);
            if (section < 0)
            {
                return NoSuchPart(screen, score, name);
            }

            return Output.Give(screen, FootPicture.Svg(score, motion, section), asked.GetValue(file), $"{read.Stem}-{Keys(score)[section].Replace(' ', '-')}.svg", readable: false);
        });
        return command;
    }

    private static int AtCount(Screen screen, OnePage read, string asked, string? part, string? file)
    {
        var (score, section) = (read.Reading.Score, 0);
        if (part is not null && (section = Section(score, part)) < 0) return NoSuchPart(screen, score, part);
        // Counts are those of the part where one is named, else they run through the repeat.
        var from = part is null ? Count.First : score.Sections[section].Start;
        var offset = part is null ? 0 : score.Parts[score.Sections[section].Part].CountOffset;
        var length = part is null ? score.Counts : score.Parts[score.Sections[section].Part].Length;
        var into = Counted.Read(asked) is { } told ? told - Count.First - Beats.Of(offset) : Beats.Of(-1);
        if (into < Beats.Zero || into >= length)
        {
            var last = (length + Beats.Of(offset)).Ceiling;
            screen.Err.WriteLine($"\"{Cells.Harmless(asked)}\" is no count of {(part is null ? "the dance" : "that part")}. Say one from {offset + 1} to {last}, such as {Math.Min(last, offset + 3)} or {Math.Min(last, offset + 3)}&.");
            return ExitCode.CouldNotRead;
        }

        var at = from + into;
        var dance = MovingDance.Of(score, read.Reading.Motion, read.Reading.Couple);
        var picture = MomentPicture.Of(dance, at.Value.ToDouble(), MomentWords.Of(read.Reading, at));
        return Output.Give(screen, picture, file, $"{read.Stem}-count-{at.Name.Replace("&", "and", StringComparison.Ordinal)}.svg", readable: false);
    }

    private static int NoSuchPart(Screen screen, DanceScore score, string name)
    {
        screen.Err.WriteLine($"The dance has no part \"{Cells.Harmless(name)}\" in its repeat. Its parts are: {Prose.And(Keys(score))}");
        return ExitCode.CouldNotRead;
    }

    // "A", "part a" and the part's own name all mean it; the first time it is danced is drawn.
    private static int Section(DanceScore score, string name)
    {
        for (var i = 0; i < score.Sections.Count; i++)
        {
            var part = score.Parts[score.Sections[i].Part];
            if (Is(part.Key) || Is(part.Label) || Is(part.Name)) return i;
        }

        return -1;

        bool Is(string known) => known.Length > 0 && known.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);
    }

    private static List<string> Keys(DanceScore score) =>
        [.. score.Sections.Select(s => score.Parts[s.Part]).Select(p => p.Key.Length > 0 ? p.Key : p.Label)];
}
