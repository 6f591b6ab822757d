using Microsoft.EntityFrameworkCore.Design;
using Surefoot.Library.Store;

namespace Surefoot.Library.Sqlite;

/// <summary>For the tool that writes migrations; it opens no database.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<LibraryContext>
{
    public LibraryContext CreateDbContext(string[] args) => new SqliteStore("design.db").Context();
}
