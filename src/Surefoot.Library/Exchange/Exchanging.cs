using Microsoft.EntityFrameworkCore;
using Surefoot.Dance.Text;
using Surefoot.Library.Keeping;
using Surefoot.Library.Store;
using Surefoot.Transcribe;

namespace Surefoot.Library.Exchange;

/// <summary>Takes pages in from folders and zips, and gives the whole library out as plain files.</summary>
public sealed class Exchanging
{
    // Pages taken in one change; somebody who saves meanwhile waits no longer than these take.
    private const int AtOnce = 50;

    private readonly Core _core;
    private readonly Shelving _shelving;

    internal Exchanging(Core core, Shelving shelving) => (_core, _shelving) = (core, shelving);

    /// <summary>Takes in every page of a folder and the folders in it; an export brings its notebooks along.</summary>
    /// <param name="notebook">Where pages go that belong to no notebook of an export.</param>
    public Task<ImportReport> TakeFolderAsync(string folder, long notebook, ImportLimits? limits = null, CancellationToken stop = default) => GuardedAsync(
        () => Directory.Exists(folder)
            ? TakeAsync(Piles.OfFolder(folder, limits ?? new()), notebook, null, stop)
            : throw new PileException("There is no such folder."));

    /// <summary>The same of a zip.</summary>
    /// <param name="zip">A stream that can be gone back in, such as a file.</param>
    /// <param name="progress">Hears after every few pages how far it is.</param>
    public Task<ImportReport> TakeZipAsync(Stream zip, long notebook, ImportLimits? limits = null, IProgress<ImportProgress>? progress = null, CancellationToken stop = default) => GuardedAsync(
        async () =>
        {
            using var archive = Piles.Open(zip);
            return await TakeAsync(Piles.OfZip(archive, limits ?? new()), notebook, progress, stop);
        });

    /// <summary>Writes everything into a folder that is empty or not there yet.</summary>
    public async Task<Refusal?> GiveFolderAsync(string folder, CancellationToken stop = default)
    {
        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any())) return new("That folder is not empty. Choose a new one, so that nothing in it is mixed up.");
        await SeenAtOnceAsync(context => Writing.ToFolderAsync(context, folder, stop), stop);
        return null;
    }

    /// <summary>Writes everything into a zip.</summary>
    public Task GiveZipAsync(Stream zip, CancellationToken stop = default) => GiveZipAsync(zip, notebook: null, stop);

    /// <summary>Writes one notebook into a zip, everything when none is named.</summary>
    public Task GiveZipAsync(Stream zip, long? notebook, CancellationToken stop = default) =>
        SeenAtOnceAsync(context => Writing.ToZipAsync(context, zip, notebook, _core.Now, stop), stop);

    /// <summary>Reads a whole export, or says what is wrong with it.</summary>
    internal (List<NotebookPlan> Plans, (string File, IReadOnlyList<SheetWord> Words)? Words, Refusal? Refusal) Check(Stream zip)
    {
        try
        {
            using var archive = Piles.Open(zip);
            var planning = new Planning(Piles.OfZip(archive, new()), _core.Limits);
            var plans = planning.Read();
            if (planning.Troubles.Count > 0) return ([], null, new($"The copy is damaged, so nothing was changed: {planning.Troubles[0].File}: {planning.Troubles[0].Says}"));
            return plans.Exists(p => p.File is not null) ? (plans, planning.HallWords, null) : ([], null, new("This zip is no copy of a library, so nothing was changed."));
        }
        catch (PileException fault)
        {
            return ([], null, new(fault.Message));
        }
    }

    /// <summary>Takes a notebook's pages in inside one change; pages of figures first, because the others are read with them.</summary>
    internal async Task<List<ImportLine>> TakeAsync(LibraryContext context, long revision, long notebook, IEnumerable<PagePlan> pages, CancellationToken stop)
    {
        var taking = new Taking(_core, context, revision, stop);
        var lines = new List<ImportLine>();
        foreach (var plan in pages) lines.Add(await taking.PageAsync(notebook, plan, await _shelving.MakeAsync(context, notebook, plan.Text, stop)));
        return lines;
    }

    /// <summary>Takes the hall's own words in; what the library says itself stays, and is told.</summary>
    internal async Task<ImportLine> TakeWordsAsync(LibraryContext context, string file, IReadOnlyList<SheetWord> words, CancellationToken stop)
    {
        var (fresh, other) = await HallWords.TakeAsync(_core, context, words, stop);
        var says = fresh == 0 ? "" : fresh == 1 ? "One word of the hall." : $"{fresh} words of the hall.";
        if (other is [var (there, here), ..]) says += $" “{there.Said}” stays “{here}” here, though the file says “{there.Means}”{(other.Count > 1 ? $"; so do {other.Count - 1} more" : "")}.";
        return new(Pile.Shown(file), fresh > 0 ? Taken.New : Taken.AlreadyThere, null, says.Trim());
    }

    internal static IEnumerable<PagePlan> FiguresFirst(NotebookPlan plan) => plan.Pages.OrderBy(p => HeadReader.IsFigurePage(p.Text) ? 0 : 1);

    private async Task<ImportReport> TakeAsync(Pile pile, long notebook, IProgress<ImportProgress>? progress, CancellationToken stop)
    {
        var planning = new Planning(pile, _core.Limits);
        var lines = new List<ImportLine>();
        var plans = planning.Read();
        var pages = plans.Sum(p => p.Pages.Count);
        foreach (var plan in plans)
        {
            var home = plan.File is not { } file
                ? notebook
                : await _core.ChangeAsync((context, revision) => new Taking(_core, context, revision, stop).NotebookAsync(file), stop);
            if (plan.File is null && await new Notebooks(_core, _shelving).OneAsync(home, stop) is null) throw new PileException(Refusal.NoNotebook.Why);
            foreach (var some in FiguresFirst(plan).Chunk(AtOnce))
            {
                lines.AddRange(await _core.ChangeAsync((context, revision) => TakeAsync(context, revision, home, some, stop), stop));
                progress?.Report(new(lines.Count, pages));
            }

            if (plan.Terms.Count > 0) lines.AddRange(await _core.ChangeAsync((context, revision) => new Taking(_core, context, revision, stop).TermsAsync(home, plan), stop));
            // Pages that were there are read with figures that came.
            await _shelving.CatchUpAsync(home, stop);
        }

        if (planning.HallWords is var (words, told)) lines.Add(await _core.ChangeAsync((context, _) => TakeWordsAsync(context, words, told, stop), stop));
        lines.AddRange(planning.Troubles);
        return new([.. lines.OrderBy(l => l.File, StringComparer.Ordinal)], planning.OtherFiles);
    }

    private static async Task<ImportReport> GuardedAsync(Func<Task<ImportReport>> take)
    {
        try
        {
            return await take();
        }
        catch (PileException fault)
        {
            return new([], 0, fault.Message);
        }
    }

    // Somebody may save while an export is written; it shows the library of one moment.
    private async Task SeenAtOnceAsync(Func<LibraryContext, Task> look, CancellationToken stop)
    {
        await using var context = _core.Context();
        await using var moment = await _core.Store.LookAsync(context, stop);
        await look(context);
    }
}
