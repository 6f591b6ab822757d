using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot draw: the feet seen from above.</summary>
internal static class DrawCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var part = new Option<string?>("--part") { HelpName = "NAME", Description = "one part alone, such as A" };
        var file = new Option<string?>("--out") { HelpName = "FILE", Description = "the file to write; else it has the page's name, with .svg" };
        var command = new PlainCommand("draw", "Draws where the feet go, seen from above, as a picture in SVG.")
        {
            Missing = "Say which page, for example: surefoot draw millpond.dance",
            Examples = [("surefoot draw millpond.dance", "draws the whole dance"), ("surefoot draw millpond.dance --part B", "draws one part")],
        };
        command.Add(page);
        command.Add(part);
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
            if (asked.GetValue(part) is not { } name)
            {
                return Output.Give(screen, FootPicture.SvgOfDance(score, motion), asked.GetValue(file), $"{read.Stem}.svg", readable: false);
            }

            var section = Section(score, name);
            if (section < 0)
            {
                screen.Err.WriteLine($"The dance has no part \"{Cells.Harmless(name)}\" in its repeat. Its parts are: {Prose.And(Keys(score))}");
                return ExitCode.CouldNotRead;
            }

            return Output.Give(screen, FootPicture.Svg(score, motion, section), asked.GetValue(file), $"{read.Stem}-{Keys(score)[section].Replace(' ', '-')}.svg", readable: false);
        });
        return command;
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
