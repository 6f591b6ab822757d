using System.Text;
using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Tests.Library;

/// <summary>Everything a library holds as text, without the numbers a database gives its rows; equal libraries read alike.</summary>
internal static class Dump
{
    public static async Task<string> OfAsync(LibraryStore store)
    {
        await using var context = store.Context();
        var text = new StringBuilder();
        foreach (var w in await context.Words.AsNoTracking().OrderBy(w => w.SaidKey).ToListAsync()) text.AppendLine($"WORD {w.Said}|{w.SaidKey}|{w.Means}");
        foreach (var n in await context.Notebooks.AsNoTracking().OrderBy(n => n.NameKey).ToListAsync())
        {
            text.AppendLine($"NOTEBOOK {n.Name}|{n.NameKey}|{n.Created:O}|{n.LeadWord}|{n.FollowWord}|{n.LeadStature}|{n.FollowStature}|{n.Units}|{n.DecimalMark}|{n.Paper}|{n.UsualTempo}|{n.Theme}|{n.Deleted:O}");
            foreach (var t in await context.Terms.AsNoTracking().Where(t => t.NotebookId == n.Id).OrderBy(t => t.Title).ThenBy(t => t.Id).ToListAsync()) text.AppendLine($"TERM {t.Title}|{t.Version}|{t.Changed:O}|{t.Text}");
            foreach (var p in await context.Pages.AsNoTracking().Where(p => p.NotebookId == n.Id).OrderBy(p => p.NameKey).ThenBy(p => p.Id).ToListAsync())
            {
                text.AppendLine($"PAGE {p.Name}|{p.NameKey}|{p.IsFigures}|{p.Current}|{p.Learned}|{p.Created:O}|{p.Changed:O}|{p.Deleted:O}");
                foreach (var v in await context.Versions.AsNoTracking().Where(v => v.PageId == p.Id).OrderBy(v => v.Number).ToListAsync())
                {
                    text.AppendLine($"VERSION {v.Number}|{v.Saved:O}|{v.Note}|{v.By}|{v.Device}|{v.BasedOn}|{v.BesideOf}|{v.BroughtBack}|{v.Text}");
                }

                foreach (var d in await context.Drafts.AsNoTracking().Where(d => d.PageId == p.Id).OrderBy(d => d.Session).ToListAsync()) text.AppendLine($"DRAFT {d.Session}|{d.Sequence}|{d.BasedOn}|{d.Saved:O}|{d.Text}");
                foreach (var a in await context.Aliases.AsNoTracking().Where(a => a.PageId == p.Id).OrderBy(a => a.Id).ToListAsync()) text.AppendLine($"ALIAS {a.Name}|{a.NameKey}");
                foreach (var t in await context.Tags.AsNoTracking().Where(t => t.PageId == p.Id).OrderBy(t => t.NameKey).ToListAsync()) text.AppendLine($"TAG {t.Name}|{t.NameKey}");
                foreach (var s in await context.Songs.AsNoTracking().Where(s => s.PageId == p.Id).OrderBy(s => s.Id).ToListAsync()) text.AppendLine($"SONG {s.Title}|{s.Artist}|{s.Tempo}");
                foreach (var a in await context.Attachments.AsNoTracking().Where(a => a.PageId == p.Id).OrderBy(a => a.Id).ToListAsync())
                {
                    var bytes = await context.Files.AsNoTracking().Where(f => f.AttachmentId == a.Id).Select(f => f.Bytes).SingleOrDefaultAsync();
                    text.AppendLine($"ATTACHMENT {a.Title}|{a.Address}|{a.FileName}|{a.MediaType}|{a.Size}|{a.Added:O}|{(bytes is null ? "-" : Convert.ToHexString(bytes))}");
                }

                foreach (var f in await context.Films.AsNoTracking().Where(f => f.PageId == p.Id && f.Away == null).ToListAsync()) text.AppendLine($"FILM {f.Address}|{f.FileName}|{f.Changed:O}|{f.Captions}");
                var h = await context.Shelf.AsNoTracking().SingleAsync(s => s.PageId == p.Id);
                text.AppendLine($"SHELF {h.Deleted}|{h.IsFigures}|{h.Name}|{h.Title}|{h.Changed:O}|{h.Counts}|{h.Level}|{h.Learned}|{h.Errors}|{h.Warnings}|{h.Hints}|{h.Holds}|{h.Figures}|{h.Aliases}|{h.Tags}|{h.Songs}|{h.Words}|{h.Moves}|{h.Version}|{h.ReadWith}");
            }
        }

        return text.ToString();
    }
}
