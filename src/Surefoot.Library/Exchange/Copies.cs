using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Exchange;

/// <summary>Copies of the whole library in one file, made and brought back while it is in use.</summary>
public sealed class Copies
{
    private readonly Core _core;
    private readonly Shelving _shelving;
    private readonly Exchanging _exchange;

    internal Copies(Core core, Shelving shelving, Exchanging exchange) => (_core, _shelving, _exchange) = (core, shelving, exchange);

    /// <summary>
    /// Copies everything into one file: from SQLite a database of the same kind, from PostgreSQL an export in a
    /// zip. A file of that name is replaced once the copy is whole.
    /// </summary>
    public async Task<Refusal?> MakeAsync(string file, CancellationToken stop = default)
    {
        if (Directory.Exists(file)) return new($"{file} is a folder. Name a file in it for the copy.");
        try
        {
            if (await _core.Store.CopyToAsync(file, stop)) return null;
            var target = Path.GetFullPath(file);
            if (Path.GetDirectoryName(target) is { Length: > 0 } folder) Directory.CreateDirectory(folder);
            var beside = target + ".new";
            try
            {
                await using (var stream = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite))
                {
                    await _exchange.GiveZipAsync(stream, stop);
                    stream.Flush(flushToDisk: true);
                    stream.Position = 0;
                    if (_exchange.Check(stream).Refusal is { } fault) return fault;
                }

                File.Move(beside, target, overwrite: true);
                return null;
            }
            finally
            {
                File.Delete(beside);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new($"The copy could not be written to {file}. Is there room, and is the folder yours to write in?");
        }
    }

    /// <summary>
    /// Makes the library what it was when a copy was made: a copy of the same kind of store, or an export in a
    /// zip. The file is looked through first; the library changes whole or not at all.
    /// </summary>
    /// <returns>Why it was not brought back, or null.</returns>
    public async Task<Refusal?> BringBackAsync(string file, CancellationToken stop = default)
    {
        try
        {
            if (!File.Exists(file)) return new($"There is no file {file}.");
            await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read);
            var head = new byte[2];
            if (stream.ReadAtLeast(head, 2, throwOnEndOfStream: false) == 2 && head is [(byte)'P', (byte)'K'])
            {
                stream.Position = 0;
                return await FromZipAsync(stream, stop);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new($"The file {file} could not be read.");
        }

        return await FromCopyAsync(file, stop);
    }

    private async Task<Refusal?> FromZipAsync(Stream stream, CancellationToken stop)
    {
        var (plans, words, refusal) = _exchange.Check(stream);
        if (refusal is not null) return refusal;
        await _core.ChangeAsync(
            async (context, revision) =>
            {
                await context.Notebooks.ExecuteDeleteAsync(stop);
                await context.Words.ExecuteDeleteAsync(stop);
                if (words is var (name, told)) await _exchange.TakeWordsAsync(context, name, told, stop);
                var taking = new Taking(_core, context, revision, stop);
                foreach (var plan in plans)
                {
                    if (plan.File is not { } file) continue;
                    var notebook = await taking.NotebookAsync(file);
                    await _exchange.TakeAsync(context, revision, notebook, Exchanging.FiguresFirst(plan), stop);
                    await taking.TermsAsync(notebook, plan);
                }

                return 0;
            },
            stop);
        await _shelving.CatchUpAsync(stop);
        return null;
    }

    private async Task<Refusal?> FromCopyAsync(string file, CancellationToken stop)
    {
        long before;
        await using (var context = _core.Context()) before = await context.State.Select(s => s.Revision).SingleAsync(stop);
        if (await _core.Store.TakeOverAsync(file, stop) is { } why) return new(why);
        // Everybody who looked before has to look at everything again: all of it is newer than what they saw.
        await _core.ChangeAsync(
            async (context, revision) =>
            {
                var after = Math.Max(before, revision) + 1;
                await context.State.ExecuteUpdateAsync(s => s.SetProperty(r => r.Revision, after), stop);
                return await context.Shelf.ExecuteUpdateAsync(s => s.SetProperty(r => r.Revision, after), stop);
            },
            stop);
        await _shelving.CatchUpAsync(stop);
        return null;
    }
}
