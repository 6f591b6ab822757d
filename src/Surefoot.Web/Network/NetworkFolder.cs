namespace Surefoot.Web.Network;

/// <summary>
/// Where a studio that is open to the network keeps what is its own machine's: passphrase, certificate, the keys of
/// sign-ins. Never in the library, whose copies and exports are handed out, and whose copy from last year would
/// bring last year's passphrase back.
/// </summary>
internal sealed class NetworkFolder
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public NetworkFolder(string folder)
    {
        Path = folder;
        if (OperatingSystem.IsWindows())
        {
            // A person's own folders are closed to others there, and what is made in them is too.
            Directory.CreateDirectory(folder);
            return;
        }

        Directory.CreateDirectory(folder, OwnerOnly | UnixFileMode.UserExecute);
        // It may have been there already, with more open to others.
        File.SetUnixFileMode(folder, OwnerOnly | UnixFileMode.UserExecute);
    }

    public string Path { get; }

    public string Passphrase => At("passphrase.json");

    public string Certificate => At("certificate.pfx");

    public DirectoryInfo Keys => new(At("keys"));

    /// <summary>Writes a file whole or not at all; only whoever runs the studio may read it.</summary>
    public static void Write(string file, ReadOnlySpan<byte> bytes)
    {
        var beside = file + ".new";
        File.Delete(beside);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = OwnerOnly;
        using (var stream = new FileStream(beside, options))
        {
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }

        File.Move(beside, file, overwrite: true);
    }

    private string At(string name) => System.IO.Path.Combine(Path, name);
}
