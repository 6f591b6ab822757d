using Surefoot.Lessons;

namespace Surefoot.Web.Teaching;

/// <summary>
/// What a new term begins with: three months from the next Monday on, an evening to change, the headings, and under each as notes what
/// can be written there.
/// </summary>
internal static class StartingTerm
{
    /// <summary>Weeks of a term that nobody has said the end of. Working value.</summary>
    private const int Weeks = 12;

    public static string For(string title, DateOnly today)
    {
        var first = today.AddDays(((int)DayOfWeek.Monday - (int)today.DayOfWeek + 7) % 7);
        return $"""
            {title}

            From:  {DayWords.Full(first)}
            Until: {DayWords.Full(first.AddDays((7 * Weeks) - 1))}
            > Lines that begin with > are notes. Take the > away where a line is to count.
            > Closed: {DayWords.Short(first.AddDays(22))}, {DayWords.Short(first.AddDays(50))} to {DayWords.Short(first.AddDays(56))}

            Evenings
            Tuesday 19:00, 45 minutes, beginners, line dances
            > Thursday 8pm, 60 minutes, improvers, couples, at most 40 new counts

            Known
            > Title of a dance, beginners, danced {DayWords.Short(first.AddDays(-20))}

            Dances
            > Title of a dance, for beginners, by {DayWords.Short(first.AddDays(43))}
            > Title of another, for beginners, after Title of a dance

            """.ReplaceLineEndings("\n");
    }
}
