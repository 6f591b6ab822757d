using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Library;

namespace Surefoot.Web.Deeds;

/// <summary>Where new pages go.</summary>
internal static class Homes
{
    /// <summary>What the studio calls the notebook an empty library begins with (see Keeping/FirstDances).</summary>
    private const string Demo = "Demo";

    /// <summary>What the person's own first notebook is called until the settings give it another name.</summary>
    public const string Own = "My dances";

    /// <summary>True until there is a notebook of the person's own: they were not here before.</summary>
    public static bool IsFirstTime(IReadOnlyList<Notebook> notebooks) => notebooks.All(n => n.Name == Demo);

    /// <summary>The person's own first notebook, or null while there is none.</summary>
    public static Notebook? First(IReadOnlyList<Notebook> notebooks) => notebooks.FirstOrDefault(n => n.Name != Demo);

    /// <summary>
    /// Where somebody looks for dances to teach: of the person's own notebooks the one with the most, else any that has some; null
    /// where none has.
    /// </summary>
    /// <param name="dances">How many dances each notebook has.</param>
    public static Notebook? WithDances(IReadOnlyList<Notebook> notebooks, IReadOnlyDictionary<long, int> dances) =>
        notebooks.Where(n => dances.GetValueOrDefault(n.Id) > 0).OrderBy(n => n.Name == Demo).ThenByDescending(n => dances.GetValueOrDefault(n.Id)).FirstOrDefault();

    /// <summary>How numbers are written where no notebook is at hand: as the first own one writes them.</summary>
    public static Measures Measures(IReadOnlyList<Notebook> notebooks) => First(notebooks)?.Settings.Measures ?? Dance.Basics.Measures.Usual;

    /// <summary>The notebook a form names; when it names none the person's own, which is begun where there is none.</summary>
    public static async Task<long> OfAsync(DanceLibrary library, string? asked)
    {
        if (long.TryParse(asked, NumberStyles.None, CultureInfo.InvariantCulture, out var id) && await library.Notebooks.OneAsync(id) is not null) return id;
        if (First(await library.Notebooks.AllAsync()) is { } own) return own.Id;
        return (await library.Notebooks.AddAsync(Own)).Notebook?.Id ?? First(await library.Notebooks.AllAsync())!.Id;
    }
}
