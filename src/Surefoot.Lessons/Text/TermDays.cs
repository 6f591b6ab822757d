namespace Surefoot.Lessons.Text;

/// <summary>Reads a day as somebody names it who has a term before them.</summary>
public static class TermDays
{
    /// <returns>Null where it is no day; a day without a year is the first one in the term.</returns>
    public static DateOnly? Read(string words, Term term) => DateReader.Of(words, term.From)?.Day;
}
