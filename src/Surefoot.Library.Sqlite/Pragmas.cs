using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Surefoot.Library.Sqlite;

/// <summary>What has to be said to SQLite on every connection.</summary>
internal sealed class Pragmas : DbConnectionInterceptor
{
    // 10 seconds: how long a save waits for another one to finish; one takes some milliseconds. Working value.
    // FULL: what was acknowledged is on the disk, also when the power goes; costs one flush a save.
    public const string Said = "PRAGMA busy_timeout = 10000; PRAGMA synchronous = FULL";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Said;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Said;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
