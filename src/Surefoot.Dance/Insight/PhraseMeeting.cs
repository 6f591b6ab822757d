namespace Surefoot.Dance.Insight;

/// <summary>How a dance falls on the music's phrases.</summary>
public static class PhraseMeeting
{
    /// <summary>After how many repeats a dance of some counts begins together with a phrase again: the least common multiple over the dance's length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive.</exception>
    public static int After(int danceCounts, int phraseCounts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(danceCounts, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(phraseCounts, 1);
        var (a, b) = (danceCounts, phraseCounts);
        while (b != 0) (a, b) = (b, a % b);
        return phraseCounts / a;
    }
}
