using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Surefoot.Library.Sqlite.Migrations;

/// <inheritdoc />
public partial class NotebooksInTheBin : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropIndex(
            name: "IX_notebooks_NameKey",
            table: "notebooks");

        migrationBuilder.AddColumn<long>(
            name: "Deleted",
            table: "notebooks",
            type: "INTEGER",
            nullable: true);

        migrationBuilder.CreateIndex(
            name: "IX_notebooks_NameKey",
            table: "notebooks",
            column: "NameKey",
            unique: true,
            filter: "\"Deleted\" IS NULL");
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropIndex(
            name: "IX_notebooks_NameKey",
            table: "notebooks");

        migrationBuilder.DropColumn(
            name: "Deleted",
            table: "notebooks");

        migrationBuilder.CreateIndex(
            name: "IX_notebooks_NameKey",
            table: "notebooks",
            column: "NameKey",
            unique: true);
    }
}
