using System.Security.Cryptography;

namespace Surefoot.Web.Keeping;

/// <summary>The last few things of this run, by a word; the oldest are forgotten.</summary>
/// <param name="most">How many are remembered.</param>
internal sealed class LastFew<T>(int most)
    where T : class
{
    private readonly Lock _gate = new();
    private readonly Dictionary<string, T> _all = new(StringComparer.Ordinal);
    private readonly Queue<string> _order = new();

    /// <returns>The word by which it is found, which nobody can guess.</returns>
    public string Put(T one)
    {
        // 128 bits cannot be guessed.
        var word = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        Put(word, one);
        return word;
    }

    public void Put(string word, T one)
    {
        lock (_gate)
        {
            if (!_all.ContainsKey(word)) _order.Enqueue(word);
            _all[word] = one;
            if (_order.Count > most) _all.Remove(_order.Dequeue());
        }
    }

    public T? Find(string word)
    {
        lock (_gate) return _all.GetValueOrDefault(word);
    }

    /// <summary>Hands it over, once.</summary>
    public T? Take(string word)
    {
        lock (_gate) return _all.Remove(word, out var one) ? one : null;
    }
}
