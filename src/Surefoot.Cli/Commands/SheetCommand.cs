using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Cli.Sheets;
using Surefoot.Dance.Basics;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot sheet: the sheet to hand out, for a page or for a whole notebook.</summary>
internal static class SheetCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance, or a folder for a sheet of every dance in it" };
        var text = new Option<bool>("--text") { Description = "plain text, for an e-mail" };
        var markdown = new Option<bool>("--markdown") { Description = "Markdown" };
        var paper = new Option<string?>("--paper") { HelpName = "SIZE", Description = "a4 or letter; a4 unless told" };
        var large = new Option<bool>("--large") { Description = "large print" };
        var feet = new Option<bool>("--feet") { Description = "which foot goes where on each count, in place of the page's own words" };
        var role = new Option<string?>("--role") { HelpName = "ROLE", Description = "lead or follow: a sheet for that dancer alone" };
        var file = new Option<string?>("--out") { HelpName = "FILE", Description = "the file to write, or for a folder of pages the folder to write into" };
        var command = new PlainCommand("sheet", "Makes the sheet to hand out: a page for the printer unless told otherwise, to open in a browser and print.")
        {
            Missing = "Say which page, for example: surefoot sheet millpond.dance",
            Examples =
            [
                ("surefoot sheet millpond.dance", "writes millpond.html"),
                ("surefoot sheet millpond.dance --text", "shows it as plain text"),
                ("surefoot sheet notebook --out sheets", "writes a sheet for every dance, and a list of them"),
            ],
        };
        foreach (var option in (Option[])[text, markdown, paper, large, feet, role, file]) command.Add(option);
        command.Add(page);
        command.SetAction(asked =>
        {
            if (Papers.Read(asked.GetValue(paper), screen) is not { } size || Only(asked.GetValue(role), screen) is not { } only) return ExitCode.CouldNotRead;
            if (asked.GetValue(text) && asked.GetValue(markdown))
            {
                screen.Err.WriteLine("Choose one of --text and --markdown.");
                return ExitCode.CouldNotRead;
            }

            var form = asked.GetValue(text) ? SheetForm.Text : asked.GetValue(markdown) ? SheetForm.Markdown : SheetForm.Html;
            var options = new SheetOptions { Paper = size, LargePrint = asked.GetValue(large), FeetOnly = asked.GetValue(feet), Only = only.Role };
            var path = asked.GetValue(page)!;
            return Directory.Exists(path)
                ? Folder(screen, path, asked.GetValue(file), form, options)
                : Page(screen, path, asked.GetValue(file), form, options);
        });
        return command;
    }

    private static int Page(Screen screen, string path, string? file, SheetForm form, SheetOptions options)
    {
        if (OnePage.Read(path, screen) is not { } page) return ExitCode.CouldNotRead;
        if (page.Reading.Score.Sections.Count == 0)
        {
            screen.Err.WriteLine($"{path} holds no dance to make a sheet of.");
            return ExitCode.CouldNotRead;
        }

        if (options.Only is not null && !page.Reading.Score.Facts.ForCouples)
        {
            screen.Err.WriteLine($"{path} is danced without a partner, so there is no lead or follow. Leave out --role.");
            return ExitCode.CouldNotRead;
        }

        page.TellErrors(screen);
        return Output.Give(screen, form.Write(page.Reading, options with { Doubts = page.Errors }), file, page.Stem + form.Ending(), readable: form != SheetForm.Html);
    }

    private static int Folder(Screen screen, string folder, string? into, SheetForm form, SheetOptions options)
    {
        if (into is null)
        {
            screen.Err.WriteLine($"Say where the sheets go, for example: surefoot sheet {Names.Quoted(folder)} --out sheets");
            return ExitCode.CouldNotRead;
        }

        var (pages, troubles) = PageFinder.Find([folder]);
        var notebooks = new Notebooks();
        var written = new List<SheetList.Line>();
        Progress.Through(pages, screen, "Writing sheets", path =>
        {
            var (file, trouble) = PageFiles.Read(path);
            if (file is not null)
            {
                var page = OnePage.Read(file, notebooks);
                // A page of figures has nothing to hand out.
                if (page.Reading.Score.Sections.Count == 0) return;
                var name = Path.ChangeExtension(Path.GetRelativePath(folder, path), form.Ending());
                var mine = page.Reading.Score.Facts.ForCouples ? options : options with { Only = null };
                trouble = PageFiles.Write(Path.Combine(into, name), form.Write(page.Reading, mine with { Doubts = page.Errors }));
                if (trouble is null) written.Add(new(name.Replace('\\', '/'), page));
            }

            if (trouble is not null) troubles.Add(trouble);
        });

        if (written.Count > 0 && form == SheetForm.Html && PageFiles.Write(Path.Combine(into, "index.html"), SheetList.Write(written)) is { } fault) troubles.Add(fault);
        foreach (var trouble in troubles.Concat(notebooks.Troubles).DistinctBy(t => t.Path, StringComparer.Ordinal)) trouble.Tell(screen.Err);
        if (written.Count > 0)
        {
            screen.Say($"{Prose.Number(written.Count, "sheet")} written into {into}{(form == SheetForm.Html ? $"; to see them all open {Path.Combine(into, "index.html")}" : "")}.");
        }

        var faulty = written.Count(w => w.Page.HasErrors);
        if (faulty > 0) screen.Err.WriteLine($"{faulty} of them {(faulty == 1 ? "has" : "have")} errors and {(faulty == 1 ? "shows its page" : "show their pages")} as far as they can be danced. More: surefoot check {Names.Quoted(folder)}");
        return troubles.Count > 0 || notebooks.Troubles.Count > 0 ? ExitCode.CouldNotRead : ExitCode.Fine;
    }

    private sealed record Chosen(Role? Role);

    private static Chosen? Only(string? said, Screen screen)
    {
        switch (said?.ToLowerInvariant())
        {
            case null:
                return new(null);
            case "lead":
                return new(Role.Lead);
            case "follow":
                return new(Role.Follow);
            default:
                screen.Err.WriteLine($"A role is lead or follow, not {Cells.Harmless(said!)}.");
                return null;
        }
    }
}
