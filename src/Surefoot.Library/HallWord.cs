using Surefoot.Transcribe;

namespace Surefoot.Library;

/// <summary>A word of the hall.</summary>
/// <param name="Said">As sheets say it.</param>
/// <param name="Means">As a page writes it.</param>
public sealed record HallWord(long Id, string Said, string Means, DateTimeOffset Added)
{
    /// <summary>The same for whoever reads sheets.</summary>
    public SheetWord ForSheets => new(Said, Means) { OfTheHall = true };
}
