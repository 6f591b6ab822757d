using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>What editors have in them right now: one draft for each page and editor.</summary>
public sealed class Drafts
{
    // What a database says (SQL's own number) when the page was thrown away between looking and saving.
    private const string PageGone = "23503";

    private readonly Core _core;

    internal Drafts(Core core) => _core = core;

    /// <summary>
    /// Keeps what an editor has in it. When this returns it is on the disk, whatever happens to the program.
    /// Saying the same again changes nothing; a draft that arrives after a newer one of its editor is passed over.
    /// </summary>
    /// <returns>Why it was not kept, or null.</returns>
    public async Task<Refusal?> SaveAsync(long page, string session, long sequence, int basedOn, string text, CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Page(text, _core.Limits);
        if (refusal is not null) return refusal;
        var (editor, bad) = Door.Name(session, "The editor's name", _core.Limits);
        if (bad is not null) return bad;
        await using var context = _core.Context();
        var saved = _core.Now.ToUnixTimeMilliseconds();
        // One statement, understood alike by both databases, and a transaction of its own.
        var rows = 0;
        try
        {
            rows = await context.Database.ExecuteSqlAsync(
            $"""
            INSERT INTO "drafts" ("PageId", "Session", "Sequence", "BasedOn", "Text", "Saved")
            SELECT "Id", {editor}, {sequence}, {basedOn}, {clean}, {saved} FROM "pages" WHERE "Id" = {page} AND "Deleted" IS NULL
            ON CONFLICT ("PageId", "Session") DO UPDATE SET
              "Sequence" = excluded."Sequence", "BasedOn" = excluded."BasedOn", "Text" = excluded."Text", "Saved" = excluded."Saved"
            WHERE excluded."Sequence" > "drafts"."Sequence"
            """,
            stop);
        }
        catch (DbException fault) when (fault.SqlState == PageGone)
        {
            return Refusal.NoPage;
        }

        if (rows > 0) return null;
        return await context.Pages.AnyAsync(p => p.Id == page && p.Deleted == null, stop) ? null : Refusal.NoPage;
    }

    /// <summary>The drafts of a page, the newest first: what to offer when somebody opens it again.</summary>
    public async Task<IReadOnlyList<Draft>> OfAsync(long page, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        var rows = await context.Drafts.AsNoTracking().Where(d => d.PageId == page).OrderByDescending(d => d.Saved).ThenBy(d => d.Session).ToListAsync(stop);
        return [.. rows.Select(Shown)];
    }

    /// <summary>Throws a draft away, as its editor asked.</summary>
    /// <param name="upTo">Only when it is no newer than this, for whoever cannot know whether its editor went on.</param>
    public async Task ForgetAsync(long page, string session, long upTo = long.MaxValue, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        await context.Drafts.Where(d => d.PageId == page && d.Session == session && d.Sequence <= upTo).ExecuteDeleteAsync(stop);
    }

    internal static Draft Shown(DraftRow row) => new(row.PageId, row.Session, row.Sequence, row.BasedOn, row.Text, row.Saved);
}
