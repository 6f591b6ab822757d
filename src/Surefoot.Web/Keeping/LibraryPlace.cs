using Surefoot.Library.PostgreSql;
using Surefoot.Library.Sqlite;
using Surefoot.Library.Store;

namespace Surefoot.Web.Keeping;

/// <summary>Where the studio's library lies: what SUREFOOT_LIBRARY says, a file or a server, else a file of the person's own.</summary>
internal static class LibraryPlace
{
    public static LibraryStore Store()
    {
        var said = Environment.GetEnvironmentVariable("SUREFOOT_LIBRARY");
        if (string.IsNullOrWhiteSpace(said)) return new SqliteStore(Usual());
        return IsServer(said) ? new PostgreSqlStore(said) : new SqliteStore(said);
    }

    /// <summary>
    /// The folder of what this machine keeps when it opens the studio to the network: beside the library's file; for a
    /// library on a server in the person's own folder, as each machine that opens it has its own door.
    /// </summary>
    public static string NetworkFolder()
    {
        var said = Environment.GetEnvironmentVariable("SUREFOOT_LIBRARY");
        var file = string.IsNullOrWhiteSpace(said) ? Usual() : IsServer(said) ? Path.Combine(Path.GetDirectoryName(Usual())!, "server") : Path.GetFullPath(said);
        return file + ".network";
    }

    // A server is named as its drivers name it, "Host=…;Database=…"; no file's name looks like that.
    private static bool IsServer(string said) =>
        said.StartsWith("Host=", StringComparison.OrdinalIgnoreCase) || said.StartsWith("Server=", StringComparison.OrdinalIgnoreCase) || said.Contains(";Host=", StringComparison.OrdinalIgnoreCase);

    // The folder where a system wants programs to keep what is the person's: $XDG_DATA_HOME, or ~/.local/share.
    private static string Usual() =>
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "surefoot", "surefoot.db");
}
