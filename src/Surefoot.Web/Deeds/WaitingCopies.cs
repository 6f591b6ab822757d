using System.Security.Cryptography;

namespace Surefoot.Web.Deeds;

/// <summary>A copy that may be brought back once somebody says so.</summary>
/// <param name="File">Where it lies; a name of our own.</param>
/// <param name="Called">What it was called where it came from.</param>
/// <param name="Before">It holds what stood here before another copy was brought back.</param>
/// <param name="At">When it came.</param>
internal sealed record WaitingCopy(string Word, string File, string Called, bool Before, long Size, DateTimeOffset At);

/// <summary>Copies that wait for a yes. They are deleted when they were used, when many more came, and with the studio.</summary>
internal sealed class WaitingCopies(TimeProvider clock) : IDisposable
{
    /// <summary>Copies of each kind that wait at once. Working value.</summary>
    private const int Most = 4;

    private readonly Lock _gate = new();
    private readonly List<WaitingCopy> _waiting = [];

    public string Put(string file, string called, bool before)
    {
        var word = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        lock (_gate)
        {
            _waiting.Add(new(word, file, called, before, new FileInfo(file).Length, clock.GetUtcNow()));
            // What stood here can be had nowhere else: files that somebody looked at do not push it out.
            if (_waiting.Count(c => c.Before == before) > Most)
            {
                var oldest = _waiting.First(c => c.Before == before);
                File.Delete(oldest.File);
                _waiting.Remove(oldest);
            }
        }

        return word;
    }

    /// <summary>What stood here before copies were brought back, the newest first.</summary>
    public IReadOnlyList<WaitingCopy> Before()
    {
        lock (_gate) return [.. _waiting.Where(c => c.Before).Reverse()];
    }

    public WaitingCopy? Find(string word)
    {
        lock (_gate) return _waiting.Find(c => c.Word == word);
    }

    public WaitingCopy? Take(string word)
    {
        lock (_gate)
        {
            var copy = _waiting.Find(c => c.Word == word);
            if (copy is not null) _waiting.Remove(copy);
            return copy;
        }
    }

    public void Dispose()
    {
        lock (_gate)
        {
            foreach (var copy in _waiting) File.Delete(copy.File);
            _waiting.Clear();
        }
    }
}
