using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Dance;
using Surefoot.Dance.Scoring;

namespace Surefoot.Cli.Commands;

/// <summary>The dances of a whole folder.</summary>
internal static class ManyDances
{
    /// <summary>Every dance of a folder but one, read without its couple being placed: only the steps are compared.</summary>
    public static (List<(string Path, DanceScore Score)> Dances, List<Trouble> Troubles) In(string folder, string? except, Screen screen) =>
        In(folder, except, screen, (path, reading) => (path, reading.Score));

    /// <param name="kept">What is kept of each dance.</param>
    public static (List<T> Dances, List<Trouble> Troubles) In<T>(string folder, string? except, Screen screen, Func<string, Reading, T> kept)
    {
        var (pages, troubles) = PageFinder.Find([folder]);
        var notebooks = new Notebooks();
        var dances = new List<T>();
        Progress.Through(pages, screen, "Reading", path =>
        {
            if (string.Equals(Path.GetFullPath(path), except, StringComparison.Ordinal)) return;
            var (file, trouble) = PageFiles.Read(path);
            if (trouble is not null) troubles.Add(trouble);
            if (file is null) return;
            var reading = DanceReader.Read(file.Text, notebooks.For(path));
            if (reading.Score.Sections.Count > 0) dances.Add(kept(path, reading));
        });
        troubles.AddRange(notebooks.Troubles);
        return (dances, troubles);
    }
}
