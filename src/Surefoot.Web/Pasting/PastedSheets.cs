namespace Surefoot.Web.Pasting;

/// <summary>Sheets of this run that were read, so that a reading can be looked at again and gone back to. The oldest are forgotten.</summary>
internal sealed class PastedSheets
{
    /// <summary>Sheets that are remembered, and bytes of them together: a few scanned files are as large as all typed ones. Working values.</summary>
    private const int Most = 40, MostBytes = 64 << 20;

    private readonly Lock _gate = new();
    private readonly List<PastedSheet> _all = [];

    public PastedSheet? Find(string? word)
    {
        lock (_gate) return _all.Find(s => s.Word == word);
    }

    public void Put(PastedSheet sheet)
    {
        lock (_gate)
        {
            _all.Add(sheet);
            // The one that just came stays, however large it is.
            while (_all.Count > 1 && (_all.Count > Most || _all.DistinctBy(s => s.Brought).Sum(s => (long)s.Brought.Bytes.Length) > MostBytes)) _all.RemoveAt(0);
        }
    }
}
