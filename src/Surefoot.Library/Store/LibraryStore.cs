using System.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Surefoot.Library.Store;

/// <summary>Where a library lies: a SQLite file or a PostgreSQL database.</summary>
public abstract class LibraryStore
{
    /// <summary>One unit of work with the database.</summary>
    internal abstract LibraryContext Context();

    /// <summary>Makes the database where there is none and brings its tables up to date.</summary>
    /// <exception cref="LibraryException">It is no library, or was made by a later Surefoot.</exception>
    internal abstract Task PrepareAsync(CancellationToken stop);

    /// <summary>Copies the whole database into one file while it is in use; false where this store cannot.</summary>
    internal abstract Task<bool> CopyToAsync(string file, CancellationToken stop);

    /// <summary>Takes over everything from a file that <see cref="CopyToAsync"/> made, or says why it cannot; the library stays as it was then.</summary>
    internal abstract Task<string?> TakeOverAsync(string file, CancellationToken stop);

    /// <summary>Begins to look at the library as it is at one moment, holding up nobody who writes.</summary>
    internal virtual Task<IDbContextTransaction> LookAsync(LibraryContext context, CancellationToken stop) =>
        context.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, stop);

    private protected static async Task RefuseLaterAsync(LibraryContext context, CancellationToken stop)
    {
        var known = context.Database.GetMigrations().ToHashSet(StringComparer.Ordinal);
        foreach (var applied in await context.Database.GetAppliedMigrationsAsync(stop))
        {
            if (!known.Contains(applied)) throw new LibraryException("This library was made by a later Surefoot. Use that one, or bring back a copy made before.");
        }
    }
}
