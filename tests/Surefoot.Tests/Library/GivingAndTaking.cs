using System.IO.Compression;
using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Library;

/// <summary>Pages and whole libraries in and out, from one database into the other.</summary>
public class GivingAndTaking
{
    public static TheoryData<Place, Place> Pairs => new()
    {
        { Place.Sqlite, Place.PostgreSql },
        { Place.PostgreSql, Place.Sqlite },
    };

    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Pairs))]
    public async Task Nothing_is_lost_on_the_way_through_plain_files(Place from, Place to)
    {
        await using var home = await Home.OpenAsync(from);
        await FullAsync(home);
        var before = await Dump.OfAsync(home.Store);
        Assert.Null(await home.Library.Exchange.GiveFolderAsync(home.At("out")));
        await using (var zip = File.Create(home.At("out.zip"))) await home.Library.Exchange.GiveZipAsync(zip);

        await using var folder = await Home.OpenAsync(to, empty: true);
        var report = await folder.Library.Exchange.TakeFolderAsync(home.At("out"), folder.Notebook);
        Assert.Null(report.Stopped);
        Assert.All(report.Lines, l => Assert.Equal(Taken.New, l.Taken));
        Assert.Equal(0, report.OtherFiles);
        Assert.Equal(before, await Dump.OfAsync(folder.Store));

        await using var packed = await Home.OpenAsync(from, empty: true);
        await using (var zip = File.OpenRead(home.At("out.zip"))) report = await packed.Library.Exchange.TakeZipAsync(zip, packed.Notebook);
        Assert.Null(report.Stopped);
        Assert.Equal(before, await Dump.OfAsync(packed.Store));

        // Taken in a second time, all of it is there already.
        report = await folder.Library.Exchange.TakeFolderAsync(home.At("out"), folder.Notebook);
        Assert.All(report.Lines, l => Assert.Equal(Taken.AlreadyThere, l.Taken));
        Assert.Equal(before, await Dump.OfAsync(folder.Store));
    }

    [Fact]
    public async Task An_export_is_a_notebook_that_can_be_written_on()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        await FullAsync(home);
        Assert.Null(await home.Library.Exchange.GiveFolderAsync(home.At("out")));
        Assert.NotNull(await home.Library.Exchange.GiveFolderAsync(home.At("out")));
        var page = home.At("out/the-hall/circle/lamp-black.dance");
        Assert.Equal(await home.Library.Pages.TextAsync((await home.Library.Pages.NamedAsync(home.Notebook, "circle/lamp-black"))!.Id), await File.ReadAllTextAsync(page));
        await File.AppendAllTextAsync(page, "> written at the kitchen table\n");
        Directory.CreateDirectory(home.At("out/the-hall/line"));
        await File.WriteAllTextAsync(home.At("out/the-hall/line/added.dance"), "Added\nKind: line\n\n1-4  Vine right, touch L\n");
        await using var other = await Home.OpenAsync(Place.Sqlite);
        var report = await other.Library.Exchange.TakeFolderAsync(home.At("out"), other.Notebook);
        Assert.All(report.Lines, l => Assert.Equal(Taken.New, l.Taken));
        var taken = await other.Library.Pages.NamedAsync(other.Notebook, "circle/lamp-black");
        Assert.EndsWith("kitchen table\n", await other.Library.Pages.TextAsync(taken!.Id));
        Assert.Equal(5, (await other.Library.Pages.HistoryAsync(taken.Id)).Count);
        Assert.NotNull(await other.Library.Pages.NamedAsync(other.Notebook, "line/added"));
        // And into the library it came from: a new version, no other page.
        report = await home.Library.Exchange.TakeFolderAsync(home.At("out"), home.Notebook);
        Assert.Equal((1, 1), (report.Count(Taken.Changed), report.Count(Taken.New)));
        Assert.Equal(0, report.Count(Taken.NotRead));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_folder_of_pages_is_taken_as_it_is_written(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var folder = home.At("pages");
        Directory.CreateDirectory(Path.Combine(folder, "circle"));
        File.Copy(Root.At("demo", "dances", "figures.dance"), Path.Combine(folder, "figures.dance"));
        File.Copy(Root.At("demo", "dances", "circle", "five-barns.dance"), Path.Combine(folder, "circle", "five-barns.dance"));
        const string wide = "Ünïcode Stroll\nKind: line\n\n1-4  Vine right, ½ turn\n";
        await File.WriteAllTextAsync(Path.Combine(folder, "wide.dance"), wide, new UnicodeEncoding(true, true));
        await File.WriteAllBytesAsync(Path.Combine(folder, "old.dance"), [.. "Half "u8, 0xBD, .. " turn"u8]);
        await File.WriteAllBytesAsync(Path.Combine(folder, "picture.dance"), [0xFF, 0xD8, 0xFF, 0xE0]);
        await File.WriteAllTextAsync(Path.Combine(folder, "huge.dance"), new string('x', 3 << 20));
        await File.WriteAllTextAsync(Path.Combine(folder, "shopping.txt"), "milk");
        await File.WriteAllTextAsync(Path.Combine(folder, ".hidden.dance"), "no");
        File.CreateSymbolicLink(Path.Combine(folder, "link.dance"), "/etc/hostname");
        Directory.CreateSymbolicLink(Path.Combine(folder, "round"), folder);

        var report = await home.Library.Exchange.TakeFolderAsync(folder, home.Notebook);
        Assert.Equal(
            ["circle/five-barns.dance New", "figures.dance New", "huge.dance NotRead", "link.dance NotRead", "old.dance NotRead", "picture.dance NotRead", "round NotRead", "wide.dance New"],
            report.Lines.Select(l => $"{l.File} {l.Taken}"));
        Assert.Contains("½", report.Lines[4].Says);
        Assert.All(report.Lines.Where(l => l.Taken == Taken.NotRead), l => Assert.NotEmpty(l.Says));
        Assert.Equal(1, report.OtherFiles);
        Assert.Equal(wide, await home.Library.Pages.TextAsync(report.Lines[^1].Page!.Value));
        // Read with the hall's figures, the dance has nothing wrong.
        Assert.Equal((0, 80), ((await home.Library.Catalogue.ListAsync(new())).Dances.Single(d => d.Title == "Five Barns").Errors, (await home.Library.Catalogue.ListAsync(new())).Dances.Single(d => d.Title == "Five Barns").Counts));

        await File.WriteAllTextAsync(Path.Combine(folder, "wide.dance"), wide + "> more\n");
        report = await home.Library.Exchange.TakeFolderAsync(folder, home.Notebook);
        Assert.Equal((2, 1, 0), (report.Count(Taken.AlreadyThere), report.Count(Taken.Changed), report.Count(Taken.New)));
        // The older copy again does not turn the page back.
        await File.WriteAllTextAsync(Path.Combine(folder, "wide.dance"), wide);
        report = await home.Library.Exchange.TakeFolderAsync(folder, home.Notebook);
        Assert.Equal(3, report.Count(Taken.AlreadyThere));
        Assert.Equal(wide + "> more\n", await home.Library.Pages.TextAsync(report.Lines[^1].Page!.Value));
        Assert.NotNull((await home.Library.Exchange.TakeFolderAsync(home.At("nowhere"), home.Notebook)).Stopped);
        Assert.NotNull((await home.Library.Exchange.TakeFolderAsync(folder, home.Notebook + 99)).Stopped);
    }

    [Fact]
    public async Task A_zip_that_means_harm_does_none()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        var page = "Good\nKind: line\n\n1-4  Vine right, touch L\n"u8.ToArray();
        var path = home.At("nasty.zip");
        await using (var file = File.Create(path))
        {
            using var zip = new ZipArchive(file, ZipArchiveMode.Create);
            foreach (var name in (string[])["good.dance", "../../escape.dance", "..\\escape2.dance", "/rooted.dance", "C:/drive.dance", "a/./b.dance", "bell\a.dance", new string('n', 700) + ".dance", "con/nul.dance", "good.dance"])
            {
                await using var stream = await zip.CreateEntry(name).OpenAsync();
                await stream.WriteAsync(page);
            }

            var link = zip.CreateEntry("link.dance");
            link.ExternalAttributes = 0xA1FF << 16;
            await using (var stream = await link.OpenAsync()) await stream.WriteAsync("/etc/passwd"u8.ToArray());
            await zip.CreateEntry("__MACOSX/good.dance").OpenAsync().ContinueWith(t => t.Result.Dispose(), TaskScheduler.Default);
        }

        ImportReport report;
        await using (var file = File.OpenRead(path)) report = await home.Library.Exchange.TakeZipAsync(file, home.Notebook);
        Assert.Null(report.Stopped);
        Assert.Equal(["con/nul.dance", "good.dance"], report.Lines.Where(l => l.Taken == Taken.New).Select(l => l.File));
        Assert.Equal(9, report.Count(Taken.NotRead));
        Assert.All(report.Lines, l => Assert.True(l.File.Length < 210 && !l.File.Any(char.IsControl)));
        Assert.NotNull(await home.Library.Pages.NamedAsync(home.Notebook, "-con/-nul"));
        // Given out again, every file lies inside the folder.
        await home.Library.Exchange.GiveFolderAsync(home.At("out"));
        Assert.Equal([home.At("nasty.zip")], Directory.GetFiles(home.Folder).Where(f => !f.Contains("dances.db", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Zips_that_burst_and_files_that_are_none_are_told_in_a_sentence()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        var blank = new byte[900_000];
        Array.Fill(blank, (byte)' ');
        var bomb = Zip([.. Enumerable.Range(0, 60).Select(n => ($"{n}.dance", blank))]);
        var report = await home.Library.Exchange.TakeZipAsync(new MemoryStream(bomb), home.Notebook);
        Assert.Contains("unpacks to far more", report.Stopped);
        Assert.Empty((await home.Library.Catalogue.ListAsync(new())).Dances);

        var many = Zip([.. Enumerable.Range(0, 30).Select(n => ($"{n}.dance", "A\n"u8.ToArray()))]);
        Assert.Contains("more than 20 files", (await home.Library.Exchange.TakeZipAsync(new MemoryStream(many), home.Notebook, new() { Files = 20 })).Stopped);
        Assert.Contains("more in it", (await home.Library.Exchange.TakeZipAsync(new MemoryStream(bomb), home.Notebook, new() { TotalBytes = 1 << 20 })).Stopped);
        Assert.Contains("not a zip", (await home.Library.Exchange.TakeZipAsync(new MemoryStream("PK\u0003\u0004 no"u8.ToArray()), home.Notebook)).Stopped);
        Assert.Contains("not a zip", (await home.Library.Exchange.TakeZipAsync(new MemoryStream(many[..^40]), home.Notebook)).Stopped);
        // Bytes turned over inside: what can be read is taken, what cannot is told.
        for (var seed = 1; seed <= 40; seed++)
        {
            var bytes = many.ToArray();
            for (var n = 0; n < 5; n++) bytes[(seed * 7919 + (n * 104729)) % bytes.Length] ^= (byte)(seed * 31 + n + 1);
            report = await home.Library.Exchange.TakeZipAsync(new MemoryStream(bytes), home.Notebook);
            Assert.True(report.Stopped is not null || report.Lines.Count + report.OtherFiles > 0);
        }
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task An_export_that_somebody_wrote_nonsense_into_breaks_nothing(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await FullAsync(home);
        await home.Library.Exchange.GiveFolderAsync(home.At("out"));
        var told = home.At("out/the-hall/circle/lamp-black.kept/page.json");
        var good = await File.ReadAllTextAsync(told);
        foreach (var (from, to) in ((string, string)[])[
            ("\"aliases\": [", "\"aliases\": [null, \"\", \"a\\u0000b\", "),
            ("\"versions\": [", "\"versions\": [null, "),
            ("\"number\": 1,", "\"number\": 2147483647,"),
            ("\"number\": 1,", "\"number\": 2,"),
            ("\"session\": \"hall\"", "\"session\": \" kitchen  \\u0022table\\u0022\""),
            ("\"1.txt\"", "\"../../../../../../etc/passwd\""),
            ("https://films", "javascript:films"),
            ("\"current\": 4", "\"current\": -4"),
            ("\"tempo\": 112.25", "\"tempo\": -1e300"),
            ("\"saved\"", "\"sawed\""),
            ("{", "["),
        ])
        {
            var bad = good.Replace(from, to);
            Assert.NotEqual(good, bad);
            await File.WriteAllTextAsync(told, bad);
            await using var other = await Home.OpenAsync(place, empty: true);
            var report = await other.Library.Exchange.TakeFolderAsync(home.At("out"), 0);
            Assert.True(report.Stopped is null, to);
            // The page itself is there whatever was said beside it.
            var notebook = (await other.Library.Notebooks.AllAsync()).Single(n => n.Name == "The hall").Id;
            var page = await other.Library.Pages.NamedAsync(notebook, "circle/lamp-black");
            Assert.True(page is not null, to);
            Assert.StartsWith("Lamp Black", await other.Library.Pages.TextAsync(page.Id));
            Assert.IsType<Kept>(await other.Library.Pages.KeepAsync(page.Id, page.Current, "On\n"));
            Assert.All((await other.Library.Details.OfAsync(page.Id))!.Attachments, a => Assert.DoesNotContain("javascript", a.Address));
        }
    }

    internal static byte[] Zip(IEnumerable<(string Name, byte[] Bytes)> files)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in files)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }

    /// <summary>A library in which everything that can be kept is.</summary>
    internal static async Task FullAsync(Home home)
    {
        var library = home.Library;
        await library.Notebooks.SetAsync(home.Notebook, new() { LeadWord = "Gent", FollowWord = "Lady", LeadStature = 1.82, UsualTempo = 110, Units = Units.FeetAndInches, DecimalMark = DecimalMark.Comma, Paper = Paper.Letter, Theme = "dusk" });
        home.Clock.Now += TimeSpan.FromMilliseconds(1234);
        await home.AddAsync(await File.ReadAllTextAsync(Root.At("demo", "dances", "figures.dance")), "figures");
        await home.AddAsync(await File.ReadAllTextAsync(Root.At("demo", "dances", "circle", "weathervane.dance")), "circle/weathervane");
        var page = await home.AddAsync("Lamp Black\nKind: line\n\n1-4  Vine right, touch L\n", "circle/lamp-black");
        home.Clock.Now += TimeSpan.FromHours(1);
        await library.Pages.KeepAsync(page, 1, "Lamp Black\r\nKind: line\r\n\r\n1-4  Vine right, scuff L\r\n", new("Ada", "tablet", "scuff\nnot \"touch\" ½ é 𝄞"));
        await library.Pages.KeepAsync(page, 1, "Lamp Black, Ben's\n\n1-4  Vine left, touch R\n", new("Ben"));
        home.Clock.Now += TimeSpan.FromHours(1);
        await library.Pages.BringBackAsync(page, 1, new("Ada"));
        await library.Drafts.SaveAsync(page, "kitchen \"table\"", 7, 4, "half a thou");
        await library.Drafts.SaveAsync(page, "hall", 2, 3, "");
        await library.Details.SetLearnedAsync(page, "from Odd,\nat the river");
        await library.Details.AddAliasAsync(page, "Black Lamp");
        await library.Details.AddAliasAsync(page, "Ångström’s");
        await library.Details.AddTagAsync(page, "Fridays");
        await library.Details.AddSongAsync(page, "Tin Roof", "The Invented Band", 112.25);
        await library.Details.AddSongAsync(page, "Nutmeg Moon");
        await library.Details.AddFilmAsync(page, "https://films.example/lamp?x=1&y=ü", "slow");
        await library.Details.AddFileAsync(page, "steps.pdf", "application/pdf", [.. Enumerable.Range(0, 256).Select(n => (byte)n)], "sheet");
        await library.Details.AddFileAsync(page, "steps.pdf", "application/pdf", [], "empty");
        await library.Films.KeepCaptionsAsync(page, "run-through.vtt", "WEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\nvine right ½ é 𝄞\r\n");
        await library.Films.KeepAddressAsync(page, "https://films.example/lamp.mp4");
        await library.Films.KeepAddressAsync((await library.Pages.NamedAsync(home.Notebook, "circle/weathervane"))!.Id, "https://films.example/vane.mp4");
        var winter = (await library.Terms.AddAsync(home.Notebook, "Winter ½", "Winter\nFrom: 12 January 2027\n")).Term!;
        await library.Terms.KeepAsync(winter.Id, 1, "Winter ½", "Winter\nFrom: 19 January 2027\n");
        await library.Terms.AddAsync(home.Notebook, "Winter ½", "Another of that name\n");
        foreach (var name in (string[])["gone", "gone"])
        {
            home.Clock.Now += TimeSpan.FromSeconds(1);
            await library.Bin.PutAsync(await home.AddAsync($"Gone\n\n> {home.Clock.Now:O}\n", name));
        }

        await library.Pages.AddAsync((await library.Notebooks.AddAsync("Élan / ../ Notebook?")).Notebook!.Id, "");
        await library.Notebooks.AddAsync("elan notebook");
        await library.Words.KeepAsync("frobble the gate", "hitch R");
        await library.Words.KeepAsync("Überschlag", "no step");
        await library.Notebooks.AddAsync("Empty one");
    }
}
