using Microsoft.EntityFrameworkCore;
using Npgsql;
using Surefoot.Library.Store;

namespace Surefoot.Library.PostgreSql;

/// <summary>A library in a PostgreSQL database of its own.</summary>
public sealed class PostgreSqlStore : LibraryStore
{
    private readonly DbContextOptions<LibraryContext> _options;

    /// <param name="connection">As PostgreSQL's drivers write it: "Host=…;Database=…;Username=…".</param>
    public PostgreSqlStore(string connection) => _options = new DbContextOptionsBuilder<LibraryContext>()
        .UseNpgsql(connection, npgsql => npgsql.MigrationsAssembly(typeof(PostgreSqlStore).Assembly.GetName().Name))
        .Options;

    internal override LibraryContext Context() => new(_options);

    internal override async Task PrepareAsync(CancellationToken stop)
    {
        try
        {
            await using var context = Context();
            if (await context.Database.CanConnectAsync(stop)) await RefuseLaterAsync(context, stop);
            // Makes the database where it is missing; who comes second waits for who came first.
            await context.Database.MigrateAsync(stop);
        }
        catch (NpgsqlException fault)
        {
            throw new LibraryException("The library's database could not be opened. Is the server running, and are name and password right?", fault);
        }
    }

    internal override Task<bool> CopyToAsync(string file, CancellationToken stop) => Task.FromResult(false);

    internal override Task<string?> TakeOverAsync(string file, CancellationToken stop) =>
        Task.FromResult<string?>("This copy is a SQLite file, and this library lies in PostgreSQL. Bring it back from an export, which fits both.");
}
