using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Two figures dance what was written: as bodies can, in time, and seen from every side.</summary>
public partial class Watched(Studio studio) : IClassFixture<Studio>
{
    // Every joint through a repeat, sixteen times a count, as the picture has them.
    private const string Laws = """
        () => {
          const viewer = window.surefootViewer, motion = viewer.motion;
          const seen = { slid: 0, again: 0, apart: 0, knee: 0, elbow: 0, over: 0, jerk: 0, low: 1, leap: 0, through: 0 };
          const minus = (a, b) => [a.x - b.x, a.y - b.y, a.z - b.z], long = v => Math.hypot(...v);
          const bent = (a, m, b) => { const u = minus(m, a), v = minus(b, m); return Math.acos(Math.min(1, Math.max(-1, (u[0] * v[0] + u[1] * v[1] + u[2] * v[2]) / (long(u) * long(v))))) * 180 / Math.PI; };
          // In a closed hold his right hand lies on her back and her left on his arm, and on the way in and out they glide there.
          const lies = (h, c) => [c - 1, c, c + 1].some(t => /closed|promenade/.test(motion.holdAt(Math.max(0, t)))) && h.lead === "right" && h.follow === "left";
          const letsGo = (h, c) => motion.file.hands.some(x => x.lead === h.lead && x.follow === h.follow && x.are === "apart" && x.from > c && x.from <= c + 1);
          // How deep a place is in somebody's trunk or head, in metres: an upright ellipse, half as deep and wide as shares of the stature, and a ball.
          const deepIn = (j, p) => {
            const a = j.facing * Math.PI / 180, [x, y] = [p[0] - j.chest.x, p[1] - j.chest.y], k = j.stature;
            const trunk = p[2] > j.pelvis.z - 0.02 && p[2] < j.chest.z ? 0.075 * k * (1 - Math.hypot((x * Math.cos(a) + y * Math.sin(a)) / (0.075 * k), (y * Math.cos(a) - x * Math.sin(a)) / (0.1 * k))) : 0;
            return Math.max(trunk, 0.062 * k - Math.hypot(x, y, p[2] - j.head.z));
          };
          const tenths = Array.from({ length: 11 }, (_, t) => t / 10), on = (a, b, t) => [a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, a.z + (b.z - a.z) * t];
          const pierces = (arm, j, own) => tenths.some(t => deepIn(j, on(arm.elbow, arm.hand, t)) > 0.05 || !own && deepIn(j, on(arm.shoulder, arm.elbow, t)) > 0.05);
          const heights = motion.roles.map(() => []);
          let before;
          for (let c = 0; c <= motion.counts; c += 1 / 16) {
            const bodies = c < motion.counts ? motion.at(c) : motion.at(motion.counts), joints = viewer.jointsAt(Math.min(c, motion.counts - 1e-9));
            bodies.forEach((body, i) => {
              for (const side of ["left", "right"]) {
                const [leg, arm, foot, was] = [joints[i].legs[side], joints[i].arms[side], body.feet[side], before?.[i].feet[side]];
                if (was && was.weight > 0.98 && foot.weight > 0.98 && foot.up < 1e-4 && was.up < 1e-4) seen.slid = Math.max(seen.slid, Math.hypot(foot.x - was.x, foot.y - was.y));
                seen.knee = Math.max(seen.knee, bent(leg.hip, leg.knee, leg.ankle));
                seen.elbow = Math.max(seen.elbow, bent(arm.shoulder, arm.elbow, arm.hand));
                // A knee bends forward: it lies ahead of the line from hip to ankle.
                const middle = [(leg.hip.x + leg.ankle.x) / 2, (leg.hip.y + leg.ankle.y) / 2];
                const a = body.facing * Math.PI / 180;
                seen.over = Math.min(seen.over, (leg.knee.x - middle[0]) * Math.cos(a) + (leg.knee.y - middle[1]) * Math.sin(a));
              }
              const up = heights[i];
              up.push(joints[i].pelvis.z);
              if (up.length > 2) seen.jerk = Math.max(seen.jerk, Math.abs(up.at(-1) - 2 * up.at(-2) + up.at(-3)));
              seen.low = Math.min(seen.low, joints[i].pelvis.z / (0.53 * body.stature + 0.03));
            });
            for (const h of motion.joinedAt(c)) if (!letsGo(h, c) && !lies(h, c) && motion.roles.length > 1) seen.apart = Math.max(seen.apart, long(minus(joints[motion.roles.indexOf("lead")].arms[h.lead].hand, joints[motion.roles.indexOf("follow")].arms[h.follow].hand)));
            if (joints.some((j, i) => joints.some((o, k) => pierces(j.arms.left, o, i === k) || pierces(j.arms.right, o, i === k)))) seen.through += 1 / (16 * motion.counts);
            before = bodies;
          }
          // Nothing flips from one place to another between two pictures: metres in a count, for every joint of both arms and legs.
          before = undefined;
          for (let c = 0; c < motion.counts + 2; c += 1 / 32) {
            const now = viewer.jointsAt(c).map(j => ["left", "right"].flatMap(s => [...["shoulder", "elbow", "hand"].map(k => ["arms", s, k]), ...["knee", "ankle"].map(k => ["legs", s, k])].map(([a, b, k]) => [`${b} ${k}`, j[a][b][k]])));
            if (before && (motion.onward || c <= motion.counts)) now.forEach((all, i) => all.forEach(([name, p], k) => {
              const far = long(minus(p, before[i][k][1])) * 32;
              seen.leap = Math.max(seen.leap, far);
              if (far > 9) throw new Error(`the ${motion.roles[i]}'s ${name} leaps on ${c}, ${far} metres in a count`);
            }));
            before = now;
          }
          // Where the next repeat begins as this one has ended nobody is pushed over the floor.
          before = undefined;
          for (let c = motion.counts - 0.5; motion.onward && c <= motion.counts + 6; c += 1 / 16) {
            const bodies = motion.onAndOn(c);
            bodies.forEach((body, i) => {
              for (const side of ["left", "right"]) {
                const [foot, was] = [body.feet[side], before?.[i].feet[side]];
                if (was && was.weight > 0.98 && foot.weight > 0.98 && foot.up < 1e-4 && was.up < 1e-4) seen.again = Math.max(seen.again, Math.hypot(foot.x - was.x, foot.y - was.y));
              }
            });
            before = bodies;
          }
          return seen;
        }
        """;

