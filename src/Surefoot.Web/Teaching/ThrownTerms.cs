using System.Security.Cryptography;
using Surefoot.Library;

namespace Surefoot.Web.Teaching;

/// <summary>Terms that were thrown away last, so that it can be undone as long as the studio runs.</summary>
internal sealed class ThrownTerms
{
    /// <summary>How many are remembered. Working value.</summary>
    private const int Most = 50;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, TermInfo> _terms = new(StringComparer.Ordinal);
    private readonly Queue<string> _order = new();

    /// <returns>The word by which it comes back, which nobody can guess.</returns>
    public string Put(TermInfo term)
    {
        var word = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        lock (_gate)
        {
            _terms[word] = term;
            _order.Enqueue(word);
            if (_order.Count > Most) _terms.Remove(_order.Dequeue());
        }

        return word;
    }

    /// <summary>Hands it over, once.</summary>
    public TermInfo? Take(string word)
    {
        lock (_gate) return _terms.Remove(word, out var term) ? term : null;
    }
}
