using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Dance;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Problems;

namespace Surefoot.Cli.Commands;

/// <summary>A single page, read with the figures of its notebook.</summary>
internal sealed record OnePage(PageFile File, Reading Reading, FigureBook Book)
{
    /// <summary>The page, or null after saying why there is none.</summary>
    public static OnePage? Read(string path, Screen screen)
    {
        var (file, trouble) = PageFiles.Read(path);
        if (file is null)
        {
            trouble?.Tell(screen.Err);
            return null;
        }

        var notebooks = new Notebooks();
        var page = Read(file, notebooks);
        foreach (var one in notebooks.Troubles) one.Tell(screen.Err);
        return page;
    }

    public static OnePage Read(PageFile file, Notebooks notebooks)
    {
        var book = notebooks.For(file.Path);
        return new(file, Reader.Read(file.Text, book), book);
    }

    /// <summary>The page's name without folder and ending.</summary>
    public string Stem => Path.GetFileNameWithoutExtension(File.Path);

    /// <summary>Places of the page that cannot be danced as written.</summary>
    public int Errors => Reading.Problems.Count(p => p.Severity == Severity.Error);

    public bool HasErrors => Errors > 0;

    /// <summary>A remark when what is made of the page cannot be relied on.</summary>
    public void TellErrors(Screen screen)
    {
        if (HasErrors) screen.Err.WriteLine($"{File.Path} has {Prose.Number(Errors, "error")}; it is shown as far as it can be danced. More: surefoot check {Names.Quoted(File.Path)}");
    }
}
