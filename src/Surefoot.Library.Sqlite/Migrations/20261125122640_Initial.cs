using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Surefoot.Library.Sqlite.Migrations;

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
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                Name = table.Column<string>(type: "TEXT", nullable: false),
                NameKey = table.Column<string>(type: "TEXT", nullable: false),
                Created = table.Column<long>(type: "INTEGER", nullable: false),
                LeadWord = table.Column<string>(type: "TEXT", nullable: false),
                FollowWord = table.Column<string>(type: "TEXT", nullable: false),
                LeadStature = table.Column<double>(type: "REAL", nullable: true),
                FollowStature = table.Column<double>(type: "REAL", nullable: true),
                Units = table.Column<int>(type: "INTEGER", nullable: false),
                UsualTempo = table.Column<int>(type: "INTEGER", nullable: true),
                Theme = table.Column<string>(type: "TEXT", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_notebooks", x => x.Id);
            });

        migrationBuilder.CreateTable(
            name: "state",
            columns: table => new
            {
                Id = table.Column<int>(type: "INTEGER", nullable: false),
                Revision = table.Column<long>(type: "INTEGER", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_state", x => x.Id);
            });

        migrationBuilder.CreateTable(
            name: "pages",
            columns: table => new
            {
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                NotebookId = table.Column<long>(type: "INTEGER", nullable: false),
                Name = table.Column<string>(type: "TEXT", nullable: false),
                NameKey = table.Column<string>(type: "TEXT", nullable: false),
                IsFigures = table.Column<bool>(type: "INTEGER", nullable: false),
                Current = table.Column<int>(type: "INTEGER", nullable: false),
                Learned = table.Column<string>(type: "TEXT", nullable: false),
                Created = table.Column<long>(type: "INTEGER", nullable: false),
                Changed = table.Column<long>(type: "INTEGER", nullable: false),
                Deleted = table.Column<long>(type: "INTEGER", nullable: true)
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
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Name = table.Column<string>(type: "TEXT", nullable: false),
                NameKey = table.Column<string>(type: "TEXT", nullable: false)
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
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Title = table.Column<string>(type: "TEXT", nullable: false),
                Address = table.Column<string>(type: "TEXT", nullable: false),
                FileName = table.Column<string>(type: "TEXT", nullable: false),
                MediaType = table.Column<string>(type: "TEXT", nullable: false),
                Size = table.Column<long>(type: "INTEGER", nullable: false),
                Added = table.Column<long>(type: "INTEGER", nullable: false)
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
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Session = table.Column<string>(type: "TEXT", nullable: false),
                Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                BasedOn = table.Column<int>(type: "INTEGER", nullable: false),
                Text = table.Column<string>(type: "TEXT", nullable: false),
                Saved = table.Column<long>(type: "INTEGER", nullable: false)
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
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                NotebookId = table.Column<long>(type: "INTEGER", nullable: false),
                Revision = table.Column<long>(type: "INTEGER", nullable: false),
                Deleted = table.Column<bool>(type: "INTEGER", nullable: false),
                IsFigures = table.Column<bool>(type: "INTEGER", nullable: false),
                Name = table.Column<string>(type: "TEXT", nullable: false),
                Title = table.Column<string>(type: "TEXT", nullable: false),
                Changed = table.Column<long>(type: "INTEGER", nullable: false),
                ForCouples = table.Column<bool>(type: "INTEGER", nullable: false),
                Floor = table.Column<int>(type: "INTEGER", nullable: false),
                Walls = table.Column<int>(type: "INTEGER", nullable: true),
                Counts = table.Column<int>(type: "INTEGER", nullable: false),
                MeterBeats = table.Column<int>(type: "INTEGER", nullable: false),
                MeterUnit = table.Column<int>(type: "INTEGER", nullable: false),
                TempoFrom = table.Column<int>(type: "INTEGER", nullable: true),
                TempoTo = table.Column<int>(type: "INTEGER", nullable: true),
                Level = table.Column<string>(type: "TEXT", nullable: false),
                Learned = table.Column<string>(type: "TEXT", nullable: false),
                Errors = table.Column<int>(type: "INTEGER", nullable: false),
                Warnings = table.Column<int>(type: "INTEGER", nullable: false),
                Hints = table.Column<int>(type: "INTEGER", nullable: false),
                Holds = table.Column<string>(type: "TEXT", nullable: false),
                Figures = table.Column<string>(type: "TEXT", nullable: false),
                Aliases = table.Column<string>(type: "TEXT", nullable: false),
                Tags = table.Column<string>(type: "TEXT", nullable: false),
                Songs = table.Column<string>(type: "TEXT", nullable: false),
                Words = table.Column<string>(type: "TEXT", nullable: false),
                Moves = table.Column<string>(type: "TEXT", nullable: false),
                Version = table.Column<int>(type: "INTEGER", nullable: false),
                ReadWith = table.Column<string>(type: "TEXT", nullable: false)
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
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Title = table.Column<string>(type: "TEXT", nullable: false),
                Artist = table.Column<string>(type: "TEXT", nullable: false),
                Tempo = table.Column<double>(type: "REAL", nullable: true)
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
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Name = table.Column<string>(type: "TEXT", nullable: false),
                NameKey = table.Column<string>(type: "TEXT", nullable: false)
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
                Id = table.Column<long>(type: "INTEGER", nullable: false)
                    .Annotation("Sqlite:Autoincrement", true),
                PageId = table.Column<long>(type: "INTEGER", nullable: false),
                Number = table.Column<int>(type: "INTEGER", nullable: false),
                Text = table.Column<string>(type: "TEXT", nullable: false),
                Saved = table.Column<long>(type: "INTEGER", nullable: false),
                Note = table.Column<string>(type: "TEXT", nullable: false),
                By = table.Column<string>(type: "TEXT", nullable: false),
                Device = table.Column<string>(type: "TEXT", nullable: false),
                BasedOn = table.Column<int>(type: "INTEGER", nullable: false),
                BesideOf = table.Column<int>(type: "INTEGER", nullable: true),
                BroughtBack = table.Column<int>(type: "INTEGER", nullable: true)
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
                AttachmentId = table.Column<long>(type: "INTEGER", nullable: false),
                Bytes = table.Column<byte[]>(type: "BLOB", nullable: false)
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