    public static TheoryData<string> EveryDemoDance => [.. Root.Pages("demo", "dances").Select(p => Path.GetFileNameWithoutExtension(p)!).Where(name => name != "figures")];

    [Theory]
    [MemberData(nameof(EveryDemoDance))]
    public async Task Feet_stand_hands_meet_and_joints_bend_as_joints_do(string dance)
    {
        await using var opened = await WatchAsync(dance);
        var seen = await opened.Page.EvaluateAsync<Dictionary<string, double>>(Laws);
        var said = JsonSerializer.Serialize(seen);
        Assert.True(seen["slid"] < 0.005, said);
        Assert.True(seen["again"] < 0.005, said);
        Assert.True(seen["apart"] < 0.010, said);
        // Active flexion of knees and elbows ends about there (American Academy of Orthopaedic Surgeons 1965, from memory: 135 and 150 degrees).
        Assert.True(seen["knee"] < 135, said);
        Assert.True(seen["elbow"] < 155, said);
        Assert.True(seen["over"] > -0.12, said);
        // In metres from sixteenth to sixteenth of a count; hips at three quarters of their height would be a squat.
        Assert.True(seen["jerk"] < 0.006, said);
        Assert.True(seen["low"] > 0.75, said);
        // An arm is in a body only on its way from one hold to another: share of the time in which it is so by more than five centimetres.
        Assert.True(seen["through"] < 0.025, said);
        // The fastest is a hand that goes over a head in half a count.
        Assert.InRange(seen["leap"], 1, 9);
        Assert.Empty(opened.Faults);
    }

