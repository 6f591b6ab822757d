using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Surefoot.Library.PostgreSql.Migrations;

/// <inheritdoc />
public partial class StepsForLikeness : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.AddColumn<byte[]>(
            name: "Steps",
            table: "shelf",
            type: "bytea",
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
