namespace Surefoot.Library.Exchange;

/// <summary>A file of a folder or zip, not read yet.</summary>
/// <param name="Path">With slashes, inside the pile; safe to look up by, never used as a way on the disk.</param>
internal sealed record PileFile(string Path, Func<Stream> Open, long Packed);

/// <summary>Too much, or something that only looks like a zip; the message is a sentence.</summary>
internal sealed class PileException(string message) : Exception(message);

/// <summary>The files of a folder or zip, read with a watch on how much comes out.</summary>
internal sealed class Pile(ImportLimits limits)
{
    private readonly Dictionary<string, PileFile> _files = new(StringComparer.Ordinal);
    private long _read;
    private long _packed;

    /// <summary>What must not be taken, with a sentence why.</summary>
    public List<ImportLine> Refused { get; } = [];

    public IEnumerable<PileFile> Files => _files.Values.OrderBy(f => f.Path, StringComparer.Ordinal);

    public bool Has(string path) => _files.ContainsKey(path);

    public void Add(PileFile file)
    {
        if (_files.Count >= limits.Files) throw new PileException($"There are more than {limits.Files} files in it, so nothing was taken.");
        if (!_files.TryAdd(file.Path, file)) Refuse(file.Path, "there are two files of this name; the first was taken.");
    }

    public void Refuse(string path, string says) => Refused.Add(new(Shown(path), Taken.NotRead, null, says));

    /// <summary>The bytes of a file, or null when it is not there, cannot be read or is larger than <paramref name="most"/>.</summary>
    public byte[]? Read(string path, int most, out string says)
    {
        says = "it is missing.";
        if (!_files.TryGetValue(path, out var file)) return null;
        try
        {
            using var stream = file.Open();
            using var whole = new MemoryStream();
            var buffer = new byte[1 << 14];
            _packed += file.Packed;
            // What a zip says of its sizes is not believed; what comes out is counted.
            while (stream.Read(buffer, 0, buffer.Length) is var count and > 0)
            {
                _read += count;
                if (_read > limits.TotalBytes) throw new PileException("There is more in it than can be taken at once. Take it in smaller pieces.");
                if (_read > limits.RatioFrom && _read > _packed * limits.Ratio) throw new PileException("This zip unpacks to far more than dances ever do, so nothing more of it was read.");
                whole.Write(buffer, 0, count);
                if (whole.Length <= most) continue;
                says = "it is too large for a page.";
                return null;
            }

            return whole.ToArray();
        }
        catch (Exception fault) when (fault is IOException or InvalidDataException or UnauthorizedAccessException or NotSupportedException)
        {
            says = "it is damaged or may not be read.";
            return null;
        }
    }

    /// <summary>A name as it can be shown: no signs that move the cursor, not endless.</summary>
    public static string Shown(string path)
    {
        var shown = string.Concat(path.Select(c => char.IsControl(c) ? '?' : c));
        return shown.Length > 200 ? shown[..200] + "…" : shown;
    }
}
