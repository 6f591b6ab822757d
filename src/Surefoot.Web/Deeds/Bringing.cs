using System.Security.Cryptography;
using Surefoot.Library;

namespace Surefoot.Web.Deeds;

/// <summary>One import: running, or done with its report.</summary>
internal sealed class BroughtIn(string word, string what)
{
    private long _progress;

    public string Word => word;

    /// <summary>What was chosen: "autumn.zip".</summary>
    public string What => what;

    public Task<ImportReport> Work { get; set; } = Task.FromResult(new ImportReport([], 0));

    public (int Done, int Pages) Progress => Interlocked.Read(ref _progress) is var both ? ((int)(both >> 32), (int)both) : default;

    public void Heard(ImportProgress now) => Interlocked.Exchange(ref _progress, ((long)now.Done << 32) | (uint)now.Pages);
}

/// <summary>Imports of this run, so that a long one can be watched and its report looked at again.</summary>
internal sealed class Bringing
{
    /// <summary>Reports that are remembered. Working value.</summary>
    private const int Most = 20;

    /// <summary>How many of them the page for bringing in names. Working value.</summary>
    private const int Shown = 5;

    /// <summary>A shorter import shows its report at once.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(900);

    private readonly Lock _gate = new();
    private readonly List<BroughtIn> _all = [];

    public BroughtIn? Find(string word)
    {
        lock (_gate) return _all.Find(b => b.Word == word);
    }

    /// <summary>The last of them, the newest first: whoever left one that runs finds it again.</summary>
    public IReadOnlyList<BroughtIn> Lately()
    {
        lock (_gate) return [.. _all.AsEnumerable().Reverse().Take(Shown)];
    }

    /// <summary>Begins an import and waits for it a moment.</summary>
    public async Task<BroughtIn> BeginAsync(string what, Func<IProgress<ImportProgress>, Task<ImportReport>> take)
    {
        var one = new BroughtIn(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)), what);
        one.Work = Task.Run(async () =>
        {
            try
            {
                return await take(new Hearing(one));
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or InvalidDataException)
            {
                return new([], 0, "It could not be read to its end. Is there room on the disk?");
            }
        });
        lock (_gate)
        {
            _all.Add(one);
            // One that runs is never forgotten.
            if (_all.Count > Most && _all.Find(b => b.Work.IsCompleted) is { } old) _all.Remove(old);
        }

        await Task.WhenAny(one.Work, Task.Delay(Patience));
        return one;
    }

    // The platform's own would say it later, on another thread, and out of order.
    private sealed class Hearing(BroughtIn one) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => one.Heard(value);
    }
}
