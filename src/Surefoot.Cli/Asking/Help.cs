using System.CommandLine;
using System.CommandLine.Parsing;
using System.Reflection;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli.Asking;

/// <summary>Help in plain words: one sentence, what to type, an example.</summary>
internal static class Help
{
    private const string HelpName = "--help";
    private const string VersionName = "--version";

    public static Option<bool> Option() => new(HelpName, "-h", "-?") { Recursive = true, Description = "says what can be typed here" };

    public static Option<bool> Version() => new(VersionName) { Description = "says which Surefoot this is" };

    public static bool Wanted(ParseResult asked) =>
        asked.GetResult(HelpName) is OptionResult { Implicit: false } || asked.GetResult(VersionName) is OptionResult { Implicit: false }
        || (asked.CommandResult.Command is RootCommand && asked.UnmatchedTokens is [] or ["help"]);

    public static int Print(ParseResult asked, Screen screen)
    {
        if (asked.GetResult(VersionName) is OptionResult { Implicit: false })
        {
            screen.Out.WriteLine($"surefoot {Number}");
        }
        else if (asked.CommandResult.Command is PlainCommand command)
        {
            OfCommand(command, screen);
        }
        else
        {
            OfAll(asked.CommandResult.Command, screen);
        }

        return ExitCode.Fine;
    }

    /// <summary>The version, without the mark of the build.</summary>
    private static string Number =>
        (typeof(Help).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "").Split('+')[0];

    private static void OfAll(Command root, Screen screen)
    {
        screen.Say(root.Description ?? "");
        screen.Out.WriteLine();
        screen.Out.WriteLine(screen.Skin.Title("You can type:"));
        Pairs(screen, [.. root.Subcommands.Select(c => ($"surefoot {c.Name}{Works(c)}", Sentence(c.Description)))]);
        screen.Out.WriteLine();
        Pairs(screen, [.. root.Options.Select(o => ($"surefoot {o.Name}", Sentence(o.Description))), ("surefoot check --help", "Says more about one of them, here about check.")]);
    }

    private static void OfCommand(PlainCommand command, Screen screen)
    {
        screen.Say($"surefoot {command.Name}{Works(command)}");
        screen.Say(Sentence(command.Description), 2);
        var rows = command.Arguments.Select(a => ($"{a.HelpName}{(a.Arity.MaximumNumberOfValues > 1 ? "…" : "")}", Sentence(a.Description)))
            .Concat(command.Options.Select(o => (o.HelpName is null ? o.Name : $"{o.Name} {o.HelpName}", Sentence(o.Description)))).ToList();
        screen.Out.WriteLine();
        Pairs(screen, rows);
        if (command.Examples.Count == 0) return;
        screen.Out.WriteLine();
        screen.Out.WriteLine(screen.Skin.Title(command.Examples.Count == 1 ? "An example:" : "Examples:"));
        Pairs(screen, [.. command.Examples.Select(e => (e.Line, Sentence(e.Does)))]);
    }

    private static string Works(Command command)
    {
        if (command.Arguments.Count == 0) return "";
        var argument = command.Arguments[0];
        var name = argument.HelpName + (argument.Arity.MaximumNumberOfValues > 1 ? "…" : "");
        return argument.Arity.MinimumNumberOfValues == 0 ? $" [{argument.HelpName}]" : $" {name}";
    }

    private static string Sentence(string? text) =>
        string.IsNullOrEmpty(text) ? "" : char.ToUpperInvariant(text[0]) + text[1..] + (text[^1] is '.' or '?' ? "" : ".");

    private static void Pairs(Screen screen, List<(string Left, string Right)> rows)
    {
        var width = rows.Max(r => r.Left.Length);
        foreach (var (left, right) in rows) screen.Say($"  {left.PadRight(width)}   {right}", hanging: width + 5);
    }
}
