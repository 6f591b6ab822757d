using Microsoft.Data.Sqlite;

namespace Surefoot.Library.Sqlite;

/// <summary>What is done with whole database files.</summary>
internal static class SqliteFile
{
    /// <exception cref="LibraryException">It is a database, but not a library.</exception>
    public static void RefuseForeign(string file)
    {
        if (new FileInfo(file).Length == 0) return;
        using var connection = ReadOnly(file);
        try
        {
            connection.Open();
            if (Number(connection, "PRAGMA application_id") == SqliteStore.Mark) return;
            // A library whose first opening was cut off has tables of ours or none.
            if (Number(connection, "SELECT COUNT(*) FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_\\_EF%' ESCAPE '\\'") == 0) return;
            if (Number(connection, "SELECT COUNT(*) FROM sqlite_master WHERE type = 'table' AND name IN ('shelf', 'versions', 'notebooks')") == 3) return;
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == 26)
        {
            throw new LibraryException($"{file} is not a library, so it was left as it is.", fault);
        }

        throw new LibraryException($"{file} is another program's database, so it was left as it is.");
    }

    /// <summary>Waits until nobody else is opening the same library; the system lets go of it when a program is killed.</summary>
    public static async Task<FileStream> AloneAsync(string file, CancellationToken stop)
    {
        // A migration takes a second or two; 30 seconds is a machine in trouble. Working value.
        for (var tries = 0; ; tries++)
        {
            try
            {
                return new(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (tries < 600)
            {
                await Task.Delay(50, stop);
            }
        }
    }

    /// <summary>SQLite's own copying while the database is in use. The copy is checked before it gets its name.</summary>
    public static void Copy(string from, string file)
    {
        var target = Path.GetFullPath(file);
        if (Path.GetDirectoryName(target) is { Length: > 0 } folder) Directory.CreateDirectory(folder);
        var beside = target + ".new";
        Remove(beside);
        try
        {
            Write(from, beside);
            if (Fault(beside) is { } fault) throw new IOException(fault);
            File.Move(beside, target, overwrite: true);
        }
        finally
        {
            Remove(beside);
        }
    }

    private static void Write(string from, string file)
    {
        using var source = new SqliteConnection(from);
        using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        source.Open();
        copy.Open();
        source.BackupDatabase(copy);
        // One file without its helpers beside it, which travels whole.
        using var plain = copy.CreateCommand();
        plain.CommandText = "PRAGMA journal_mode = DELETE";
        plain.ExecuteNonQuery();
    }

    /// <summary>Puts one database in the place of another that is in use, in one transaction.</summary>
    public static void Over(string from, string to)
    {
        using var source = new SqliteConnection(from);
        using var target = new SqliteConnection(to);
        source.Open();
        target.Open();
        using var wait = target.CreateCommand();
        wait.CommandText = Pragmas.Said;
        wait.ExecuteNonQuery();
        source.BackupDatabase(target);
    }

    /// <summary>Why a file is no library that could be taken over, or null.</summary>
    public static string? Fault(string file)
    {
        try
        {
            using var connection = ReadOnly(file);
            connection.Open();
            if (Number(connection, "PRAGMA application_id") != SqliteStore.Mark) return $"{file} is not a copy of a library.";
            using var check = connection.CreateCommand();
            check.CommandText = "PRAGMA integrity_check";
            if (check.ExecuteScalar() is not "ok") return $"{file} is damaged.";
            check.CommandText = "PRAGMA foreign_key_check";
            using var broken = check.ExecuteReader();
            return broken.Read() ? $"{file} is damaged: things in it belong to pages that are not there." : null;
        }
        catch (SqliteException)
        {
            return $"{file} is damaged, or is not a copy of a library.";
        }
    }

    /// <summary>Removes a file of ours with its helpers.</summary>
    public static void Remove(string file)
    {
        using (var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true }.ToString())) SqliteConnection.ClearPool(connection);
        foreach (var ending in (string[])["", "-wal", "-shm", "-journal", ".opening"]) File.Delete(file + ending);
    }

    private static SqliteConnection ReadOnly(string file) =>
        new(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());

    private static long Number(SqliteConnection connection, string question)
    {
        using var command = connection.CreateCommand();
        command.CommandText = question;
        return Convert.ToInt64(command.ExecuteScalar());
    }
}