    [Theory]
    // Ends in place, on a hop, and with partners that stand otherwise than they began, as their hold lets them.
    [InlineData("beeskep-waltz")]
    [InlineData("loose-shingle-schottische")]
    [InlineData("loose-hinge-two-step")]
    [InlineData("dinner-bell-six")]
    public async Task One_repeat_goes_over_into_the_next_and_the_camera_with_it(string dance)
    {
        await using var opened = await WatchAsync(dance);
        // The longest way of anybody, and of the camera, in a tenth of a count around the end, in metres.
        var furthest = await opened.Page.EvaluateAsync<double[]>("""
            () => {
              const viewer = window.surefootViewer, { motion } = viewer, far = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);
              const seen = count => { viewer.drawAt(count); return [...motion.onAndOn(count), { ...viewer.stage.cameras[0].position }]; };
              const most = [0, 0];
              let before = seen(motion.counts - 4);
              for (let count = motion.counts - 3.9; count < motion.counts + 2; count += 0.1) {
                const now = seen(count);
                now.forEach((one, i) => { const k = i === now.length - 1 ? 1 : 0; most[k] = Math.max(most[k], far(one, before[i])); });
                before = now;
              }
              return most;
            }
            """);
        // A walk goes half a metre in a count.
        Assert.InRange(furthest[0], 0.01, 0.25);
        Assert.InRange(furthest[1], 0.001, 0.1);
    }

    [Fact]
    public async Task Clicks_keep_the_tempo_for_five_minutes()
    {
        await using var opened = await WatchAsync("split-rail-cha-cha");
        var worst = await opened.Page.EvaluateAsync<double[]>("""
            async () => {
              const { sound } = window.surefootViewer.watching, samples = 48000;
              const heard = await sound.rendered(300, samples);
              const begins = [];
              for (let i = 0, quiet = samples; i < heard.length; i++) {
                if (Math.abs(heard[i]) < 0.02) { quiet++; continue; }
                if (quiet > samples * 0.1) begins.push(i / samples);
                quiet = 0;
              }
              return [begins.length, Math.max(...begins.map((t, i) => Math.abs(t - i * 60 / 108)))];
            }
            """);
        // 108 counts a minute, the middle of what the page says.
        Assert.Equal(540, worst[0]);
        Assert.InRange(worst[1], 0, 0.020);
    }

