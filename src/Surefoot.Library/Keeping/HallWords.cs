using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;
using Surefoot.Transcribe;

namespace Surefoot.Library.Keeping;

/// <summary>The hall's own words: what its sheets say, and what a page would write. They are one list for the whole library.</summary>
public sealed class HallWords
{
    private readonly Core _core;

    internal HallWords(Core core) => _core = core;

    /// <summary>All of them, in the order of what is said.</summary>
    public async Task<IReadOnlyList<HallWord>> AllAsync(CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return [.. (await context.Words.AsNoTracking().OrderBy(w => w.SaidKey).ToListAsync(stop)).Select(Shown)];
    }

    /// <summary>Keeps a word; one that says the same is given the new meaning.</summary>
    /// <param name="said">As sheets say it.</param>
    /// <param name="means">As a page writes it; whether it can be danced is not asked here.</param>
    public async Task<(HallWord? Word, Refusal? Refusal)> KeepAsync(string said, string means, CancellationToken stop = default)
    {
        var (word, refusal) = Clean(said, means);
        if (word is null) return (null, refusal);
        return await _core.ChangeAsync<(HallWord?, Refusal?)>(
            async (context, _) =>
            {
                var row = await context.Words.SingleOrDefaultAsync(w => w.SaidKey == word.Key, stop);
                if (row is null && await context.Words.CountAsync(stop) >= SheetWords.Most) return (null, new($"A hall may have {SheetWords.Most} words of its own. Take one back first."));
                if (row is null) context.Words.Add(row = new() { SaidKey = word.Key, Added = _core.Now });
                (row.Said, row.Means) = (word.Said, word.Means);
                await context.SaveChangesAsync(stop);
                return (Shown(row), null);
            },
            stop);
    }

    /// <summary>Takes a word back; sheets are read without it from then on.</summary>
    public Task<Refusal?> TakeBackAsync(long word, CancellationToken stop = default) => _core.ChangeAsync(
        async (context, _) => await context.Words.Where(w => w.Id == word).ExecuteDeleteAsync(stop) == 0 ? new Refusal("That word is not there any more.") : null,
        stop);

    /// <summary>Puts words in that came in a file, inside a change: what the library has already stays.</summary>
    /// <returns>How many are new, and those that mean something else here.</returns>
    internal static async Task<(int New, List<(SheetWord There, string Here)> Other)> TakeAsync(Core core, LibraryContext context, IEnumerable<SheetWord> words, CancellationToken stop)
    {
        var here = (await context.Words.AsNoTracking().ToListAsync(stop)).ToDictionary(w => w.SaidKey, StringComparer.Ordinal);
        var (fresh, other) = (0, new List<(SheetWord, string)>());
        foreach (var one in words)
        {
            if (Clean(one.Said, one.Means).Word is not { } word) continue;
            if (here.TryGetValue(word.Key, out var row))
            {
                if (row.Means != word.Means) other.Add((word, row.Means));
            }
            else if (here.Count < SheetWords.Most)
            {
                here[word.Key] = new() { Said = word.Said, SaidKey = word.Key, Means = word.Means, Added = core.Now };
                context.Words.Add(here[word.Key]);
                fresh++;
            }
        }

        await context.SaveChangesAsync(stop);
        return (fresh, other);
    }

    private static (SheetWord? Word, Refusal? Refusal) Clean(string said, string means)
    {
        // The door of every text: no empty signs, no halves of letters.
        if ((Door.Name(said, "That phrase", Doors).Refusal ?? Door.Name(means, "That meaning", Doors).Refusal) is { } refusal) return (null, refusal);
        var word = SheetWords.Clean(said, means);
        return SheetWords.Fault(word) is { } fault ? (null, new($"“{word.Said}” cannot be a word of the hall: {fault}")) : (word, null);
    }

    private static LibraryLimits Doors { get; } = new() { NameLength = SheetWords.Longest };

    private static HallWord Shown(WordRow row) => new(row.Id, row.Said, row.Means, row.Added);
}
