using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>What the pages of each notebook are read with: Surefoot's words and figures with the notebook's figure pages over them, and its heights.</summary>
internal sealed class Books
{
    // Counted up by hand when pages are read or shelved differently, so that every library makes its facts anew once.
    private const int Making = 7;

    private readonly Lock _gate = new();
    private readonly Dictionary<long, Book> _books = [];

    public sealed record Book(string Mark, FigureBook Figures, UsualHeights Heights);

    /// <summary>The book in force now.</summary>
    public async Task<Book> OfAsync(LibraryContext context, long notebook, CancellationToken stop)
    {
        var texts = await context.Pages
            .Where(p => p.NotebookId == notebook && p.IsFigures && p.Deleted == null)
            .OrderBy(p => p.NameKey)
            .Join(context.Versions, p => new { PageId = p.Id, Number = p.Current }, v => new { v.PageId, v.Number }, (p, v) => v.Text)
            .ToListAsync(stop);
        var mark = $"{Making}";
        foreach (var text in texts) mark += "-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];
        var told = await context.Notebooks.Where(n => n.Id == notebook).Select(n => new { n.LeadStature, n.FollowStature }).SingleOrDefaultAsync(stop);
        var heights = new UsualHeights(told?.LeadStature, told?.FollowStature);
        // Only where some are told, so that every other library keeps the facts it has.
        if (heights != default) mark += string.Create(CultureInfo.InvariantCulture, $"-{heights.Lead}-{heights.Follow}");
        lock (_gate)
        {
            if (_books.TryGetValue(notebook, out var known) && known.Mark == mark) return known;
            var figures = FigureBook.Shipped;
            foreach (var text in texts) figures = figures.With(new SourceText(text));
            return _books[notebook] = new(mark, figures, heights);
        }
    }
}
