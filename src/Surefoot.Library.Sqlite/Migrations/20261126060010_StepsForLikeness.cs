using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Surefoot.Library.Sqlite.Migrations;

/// <inheritdoc />
public partial class StepsForLikeness : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.AddColumn<byte[]>(
            name: "Steps",
            table: "shelf",
            type: "BLOB",
            nullable: false,
            defaultValue: Array.Empty<byte>());
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropColumn(
            name: "Steps",
            table: "shelf");
    }
}
