using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>What all services of a library share: the store, the clock, the one way of changing something.</summary>
internal sealed class Core(LibraryStore store, LibraryOptions options)
{
    public LibraryStore Store => store;

    public LibraryOptions Options => options;

    public LibraryLimits Limits => options.Limits;

    /// <summary>Now, as it will come back from the database.</summary>
    public DateTimeOffset Now => Milliseconds.Whole(options.Clock.GetUtcNow());

    public LibraryContext Context() => store.Context();

    /// <summary>
    /// Does something whole or not at all. Changes come one after the other: each takes the row that counts
    /// them first, so what it reads cannot be changed under its hands.
    /// </summary>
    public async Task<T> ChangeAsync<T>(Func<LibraryContext, long, Task<T>> change, CancellationToken stop)
    {
        await using var context = Context();
        await using var whole = await context.Database.BeginTransactionAsync(stop);
        await context.State.ExecuteUpdateAsync(s => s.SetProperty(r => r.Revision, r => r.Revision + 1), stop);
        var revision = await context.State.Select(s => s.Revision).SingleAsync(stop);
        var result = await change(context, revision);
        await context.SaveChangesAsync(stop);
        await whole.CommitAsync(stop);
        return result;
    }
}
