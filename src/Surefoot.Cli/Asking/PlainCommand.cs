using System.CommandLine;

namespace Surefoot.Cli.Asking;

/// <summary>A command with what its help shows besides the description.</summary>
internal sealed class PlainCommand(string name, string description) : Command(name, description)
{
    /// <summary>Lines to type, each with what it does.</summary>
    public IReadOnlyList<(string Line, string Does)> Examples { get; init; } = [];

    /// <summary>Said when the command is typed without what it works on.</summary>
    public string Missing { get; init; } = "";
}
