namespace Surefoot.Cli.Files;

/// <summary>Names of files as they are typed.</summary>
internal static class Names
{
    /// <summary>In quotes where blanks would tear the name apart.</summary>
    public static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;
}
