using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Surefoot.Library.Sqlite.Migrations;

/// <inheritdoc />
public partial class FilmsOfDances : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "films",
            columns: table => new
            {
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Address = table.Column<string>(type: "TEXT", nullable: false),
                FileName = table.Column<string>(type: "TEXT", nullable: false),
                Captions = table.Column<string>(type: "TEXT", nullable: false),
                Changed = table.Column<long>(type: "INTEGER", nullable: false),
                Away = table.Column<long>(type: "INTEGER", nullable: true)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_films", x => x.PageId);
                table.ForeignKey(
                    name: "FK_films_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "films");
    }
}
