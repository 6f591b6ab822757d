using Surefoot.Cli;
using Surefoot.Cli.Printing;

namespace Surefoot.Tests.Cli;

/// <summary>What the program answers to what was typed.</summary>
internal sealed record Asked(int Exit, string Out, string Err)
{
    public static Asked For(params string[] args)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exit = CommandLine.Run(args, new Screen(output, errors));
        return new(exit, output.ToString().ReplaceLineEndings("\n"), errors.ToString().ReplaceLineEndings("\n"));
    }

    /// <summary>A folder of its own for a test, with pages in it; gone afterwards.</summary>
    internal sealed class Notebook : IDisposable
    {
        public string Folder { get; } = Directory.CreateTempSubdirectory("surefoot-").FullName;

        public string Write(string name, string text)
        {
            var file = Path.Combine(Folder, name);
            File.WriteAllText(file, text);
            return file;
        }

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
