using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Surefoot.Library.PostgreSql.Migrations;

/// <inheritdoc />
public partial class Initial : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "notebooks",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                Name = table.Column<string>(type: "text", nullable: false),
                NameKey = table.Column<string>(type: "text", nullable: false, collation: "C"),
                Created = table.Column<long>(type: "bigint", nullable: false),
                LeadWord = table.Column<string>(type: "text", nullable: false),
                FollowWord = table.Column<string>(type: "text", nullable: false),
                LeadStature = table.Column<double>(type: "double precision", nullable: true),
                FollowStature = table.Column<double>(type: "double precision", nullable: true),
                Units = table.Column<int>(type: "integer", nullable: false),
                UsualTempo = table.Column<int>(type: "integer", nullable: true),
                Theme = table.Column<string>(type: "text", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_notebooks", x => x.Id);
            });

        migrationBuilder.CreateTable(
            name: "state",
            columns: table => new
            {
                Id = table.Column<int>(type: "integer", nullable: false),
                Revision = table.Column<long>(type: "bigint", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_state", x => x.Id);
            });

        migrationBuilder.CreateTable(
            name: "pages",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                NotebookId = table.Column<long>(type: "bigint", nullable: false),
                Name = table.Column<string>(type: "text", nullable: false),
                NameKey = table.Column<string>(type: "text", nullable: false, collation: "C"),
                IsFigures = table.Column<bool>(type: "boolean", nullable: false),
                Current = table.Column<int>(type: "integer", nullable: false),
                Learned = table.Column<string>(type: "text", nullable: false),
                Created = table.Column<long>(type: "bigint", nullable: false),
                Changed = table.Column<long>(type: "bigint", nullable: false),
                Deleted = table.Column<long>(type: "bigint", nullable: true)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_pages", x => x.Id);
                table.ForeignKey(
                    name: "FK_pages_notebooks_NotebookId",
                    column: x => x.NotebookId,
                    principalTable: "notebooks",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "aliases",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                PageId = table.Column<long>(type: "bigint", nullable: false),
                Name = table.Column<string>(type: "text", nullable: false),
                NameKey = table.Column<string>(type: "text", nullable: false, collation: "C")
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_aliases", x => x.Id);
                table.ForeignKey(
                    name: "FK_aliases_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "attachments",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                PageId = table.Column<long>(type: "bigint", nullable: false),
                Title = table.Column<string>(type: "text", nullable: false),
                Address = table.Column<string>(type: "text", nullable: false),
                FileName = table.Column<string>(type: "text", nullable: false),
                MediaType = table.Column<string>(type: "text", nullable: false),
                Size = table.Column<long>(type: "bigint", nullable: false),
                Added = table.Column<long>(type: "bigint", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_attachments", x => x.Id);
                table.ForeignKey(
                    name: "FK_attachments_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "drafts",
            columns: table => new
            {
                PageId = table.Column<long>(type: "bigint", nullable: false),
                Session = table.Column<string>(type: "text", nullable: false),
                Sequence = table.Column<long>(type: "bigint", nullable: false),
                BasedOn = table.Column<int>(type: "integer", nullable: false),
                Text = table.Column<string>(type: "text", nullable: false),
                Saved = table.Column<long>(type: "bigint", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_drafts", x => new { x.PageId, x.Session });
                table.ForeignKey(
                    name: "FK_drafts_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "shelf",
            columns: table => new
            {
                PageId = table.Column<long>(type: "bigint", nullable: false),
                NotebookId = table.Column<long>(type: "bigint", nullable: false),
                Revision = table.Column<long>(type: "bigint", nullable: false),
                Deleted = table.Column<bool>(type: "boolean", nullable: false),
                IsFigures = table.Column<bool>(type: "boolean", nullable: false),
                Name = table.Column<string>(type: "text", nullable: false),
                Title = table.Column<string>(type: "text", nullable: false),
                Changed = table.Column<long>(type: "bigint", nullable: false),
                ForCouples = table.Column<bool>(type: "boolean", nullable: false),
                Floor = table.Column<int>(type: "integer", nullable: false),
                Walls = table.Column<int>(type: "integer", nullable: true),
                Counts = table.Column<int>(type: "integer", nullable: false),
                MeterBeats = table.Column<int>(type: "integer", nullable: false),
                MeterUnit = table.Column<int>(type: "integer", nullable: false),
                TempoFrom = table.Column<int>(type: "integer", nullable: true),
                TempoTo = table.Column<int>(type: "integer", nullable: true),
                Level = table.Column<string>(type: "text", nullable: false),
                Learned = table.Column<string>(type: "text", nullable: false),
                Errors = table.Column<int>(type: "integer", nullable: false),
                Warnings = table.Column<int>(type: "integer", nullable: false),
                Hints = table.Column<int>(type: "integer", nullable: false),
                Holds = table.Column<string>(type: "text", nullable: false),
                Figures = table.Column<string>(type: "text", nullable: false),
                Aliases = table.Column<string>(type: "text", nullable: false),
                Tags = table.Column<string>(type: "text", nullable: false),
                Songs = table.Column<string>(type: "text", nullable: false),
                Words = table.Column<string>(type: "text", nullable: false),
                Moves = table.Column<string>(type: "text", nullable: false),
                Version = table.Column<int>(type: "integer", nullable: false),
                ReadWith = table.Column<string>(type: "text", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_shelf", x => x.PageId);
                table.ForeignKey(
                    name: "FK_shelf_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "songs",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                PageId = table.Column<long>(type: "bigint", nullable: false),
                Title = table.Column<string>(type: "text", nullable: false),
                Artist = table.Column<string>(type: "text", nullable: false),
                Tempo = table.Column<double>(type: "double precision", nullable: true)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_songs", x => x.Id);
                table.ForeignKey(
                    name: "FK_songs_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "tags",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                PageId = table.Column<long>(type: "bigint", nullable: false),
                Name = table.Column<string>(type: "text", nullable: false),
                NameKey = table.Column<string>(type: "text", nullable: false, collation: "C")
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_tags", x => x.Id);
                table.ForeignKey(
                    name: "FK_tags_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "versions",
            columns: table => new
            {
                Id = table.Column<long>(type: "bigint", nullable: false)
                    .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                PageId = table.Column<long>(type: "bigint", nullable: false),
                Number = table.Column<int>(type: "integer", nullable: false),
                Text = table.Column<string>(type: "text", nullable: false),
                Saved = table.Column<long>(type: "bigint", nullable: false),
                Note = table.Column<string>(type: "text", nullable: false),
                By = table.Column<string>(type: "text", nullable: false),
                Device = table.Column<string>(type: "text", nullable: false),
                BasedOn = table.Column<int>(type: "integer", nullable: false),
                BesideOf = table.Column<int>(type: "integer", nullable: true),
                BroughtBack = table.Column<int>(type: "integer", nullable: true)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_versions", x => x.Id);
                table.ForeignKey(
                    name: "FK_versions_pages_PageId",
                    column: x => x.PageId,
                    principalTable: "pages",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.CreateTable(
            name: "files",
            columns: table => new
            {
                AttachmentId = table.Column<long>(type: "bigint", nullable: false),
                Bytes = table.Column<byte[]>(type: "bytea", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_files", x => x.AttachmentId);
                table.ForeignKey(
                    name: "FK_files_attachments_AttachmentId",
                    column: x => x.AttachmentId,
                    principalTable: "attachments",
                    principalColumn: "Id",
                    onDelete: ReferentialAction.Cascade);
            });

        migrationBuilder.InsertData(
            table: "state",
            columns: new[] { "Id", "Revision" },
            values: new object[] { 1, 0L });

        migrationBuilder.CreateIndex(
            name: "IX_aliases_PageId_NameKey",
            table: "aliases",
            columns: new[] { "PageId", "NameKey" },
            unique: true);

        migrationBuilder.CreateIndex(
            name: "IX_attachments_PageId",
            table: "attachments",
            column: "PageId");

        migrationBuilder.CreateIndex(
            name: "IX_notebooks_NameKey",
            table: "notebooks",
            column: "NameKey",
            unique: true);

        migrationBuilder.CreateIndex(
            name: "IX_pages_NotebookId_NameKey",
            table: "pages",
            columns: new[] { "NotebookId", "NameKey" },
            unique: true,
            filter: "\"Deleted\" IS NULL");

        migrationBuilder.CreateIndex(
            name: "IX_shelf_Revision",
            table: "shelf",
            column: "Revision");

        migrationBuilder.CreateIndex(
            name: "IX_songs_PageId",
            table: "songs",
            column: "PageId");

        migrationBuilder.CreateIndex(
            name: "IX_tags_PageId_NameKey",
            table: "tags",
            columns: new[] { "PageId", "NameKey" },
            unique: true);

        migrationBuilder.CreateIndex(
            name: "IX_versions_PageId_Number",
            table: "versions",
            columns: new[] { "PageId", "Number" },
            unique: true);
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "aliases");

        migrationBuilder.DropTable(
            name: "drafts");

        migrationBuilder.DropTable(
            name: "files");

        migrationBuilder.DropTable(
            name: "shelf");

        migrationBuilder.DropTable(
            name: "songs");

        migrationBuilder.DropTable(
            name: "state");

        migrationBuilder.DropTable(
            name: "tags");

        migrationBuilder.DropTable(
            name: "versions");

        migrationBuilder.DropTable(
            name: "attachments");

        migrationBuilder.DropTable(
            name: "pages");

        migrationBuilder.DropTable(
            name: "notebooks");
    }
}
