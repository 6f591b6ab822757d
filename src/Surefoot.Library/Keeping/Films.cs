using System.Text;
using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>
/// What belongs to the film of a dance: its captions, and the address of its file. The library keeps the captions as they
/// came and does not read them. The film itself stays where it is.
/// </summary>
public sealed class Films
{
    private readonly Core _core;

    internal Films(Core core) => _core = core;

    /// <summary>The film of a page, or null where there is none, or it was taken away.</summary>
    public async Task<FilmInfo?> OfAsync(long page, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await context.Films.AsNoTracking().SingleOrDefaultAsync(f => f.PageId == page && f.Away == null, stop) is { } row ? Shown(row) : null;
    }

    /// <summary>Keeps captions in place of those before; the address stays.</summary>
    public Task<Refusal?> KeepCaptionsAsync(long page, string fileName, string captions, CancellationToken stop = default)
    {
        var (text, refusal) = Captions(captions, _core.Limits);
        var (name, bad) = Door.Name(fileName, "The file's name", _core.Limits);
        return ChangeAsync(page, refusal ?? bad, row => (row.FileName, row.Captions) = (name, text), stop);
    }

    /// <summary>Keeps where the film's file is; the captions stay. An empty address forgets it.</summary>
    public Task<Refusal?> KeepAddressAsync(long page, string address, CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Note(address, "The address", _core.Limits);
        if (clean.Length > 0 && !IsFile(clean)) refusal ??= new("The address of a film begins with https://.");
        return ChangeAsync(page, refusal, row => row.Address = clean, stop);
    }

    /// <summary>Takes the film away from its dance; it can be brought back.</summary>
    public Task<Refusal?> TakeAwayAsync(long page, CancellationToken stop = default) => _core.ChangeAsync<Refusal?>(
        async (context, _) =>
        {
            if (await context.Films.SingleOrDefaultAsync(f => f.PageId == page && f.Away == null, stop) is not { } row) return new("There is no film with this dance any more.");
            row.Away = _core.Now;
            return null;
        },
        stop);

    /// <summary>Brings a film back that was taken away.</summary>
    public Task<Refusal?> BringBackAsync(long page, CancellationToken stop = default) => _core.ChangeAsync<Refusal?>(
        async (context, _) =>
        {
            if (await context.Films.SingleOrDefaultAsync(f => f.PageId == page, stop) is not { } row) return new("That film is gone for good.");
            if (row.Away is null) return new("Another film was put in its place meanwhile.");
            row.Away = null;
            return null;
        },
        stop);

    /// <summary>A film is fetched by whoever looks at the page: over an encrypted line only.</summary>
    internal static bool IsFile(string address) => Uri.TryCreate(address, UriKind.Absolute, out var where) && where.Scheme == "https" && where.UserInfo.Length == 0;

    /// <summary>The captions to be kept, or why they cannot be.</summary>
    internal static (string Text, Refusal? Refusal) Captions(string text, LibraryLimits limits)
    {
        if (text.StartsWith('\uFEFF')) text = text[1..];
        if (Door.Fault(text) is { } fault) return ("", fault);
        return Encoding.UTF8.GetByteCount(text) > limits.CaptionBytes ? ("", new($"These captions are longer than captions may be ({limits.CaptionBytes >> 10} kB).")) : (text, null);
    }

    private async Task<Refusal?> ChangeAsync(long page, Refusal? refusal, Action<FilmRow> change, CancellationToken stop)
    {
        if (refusal is not null) return refusal;
        return await _core.ChangeAsync(
            async (context, _) =>
            {
                if (await Pages.LiveAsync(context, page, stop) is null) return Refusal.NoPage;
                var row = await context.Films.SingleOrDefaultAsync(f => f.PageId == page, stop);
                if (row is null) context.Films.Add(row = new() { PageId = page });
                // What was taken away does not come back bit by bit.
                if (row.Away is not null) (row.Address, row.FileName, row.Captions, row.Away) = ("", "", "", null);
                change(row);
                row.Changed = _core.Now;
                return null;
            },
            stop);
    }

    private static FilmInfo Shown(FilmRow row) => new(row.PageId, row.Address, row.FileName, row.Captions, row.Changed);
}
