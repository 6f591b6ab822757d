using Surefoot.Library;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Teaching;

/// <summary>Terms that were thrown away last, so that it can be undone as long as the studio runs.</summary>
internal sealed class ThrownTerms
{
    /// <summary>How many are remembered. Working value.</summary>
    private const int Most = 50;

    private readonly LastFew<TermInfo> _terms = new(Most);

    /// <returns>The word by which it comes back, which nobody can guess.</returns>
    public string Put(TermInfo term) => _terms.Put(term);

    /// <summary>Hands it over, once.</summary>
    public TermInfo? Take(string word) => _terms.Take(word);
}
