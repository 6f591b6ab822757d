using System.Text;
using Surefoot.Library;

namespace Surefoot.Tests.Library;

/// <summary>Copies of the whole library, made and brought back while others write.</summary>
public class CopiesBack
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_copy_made_while_others_write_brings_back_that_moment(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await GivingAndTaking.FullAsync(home);
        var before = await Dump.OfAsync(home.Store);
        var other = await home.AgainAsync();
        var copy = home.At("copies/monday");
        Assert.Null(await home.Library.Copies.MakeAsync(copy));
        Assert.False(File.Exists(copy + ".new"));
        // Everything that may happen since: a page more, one changed, one gone for good.
        var page = await home.AddAsync("Later\nKind: line\n\n1-4  Vine right, touch L\n");
        Assert.Single(await other.Catalogue.SearchAsync("later"), f => f.Dance.Title == "Later");
        var lamp = (await home.Library.Pages.NamedAsync(home.Notebook, "circle/lamp-black"))!;
        await home.Library.Pages.KeepAsync(lamp.Id, lamp.Current, "Lamp Red\n");
        await home.Library.Bin.EmptyAsync(home.Notebook, home.Clock.Now + TimeSpan.FromDays(1));

        Assert.Null(await home.Library.Copies.BringBackAsync(copy));
        Assert.Equal(before, await Dump.OfAsync(home.Store));
        // Everybody who has it open sees the library as it is now, and writes in it.
        foreach (var library in (DanceLibrary[])[home.Library, other])
        {
            Assert.DoesNotContain((await library.Catalogue.ListAsync(new())).Dances, d => d.Title is "Later" or "Lamp Red");
            Assert.Contains((await library.Catalogue.ListAsync(new())).Dances, d => d.Title == "Lamp Black");
        }

        var notebook = (await other.Notebooks.AllAsync()).Single(n => n.Name == "The hall").Id;
        var again = (await other.Pages.NamedAsync(notebook, "circle/lamp-black"))!;
        Assert.Equal(new Kept(5), await other.Pages.KeepAsync(again.Id, again.Current, "Lamp Green\n"));
        Assert.Contains((await home.Library.Catalogue.ListAsync(new())).Dances, d => d.Title == "Lamp Green");
        Assert.NotEqual(page, again.Id);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Copies_are_whole_while_somebody_saves(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync("Busy\n");
        using var enough = new CancellationTokenSource();
        var saved = 1;
        var saving = Task.Run(async () =>
        {
            while (!enough.IsCancellationRequested)
            {
                Assert.Equal(new Kept(saved + 1), await home.Library.Pages.KeepAsync(page, saved, $"Busy\n> {saved}\n"));
                Interlocked.Increment(ref saved);
            }
        });
        for (var n = 0; n < 5; n++)
        {
            // As many saves as it takes until one has come in between, however slow the machine is.
            var before = Volatile.Read(ref saved);
            while (Volatile.Read(ref saved) == before && !saving.IsCompleted) await Task.Delay(5);
            Assert.Null(await home.Library.Copies.MakeAsync(home.At($"copy{n}")));
        }

        await enough.CancelAsync();
        await saving;
        Assert.True(saved > 5);
        for (var n = 0; n < 5; n++)
        {
            Assert.Null(await home.Library.Copies.BringBackAsync(home.At($"copy{n}")));
            var back = (await home.Library.Pages.NamedAsync((await home.Library.Notebooks.AllAsync())[0].Id, "busy"))!;
            Assert.Equal(Enumerable.Range(1, back.Current).Reverse(), (await home.Library.Pages.HistoryAsync(back.Id)).Select(v => v.Number));
        }
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_is_no_copy_replaces_nothing(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await GivingAndTaking.FullAsync(home);
        var copy = home.At("copy");
        Assert.Null(await home.Library.Copies.MakeAsync(copy));
        var zip = home.At("export.zip");
        await using (var stream = File.Create(zip)) await home.Library.Exchange.GiveZipAsync(stream);
        var before = await Dump.OfAsync(home.Store);

        var bytes = await File.ReadAllBytesAsync(copy);
        await RefusedAsync("torn", bytes[..(bytes.Length / 2)]);
        await RefusedAsync("empty", []);
        await RefusedAsync("letter", Encoding.UTF8.GetBytes("Dear Ada"));
        await RefusedAsync("pages.zip", GivingAndTaking.Zip([("a.dance", "A\n"u8.ToArray())]));
        var packed = await File.ReadAllBytesAsync(zip);
        await RefusedAsync("torn.zip", packed[..(packed.Length / 2)]);
        if (place == Place.Sqlite)
        {
            // A page of the file overwritten in the middle.
            var damaged = bytes.ToArray();
            Array.Fill(damaged, (byte)0xAA, damaged.Length / 2, 4096);
            await RefusedAsync("damaged", damaged);
        }
        else
        {
            await using var sqlite = await Home.OpenAsync(Place.Sqlite);
            Assert.Null(await sqlite.Library.Copies.MakeAsync(home.At("other")));
            Assert.Contains("export", (await home.Library.Copies.BringBackAsync(home.At("other")))!.Why);
        }

        Assert.NotNull(await home.Library.Copies.BringBackAsync(home.At("nowhere")));
        Assert.NotNull(await home.Library.Copies.MakeAsync(home.Folder));
        Assert.False(File.Exists(home.Folder + ".new"));
        Assert.Equal(before, await Dump.OfAsync(home.Store));
        // An export brings back either kind of store.
        await home.AddAsync("Later\n");
        Assert.Null(await home.Library.Copies.BringBackAsync(zip));
        Assert.Equal(before, await Dump.OfAsync(home.Store));

        async Task RefusedAsync(string name, byte[] wrong)
        {
            await File.WriteAllBytesAsync(home.At(name), wrong);
            Assert.NotNull(await home.Library.Copies.BringBackAsync(home.At(name)));
        }
    }
}
