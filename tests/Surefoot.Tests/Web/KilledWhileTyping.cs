using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Library;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>The studio is killed again and again while somebody types on: what was kept is there, and of what was typed at most two seconds are not.</summary>
/// <remarks>By itself: it counts seconds, and other tests would take them.</remarks>
[CollectionDefinition(nameof(KilledWhileTyping), DisableParallelization = true)]
[Collection(nameof(KilledWhileTyping))]
public partial class KilledWhileTyping(Studio studio) : IClassFixture<Studio>
{
    /// <summary>How often. A cycle takes two seconds on an idle machine, more than half of it the studio's start.</summary>
    private const int Times = 50;

    /// <summary>What may be missing in the library of what was typed before the studio was killed, in milliseconds since then or, when it was started later, since it answered again.</summary>
    private const int AtMost = 2000;

    /// <summary>Between two numbers that are typed, in milliseconds: some 40 words a minute.</summary>
    private const int Pace = 90;

    [Fact]
    public async Task Nothing_kept_is_lost_and_at_most_two_seconds_of_a_draft()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await opened.WriteOnAsync("> ");
        var clock = Stopwatch.StartNew();
        var typed = new List<long> { 0 };
        var (kept, arrived, started) = (1, 0, 0L);
        for (var time = 0; time < Times; time++)
        {
            // Never at the same moment: while a draft waits, is under way or was just kept, and before the window knows
            // that the studio is back. Each fifth time it is there for so long that something must have arrived.
            var until = clock.ElapsedMilliseconds + (time % 5 == 4 ? AtMost + 200 + (time * 617 % 500) : 100 + (time * 617 % 600));
            while (clock.ElapsedMilliseconds < until)
            {
                await opened.Page.Keyboard.TypeAsync($"{typed.Count} ");
                typed.Add(clock.ElapsedMilliseconds);
                await Task.Delay(Pace);
            }

            if (time % 5 == 2)
            {
                await opened.Page.Keyboard.PressAsync("Control+s");
                await Expect(opened.Standing).ToContainTextAsync($"Kept as version {++kept}");
            }

            var killed = clock.ElapsedMilliseconds;
            await studio.KillAsync();
            var last = await LastAsync(page, kept);
            Assert.True(last >= arrived, $"{arrived} numbers were in the library before the {time + 1}. time, and then {last}.");
            arrived = last;
            var missing = last + 1 < typed.Count ? killed - Math.Max(typed[last + 1], started) : 0;
            Assert.True(missing <= AtMost, $"Killed the {time + 1}. time: {typed.Count - 1 - last} numbers typed during {missing} ms are missing in the library.");
            // She goes on typing while it is gone.
            await opened.Page.Keyboard.TypeAsync($"{typed.Count} ");
            typed.Add(clock.ElapsedMilliseconds);
            await studio.StartAsync();
            // It is there once it answers: a machine that has much else to do takes a while for the first answer.
            using (await studio.Http.GetAsync($"{studio.Address}/keep/{page}")) started = clock.ElapsedMilliseconds;
        }

        // The page was never loaded again, and everything arrives.
        await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
        for (var tries = 0; await LastAsync(page, kept) < typed.Count - 1; tries++)
        {
            Assert.True(tries < 100, "What was typed last has not arrived in ten seconds.");
            await Task.Delay(100);
        }

        await opened.Page.Keyboard.PressAsync("Control+s");
        await Expect(opened.Standing).ToContainTextAsync($"Kept as version {kept + 1}");
        Assert.Equal(typed.Count - 1, await LastAsync(page, kept + 1));
    }

    /// <summary>The last number in the newest of draft and page; every one before it has to be there.</summary>
    private async Task<int> LastAsync(long page, int versions)
    {
        using var library = await studio.LookAsync();
        var history = await library.Pages.HistoryAsync(page);
        Assert.Equal(versions, history.Count);
        var drafts = await library.Drafts.OfAsync(page);
        Assert.True(drafts.Count <= 1, "One window has one draft.");
        var numbers = Numbers(await library.Pages.TextAsync(page) ?? "");
        var kept = numbers.Count;
        if (drafts.Count > 0) numbers = Numbers(drafts[0].Text);
        Assert.True(numbers.Count >= kept, "The draft is older than the page.");
        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers);
        return numbers.Count;
    }

    private static List<int> Numbers(string text) =>
        [.. Whole().Matches(text[(Dances.Plain.Length - 1)..]).Select(m => int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture))];

    // A number stands whole when the blank behind it is there too.
    [GeneratedRegex(@"(\d+) ")]
    private static partial Regex Whole();
}
