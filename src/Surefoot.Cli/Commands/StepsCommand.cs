using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot steps: which foot does what, count by count.</summary>
internal static class StepsCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("steps", "Writes out every step of a dance: the count, the foot, what it does, where the dancer looks then, which foot carries the weight and what a couple holds.")
        {
            Missing = "Say which page, for example: surefoot steps millpond.dance",
            Examples = [("surefoot steps millpond.dance", "lists the steps part by part")],
        };
        command.Add(page);
        command.Add(json);
        command.SetAction(asked =>
        {
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            read.TellErrors(screen);
            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => StepsJson.Write(writer, read.Reading));
            else if (read.Reading.Score.Sections.Count > 0) Print(screen, read.Reading);
            else screen.Say($"{read.File.Path} holds no dance, so there are no steps to list.");
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Print(Screen screen, Reading reading)
    {
        var score = reading.Score;
        var all = reading.Couple is { } couple ? HoldInForce.All(couple).ToDictionary(h => h.At) : null;
        Func<Count, string?>? holds = all is null ? null : at => all.TryGetValue(at, out var hold) ? hold.Name ?? hold.InFull : null;
        screen.Out.WriteLine(screen.Skin.Title($"{Cells.Harmless(score.Title)}  ({Counts(score.Counts)})".TrimStart()));
        screen.Say(Starts(score));
        for (var s = 0; s < score.Sections.Count; s++)
        {
            var section = score.Sections[s];
            var part = score.Parts[section.Part];
            var back = section.Start - Count.First - Beats.Of(part.CountOffset);
            var roles = score.Roles.Select(r => (r.Role, (IReadOnlyList<ScoreStep>)[.. r.Steps.Where(x => x.Section == s)])).ToList();
            Table(screen, Heading(part) + (section.Mirrored ? ", on the other foot" : ""), roles, at => (at - back).Name, score.Facts.Floor, holds);
        }

        foreach (var extra in score.Extras)
        {
            var part = score.Parts[extra.Part];
            var after = extra.AfterWall is { } wall ? $", danced after repeat {wall}" : "";
            var roles = extra.Roles.Select(r => (r.Role, (IReadOnlyList<ScoreStep>)r.Steps)).ToList();
            Table(screen, Heading(part) + after, roles, at => at.Name, score.Facts.Floor);
        }
    }

    private static void Table(Screen screen, string heading, List<(Role Role, IReadOnlyList<ScoreStep> Steps)> roles, Func<Count, string> counted, Floor floor, Func<Count, string?>? holds = null)
    {
        screen.Out.WriteLine();
        screen.Out.WriteLine(screen.Skin.Title(Cells.Harmless(heading)));
        if (roles.TrueForAll(r => r.Steps.Count == 0)) screen.Out.WriteLine("  no steps");
        else StepTable.Print(StepTable.Rows(roles, counted, floor, facings: true, holds), 2, screen);
    }

    private static string Starts(DanceScore score) => string.Join(" ", score.Roles.Select(r =>
    {
        var who = r.Role switch { Role.Lead => "The lead", Role.Follow => "The follow", _ => "The dancer" };
        var free = r.Start.Free is { } foot ? $"the {foot.Word()} foot free" : "the weight on both feet";
        return $"{who} starts facing {r.Start.Facing.Name(score.Facts.Floor)} with {free}.";
    }));

    private static string Heading(PartScore part) =>
        $"{part.Label}{(part.Name.Length > 0 ? $": {part.Name}" : "")}  ({Counts(part.Length)})";

    private static string Counts(Beats length) => Prose.Number(length.Ceiling, "count");
}
