using Microsoft.EntityFrameworkCore;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Library.Keeping;
using Surefoot.Library.Store;

namespace Surefoot.Library.Searching;

/// <summary>A dance in the list with what it is sorted by.</summary>
internal sealed record Card(ShelfItem Item, string TitleKey, long Revision, bool Deleted)
{
    /// <summary>Reads cards that changed after a revision; words and moves stay in the database.</summary>
    public static async Task<List<Card>> ReadAsync(LibraryContext context, long after, CancellationToken stop)
    {
        var rows = await context.Shelf.AsNoTracking().Where(s => s.Revision > after)
            .Select(s => new
            {
                s.PageId,
                s.NotebookId,
                s.Name,
                s.Title,
                s.IsFigures,
                s.Changed,
                s.ForCouples,
                s.Floor,
                s.Walls,
                s.Counts,
                s.MeterBeats,
                s.MeterUnit,
                s.TempoFrom,
                s.TempoTo,
                s.Level,
                s.Learned,
                s.Errors,
                s.Warnings,
                s.Hints,
                s.Holds,
                s.Figures,
                s.Aliases,
                s.Tags,
                s.Songs,
                s.Revision,
                s.Deleted,
            })
            .ToListAsync(stop);
        var cards = new List<Card>(rows.Count);
        foreach (var s in rows)
        {
            var item = new ShelfItem(
                s.PageId, s.NotebookId, s.Name, s.Title, s.IsFigures, s.Changed, s.ForCouples, s.Floor, s.Walls, s.Counts, new Meter(s.MeterBeats, s.MeterUnit),
                s.TempoFrom, s.TempoTo, s.Level, s.Learned, s.Errors, s.Warnings, s.Hints,
                Lines(s.Holds), Lines(s.Figures), Lines(s.Aliases), Lines(s.Tags), Lines(s.Songs));
            cards.Add(new(item, Folding.Key(s.Title.Length > 0 ? s.Title : s.Name), s.Revision, s.Deleted));
        }

        return cards;
    }

    private static ValueList<string> Lines(string text) => text.Length == 0 ? default : new(text.Split('\n'));
}
