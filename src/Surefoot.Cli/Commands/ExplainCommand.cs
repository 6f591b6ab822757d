using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Cli.Vocabulary;
using Surefoot.Dance;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Words;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot explain: more about a problem, with a page that has it and the page mended.</summary>
internal static class ExplainCommand
{
    public static Command Make(Screen screen)
    {
        var name = new Argument<string?>("name") { HelpName = "NAME", Arity = ArgumentArity.ZeroOrOne, Description = "a problem's name as check prints it; without one, all of them are listed" };
        var command = new PlainCommand("explain", "Tells more about a problem: what it means, why it matters, a page that has it and the same page mended.")
        {
            Examples = [("surefoot explain weight-same-foot", "tells about one problem"), ("surefoot explain", "lists them all")],
        };
        command.Add(name);
        command.SetAction(asked => asked.GetValue(name) is { Length: > 0 } one ? One(screen, one) : All(screen));
        return command;
    }

    private static int All(Screen screen)
    {
        var names = Explanation.Names.ToList();
        var width = names.Max(n => n.Length);
        foreach (var name in names)
        {
            var explained = Explanation.Of(name);
            screen.Say($"{Cells.Pad(name, width)}   {Cells.Pad(explained?.Severity ?? "", 7)}   {explained?.InShort}".TrimEnd(), hanging: width + 13);
        }

        screen.Out.WriteLine();
        screen.Say("An error cannot be danced as written, a warning can but was probably not meant, a hint says what was assumed.");
        screen.Say("More about one of them: surefoot explain NAME");
        return ExitCode.Fine;
    }

    private static int One(Screen screen, string asked)
    {
        var name = asked.Trim().ToLowerInvariant().Replace(' ', '-');
        if (Explanation.Of(name) is { } explained)
        {
            Print(screen, explained);
            return ExitCode.Fine;
        }

        var names = Explanation.Names.ToList();
        if (names.Contains(name, StringComparer.Ordinal))
        {
            screen.Err.WriteLine($"Nothing more is written about {name} yet.");
            return ExitCode.CouldNotRead;
        }

        var limit = Math.Max(2, name.Length / 3);
        var near = names.Select(n => (Name: n, Distance: NearWords.Distance(name, n, limit)))
            .Where(n => n.Distance <= limit || n.Name.Contains(name, StringComparison.Ordinal))
            .OrderBy(n => n.Distance).ThenBy(n => n.Name, StringComparer.Ordinal).Take(3).Select(n => n.Name).ToList();
        screen.Err.WriteLine($"No problem is called {name}.{(near.Count > 0 ? $" Did you mean: {Prose.And(near, "or")}" : "")}");
        screen.Err.WriteLine("All names are listed by: surefoot explain");
        return ExitCode.CouldNotRead;
    }

    private static void Print(Screen screen, Explanation explained)
    {
        var severity = explained.Severity switch { "error" => Severity.Error, "warning" => Severity.Warning, _ => Severity.Hint };
        screen.Out.WriteLine($"{screen.Skin.Of(severity, explained.Severity)}  {screen.Skin.Title(explained.Name)}");
        screen.Say(explained.InShort, 2);
        var shows = false;
        foreach (var block in explained.Blocks)
        {
            if (block.Kind != ExplanationBlockKind.Paragraph || !block.Text.StartsWith("- ", StringComparison.Ordinal)) screen.Out.WriteLine();
            switch (block.Kind)
            {
                case ExplanationBlockKind.Heading:
                    screen.Out.WriteLine(screen.Skin.Title(block.Text));
                    break;
                case ExplanationBlockKind.Paragraph:
                    screen.Say(block.Text, 2, block.Text.StartsWith("- ", StringComparison.Ordinal) ? 4 : 2);
                    break;
                default:
                    foreach (var line in block.Text.Split('\n')) screen.Out.WriteLine(("    " + line).TrimEnd());
                    // The first page is the one that has the problem: let Surefoot speak for itself.
                    if (!shows) Said(screen, block.Text, explained.Name);
                    shows = true;
                    break;
            }
        }
    }

    private static void Said(Screen screen, string page, string name)
    {
        var reading = Reader.Read(page + "\n");
        foreach (var problem in reading.Problems)
        {
            if (problem.Name != name) continue;
            screen.Out.WriteLine();
            screen.Out.WriteLine("  Surefoot says:");
            screen.Out.WriteLine();
            using var said = new StringWriter { NewLine = "\n" };
            ProblemPrinter.Print(problem, reading.Page, said, screen.Skin, screen.Width is { } width ? width - 4 : null);
            foreach (var line in said.ToString().TrimEnd('\n').Split('\n')) screen.Out.WriteLine("    " + line);
            return;
        }
    }
}
