using System.IO.Compression;

namespace Surefoot.Library.Exchange;

/// <summary>Makes piles of folders and zips, leaving out what leads elsewhere.</summary>
internal static class Piles
{
    // Longer ways are no page's: six folders of 80 letters are 500.
    private const int Longest = 600;

    // The kind of a file in the upper half of a zip's attributes, where a Unix system packed it: a link.
    private const int KindMask = 0xF000;
    private const int Link = 0xA000;

    public static Pile OfFolder(string folder, ImportLimits limits)
    {
        var pile = new Pile(limits);
        Look(folder, "", 0);
        return pile;

        void Look(string at, string inside, int depth)
        {
            try
            {
                foreach (var entry in new DirectoryInfo(at).EnumerateFileSystemInfos().OrderBy(e => e.Name, StringComparer.Ordinal))
                {
                    var path = inside + entry.Name;
                    if (entry.Name.StartsWith('.') && !(depth is 1 or 2 && entry.Name == Layout.Bin)) continue;
                    if (entry.LinkTarget is not null || entry.Attributes.HasFlag(FileAttributes.ReparsePoint)) pile.Refuse(path, "it is a link to somewhere else, and links are not followed.");
                    else if (entry is DirectoryInfo && depth >= limits.Depth) pile.Refuse(path, "folders are not looked into this deep.");
                    else if (entry is DirectoryInfo) Look(entry.FullName, path + "/", depth + 1);
                    // What counts is read, so a file is as large as it is packed.
                    else if (entry is FileInfo file) pile.Add(new(path, () => new FileStream(file.FullName, FileMode.Open, FileAccess.Read, FileShare.ReadWrite), file.Length));
                }
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                pile.Refuse(inside.TrimEnd('/') is { Length: > 0 } name ? name : at, "this folder may not be looked into.");
            }
        }
    }

    /// <exception cref="PileException">It is no zip, or too much.</exception>
    public static Pile OfZip(ZipArchive zip, ImportLimits limits)
    {
        var pile = new Pile(limits);
        try
        {
            if (zip.Entries.Count > limits.Files) throw new PileException($"There are more than {limits.Files} files in it, so nothing was taken.");
            foreach (var entry in zip.Entries)
            {
                var path = entry.FullName.Replace('\\', '/');
                if (path.EndsWith('/')) continue;
                if (Unsafe(path) is { } why) pile.Refuse(path, why);
                else if (((entry.ExternalAttributes >> 16) & KindMask) == Link) pile.Refuse(path, "it is a link to somewhere else, and links are not followed.");
                else if (Hidden(path)) continue;
                else pile.Add(new(path, entry.Open, entry.CompressedLength));
            }
        }
        catch (InvalidDataException)
        {
            throw new PileException("This is not a zip, or it is damaged.");
        }

        return pile;
    }

    /// <summary>Opens a zip for reading.</summary>
    /// <exception cref="PileException">It is none.</exception>
    public static ZipArchive Open(Stream stream)
    {
        try
        {
            return new(stream, ZipArchiveMode.Read, leaveOpen: true);
        }
        catch (InvalidDataException)
        {
            throw new PileException("This is not a zip, or it is damaged.");
        }
    }

    private static string? Unsafe(string path)
    {
        if (path.Length > Longest) return "its name is far too long.";
        if (path.StartsWith('/') || path is [_, ':', ..]) return "its name leads out of the folder.";
        foreach (var piece in path.Split('/'))
        {
            if (piece is "..") return "its name leads out of the folder.";
            if (piece is "." or "") return "its name is none.";
        }

        foreach (var letter in path)
        {
            if (char.IsControl(letter)) return "there are signs in its name that are no letters.";
        }

        return null;
    }

    // Leavings of other programs; our own bin lies one folder deep, or two where somebody packed the folder itself.
    private static bool Hidden(string path)
    {
        var pieces = path.Split('/');
        for (var i = 0; i < pieces.Length; i++)
        {
            if (pieces[i] == "__MACOSX") return true;
            if (pieces[i].StartsWith('.') && !(pieces[i] == Layout.Bin && i is 1 or 2)) return true;
        }

        return false;
    }
}
