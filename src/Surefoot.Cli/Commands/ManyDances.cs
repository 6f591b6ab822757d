using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Scoring;

namespace Surefoot.Cli.Commands;

/// <summary>The dances of a whole folder.</summary>
internal static class ManyDances
{
    /// <summary>Every dance of a folder but one, read without its couple being placed: only the steps are compared.</summary>
    public static (List<(string Path, DanceScore Score)> Dances, List<Trouble> Troubles) In(string folder, string? except, Screen screen)
    {
        var (pages, troubles) = PageFinder.Find([folder]);
        var notebooks = new Notebooks();
        var dances = new List<(string, DanceScore)>();
        Progress.Through(pages, screen, "Reading", path =>
        {
            if (string.Equals(Path.GetFullPath(path), except, StringComparison.Ordinal)) return;
            var (file, trouble) = PageFiles.Read(path);
            if (trouble is not null) troubles.Add(trouble);
            if (file is null) return;
            var score = Dance.DanceReader.Read(file.Text, notebooks.For(path)).Score;
            if (score.Sections.Count > 0) dances.Add((path, score));
        });
        troubles.AddRange(notebooks.Troubles);
        return (dances, troubles);
    }
}
