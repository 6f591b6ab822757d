using System.Diagnostics;
using Surefoot.Library;

namespace Surefoot.Tests.Library;

/// <summary>A program that is killed while it saves: everything it was told is kept, is.</summary>
public class Killed
{
    public static TheoryData<Place, string, int> Ways => new()
    {
        { Place.Sqlite, "drafts", 40 },
        { Place.Sqlite, "versions", 15 },
        { Place.PostgreSql, "drafts", 40 },
        { Place.PostgreSql, "versions", 15 },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task What_was_acknowledged_is_there(Place place, string what, int after)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync("Kept\n\n1-4  Vine right, touch L\n");
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "Surefoot.Tests.Child")) { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var word in (string[])[place == Place.Sqlite ? "sqlite" : "postgresql", home.Where, $"{page}", what]) start.ArgumentList.Add(word);
        using var child = Process.Start(start)!;
        var acknowledged = 0;
        while (acknowledged < after && await child.StandardOutput.ReadLineAsync() is { } line) acknowledged = int.Parse(line);
        Assert.Equal(after, acknowledged);
        // No time to tidy up: on this system Kill is SIGKILL.
        child.Kill();
        await child.WaitForExitAsync();
        while (await child.StandardOutput.ReadLineAsync() is { } line) acknowledged = int.Parse(line);

        var again = await home.AgainAsync();
        if (what == "drafts")
        {
            var draft = Assert.Single(await again.Drafts.OfAsync(page));
            // One more may have been on its way; never fewer, and never half of one.
            Assert.InRange(draft.Sequence, acknowledged, acknowledged + 1);
            Assert.Equal(Text(draft.Sequence), draft.Text);
            Assert.Null(await again.Drafts.SaveAsync(page, "child", draft.Sequence + 1, 1, "goes on"));
        }
        else
        {
            var history = await again.Pages.HistoryAsync(page);
            Assert.InRange(history.Count, acknowledged + 1, acknowledged + 2);
            foreach (var version in history.Where(v => v.Number > 1)) Assert.Equal(Text(version.Number - 1), await again.Pages.TextAsync(page, version.Number));
            Assert.Equal(new Kept(history.Count + 1), await again.Pages.KeepAsync(page, history.Count, "goes on"));
        }
    }

    private static string Text(long number) => $"Saved {number}\n" + string.Concat(Enumerable.Repeat($"1-4  Vine right, touch L, {number}\n", 200));
}
