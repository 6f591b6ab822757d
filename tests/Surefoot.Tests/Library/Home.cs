using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Surefoot.Library;
using Surefoot.Library.PostgreSql;
using Surefoot.Library.Sqlite;
using Surefoot.Library.Store;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Library;

/// <summary>Where a library lies; what holds must hold in both.</summary>
public enum Place
{
    Sqlite,
    PostgreSql,
}

/// <summary>A clock that stands still until it is moved.</summary>
internal sealed class StandingClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 3, 14, 19, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}

/// <summary>An empty library of its own for one test.</summary>
internal sealed class Home : IAsyncDisposable
{
    private Home(Place place, string where, string folder) => (Place, Where, Folder) = (place, where, folder);

    public static TheoryData<Place> Both => [Place.Sqlite, Place.PostgreSql];

    public Place Place { get; }

    /// <summary>The file, or the connection.</summary>
    public string Where { get; }

    /// <summary>A folder for the test's own files.</summary>
    public string Folder { get; }

    public StandingClock Clock { get; } = new();

    public LibraryStore Store => Place == Place.Sqlite ? new SqliteStore(Where) : new PostgreSqlStore(Where);

    public DanceLibrary Library { get; private set; } = null!;

    public long Notebook { get; private set; }

    public static async Task<Home> OpenAsync(Place place, bool empty = false)
    {
        var folder = Directory.CreateTempSubdirectory("surefoot-library-").FullName;
        var home = new Home(place, place == Place.Sqlite ? Path.Combine(folder, "dances.db") : await PostgreSqlServer.NewDatabaseAsync(), folder);
        home.Library = await home.AgainAsync();
        if (!empty) home.Notebook = (await home.Library.Notebooks.AddAsync("The hall")).Notebook!.Id;
        return home;
    }

    /// <summary>The same library opened once more, as another program would.</summary>
    public Task<DanceLibrary> AgainAsync(LibraryLimits? limits = null) =>
        DanceLibrary.OpenAsync(Store, new() { Clock = Clock, Limits = limits ?? new() });

    public async Task<long> AddAsync(string text, string? name = null)
    {
        var (page, refusal) = await Library.Pages.AddAsync(Notebook, text, name);
        Assert.Null(refusal);
        return page!.Id;
    }

    public string At(string name) => Path.Combine(Folder, name);

    public async ValueTask DisposeAsync()
    {
        if (Place == Place.Sqlite)
        {
            // This library's pool only: other tests have theirs open.
            await using var context = Store.Context();
            SqliteConnection.ClearPool((SqliteConnection)context.Database.GetDbConnection());
        }
        else await PostgreSqlServer.DropAsync(Where);
        await TestFolder.RemoveAsync(Folder);
    }
}
