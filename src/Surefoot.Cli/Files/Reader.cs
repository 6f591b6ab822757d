using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Figures;
using Surefoot.Solver;

namespace Surefoot.Cli.Files;

/// <summary>Reads pages the way this program does: couples are solved. The solver's library is loaded only when a couple needs it.</summary>
internal static class Reader
{
    private static readonly ILinearSolver Solver = new ProvenSolver();

    public static Reading Read(string text, FigureBook? book = null) => DanceReader.Read(text, book, Solver);
}
