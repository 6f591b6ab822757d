using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Surefoot.Library.PostgreSql.Migrations;

/// <inheritdoc />
public partial class TermsOfLessons : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "terms",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                NotebookId = table.Column<long>(type: "bigint", nullable: false),
                Title = table.Column<string>(type: "text", nullable: false),
                Text = table.Column<string>(type: "text", nullable: false),
                Version = table.Column<int>(type: "integer", nullable: false),
                Changed = table.Column<long>(type: "bigint", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_terms", x => x.Id);
                table.ForeignKey(
                    name: "FK_terms_notebooks_NotebookId",
                    column: x => x.NotebookId,
                    principalTable: "notebooks",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateIndex(
            name: "IX_terms_NotebookId",
            table: "terms",
            column: "NotebookId");
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "terms");
    }
}
