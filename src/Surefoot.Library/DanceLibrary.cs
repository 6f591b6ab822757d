using Surefoot.Library.Differing;
using Surefoot.Library.Exchange;
using Surefoot.Library.Keeping;
using Surefoot.Library.Searching;
using Surefoot.Library.Store;

namespace Surefoot.Library;

/// <summary>
/// The dances of a hall in a database: notebooks, pages with every version that was kept, drafts, and what is
/// known about each dance. May be used from many threads at once, and the database by many programs.
/// </summary>
public sealed class DanceLibrary : IDisposable
{
    private DanceLibrary(Core core)
    {
        var shelving = new Shelving(core);
        Notebooks = new(core, shelving);
        Words = new(core);
        Pages = new(core, shelving);
        Drafts = new(core);
        Details = new(core);
        Bin = new(core, shelving);
        NotebookBin = new(core, shelving);
        Catalogue = new(core);
        Likes = new(core, Catalogue, shelving);
        Differences = new(core, shelving);
        Exchange = new(core, shelving);
        Copies = new(core, shelving, Exchange);
        Terms = new(core);
        Films = new(core);
    }

    public Notebooks Notebooks { get; }

    /// <summary>The hall's own words, by which sheets that others typed are read.</summary>
    public HallWords Words { get; }

    public Pages Pages { get; }

    public Drafts Drafts { get; }

    /// <summary>What is known of a dance beside its page: other names, tags, songs, films.</summary>
    public Details Details { get; }

    public Bin Bin { get; }

    /// <summary>Notebooks that were deleted.</summary>
    public NotebookBin NotebookBin { get; }

    /// <summary>Lists and searches.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>Dances that are like one.</summary>
    public Likes Likes { get; }

    /// <summary>What changed between two versions, in dancers' words.</summary>
    public Differences Differences { get; }

    /// <summary>Pages from and to folders and zips.</summary>
    public Exchanging Exchange { get; }

    /// <summary>Copies of the whole library.</summary>
    public Copies Copies { get; }

    /// <summary>Terms of lessons.</summary>
    public Terms Terms { get; }

    /// <summary>The captions and the address of a dance's film.</summary>
    public Films Films { get; }

    /// <summary>Opens a library, making it where there is none.</summary>
    /// <exception cref="LibraryException">It cannot be opened; the message says why.</exception>
    public static async Task<DanceLibrary> OpenAsync(LibraryStore store, LibraryOptions? options = null, CancellationToken stop = default)
    {
        await store.PrepareAsync(stop);
        var core = new Core(store, options ?? new());
        await new Shelving(core).CatchUpAsync(stop);
        return new(core);
    }

    public void Dispose()
    {
        Likes.Dispose();
        Catalogue.Dispose();
    }
}
