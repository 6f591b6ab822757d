using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Differing;

/// <summary>Compares versions of dances.</summary>
public sealed class Differences
{
    private readonly Core _core;
    private readonly Shelving _shelving;

    internal Differences(Core core, Shelving shelving) => (_core, _shelving) = (core, shelving);

    /// <summary>Two versions of a page, read with the notebook's figures as they are now; null where one is not there.</summary>
    public async Task<DanceDifference?> OfAsync(long page, int before, int after, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        if (await context.Pages.FindAsync([page], stop) is not { } row) return null;
        if (await Pages.TextAsync(context, page, before, stop) is not { } a || await Pages.TextAsync(context, page, after, stop) is not { } b) return null;
        return Between(a, b, (await _shelving.BookAsync(row.NotebookId, stop)).Figures);
    }

    /// <summary>Any two texts, such as a draft and the page.</summary>
    /// <param name="afterBook">The figures of the second text where it stands in another notebook.</param>
    public static DanceDifference Between(string before, string after, FigureBook? book = null, FigureBook? afterBook = null)
    {
        var a = DanceReader.Read(before, book).Score;
        var b = DanceReader.Read(after, afterBook ?? book).Score;
        return new(ScoreDifference.Facts(a, b).ToValueList(), ScoreDifference.Steps(a, b).ToValueList(), TextDifference.Between(before, after).ToValueList())
        {
            WholeParts = ScoreDifference.WholeParts(a, b).ToValueList(),
        };
    }
}
