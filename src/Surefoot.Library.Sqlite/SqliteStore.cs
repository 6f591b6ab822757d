using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Surefoot.Library.Store;

namespace Surefoot.Library.Sqlite;

/// <summary>A library in one SQLite file.</summary>
public sealed class SqliteStore : LibraryStore
{
    /// <summary>Written into the file's head, so that another program's database is never taken for a library: "Sure" in letters.</summary>
    internal const int Mark = 0x53757265;

    private readonly DbContextOptions<LibraryContext> _options;

    public SqliteStore(string file)
    {
        File = Path.GetFullPath(file);
        Connection = new SqliteConnectionStringBuilder { DataSource = File, ForeignKeys = true }.ToString();
        _options = new DbContextOptionsBuilder<LibraryContext>()
            .UseSqlite(Connection, sqlite => sqlite.MigrationsAssembly(typeof(SqliteStore).Assembly.GetName().Name))
            .AddInterceptors(new Pragmas())
            .Options;
    }

    public string File { get; }

    internal string Connection { get; }

    internal override LibraryContext Context() => new(_options);

    internal override async Task PrepareAsync(CancellationToken stop)
    {
        if (Directory.Exists(File)) throw new LibraryException($"{File} is a folder. Name a file in it for the library.");
        try
        {
            if (Path.GetDirectoryName(File) is { Length: > 0 } folder) Directory.CreateDirectory(folder);
            await using var context = Context();
            if (System.IO.File.Exists(File)) SqliteFile.RefuseForeign(File);
            using var alone = await SqliteFile.AloneAsync(File + ".opening", stop);
            // Stays in the file once said: readers and a writer at the same time, and whole after a crash.
            await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", stop);
            await RefuseLaterAsync(context, stop);
            if (!(await context.Database.GetPendingMigrationsAsync(stop)).Any()) return;
            // Left behind by a program that was killed while it held it; nobody else is opening now.
            await context.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS \"__EFMigrationsLock\"", stop);
            await context.Database.MigrateAsync(stop);
            await context.Database.ExecuteSqlRawAsync($"PRAGMA application_id = {Mark}", stop);
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw new LibraryException($"The library {File} could not be opened. Is the folder yours to write in, and is there room on the disk?", fault);
        }
    }

    // A deferred transaction sees one moment and lets others write beside it; the usual kind would hold them up.
    internal override async Task<IDbContextTransaction> LookAsync(LibraryContext context, CancellationToken stop)
    {
        await context.Database.OpenConnectionAsync(stop);
        var transaction = ((SqliteConnection)context.Database.GetDbConnection()).BeginTransaction(deferred: true);
        return (await context.Database.UseTransactionAsync(transaction, stop))!;
    }

    internal override async Task<bool> CopyToAsync(string file, CancellationToken stop)
    {
        await Task.Run(() => SqliteFile.Copy(Connection, file), stop);
        return true;
    }

    internal override async Task<string?> TakeOverAsync(string file, CancellationToken stop)
    {
        if (SqliteFile.Fault(file) is { } fault) return fault;
        // The copy is brought up to date by itself first, so that nothing is replaced by what cannot be read.
        var copy = File + ".restoring";
        try
        {
            System.IO.File.Copy(file, copy, overwrite: true);
            var trial = new SqliteStore(copy);
            await trial.PrepareAsync(stop);
            await Task.Run(() => SqliteFile.Over(trial.Connection, Connection), stop);
            return null;
        }
        catch (LibraryException fault2)
        {
            return fault2.Message;
        }
        finally
        {
            SqliteFile.Remove(copy);
        }
    }
}
