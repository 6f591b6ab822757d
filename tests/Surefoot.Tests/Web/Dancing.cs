using Microsoft.Playwright;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>The floor plays, steps, and goes with the text.</summary>
public class Dancing(Studio studio) : IClassFixture<Studio>
{
    private const string Dance = "/dance/split-rail-cha-cha";

    private static Surefoot.Dance.Reading Read() => DemoNotebook.Read(Path.Combine("circle", "split-rail-cha-cha.dance"));

    [Fact]
    public async Task Stepping_tells_each_roles_step_in_turn()
    {
        var score = Read().Score;
        await using var opened = await studio.OpenAsync(Dance);
        await opened.Page.Locator(".floor-picture").FocusAsync();
        foreach (var at in score.Roles.SelectMany(r => r.Steps).Select(s => s.At).Distinct().Order().Take(14))
        {
            var before = await Picture(opened);
            await opened.Page.Keyboard.PressAsync("ArrowRight");
            await Expect(opened.Count).ToHaveTextAsync(at.Name);
            Assert.NotEqual(before, await Picture(opened));
            var told = await opened.Page.Locator(".floor-player dd").AllTextContentsAsync();
            for (var r = 0; r < 2; r++)
            {
                var steps = score.Roles[r].Steps;
                var index = steps.ToList().FindLastIndex(s => s.At <= at);
                Assert.StartsWith(StepWords.Of(steps[index], index == 0 ? score.Roles[r].Start.Weight : steps[index - 1].Weight, spelled: true), told[r]);
            }

            await Expect(opened.Page.Locator(".floor-player p[aria-live]")).ToContainTextAsync($"Count {at.Name}");
        }

        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_dance_found_on_a_count_opens_there()
    {
        var reading = Read();
        var step = reading.Score.Roles[0].Steps.First(s => s.At >= Count.At(15));
        await using var opened = await studio.OpenAsync($"{Dance}?count={step.At.Whole}");
        await Expect(opened.Page.GetByLabel("Count of the repeat")).ToHaveValueAsync($"{step.At.Whole}");
        await Expect(opened.Page.Locator(".floor-player dd").First).ToContainTextAsync(StepWords.Of(step, reading.Score.Roles[0].Steps.Last(s => s.At < step.At).Weight, spelled: true));
        var words = opened.Page.Locator(".danced-now").First;
        await Expect(words).ToContainTextAsync(reading.Page.Source.Words(step.Source));
        await Expect(words).ToBeInViewportAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task It_plays_at_the_tempo_and_stops()
    {
        await using var opened = await studio.OpenAsync(Dance);
        var scrub = opened.Page.GetByLabel("Count of the repeat");
        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        // Before the count is asked for: the answer may take its time.
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var began = await At();
        await opened.Page.WaitForTimeoutAsync(2000);
        var danced = await At() - began;
        // 108 counts a minute, the middle of 100 to 116; a busy machine may lose some time, and gains none.
        Assert.InRange(danced, 0.5 * clock.Elapsed.TotalMinutes * 108, 1.1 * clock.Elapsed.TotalMinutes * 108);
        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        var stood = await At();
        await opened.Page.WaitForTimeoutAsync(300);
        Assert.Equal(stood, await At());
        Assert.Empty(opened.Faults);

        async Task<double> At() => double.Parse(await scrub.InputValueAsync(), System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task A_part_is_danced_over_and_over()
    {
        await using var opened = await studio.OpenAsync(Dance);
        await opened.Page.GetByLabel("Repeat", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Label = "Part C: Her turn" });
        // No count of it is danced yet, and the one before it is not meant.
        await Expect(opened.Count).ToHaveTextAsync("0");
        await Expect(opened.Page.Locator(".floor-player .part")).ToHaveTextAsync("Part C: Her turn");
        await opened.Page.GetByLabel("Speed", new() { Exact = false }).FillAsync("150");
        await opened.Page.Locator(".play").ClickAsync();
        var seen = new HashSet<string>();
        var back = false;
        var last = 0.0;
        for (var i = 0; i < 120 && !back; i++)
        {
            await opened.Page.WaitForTimeoutAsync(60);
            var told = await opened.Page.EvaluateAsync<string[]>("() => ['.controls > input', '.part'].map(what => document.querySelector(`.floor-player ${what}`)).map(place => place.value ?? place.textContent)");
            var at = double.Parse(told[0], System.Globalization.CultureInfo.InvariantCulture);
            Assert.InRange(at, 24, 32);
            back = at < last - 4;
            last = at;
            seen.Add(told[1]);
        }

        Assert.True(back, "it never began again");
        Assert.Equal(["Part C: Her turn"], seen);
        // Each time it begins again it comes from its own last count.
        await opened.Page.WaitForFunctionAsync("() => Number(document.querySelector('.floor-player .controls > input').value) < 25 && document.querySelector('.floor-player .count').textContent === '8'");
    }

    [Fact]
    public async Task Count_and_words_lead_to_each_other()
    {
        // High enough that no line waits to be scrolled to.
        await using var opened = await studio.OpenAsync(Dance, height: 1800);
        await opened.Line("Chassé L R L, release").ClickAsync(new() { Position = new() { X = 90, Y = 8 } });
        await Expect(opened.Page.Locator(".floor-player .part")).ToHaveTextAsync("Part C: Her turn");
        await Expect(opened.Count).ToHaveTextAsync("3");
        await Expect(opened.Page.Locator(".floor-player .hold")).ToHaveTextAsync("one hand hold");
        await opened.Page.Locator(".floor-picture").FocusAsync();
        // On the way a hold has no name: the hands that are joined are told.
        for (var i = 0; i < 3; i++) await opened.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(opened.Page.Locator(".floor-player .hold")).ToHaveTextAsync("lead’s left and follow’s right hand joined");
        await opened.Page.Keyboard.PressAsync("Home");
        await opened.Page.Keyboard.PressAsync("ArrowRight");
        await opened.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("recover R", string.Concat(await opened.Page.Locator(".danced-now").AllTextContentsAsync()));
        // A count that is danced again shows the words and the line that asks for them.
        for (var i = 0; i < 10; i++) await opened.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(opened.Page.Locator(".danced-again")).ToContainTextAsync("Repeat 1-8");
    }

    [Fact]
    public async Task Who_asks_for_less_motion_sees_it_count_by_count()
    {
        await using var opened = await studio.OpenAsync(Dance, lessMotion: true);
        await opened.Page.Locator(".play").ClickAsync();
        // The picture of each frame for two seconds, against the counts that went by.
        var (pictures, counts) = await Frames(opened, 2000);
        Assert.InRange(pictures, 2, counts + 1);
        await using var moving = await studio.OpenAsync(Dance);
        await moving.Page.Locator(".play").ClickAsync();
        (pictures, counts) = await Frames(moving, 2000);
        Assert.True(pictures > counts + 1, $"{pictures} pictures on {counts} counts");
    }

    [Fact]
    public async Task A_new_text_is_danced_without_losing_the_place()
    {
        await using var opened = await studio.OpenAsync(Dance);
        await opened.Page.Locator(".floor-picture").FocusAsync();
        for (var i = 0; i < 3; i++) await opened.Page.Keyboard.PressAsync("ArrowRight");
        var before = await Picture(opened);
        await opened.Page.Locator(".cm-content").FocusAsync();
        await opened.Page.EvaluateAsync("() => document.querySelector('.cm-scroller').scrollTop = 0");
        await opened.Line("Hold:").ClickAsync();
        await opened.Page.Keyboard.PressAsync("End");
        for (var i = 0; i < "two hands".Length; i++) await opened.Page.Keyboard.PressAsync("Backspace");
        await opened.Page.Keyboard.TypeAsync("hands free");
        await opened.Page.Keyboard.PressAsync("Escape");
        await opened.Page.WaitForFunctionAsync("before => document.querySelector('.floor-picture').toDataURL() !== before", before, new() { PollingInterval = 100 });
        await Expect(opened.Count).ToHaveTextAsync("3");
        await Expect(opened.Page.FrameLocator(".sheet-frame").Locator(".opening")).Not.ToContainTextAsync("two hands");
    }

    private static Task<string> Picture(Opened opened) => opened.Page.EvaluateAsync<string>("() => document.querySelector('.floor-picture').toDataURL()");

    private static async Task<(int Pictures, int Counts)> Frames(Opened opened, int milliseconds)
    {
        var seen = await opened.Page.EvaluateAsync<int[]>("""
            (time) => new Promise(done => {
              const canvas = document.querySelector('.floor-picture'), count = document.querySelector('.floor-player .count');
              const pictures = new Set(), counts = new Set(), end = performance.now() + time;
              const look = () => {
                pictures.add(canvas.toDataURL());
                counts.add(count.textContent + document.querySelector('.floor-player .controls > input').getAttribute('aria-valuetext'));
                if (performance.now() < end) requestAnimationFrame(look); else done([pictures.size, counts.size]);
              };
              requestAnimationFrame(look);
            })
            """, milliseconds);
        return (seen[0], seen[1]);
    }
}
