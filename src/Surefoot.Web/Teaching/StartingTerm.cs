using Surefoot.Lessons;

namespace Surefoot.Web.Teaching;

/// <summary>What a new term begins with: three months from the next Monday on, an evening to change, and the headings.</summary>
internal static class StartingTerm
{
    /// <summary>Weeks of a term that nobody has said the end of. Working value.</summary>
    private const int Weeks = 12;

    public static string For(string title, DateOnly today)
    {
        var first = today.AddDays(((int)DayOfWeek.Monday - (int)today.DayOfWeek + 7) % 7);
        return $"{title}\n\nFrom:  {DayWords.Full(first)}\nUntil: {DayWords.Full(first.AddDays((7 * Weeks) - 1))}\n\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\n\nKnown\n\nDances\n";
    }
}