    [Fact]
    public async Task Keys_and_buttons_do_everything()
    {
        await using var opened = await WatchAsync("split-rail-cha-cha");
        var page = opened.Page;
        var picture = page.Locator(".viewer-picture");
        await picture.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator(".viewer-count")).ToHaveTextAsync("1");
        await Expect(page.Locator(".viewer-heard")).ToContainTextAsync("Count 1.");
        await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(page.Locator(".viewer-heard")).ToHaveTextAsync("At the start.");
        var back = await picture.ScreenshotAsync();
        await page.Keyboard.PressAsync("s");
        await Expect(page.GetByLabel("Seen")).ToHaveValueAsync("side");
        Assert.NotEqual(back, await picture.ScreenshotAsync());
        await page.GetByLabel("Who").SelectOptionAsync("follow");
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Pause" })).ToBeVisibleAsync();
        await Expect(page.Locator(".viewer-count")).ToHaveTextAsync(PastTheFirst(), new() { Timeout = 20_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        await page.GetByLabel("Repeat").SelectOptionAsync(new SelectOptionValue { Label = "Part C Her turn" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await Expect(page.Locator(".viewer-part")).ToContainTextAsync("Part C", new() { Timeout = 20_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        // Any counts, both ends danced: 6 to 7 lasts two counts and begins where 5 has ended.
        await page.GetByLabel("Repeat").SelectOptionAsync(new SelectOptionValue { Label = "chosen counts" });
        await page.GetByRole(AriaRole.Combobox, new() { Name = "to", Exact = true }).SelectOptionAsync("7");
        await page.GetByRole(AriaRole.Combobox, new() { Name = "from", Exact = true }).SelectOptionAsync("6");
        Assert.Equal(new double[] { 5, 7 }, await page.EvaluateAsync<double[]>("() => [window.surefootViewer.watching.clock.stretch.from, window.surefootViewer.watching.clock.stretch.to]"));
        // Counts are told as each part counts them.
        Assert.Equal("1", await page.Locator(".viewer-range optgroup[label='Part B Wrapped and out again'] option").First.InnerTextAsync());
        await page.GetByLabel("Repeat").SelectOptionAsync(new SelectOptionValue { Label = "the dance" });
        await Expect(page.GetByRole(AriaRole.Combobox, new() { Name = "from", Exact = true })).ToBeHiddenAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Whoever_comes_plays_with_the_space_bar_and_sees_a_part_as_soon_as_it_is_chosen()
    {
        await using var opened = await WatchAsync("split-rail-cha-cha");
        var page = opened.Page;
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator(".viewer-count")).ToHaveTextAsync("1");
        // A letter is nobody's shortcut before the picture was chosen (WCAG 2.1.4).
        await page.Keyboard.PressAsync("s");
        await Expect(page.GetByLabel("Seen")).ToHaveValueAsync("back");
        await page.Keyboard.PressAsync(" ");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Pause" })).ToBeVisibleAsync();
        await page.Keyboard.PressAsync(" ");
        await page.GetByLabel("Repeat").SelectOptionAsync(new SelectOptionValue { Label = "Part C Her turn" });
        await Expect(page.Locator(".viewer-part")).ToContainTextAsync("Part C");
        await Expect(page.Locator(".viewer-step")).ToHaveTextAsync("ready");
        await Expect(page.Locator(".viewer-heard")).ToHaveTextAsync("Ready for Part C  Her turn.");
        Assert.Equal(24, await page.EvaluateAsync<double>("() => window.surefootViewer.watching.clock.now().at"));
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_is_shown_as_coming_and_what_the_voice_says_are_the_calls_of_the_page()
    {
        var text = (await File.ReadAllTextAsync(Support.Root.At("demo", "dances", "circle", "split-rail-cha-cha.dance"), TestContext.Current.CancellationToken)).TrimEnd();
        var number = await studio.AddAsync(text.Replace("Split Rail Cha-Cha", "Called Rail", StringComparison.Ordinal) + "\nCall 7-8: home again\n");
        await using var opened = await WatchAsync($"{number}");
        var page = opened.Page;
        await Expect(page.Locator(".viewer-call")).ToHaveTextAsync("next: rock");
        // Part D begins at count 33: its last two counts lead home.
        await page.EvaluateAsync("() => window.surefootViewer.watching.seek(39)");
        await Expect(page.Locator(".viewer-call")).ToHaveTextAsync("next: home again");
        await page.EvaluateAsync("() => window.surefootViewer.watching.seek(0)");
        Task<string?[]> SaidAsync() => page.EvaluateAsync<string?[]>("() => Array.from({ length: 40 }, (_, i) => window.surefootViewer.watching.sound.heard(i + 1).say ?? null)");
        var both = await SaidAsync();
        Assert.Equal("home again", both[38]);
        Assert.Null(both[39]);
        // Part B: his and hers differ, and one voice says whose turn it is.
        Assert.Equal("follow's turn", both[16]);
        await page.GetByLabel("Who").SelectOptionAsync("lead");
        Assert.Equal("triple", (await SaidAsync())[16]);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_film_of_the_picture_is_handed_over_as_a_file()
    {
        await using var opened = await WatchAsync("split-rail-cha-cha");
        var page = opened.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Film the picture" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await Expect(page.Locator(".viewer-count")).ToHaveTextAsync(PastTheFirst(), new() { Timeout = 20_000 });
        var film = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Film the picture" }).ClickAsync());
        Assert.Equal("Split Rail Cha-Cha.webm", film.SuggestedFilename);
        var bytes = await File.ReadAllBytesAsync(await film.PathAsync(), TestContext.Current.CancellationToken);
        // WebM is Matroska, which is EBML (RFC 8794): four bytes say so, and the kind of document follows.
        Assert.Equal([0x1A, 0x45, 0xDF, 0xA3], bytes[..4]);
        Assert.Contains("webm", System.Text.Encoding.ASCII.GetString(bytes, 0, 64));
        Assert.True(bytes.Length > 5_000, $"{bytes.Length} bytes");
        Assert.Empty(opened.Faults);
    }

    private async Task<Opened> WatchAsync(string dance)
    {
        var opened = await studio.OpenAsync($"/dance/{dance}/watch");
        await opened.Page.WaitForSelectorAsync("html[data-watching=whole]", new() { State = WaitForSelectorState.Attached });
        return opened;
    }

    /// <summary>Any count but the first: the page is looked at once a second, and may never be met on a given one while it plays.</summary>
    [GeneratedRegex("^([2-9]|1[0-9])&?$")]
    private static partial Regex PastTheFirst();
}
