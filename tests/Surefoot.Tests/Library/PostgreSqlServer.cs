using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Npgsql;
using Surefoot.Library;
using Surefoot.Library.PostgreSql;
using Surefoot.Tests.Support;

[assembly: AssemblyFixture(typeof(Surefoot.Tests.Library.PostgreSqlServer.Stopping))]

namespace Surefoot.Tests.Library;

/// <summary>A PostgreSQL of the tests' own: in a temporary folder, on a loopback port, gone when they end. "./test" installs the programs.</summary>
internal static class PostgreSqlServer
{
    private static readonly Lazy<Task<Server>> TheServer = new(StartAsync);
    private static int _made;

    /// <summary>A library's empty database; copied from one that was migrated once, which takes a twentieth of the time.</summary>
    public static async Task<string> NewDatabaseAsync()
    {
        var server = await TheServer.Value;
        var name = $"library{Interlocked.Increment(ref _made)}";
        await server.DoAsync($"CREATE DATABASE {name} TEMPLATE empty");
        return server.To(name);
    }

    /// <summary>The name of a database that does not exist yet.</summary>
    public static async Task<string> MissingDatabaseAsync() => (await TheServer.Value).To($"missing{Interlocked.Increment(ref _made)}");

    public static async Task DropAsync(string connection)
    {
        var name = new NpgsqlConnectionStringBuilder(connection).Database;
        NpgsqlConnection.ClearPool(new(connection));
        await (await TheServer.Value).DoAsync($"DROP DATABASE IF EXISTS {name} WITH (FORCE)");
    }

    private static async Task<Server> StartAsync()
    {
        var programs = Environment.GetEnvironmentVariable("SUREFOOT_POSTGRESQL") is { Length: > 0 } set ? set : Newest();
        Assert.True(programs is not null && File.Exists(Path.Combine(programs, "initdb")),
            "These tests need PostgreSQL, which ./test installs; or say where its programs are in SUREFOOT_POSTGRESQL.");
        var folder = Directory.CreateTempSubdirectory("surefoot-postgresql-").FullName;
        // PostgreSQL refuses to run as root; Debian makes a user for it.
        var root = Environment.UserName == "root";
        if (root) await RunAsync("chown", "postgres", folder);
        string[] @as = root ? ["runuser", "-u", "postgres", "--"] : [];
        var data = Path.Combine(folder, "data");
        var port = FreePort();
        await RunAsync([.. @as, Path.Combine(programs!, "initdb"), "-D", data, "-U", "surefoot", "--auth=trust", "--encoding=UTF8", "--locale=C.UTF-8", "--no-sync"]);
        // The data are thrown away, so nothing need reach the disk.
        var said = $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c fsync=off -c full_page_writes=off -c max_connections=200";
        await RunAsync([.. @as, Path.Combine(programs!, "pg_ctl"), "-D", data, "-o", said, "-l", Path.Combine(folder, "log"), "-w", "start"]);
        var server = new Server(folder, port, [.. @as, Path.Combine(programs!, "pg_ctl"), "-D", data, "-m", "immediate", "stop"]);
        await DanceLibrary.OpenAsync(new PostgreSqlStore(server.To("empty") + ";Pooling=false"));
        return server;
    }

    private static string? Newest() => Directory.Exists("/usr/lib/postgresql")
        ? Directory.GetDirectories("/usr/lib/postgresql").OrderBy(d => int.TryParse(Path.GetFileName(d), out var version) ? version : 0).Select(d => Path.Combine(d, "bin")).LastOrDefault()
        : null;

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task RunAsync(params string[] command)
    {
        // To nobody's ears: the server would keep a pipe open that somebody waits for.
        var start = new ProcessStartInfo("sh") { WorkingDirectory = "/" };
        foreach (var word in (string[])["-c", "exec \"$@\" > /dev/null", "sh", .. command]) start.ArgumentList.Add(word);
        using var process = Process.Start(start)!;
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, $"{string.Join(' ', command)} failed.");
    }

    private sealed record Server(string Folder, int Port, string[] Stop)
    {
        public string To(string database) => $"Host=127.0.0.1;Port={Port};Username=surefoot;Database={database};Maximum Pool Size=20";

        public async Task DoAsync(string command)
        {
            await using var connection = new NpgsqlConnection(To("postgres"));
            await connection.OpenAsync();
            await using var asked = new NpgsqlCommand(command, connection);
            await asked.ExecuteNonQueryAsync();
        }
    }

    /// <summary>Stops the server after the last test.</summary>
    public sealed class Stopping : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            if (!TheServer.IsValueCreated) return;
            var server = await TheServer.Value;
            await RunAsync(server.Stop);
            await TestFolder.RemoveAsync(server.Folder);
        }
    }
}
