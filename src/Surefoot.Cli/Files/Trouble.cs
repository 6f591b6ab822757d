namespace Surefoot.Cli.Files;

/// <summary>A file that could not be read or written: what is the matter, and what to do about it.</summary>
public sealed record Trouble(string Path, string What, string Advice)
{
    public void Tell(TextWriter to)
    {
        to.WriteLine($"{Path}: {What}");
        if (Advice.Length > 0) to.WriteLine($"  {Advice}");
    }
}
