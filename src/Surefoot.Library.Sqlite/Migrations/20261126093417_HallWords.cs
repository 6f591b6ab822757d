using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Surefoot.Library.Sqlite.Migrations;

/// <inheritdoc />
public partial class HallWords : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "words",
            columns: table => new
            {
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                Said = table.Column<string>(type: "TEXT", nullable: false),
                SaidKey = table.Column<string>(type: "TEXT", nullable: false),
                Means = table.Column<string>(type: "TEXT", nullable: false),
                Added = table.Column<long>(type: "INTEGER", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_words", x => x.Id);
            });

        migrationBuilder.CreateIndex(
            name: "IX_words_SaidKey",
            table: "words",
            column: "SaidKey",
            unique: true);
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "words");
    }
}
