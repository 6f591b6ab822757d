using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Draw.Vocabulary;

/// <summary>Figures in the company they are kept in: by the text that describes them.</summary>
internal static class FigureKin
{
    private const string Folder = "figures/";

    public static List<(string Kin, List<Figure> Figures)> Of(FigureBook book)
    {
        var kinOf = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in ShippedText.Names(Folder))
        {
            foreach (var (figure, _, _) in FigureReader.Heads(new SourceText(ShippedText.Read(file)))) kinOf[figure.Name] = Title(file);
        }

        return [.. book.All.GroupBy(f => f.Own ? "Figures of this notebook" : kinOf.GetValueOrDefault(f.Name, "Other figures"))
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (g.Key, g.OrderBy(f => f.Name, StringComparer.Ordinal).ToList()))];
    }

    // "figures/coasters-and-sailors.dance" holds the figures "coasters and sailors".
    private static string Title(string file) => $"Figures: {Path.GetFileNameWithoutExtension(file[Folder.Length..]).Replace('-', ' ')}";
}
