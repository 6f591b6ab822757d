using Microsoft.EntityFrameworkCore.Design;
using Surefoot.Library.Store;

namespace Surefoot.Library.PostgreSql;

/// <summary>For the tool that writes migrations; it opens no database.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<LibraryContext>
{
    public LibraryContext CreateDbContext(string[] args) => new PostgreSqlStore("Host=localhost;Database=design").Context();
}
