using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Surefoot.Library.Store;

/// <summary>The tables. How a database is reached is the provider's project's affair.</summary>
internal sealed class LibraryContext(DbContextOptions<LibraryContext> options) : DbContext(options)
{
    public DbSet<StateRow> State => Set<StateRow>();

    public DbSet<WordRow> Words => Set<WordRow>();

    public DbSet<NotebookRow> Notebooks => Set<NotebookRow>();

    public DbSet<PageRow> Pages => Set<PageRow>();

    public DbSet<VersionRow> Versions => Set<VersionRow>();

    public DbSet<DraftRow> Drafts => Set<DraftRow>();

    public DbSet<AliasRow> Aliases => Set<AliasRow>();

    public DbSet<TagRow> Tags => Set<TagRow>();

    public DbSet<SongRow> Songs => Set<SongRow>();

    public DbSet<AttachmentRow> Attachments => Set<AttachmentRow>();

    public DbSet<FileRow> Files => Set<FileRow>();

    public DbSet<ShelfRow> Shelf => Set<ShelfRow>();

    public DbSet<TermRow> Terms => Set<TermRow>();

    public DbSet<FilmRow> Films => Set<FilmRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<Milliseconds>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<StateRow>(state =>
        {
            state.ToTable("state").HasKey(s => s.Id);
            state.Property(s => s.Id).ValueGeneratedNever();
            state.HasData(new StateRow { Id = 1 });
        });
        modelBuilder.Entity<WordRow>(word =>
        {
            word.ToTable("words").HasKey(w => w.Id);
            Key(word.Property(w => w.SaidKey));
            word.HasIndex(w => w.SaidKey).IsUnique();
        });
        modelBuilder.Entity<NotebookRow>(notebook =>
        {
            notebook.ToTable("notebooks").HasKey(n => n.Id);
            Key(notebook.Property(n => n.NameKey));
            // A name is free again once its notebook is in the bin.
            notebook.HasIndex(n => n.NameKey).IsUnique().HasFilter("\"Deleted\" IS NULL");
        });
        modelBuilder.Entity<PageRow>(page =>
        {
            page.ToTable("pages").HasKey(p => p.Id);
            page.HasOne<NotebookRow>().WithMany().HasForeignKey(p => p.NotebookId).OnDelete(DeleteBehavior.Cascade);
            Key(page.Property(p => p.NameKey));
            // A name is free again once its page is in the bin.
            page.HasIndex(p => new { p.NotebookId, p.NameKey }).IsUnique().HasFilter("\"Deleted\" IS NULL");
        });
        modelBuilder.Entity<VersionRow>(version =>
        {
            OfPage(version, v => v.PageId, "versions").HasKey(v => v.Id);
            version.HasIndex(v => new { v.PageId, v.Number }).IsUnique();
        });
        modelBuilder.Entity<DraftRow>(draft => OfPage(draft, d => d.PageId, "drafts").HasKey(d => new { d.PageId, d.Session }));
        modelBuilder.Entity<AliasRow>(alias =>
        {
            OfPage(alias, a => a.PageId, "aliases").HasKey(a => a.Id);
            Key(alias.Property(a => a.NameKey));
            alias.HasIndex(a => new { a.PageId, a.NameKey }).IsUnique();
        });
        modelBuilder.Entity<TagRow>(tag =>
        {
            OfPage(tag, t => t.PageId, "tags").HasKey(t => t.Id);
            Key(tag.Property(t => t.NameKey));
            tag.HasIndex(t => new { t.PageId, t.NameKey }).IsUnique();
        });
        modelBuilder.Entity<SongRow>(song => OfPage(song, s => s.PageId, "songs").HasKey(s => s.Id));
        modelBuilder.Entity<AttachmentRow>(attachment => OfPage(attachment, a => a.PageId, "attachments").HasKey(a => a.Id));
        modelBuilder.Entity<FileRow>(file =>
        {
            file.ToTable("files").HasKey(f => f.AttachmentId);
            file.HasOne<AttachmentRow>().WithOne().HasForeignKey<FileRow>(f => f.AttachmentId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<ShelfRow>(shelf =>
        {
            OfPage(shelf, s => s.PageId, "shelf", one: true).HasKey(s => s.PageId);
            shelf.Property(s => s.PageId).ValueGeneratedNever();
            shelf.HasIndex(s => s.Revision);
        });
        modelBuilder.Entity<FilmRow>(film =>
        {
            OfPage(film, f => f.PageId, "films", one: true).HasKey(f => f.PageId);
            film.Property(f => f.PageId).ValueGeneratedNever();
        });
        modelBuilder.Entity<TermRow>(term =>
        {
            term.ToTable("terms").HasKey(t => t.Id);
            term.HasOne<NotebookRow>().WithMany().HasForeignKey(t => t.NotebookId).OnDelete(DeleteBehavior.Cascade);
        });
    }

    private static EntityTypeBuilder<T> OfPage<T>(EntityTypeBuilder<T> row, System.Linq.Expressions.Expression<Func<T, object?>> page, string table, bool one = false)
        where T : class
    {
        row.ToTable(table);
        if (one) row.HasOne<PageRow>().WithOne().HasForeignKey<T>(page).OnDelete(DeleteBehavior.Cascade);
        else row.HasOne<PageRow>().WithMany().HasForeignKey(page).OnDelete(DeleteBehavior.Cascade);
        return row;
    }

    // Compared letter by letter on both databases: what is alike for people was made alike before (see Folding).
    private void Key(PropertyBuilder<string> name)
    {
        if (Database.ProviderName?.Contains("Npgsql", StringComparison.Ordinal) == true) name.UseCollation("C");
    }
}
