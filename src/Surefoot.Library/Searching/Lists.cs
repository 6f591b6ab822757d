using Surefoot.Dance.Scoring;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Searching;

/// <summary>Picks and sorts the cards of a list.</summary>
internal static class Lists
{
    // The levels of dance sheets from the easiest; "high beginner" and the like stand with their word.
    // Common practice, no source.
    private static readonly string[] Levels = ["newcomer", "beginner", "improver", "intermediate", "advanced"];

    public static int ByTitle(Card a, Card b)
    {
        var title = string.CompareOrdinal(a.TitleKey, b.TitleKey);
        return title != 0 ? title : a.Item.Page.CompareTo(b.Item.Page);
    }

    public static ListAnswer Answer(Card[] byTitle, ListQuestion question)
    {
        var fits = Sieve(question);
        var found = new List<ShelfItem>();
        foreach (var card in byTitle)
        {
            if (fits(card.Item)) found.Add(card.Item);
        }

        if (question.Sort != SortBy.Title) found = Sorted(found, i => i, question);
        else if (question.Descending) found.Reverse();
        var skip = Math.Clamp(question.Skip, 0, found.Count);
        return new(found.Count, found.GetRange(skip, Math.Clamp(question.Take, 0, found.Count - skip)));
    }

    public static ListChoices Choices(Card[] cards)
    {
        var levels = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var meters = new HashSet<Meter>();
        var counts = new HashSet<int>();
        var tags = new SortedSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var dance in cards.Select(c => c.Item).Where(d => !d.IsFigures))
        {
            if (dance.Level.Length > 0) levels.Add(dance.Level);
            meters.Add(dance.Meter);
            counts.Add(dance.Counts);
            foreach (var tag in dance.Tags) tags.Add(tag);
        }

        return new(
            [.. levels.OrderBy(Place).ThenBy(l => l, StringComparer.OrdinalIgnoreCase)],
            [.. meters.OrderBy(m => m.Unit).ThenBy(m => m.Beats)],
            [.. counts.Order()],
            [.. tags]);
    }

    /// <summary>Sorts by what a question says; equal ones stay as they stood.</summary>
    public static List<T> Sorted<T>(List<T> all, Func<T, ShelfItem> dance, ListQuestion question) =>
        [.. question.Descending ? all.OrderByDescending(i => Rank(dance(i), question.Sort)) : all.OrderBy(i => Rank(dance(i), question.Sort))];

    /// <summary>Says of each dance whether a question asks for it.</summary>
    public static Func<ShelfItem, bool> Sieve(ListQuestion question)
    {
        var tag = question.Tag is null ? null : Folding.Key(question.Tag);
        var level = question.Level is null ? null : Folding.Key(question.Level);
        return item => Fits(item, question, tag, level);
    }

    private static bool Fits(ShelfItem item, ListQuestion q, string? tag, string? level) =>
        !item.IsFigures
        && (q.Notebook is null || item.Notebook == q.Notebook)
        && (q.ForCouples is null || item.ForCouples == q.ForCouples)
        && (q.Floor is null || item.Floor == q.Floor)
        && (level is null || Folding.Key(item.Level) == level)
        && (tag is null || item.Tags.Any(t => Folding.Key(t) == tag))
        && (q.Hold is null || item.Holds.Contains(q.Hold, StringComparer.OrdinalIgnoreCase))
        && (q.Figure is null || item.Figures.Contains(q.Figure, StringComparer.OrdinalIgnoreCase))
        && (q.Meter is null || item.Meter == q.Meter)
        && (q.Counts is null || item.Counts == q.Counts)
        && (q.Tempo is null || (item.TempoFrom <= q.Tempo && item.TempoTo >= q.Tempo))
        && (q.TempoAtLeast is null || item.TempoTo >= q.TempoAtLeast)
        && (q.TempoAtMost is null || item.TempoFrom <= q.TempoAtMost)
        && (q.Broken is null || item.Errors > 0 == q.Broken)
        && (q.Clean is null || (item.Errors == 0 && item.Warnings == 0) == q.Clean);

    private static long Rank(ShelfItem item, SortBy sort) => sort switch
    {
        SortBy.Changed => item.Changed.ToUnixTimeMilliseconds(),
        SortBy.Level => Place(item.Level),
        SortBy.Counts => item.Counts,
        SortBy.Tempo => item.TempoFrom + item.TempoTo ?? int.MaxValue,
        SortBy.Problems => (item.Errors * 1_000_000L) + item.Warnings,
        _ => 0,
    };

    // Levels of a page's own come last.
    private static int Place(string level) => Array.FindIndex(Levels, l => level.Contains(l, StringComparison.OrdinalIgnoreCase)) is var place and >= 0 ? place : Levels.Length;
}
