using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Cli.Files;

/// <summary>Reads and writes pages. What goes wrong comes back as words, never as an exception.</summary>
internal static class PageFiles
{
    public const string Ending = PageNames.Ending;

    // Some ten thousand lines; no dance is that long, and somebody's film is not read by mistake.
    private const int Most = 4 << 20;

    public static (PageFile? File, Trouble? Trouble) Read(string path)
    {
        var (bytes, trouble) = Bytes(path, Most, "page", "dance", "Write the dance into it first.");
        if (bytes is null) return (null, trouble);
        var (text, form, none) = TextForms.Read(bytes);
        return none is null ? (new(path, text, form), null) : (null, new(path, none.What, none.Advice));
    }

    /// <summary>A sheet as it lies on the disk, up to so many bytes.</summary>
    public static (byte[]? Bytes, Trouble? Trouble) Sheet(string path, int most) => Bytes(path, most, "sheet", "sheet", "Is it the right file?");

    private static (byte[]? Bytes, Trouble? Trouble) Bytes(string path, int most, string wanted, string holds, string ifEmpty)
    {
        try
        {
            if (Directory.Exists(path)) return (null, new(path, $"this is a folder, and one {wanted} is wanted here.", $"Name one of the {wanted}s in it."));
            if (!File.Exists(path)) return (null, Missing(path, wanted));
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (Bytes(stream, most + 1) is not { } bytes) return (null, new(path, $"it is too large for a {holds}.", "Is it the right file?"));
            return bytes.AsSpan().Trim(" \t\r\n"u8).Length == 0 ? (null, new(path, "there is nothing in it.", ifEmpty)) : (bytes, null);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return (null, Refused(path, fault, "read"));
        }
    }

    /// <summary>Writes a page back the way it was stored: beside the old one first, then in its place, so that it is never half written.</summary>
    public static Trouble? WriteBack(PageFile file, string text)
    {
        try
        {
            var target = File.ResolveLinkTarget(file.Path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(file.Path);
            if (new FileInfo(target).IsReadOnly) return new(file.Path, "the file is protected against changes, so it was left as it is.", "Take the protection off and try again.");
            var beside = target + ".new";
            File.WriteAllBytes(beside, TextForms.Bytes(text, file.Form));
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(beside, File.GetUnixFileMode(target));
            File.Move(beside, target, overwrite: true);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Refused(file.Path, fault, "written");
        }
    }

    /// <summary>Writes a sheet, a picture or a list, making the folder where there is none.</summary>
    public static Trouble? Write(string path, string text)
    {
        try
        {
            if (Directory.Exists(path)) return new(path, "there is a folder of that name.", "Choose another name for the file.");
            if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder) Directory.CreateDirectory(folder);
            File.WriteAllBytes(path, TextForms.Bytes(text, TextForm.Utf8));
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return Refused(path, fault, "written");
        }
    }

    public static Trouble Refused(string path, Exception fault, string done) => fault is UnauthorizedAccessException
        ? new(path, $"it may not be {done} by you.", "Ask whoever looks after this computer, or copy it to a folder of your own.")
        : new(path, $"it could not be {done}.", "Is it open in another program, on a stick that was taken out, or is the disk full?");

    private static Trouble Missing(string path, string wanted)
    {
        var near = Nearest(path);
        return new(path, $"there is no such {wanted} or folder.", near is null ? "Look whether the name is spelled as on the disk, with its ending." : $"Did you mean: {near}");
    }

    private static string? Nearest(string path)
    {
        if (File.Exists(path + Ending)) return path + Ending;
        var folder = Path.GetDirectoryName(path) ?? "";
        if (!Directory.Exists(folder.Length == 0 ? "." : folder)) return null;
        var name = Path.GetFileNameWithoutExtension(path).ToLowerInvariant();
        var limit = Math.Max(1, name.Length / 3);
        return Directory.EnumerateFileSystemEntries(folder.Length == 0 ? "." : folder)
            .Select(f => Path.GetFileName(f)!)
            .Where(f => f.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
            .Select(f => (Name: f, Distance: NearWords.Distance(name, Path.GetFileNameWithoutExtension(f).ToLowerInvariant(), limit)))
            .Where(n => n.Distance <= limit)
            .OrderBy(n => n.Distance).ThenBy(n => n.Name, StringComparer.Ordinal)
            .Select(n => Path.Combine(folder, n.Name))
            .FirstOrDefault();
    }

    private static byte[]? Bytes(FileStream stream, int most)
    {
        using var whole = new MemoryStream();
        var buffer = new byte[1 << 14];
        while (stream.Read(buffer, 0, buffer.Length) is var count and > 0)
        {
            whole.Write(buffer, 0, count);
            if (whole.Length >= most) return null;
        }

        return whole.ToArray();
    }
}
