namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// Spells an abbreviation out where a sheet first needs it: "facing the line of dance (LOD)". Whoever is handed a
/// sheet in her first week does not know the letters.
/// </summary>
internal sealed class SpelledOut(string letters, string words)
{
    private bool _done;

    public static SheetPlan In(SheetPlan plan) =>
        new SpelledOut("RLOD", "against the line of dance").On(new SpelledOut("LOD", "the line of dance").On(plan));

    private SheetPlan On(SheetPlan plan)
    {
        if (!Texts(plan).Any(t => Find(t) >= 0)) return plan;
        // The sentences at the top say it in words already: there the letters are put beside them.
        if (FindWords(plan.Opening) is var said and >= 0) return plan with { Opening = plan.Opening.Insert(said + words.Length, $" ({letters})") };
        return plan with
        {
            Order = Once(plan.Order),
            Notes = [.. plan.Notes.Select(Once)],
            Parts = [.. plan.Parts.Select(p => p with { Start = Once(p.Start), Rows = [.. p.Rows.Select(OnRow)] })],
        };
    }

    private RowPlan OnRow(RowPlan row) => _done ? row : row with
    {
        Both = row.Both is { } both ? Once(both) : null,
        Lead = Once(row.Lead),
        Follow = Once(row.Follow),
        Note = row.Note is { } note ? Once(note) : null,
        Ours = [.. row.Ours.Select(o => o with { Words = Once(o.Words) })],
    };

    private static IEnumerable<string> Texts(SheetPlan plan) =>
        [plan.Order, .. plan.Notes, .. plan.Parts.SelectMany(p => p.Rows.SelectMany(r => r.Ours.Select(o => o.Words).Concat([r.Both ?? "", r.Lead, r.Follow, r.Note ?? ""])).Prepend(p.Start))];

    private string Once(string text)
    {
        if (_done || Find(text) is not (>= 0 and var at)) return text;
        _done = true;
        // In a bracket no other one is opened.
        var inBracket = text.LastIndexOfAny(['(', '['], at) > text.LastIndexOfAny([')', ']'], at);
        return $"{text[..at]}{words}{(inBracket ? $", {letters}" : $" ({letters})")}{text[(at + letters.Length)..]}";
    }

    // As a word of its own: "LOD" does not stand in "RLOD".
    private int Find(string text)
    {
        for (var at = text.IndexOf(letters, StringComparison.Ordinal); at >= 0; at = text.IndexOf(letters, at + 1, StringComparison.Ordinal))
        {
            var end = at + letters.Length;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end]))) return at;
        }

        return -1;
    }

    // "The line of dance" itself, and not against it or along it.
    private int FindWords(string text)
    {
        for (var at = text.IndexOf(words, StringComparison.Ordinal); at >= 0; at = text.IndexOf(words, at + 1, StringComparison.Ordinal))
        {
            if (text.AsSpan(0, at).EndsWith("facing ", StringComparison.Ordinal)) return at;
        }

        return -1;
    }
}
