using Microsoft.EntityFrameworkCore;
using Surefoot.Library;
using Surefoot.Library.PostgreSql;
using Surefoot.Library.Sqlite;

namespace Surefoot.Tests.Library;

/// <summary>Making a library from nothing, and leaving alone what is none.</summary>
public class Opening
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_migrations_make_exactly_the_tables_that_are_used(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await using var context = home.Store.Context();
        Assert.False(context.Database.HasPendingModelChanges(), "Rows have changed without a migration: src/Surefoot.Library/new-migration");
        Assert.Empty(await context.Database.GetPendingMigrationsAsync());
        Assert.NotEmpty(await context.Database.GetAppliedMigrationsAsync());
    }

    [Fact]
    public async Task A_missing_database_is_made_on_the_server()
    {
        var connection = await PostgreSqlServer.MissingDatabaseAsync();
        var library = await DanceLibrary.OpenAsync(new PostgreSqlStore(connection));
        Assert.Empty(await library.Notebooks.AllAsync());
        await PostgreSqlServer.DropAsync(connection);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Opened_by_many_at_once_it_is_made_once(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var where = place == Place.Sqlite ? home.At("new/deep/dances.db") : await PostgreSqlServer.MissingDatabaseAsync();
        // Making a database on a server is the one thing that cannot wait for its turn.
        if (place == Place.PostgreSql) await DanceLibrary.OpenAsync(new PostgreSqlStore(where));
        var opened = await Task.WhenAll(Enumerable.Range(0, 6).Select(n => Task.Run(async () =>
        {
            var library = await DanceLibrary.OpenAsync(place == Place.Sqlite ? new SqliteStore(where) : new PostgreSqlStore(where));
            Assert.Null((await library.Notebooks.AddAsync($"Notebook {n}")).Refusal);
            return library;
        })));
        Assert.Equal(6, (await opened[0].Notebooks.AllAsync()).Count);
        if (place == Place.PostgreSql) await PostgreSqlServer.DropAsync(where);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_library_of_a_later_Surefoot_is_left_alone(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await using (var context = home.Store.Context())
        {
            await context.Database.ExecuteSqlAsync($"""INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion") VALUES ('29990101000000_Later', '99')""");
        }

        var fault = await Assert.ThrowsAsync<LibraryException>(() => home.AgainAsync());
        Assert.Contains("later Surefoot", fault.Message);
    }

    [Fact]
    public async Task Making_that_was_cut_off_goes_on()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        // What a program that was killed while it made its tables leaves behind: the lock of the migration.
        await using (var context = home.Store.Context())
        {
            await context.Database.ExecuteSqlRawAsync("""
                CREATE TABLE IF NOT EXISTS "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
                INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-01-01');
                DROP TABLE films; DROP TABLE shelf; DROP TABLE state; DROP TABLE files; DROP TABLE attachments; DROP TABLE songs; DROP TABLE tags;
                DROP TABLE aliases; DROP TABLE drafts; DROP TABLE versions; DROP TABLE pages; DROP TABLE notebooks; DROP TABLE words; DROP TABLE terms;
                DELETE FROM "__EFMigrationsHistory";
                """);
        }

        Assert.Empty(await (await home.AgainAsync()).Notebooks.AllAsync());
    }

    [Fact]
    public async Task What_is_no_library_is_left_as_it_was()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        var text = home.At("letter.db");
        await File.WriteAllTextAsync(text, string.Concat(Enumerable.Repeat("Dear Ada, the dance is on Friday.\n", 60)));
        var before = await File.ReadAllBytesAsync(text);
        Assert.Contains("is not a library", (await Assert.ThrowsAsync<LibraryException>(() => DanceLibrary.OpenAsync(new SqliteStore(text)))).Message);
        Assert.Equal(before, await File.ReadAllBytesAsync(text));

        var foreign = home.At("accounts.db");
        await using (var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={foreign};Pooling=false"))
        {
            await connection.OpenAsync();
            await using var make = connection.CreateCommand();
            make.CommandText = "CREATE TABLE money (amount INTEGER)";
            await make.ExecuteNonQueryAsync();
        }

        before = await File.ReadAllBytesAsync(foreign);
        Assert.Contains("another program's", (await Assert.ThrowsAsync<LibraryException>(() => DanceLibrary.OpenAsync(new SqliteStore(foreign)))).Message);
        Assert.Equal(before, await File.ReadAllBytesAsync(foreign));
        await Assert.ThrowsAsync<LibraryException>(() => DanceLibrary.OpenAsync(new SqliteStore(home.Folder)));
        Assert.False(File.Exists(home.Folder + ".opening"));
        var nobody = new PostgreSqlStore("Host=127.0.0.1;Port=1;Username=x;Database=x;Timeout=2");
        await Assert.ThrowsAsync<LibraryException>(() => DanceLibrary.OpenAsync(nobody));
    }
}
