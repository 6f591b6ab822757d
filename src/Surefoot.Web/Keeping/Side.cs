using System.Globalization;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Library;
using Surefoot.Likeness;

namespace Surefoot.Web.Keeping;

/// <summary>A text to look at or compare: a page as it is now, one of its versions, or a draft.</summary>
/// <param name="Address">"12", "12.4" or "12.draft.SESSION".</param>
/// <param name="Says">"version 4", "the page now, version 5", "a draft".</param>
internal sealed record Side(string Address, PageInfo Page, string Title, string Says, string Text, FigureBook Book, DateTimeOffset At, string Note)
{
    /// <summary>The text of an address, or null where it is not there.</summary>
    public static async Task<Side?> FindAsync(Shelves shelves, string? address)
    {
        var parts = (address ?? "").Split('.', 3);
        if (!long.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number) || await shelves.Library.Pages.OneAsync(number) is not { Deleted: null } page) return null;
        if (parts is [_, "draft", var session])
        {
            var draft = (await shelves.Library.Drafts.OfAsync(number)).FirstOrDefault(d => d.Session == session);
            return draft is null ? null : await MakeAsync(shelves, address!, page, "a draft", draft.Text, draft.Saved, "");
        }

        var version = page.Current;
        if (parts.Length > 2 || (parts.Length == 2 && !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out version))) return null;
        var kept = (await shelves.Library.Pages.HistoryAsync(number)).FirstOrDefault(v => v.Number == version);
        if (kept is null || await shelves.Library.Pages.TextAsync(number, version) is not { } text) return null;
        return await MakeAsync(shelves, $"{number}.{version}", page, version == page.Current ? $"version {version}, the page now" : $"version {version}", text, kept.Saved, kept.Note);
    }

    public DanceDifference To(Side after) => Library.Differing.Differences.Between(Text, after.Text, Book, after.Book);

    /// <summary>Two dances laid side by side by their steps, whatever their parts are called.</summary>
    public (Verdict Verdict, List<LaidRow> Rows) Beside(Side other)
    {
        var (here, there) = (Dance.DanceReader.Read(Text, Book).Score, Dance.DanceReader.Read(other.Text, other.Book).Score);
        var verdict = Verdict.Of(here, there);
        return (verdict, LaidOut.Of(here, there, verdict.Compared));
    }

    private static async Task<Side> MakeAsync(Shelves shelves, string address, PageInfo page, string says, string text, DateTimeOffset at, string note)
    {
        var book = await shelves.BookAsync(page.Notebook);
        var title = PageReader.Read(text, book).Page.Title;
        return new(address, page, title is { Length: > 0 } ? title : page.Name[(page.Name.LastIndexOf('/') + 1)..], says, text, book, at, note);
    }
}
