using System.CommandLine;
using System.CommandLine.Parsing;
using Surefoot.Dance.Words;

namespace Surefoot.Cli.Asking;

/// <summary>Says in plain words what was typed that Surefoot does not know.</summary>
internal static class WrongWords
{
    /// <returns>The lines to say, or null when all was understood.</returns>
    public static List<string>? In(ParseResult asked)
    {
        var command = asked.CommandResult.Command;
        if (Option(asked) is { } option)
        {
            var near = Nearest(option, command.Options.Select(o => o.Name).Append("--help"));
            var place = command is RootCommand ? "Surefoot" : $"\"surefoot {command.Name}\"";
            return [$"{place} does not know {option}.{(near is null ? "" : $" Did you mean: {near}")}", More(command)];
        }

        if (command is RootCommand)
        {
            if (asked.UnmatchedTokens.Count == 0) return null;
            var word = asked.UnmatchedTokens[0];
            if (File.Exists(word) || Directory.Exists(word)) return [$"Say what to do with {word}, for example: surefoot check {word}", More(command)];
            var near = Nearest(word, command.Subcommands.Select(c => c.Name));
            return [$"Surefoot has no command \"{word}\".{(near is null ? "" : $" Did you mean: surefoot {near}")}", More(command)];
        }

        if (asked.UnmatchedTokens.Count > 0)
        {
            return [$"\"surefoot {command.Name}\" takes one at a time; this is one too many: {asked.UnmatchedTokens[0]}", More(command)];
        }

        return asked.Errors.Count == 0 ? null : [Said(asked.Errors[0], command), More(command)];
    }

    private static string Said(ParseError error, Command command) => error.SymbolResult switch
    {
        OptionResult { Option: var option } when option.HelpName is { } value => $"{option.Name} stands once, with {value} after it: {option.Description}.",
        OptionResult { Option: var option } => $"Nothing can follow {option.Name}; it stands alone.",
        _ when command is PlainCommand { Missing.Length: > 0 } plain => plain.Missing,
        _ => $"\"surefoot {command.Name}\" cannot be used like this.",
    };

    private static string More(Command command) =>
        command is RootCommand ? "What can be typed is listed by: surefoot --help" : $"What can be typed is told by: surefoot {command.Name} --help";

    /// <summary>Something that looks like an option but is none: the parser takes it for the name of a page.</summary>
    private static string? Option(ParseResult asked)
    {
        foreach (var token in asked.UnmatchedTokens)
        {
            if (LooksLikeOption(token)) return token;
        }

        var alone = asked.Tokens.TakeWhile(t => t.Type != TokenType.DoubleDash).Select(t => t.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var child in asked.CommandResult.Children)
        {
            if (child is not ArgumentResult argument) continue;
            foreach (var token in argument.Tokens)
            {
                if (LooksLikeOption(token.Value) && alone.Contains(token.Value) && !File.Exists(token.Value)) return token.Value;
            }
        }

        return null;
    }

    private static bool LooksLikeOption(string token) => token.Length > 1 && token[0] == '-';

    private static string? Nearest(string word, IEnumerable<string> known)
    {
        var limit = Math.Max(2, word.Length / 3);
        return known.Select(k => (Known: k, Distance: NearWords.Distance(word.ToLowerInvariant(), k, limit)))
            .Where(n => n.Distance <= limit).OrderBy(n => n.Distance).ThenBy(n => n.Known, StringComparer.Ordinal).Select(n => n.Known).FirstOrDefault();
    }
}
