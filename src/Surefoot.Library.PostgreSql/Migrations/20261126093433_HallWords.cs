using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Surefoot.Library.PostgreSql.Migrations;

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
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                Said = table.Column<string>(type: "text", nullable: false),
                SaidKey = table.Column<string>(type: "text", nullable: false, collation: "C"),
                Means = table.Column<string>(type: "text", nullable: false),
                Added = table.Column<long>(type: "bigint", nullable: false)
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
