using System.Text.Json;
using Surefoot.Dance.Text;
using Surefoot.Library.Keeping;
using Surefoot.Transcribe;

namespace Surefoot.Library.Exchange;

/// <summary>Reads a pile into plans. Nothing is changed here, so a damaged pile is known before anything is replaced.</summary>
internal sealed class Planning(Pile pile, LibraryLimits limits)
{
    // Higher numbers were not written by Surefoot: a version a second takes thirty years to get there.
    private const int MostVersions = 1_000_000_000;

    private readonly HashSet<string> _used = new(StringComparer.Ordinal);

    public List<ImportLine> Troubles { get; } = [.. pile.Refused];

    public int OtherFiles { get; private set; }

    /// <summary>The file of the hall's own words, where there is one.</summary>
    public (string File, IReadOnlyList<SheetWord> Words)? HallWords { get; private set; }

    /// <summary>The notebooks of an export, or one plain notebook.</summary>
    public List<NotebookPlan> Read()
    {
        var (root, library) = Head();
        var plans = new List<NotebookPlan>();
        foreach (var notebook in Said(library?.Notebooks ?? []))
        {
            var folder = $"{root}{notebook.Folder}/";
            var pages = new List<PagePlan>();
            foreach (var name in Said(notebook.Pages))
            {
                if (Kept(folder + name) is { } page) pages.Add(page);
            }

            var plan = new NotebookPlan(notebook, pages);
            plans.Add(plan);
            foreach (var term in Said(notebook.Terms ?? []))
            {
                if (Text(folder + term.File) is { } text) plan.Terms.Add((folder + term.File, term, text));
            }

            // Pages that somebody put into the folder since.
            Plain(folder, pages);
        }

        var rest = new NotebookPlan(null, []);
        if (library is null) Plain("", rest.Pages);
        if (library is null || rest.Pages.Count > 0) plans.Add(rest);
        Words(root);
        OtherFiles = pile.Files.Count(f => !_used.Contains(f.Path));
        return plans;
    }

    // At the top, or one folder down where somebody packed the folder itself.
    private (string Root, LibraryFile? Library) Head()
    {
        var path = pile.Has(Layout.Library) ? Layout.Library : pile.Files.Select(f => f.Path).FirstOrDefault(p => p.IndexOf('/') is var slash and > 0 && p[(slash + 1)..] == Layout.Library);
        if (path is null || Json(path, ExportJson.Plain.LibraryFile) is not { } library) return ("", null);
        if (library.Form > Layout.Form) throw new PileException("This was exported by a later Surefoot. Use that one to take it in.");
        return (path[..^Layout.Library.Length], library);
    }

    // At the top of the pile, beside its notebooks or its pages.
    private void Words(string root)
    {
        var path = root + Layout.Words;
        if (!pile.Has(path) || Text(path) is not { } text) return;
        var (words, troubles) = SheetWords.Read(text);
        if (troubles.Count > 0) Trouble(path, $"line {troubles[0].Line}: {troubles[0].Says}{(troubles.Count > 1 ? $" So are {troubles.Count - 1} more of its lines." : "")}");
        HallWords = (path, words);
    }

    private void Plain(string folder, List<PagePlan> pages)
    {
        foreach (var file in pile.Files)
        {
            if (!file.Path.StartsWith(folder, StringComparison.Ordinal) || !PageNames.IsPage(file.Path) || file.Path.Contains($"/{Layout.Bin}/", StringComparison.Ordinal) || !_used.Add(file.Path)) continue;
            if (Text(file.Path) is { } text) pages.Add(new(file.Path, PageName.Clean(file.Path[folder.Length..^PageNames.Ending.Length]), text, null));
        }
    }

    private PagePlan? Kept(string path)
    {
        var beside = path + PageName.KeptFolder + "/";
        var file = path + PageNames.Ending;
        if (Json(beside + Layout.Page, ExportJson.Plain.PageFile) is not { } page) return null;
        page = page with { Aliases = Said(page.Aliases), Tags = Said(page.Tags), Songs = Said(page.Songs), Versions = Said(page.Versions), Drafts = Said(page.Drafts), Attachments = Said(page.Attachments) };
        // Its own text is the truth: somebody may have written on it since.
        if (Text(file) is not { } text) return null;
        var versions = new List<(VersionFile, string)>();
        foreach (var version in page.Versions.OrderBy(v => v.Number))
        {
            if (version.Number is > 0 and < MostVersions && versions.All(v => v.Item1.Number != version.Number) && Text(beside + version.File) is { } was) versions.Add((version, was));
        }

        var drafts = new List<(DraftFile, string)>();
        foreach (var draft in page.Drafts)
        {
            if (Text(beside + draft.File) is { } was) drafts.Add((draft, was));
        }

        var attachments = new List<(AttachmentFile, byte[]?)>();
        foreach (var attachment in page.Attachments)
        {
            if (attachment.File.Length == 0) attachments.Add((attachment, null));
            else if (Bytes(beside + attachment.File, limits.FileBytes) is { } bytes) attachments.Add((attachment, bytes));
        }

        return new(file, PageName.Clean(page.Name), text, new(page, versions, drafts, attachments) { Captions = page.Film is not { } film ? null : film.File.Length == 0 ? "" : Captions(beside + film.File) });
    }

    // A list may have holes where somebody wrote on it.
    private static List<T> Said<T>(IReadOnlyList<T> list) => [.. list.Where(item => item is not null)];

    private string? Text(string path)
    {
        if (Bytes(path, limits.PageBytes * 2) is not { } bytes) return null;
        var (text, _, none) = TextForms.Read(bytes);
        if (none is not null) return Trouble(path, none.What + " " + none.Advice);
        var (clean, refusal) = Door.Page(text, limits);
        return refusal is null ? clean : Trouble(path, refusal.Why);
    }

    private string? Captions(string path)
    {
        if (Bytes(path, limits.CaptionBytes * 2) is not { } bytes) return null;
        var (text, _, none) = TextForms.Read(bytes);
        if (none is not null) return Trouble(path, none.What + " " + none.Advice);
        var (clean, refusal) = Films.Captions(text, limits);
        return refusal is null ? clean : Trouble(path, refusal.Why);
    }

    private T? Json<T>(string path, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type)
        where T : class
    {
        // Names and notes of a page with thousands of versions take a few megabytes.
        if (Bytes(path, 64 << 20) is not { } bytes) return null;
        try
        {
            return JsonSerializer.Deserialize(bytes, type);
        }
        catch (JsonException)
        {
            Trouble(path, "it is damaged, so what it says is lost.");
            return null;
        }
    }

    private byte[]? Bytes(string path, int most)
    {
        _used.Add(path);
        if (pile.Read(path, most, out var says) is { } bytes) return bytes;
        Trouble(path, says);
        return null;
    }

    private string? Trouble(string path, string says)
    {
        Troubles.Add(new(Pile.Shown(path), Taken.NotRead, null, says));
        return null;
    }
}
