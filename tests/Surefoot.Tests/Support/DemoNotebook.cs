using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Solver;

namespace Surefoot.Tests.Support;

/// <summary>The dances of the demo notebook, read with the hall's own figures, the couples solved.</summary>
internal static class DemoNotebook
{
    private static readonly ProvenSolver TheSolver = new();

    private static readonly Lazy<FigureBook> TheBook = new(() =>
        FigureBook.Shipped.With(new SourceText(File.ReadAllText(Root.At("demo", "dances", "figures.dance")))));

    public static TheoryData<string> Dances => [.. Root.Pages("demo", "dances").Where(p => Path.GetFileName(p) != "figures.dance").Select(p => Path.GetRelativePath(Root.At("demo", "dances"), p))];

    public static TheoryData<string> Mistakes => [.. Root.Pages("demo", "find the mistakes").Select(p => Path.GetFileNameWithoutExtension(p))];

    public static Reading Read(string dance, ILinearSolver? solver = null) =>
        DanceReader.Read(File.ReadAllText(Root.At("demo", "dances", dance)), TheBook.Value, solver ?? TheSolver);

    public static Reading ReadMistake(string name, ILinearSolver? solver = null) =>
        DanceReader.Read(File.ReadAllText(Root.At("demo", "find the mistakes", name + ".dance")), null, solver ?? TheSolver);
}
