using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Vocabulary;
using Surefoot.Draw.Words;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Writing in the editor: problems at once, suggestions by keyboard, words offered and explained.</summary>
public class Writing(Studio studio) : IClassFixture<Studio>
{
    private const string Dance = "nine-buckets-cha-cha";

    [Fact]
    public async Task A_mistake_is_said_while_it_is_written()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await Expect(opened.Page.Locator(".sound")).ToBeVisibleAsync();
        await opened.Line("Rock forward L").ClickAsync();
        await opened.Page.Keyboard.PressAsync("End");
        await opened.Page.Keyboard.TypeAsync(", frobble L");
        await opened.Page.Keyboard.PressAsync("Escape");
        await Expect(opened.Page.Locator(".problem.error .message").First).ToContainTextAsync("frobble");
        await Expect(opened.Page.Locator(".cm-lintRange-error", new() { HasText = "frobble" })).ToHaveCSSAsync("text-decoration-style", "wavy");
        await Expect(opened.Page.Locator(".cm-lint-marker-error").First).ToBeVisibleAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_part_is_still_to_write_while_the_cursor_is_in_it_and_short_once_it_is_left()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var page = opened.Page;
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nFeet: right free\n\nPart A (16 counts)\n1-4 Vine right, touch L\n");
        await Expect(page.Locator(".problem.unwritten .message")).ToHaveTextAsync("Part A: 4 of 16 counts so far.");
        await Expect(page.Locator(".problem.error, .cm-lint-marker-error")).ToHaveCountAsync(0);
        await Expect(page.Locator("[data-part=tally]")).ToHaveTextAsync("none");
        await Expect(page.FrameLocator(".sheet-frame").Locator(".doubt")).ToHaveTextAsync("Part A: 4 of 16 counts so far.");
        await opened.WriteOnAsync("5-8 Vine left, touch R");
        await page.Keyboard.PressAsync("Escape");
        // What was still being written a moment ago is gone first.
        await Expect(page.Locator(".problem.unwritten .message")).ToHaveCountAsync(1);
        await Expect(page.Locator(".problem.unwritten .message")).ToHaveTextAsync("Part A: 8 of 16 counts so far.");
        // On the heading she looks at the number: there it is what it is for everybody else.
        await opened.Line("Part A").ClickAsync();
        await Expect(page.Locator(".problem.error .message")).ToHaveTextAsync("Part A is said to have 16 counts, and it holds 8.");
        await Expect(page.Locator("[data-part=tally]")).ToHaveTextAsync("1");
        await opened.Line("5-8 Vine").ClickAsync();
        await Expect(page.Locator(".problem.error")).ToHaveCountAsync(0);
        // A part with another one after it is not the one that grows.
        await opened.WriteOnAsync("\nPart B (8 counts)\n1-4 Vine right, touch L");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".problem.error .message")).ToHaveTextAsync("Part A is said to have 16 counts, and it holds 8.");
        // What was still being written a moment ago is gone first.
        await Expect(page.Locator(".problem.unwritten .message")).ToHaveCountAsync(1);
        await Expect(page.Locator(".problem.unwritten .message")).ToHaveTextAsync("Part B: 4 of 8 counts so far.");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_key_for_the_next_problem_passes_by_what_is_still_to_write()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var (page, keys) = (opened.Page, opened.Page.Keyboard);
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\nPart A (16 counts)\n1-2 Step side R, touch together L\n3-4 Step side R, touch together L\n5-6 Frobble L, touch together R\n");
        await Expect(page.Locator(".problem.unwritten")).ToHaveCountAsync(1);
        await Expect(page.Locator(".problem.error")).ToHaveCountAsync(2);
        // Where it happened is said with what happened there, and what mends it stands before the reasons.
        await Expect(page.Locator(".problem.error").First.Locator(".reason")).ToContainTextAsync(["", "1-2: "]);
        await Expect(page.Locator(".problem.error").First.Locator(".fixes + .reason")).ToBeVisibleAsync();
        foreach (var word in (string[])["3-4", "Frobble", "3-4"])
        {
            await keys.PressAsync("F8");
            await Expect(page.Locator(".cm-activeLine")).ToContainTextAsync(word);
        }

        await keys.PressAsync("Shift+F8");
        await Expect(page.Locator(".cm-activeLine")).ToContainTextAsync("Frobble");
        // It was never led to the heading, where sixteen counts would have been a fault.
        await Expect(page.Locator(".problem.unwritten .message")).ToContainTextAsync("of 16 counts so far");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_new_dance_is_written_at_once_over_the_counts_it_begins_with()
    {
        await using var opened = await studio.OpenAsync("/");
        var (page, keys) = (opened.Page, opened.Page.Keyboard);
        // Whoever comes for the first time is asked right away.
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Title" }).FillAsync("Straight On");
        await keys.PressAsync("Enter");
        await Expect(page.Locator(".cm-content")).ToBeFocusedAsync();
        await keys.TypeAsync("> written first");
        await keys.PressAsync("Enter");
        await Expect(page.Locator(".cm-line").Filter(new() { HasText = "written first" }).Locator("+ .cm-line")).ToContainTextAsync("Rock forward L");
        Assert.Matches(@"/dance/[0-9]+$", page.Url);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Words_are_found_in_the_text_and_others_written_for_them()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var (page, keys) = (opened.Page, opened.Page.Keyboard);
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\n1-2 Step side R, touch together L\n3-4 Step side L, touch together R\n");
        await keys.PressAsync("Control+f");
        await keys.TypeAsync("Touch");
        var panel = page.GetByRole(AriaRole.Search, new() { Name = "In this text" });
        await Expect(panel.GetByRole(AriaRole.Status)).ToHaveTextAsync("in 2 places");
        await keys.PressAsync("Enter");
        await Expect(panel.GetByRole(AriaRole.Status)).ToHaveTextAsync("1 of 2");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Next" }).ClickAsync();
        await Expect(panel.GetByRole(AriaRole.Status)).ToHaveTextAsync("2 of 2");
        Assert.Empty((await page.RunAxe(new AxeRunOptions { Iframes = false })).Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html}"));
        await panel.GetByLabel("Words to put in their place").FillAsync("tap");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Write it everywhere" }).ClickAsync();
        await Expect(panel.GetByRole(AriaRole.Status)).ToHaveTextAsync("nowhere");
        Assert.Contains("Step side L, tap together R", await opened.TextAsync());
        await panel.GetByLabel("Words to find in the text").FocusAsync();
        await keys.PressAsync("Escape");
        await Expect(panel).ToHaveCountAsync(0);
        // Back in the text, where one undo takes all of it back.
        await keys.PressAsync("Control+z");
        Assert.Contains("Step side R, touch together L", await opened.TextAsync());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Lines_run_together_are_parted_with_one_press()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.WriteAsync("Two Rails\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\n1-2 Step side R, touch together L 3-4 Step side L, touch together R\n");
        await Expect(opened.Page.Locator(".problem .message")).ToHaveTextAsync(["Two lines of counts stand on one line; begin 3-4 on a new line."]);
        await opened.Page.Locator(".fix").ClickAsync();
        await Expect(opened.Page.Locator(".sound")).ToBeVisibleAsync();
        Assert.Contains("touch together L\n3-4 Step side L", await opened.TextAsync());
    }

    [Fact]
    public async Task A_word_with_half_its_letters_and_a_dance_that_goes_on_are_no_faults_yet()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var page = opened.Page;
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\n1-2 Step side R, touch together L\n");
        // The dance before it has nothing wrong either: what is told now is of this one.
        await Expect(page.Locator(".problem.unwritten .message")).ToContainTextAsync("So far the dance cannot begin again");
        await opened.WriteOnAsync("3-4 Step side L, shuf");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".problem.unwritten .message")).ToHaveTextAsync("\"shuf\" is still being written.");
        await Expect(page.Locator(".problem.error")).ToHaveCountAsync(0);
        await Expect(page.FrameLocator(".sheet-frame").Locator(".doubt")).ToHaveCountAsync(0);
        // A blank ends the word.
        await page.Keyboard.TypeAsync(" ");
        await Expect(page.Locator(".problem.error .message")).ToHaveTextAsync("\"shuf\" is not a word that Surefoot knows.");
        await Expect(page.FrameLocator(".sheet-frame").Locator(".doubt")).ToContainTextAsync("1 place");
        for (var i = 0; i < 5; i++) await page.Keyboard.PressAsync("Backspace");
        await page.Keyboard.TypeAsync("together R");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".problem.unwritten .message")).ToContainTextAsync("So far the dance cannot begin again");
        await Expect(page.Locator("[data-part=tally]")).ToHaveTextAsync("none");
        // Whoever looks elsewhere is done with it.
        await opened.Line("1-2").ClickAsync();
        await Expect(page.Locator(".problem.error .message")).ToContainTextAsync("The dance cannot begin again");
        await page.Locator(".cm-content").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await Expect(page.Locator(".problem.error")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).FocusAsync();
        await Expect(page.Locator(".problem.error .message")).ToContainTextAsync("The dance cannot begin again");
        await Expect(page.FrameLocator(".sheet-frame").Locator(".doubt")).ToContainTextAsync("1 place");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_page_is_tidied_with_one_press_and_stays_the_same_dance()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.WriteAsync("Half Gate\nkind:   line,  1 wall\nPhrase: any\nFeet: right free\n\n1-2 Step side R,touch tog L\n3-4 Walk fwd L , R\n5-6 Walk back L, R\n");
        await opened.Line("3-4").ClickAsync();
        var tidy = opened.Page.GetByRole(AriaRole.Button, new() { Name = "Tidy" });
        await Expect(opened.Page.Locator("h1").First).ToHaveTextAsync("Half Gate");
        await tidy.ClickAsync();
        await Expect(opened.Page.Locator("[data-part=heard]")).ToContainTextAsync("Tidied");
        var tidied = await opened.TextAsync();
        Assert.Contains("Kind: line, 1 wall\n", tidied);
        Assert.Contains("1-2    Step side R, touch together L\n3-4    Walk forward L, R\n5-6    Walk back L, R", tidied);
        await tidy.ClickAsync();
        await Expect(opened.Page.Locator("[data-part=heard]")).ToContainTextAsync("tidy already");
        await opened.Page.Locator(".cm-content").FocusAsync();
        await opened.Page.Keyboard.PressAsync("Control+z");
        Assert.Contains("Walk fwd L , R", await opened.TextAsync());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_was_assumed_is_one_sentence_and_the_rest_is_folded()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.WriteAsync("Say It Twice\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\n1-2 Rock forward, recover\n3&4 Coaster step\n5-6 Rock forward, recover\n7&8 Coaster step\n");
        var assumed = opened.Page.Locator(".problem.hint");
        await Expect(assumed.Locator(".message")).ToHaveTextAsync("No foot is named in 4 places; the free foot begins.");
        await Expect(assumed.Locator(".reason").First).ToBeHiddenAsync();
        await assumed.Locator("summary").ClickAsync();
        await Expect(assumed.Locator(".reason").First).ToContainTextAsync("R on 1, R on 3, L on 5, L on 7");
    }

    [Fact]
    public async Task A_suggestion_is_taken_with_two_keys()
    {
        var reading = DemoNotebook.ReadMistake("weight-same-foot");
        var problem = reading.Problems.First(p => p.Name == "weight-same-foot");
        var mended = Surefoot.Dance.Problems.TextEdits.Apply(reading.Page.Source.Text, problem.Fixes[0].Edits);
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.WriteAsync(reading.Page.Source.Text);
        await Expect(opened.Page.Locator(".problem.error")).ToHaveCountAsync(1);
        // F8 goes to the problem, Ctrl+. takes its suggestion.
        await opened.Page.Keyboard.PressAsync("Control+Home");
        await opened.Page.Keyboard.PressAsync("F8");
        await opened.Page.Keyboard.PressAsync("Control+.");
        await Expect(opened.Page.Locator(".problem.error")).ToHaveCountAsync(0);
        Assert.Equal(Lines(mended), Lines(await opened.TextAsync()));
        await Expect(opened.Page.Locator("[data-part=heard]")).ToContainTextAsync("Changed");
        // One step back takes it back.
        await opened.Page.Keyboard.PressAsync("Control+z");
        await Expect(opened.Page.Locator(".problem.error")).ToHaveCountAsync(1);
        // And the list's button does the same.
        await opened.Page.Locator(".fix").First.ClickAsync();
        await Expect(opened.Page.Locator(".problem.error")).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Figures_are_offered_with_what_they_mean()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.Line("Rock forward L").ClickAsync();
        await opened.Page.Keyboard.PressAsync("End");
        await opened.Page.Keyboard.TypeAsync(", small sail", new() { Delay = 15 });
        var offer = opened.Page.Locator(".cm-tooltip-autocomplete li").First;
        await Expect(offer).ToContainTextAsync("sailor");
        await Expect(offer).ToContainTextAsync(FigureBook.Shipped.Named("sailor step")!.Means[..20]);
        // Keys pressed as the list comes up are not meant for it.
        await opened.Page.WaitForTimeoutAsync(200);
        await opened.Page.Keyboard.PressAsync("Tab");
        Assert.Matches(new Regex("recover R, small sailor"), await opened.TextAsync());
        // Another one is chosen with the arrows.
        await opened.Page.Keyboard.TypeAsync(", coast", new() { Delay = 15 });
        await Expect(offer).ToContainTextAsync("coaster");
        await opened.Page.WaitForTimeoutAsync(200);
        await opened.Page.Keyboard.PressAsync("ArrowDown");
        await opened.Page.Keyboard.PressAsync("Enter");
        Assert.Matches(new Regex("sailor[^\n]*, coaster"), await opened.TextAsync());
    }

    [Fact]
    public async Task The_sheet_turns_to_the_part_that_is_written_and_leaves_the_page_where_it_is()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var page = opened.Page;
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\nPart A (2 counts)\n1-2 Step side R, touch together L\n\nPart B (2 counts)\n1-2 Step side L, touch together R");
        var frame = page.Locator(".sheet-frame");
        await Expect(frame).ToHaveAttributeAsync("src", new Regex("#part-1$"));
        await Expect(page.FrameLocator(".sheet-frame").Locator("#part-1 h2")).ToContainTextAsync("Part B");
        await opened.Line("Part A").ClickAsync();
        await Expect(frame).ToHaveAttributeAsync("src", new Regex("#$"));
        // Upright tablets have the sheet below the text: turning it must not pull the page there.
        await page.SetViewportSizeAsync(820, 1180);
        await opened.Line("Part A").ClickAsync();
        var before = await page.EvaluateAsync<double>("() => scrollY");
        await opened.Line("Part B").ClickAsync();
        await Expect(frame).ToHaveAttributeAsync("src", new Regex("#part-1$"));
        await page.WaitForTimeoutAsync(300);
        // The line that was pressed may come into sight by a line's height; the sheet is hundreds of pixels away.
        Assert.InRange(await page.EvaluateAsync<double>("() => scrollY"), before - 40, before + 40);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_problem_of_the_line_that_is_written_is_marked_and_in_sight()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var page = opened.Page;
        await opened.WriteAsync("Nine Slips\nKind: line, 1 wall\nPhrase: any\nFeet: left free\n\n" + string.Concat(Enumerable.Range(1, 9).Select(i => $"{(2 * i) - 1}-{2 * i} Walk forward L, frobble R\n")));
        await Expect(page.Locator(".problem.error")).ToHaveCountAsync(9);
        await page.Keyboard.PressAsync("Escape");
        await opened.Line("15-16").ClickAsync();
        var marked = page.Locator(".problem.here");
        await Expect(marked).ToHaveCountAsync(1);
        await Expect(marked).ToContainTextAsync("count 15");
        await Expect(marked).ToBeInViewportAsync(new() { Ratio = 0.9f });
        await opened.Line("3-4").ClickAsync();
        await Expect(marked).ToContainTextAsync("count 3");
        await Expect(marked).ToBeInViewportAsync(new() { Ratio = 0.9f });
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_page_that_is_opened_shows_its_worst_problem_first()
    {
        var page = await studio.AddAsync("Fast Gate\nKind: line, 1 wall\nMeter: 4/4\nTempo: 150\nFeet: left free\n\n1-2 Full turn left L R\n3-4 Walk forward L, R\n5-6 Walk back L R\n7-10 Rocking chair\n");
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await Expect(opened.Page.Locator(".problem.warning .message").First).ToBeInViewportAsync(new() { Ratio = 0.9f });
        await Expect(opened.Page.Locator(".problem.here")).ToHaveCountAsync(0);
        // What is told of a line comes once somebody goes there.
        await opened.Line("7-10").ClickAsync();
        await Expect(opened.Page.Locator(".problem.hint.here .message")).ToBeInViewportAsync(new() { Ratio = 0.9f });
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_floor_goes_to_the_count_that_is_written()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var page = opened.Page;
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: left free\n\n1-2 Walk forward L, R\n3-4 Walk back L, R\n5-6 Walk forward L, R\n");
        await Expect(page.Locator("h1").First).ToHaveTextAsync("Half Gate");
        await opened.Line("3-4").ClickAsync();
        await Expect(opened.Count).ToHaveTextAsync("3");
        await opened.WriteOnAsync("7-8 Rock back L, recover R");
        await page.Keyboard.PressAsync("Escape");
        await Expect(opened.Count).ToHaveTextAsync("8");
        // It came by itself: nothing was pressed on the floor, and the text has the keys.
        await Expect(page.Locator(".cm-content")).ToBeFocusedAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Levels_are_offered_after_their_word()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.WriteAsync("Half Gate\nKind: line, 1 wall\nLevel:");
        await opened.Page.Keyboard.TypeAsync(" impr", new() { Delay = 15 });
        await Expect(opened.Page.Locator(".cm-tooltip-autocomplete li").First).ToContainTextAsync("improver");
        await opened.Page.WaitForTimeoutAsync(200);
        await opened.Page.Keyboard.PressAsync("Tab");
        Assert.EndsWith("Level: improver", (await opened.TextAsync()).TrimEnd());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Enter_begins_a_new_line_whatever_is_offered_and_the_line_stays_in_sight()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var page = opened.Page;
        await page.Locator(".cm-content").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        string[] lines = ["Part X (8 counts)", "1-2 walk L R", "3&4 shuffle back R L R", "5-6 rock back L, recover R", "7&8 shuffle forward L R L", "> let go left hands"];
        foreach (var line in lines)
        {
            await page.Keyboard.PressAsync("Enter");
            await page.Keyboard.TypeAsync(line, new() { Delay = 60 });
            // By now a list of words is there.
            await page.WaitForTimeoutAsync(300);
        }

        Assert.EndsWith(string.Join('\n', lines), await opened.TextAsync());
        await page.WaitForTimeoutAsync(800);
        var seen = await page.EvaluateAsync<double[]>("() => { const c = document.querySelector('.cm-cursor-primary').getBoundingClientRect(), s = document.querySelector('.cm-scroller').getBoundingClientRect(); return [c.top - s.top, s.bottom - c.bottom]; }");
        Assert.True(seen[0] >= 0 && seen[1] >= 0, $"{seen[0]} under the upper edge, {seen[1]} over the lower");
    }

    [Fact]
    public async Task A_figure_under_the_mouse_is_shown_step_by_step()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var figure = opened.Page.Locator(".word-figure", new() { HasText = "Cross shuffle" }).First;
        await figure.ScrollIntoViewIfNeededAsync();
        await figure.HoverAsync();
        await Shows(opened, "cross shuffle");
        // The same without a mouse.
        await opened.Page.Mouse.MoveAsync(5, 5);
        await figure.ClickAsync();
        await opened.Page.Mouse.MoveAsync(5, 5);
        await Expect(opened.Page.Locator(".figure-shown")).ToHaveCountAsync(0);
        await opened.Page.Keyboard.PressAsync("Control+i");
        await Shows(opened, "cross shuffle");
        await opened.Page.Keyboard.PressAsync("Escape");
        await Expect(opened.Page.Locator(".figure-shown")).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_call_is_offered_at_the_start_of_a_line_and_its_words_after_the_colon()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        var offers = opened.Page.Locator(".cm-tooltip-autocomplete li");
        await opened.WriteOnAsync("\nCal");
        await Expect(offers.Filter(new() { HasText = "Call" }).First).ToBeVisibleAsync();
        await opened.WriteOnAsync("l 7-8, fol");
        await Expect(offers.Filter(new() { HasText = "follow" }).First).ToBeVisibleAsync();
        await opened.WriteOnAsync("low: non");
        await Expect(offers.Filter(new() { HasText = "none" }).First).ToBeVisibleAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Words_are_coloured_by_what_they_are()
    {
        await using var opened = await studio.OpenCopyAsync(Dance);
        await opened.WriteAsync("Lane\nHold: two hands\n\nPart A (4 counts)\n1-2 Lead: walks forward L, R\n3&4 Follow: mill wheel, raise right hands (facing LOD)\nCall 3-4, follow: wheel away\n> a note");
        foreach (var (kind, words) in new[] { ("title", "Lane"), ("header", "Hold:"), ("hold", "two hands"), ("part", "Part A"), ("count", "3&4"), ("role", "Follow"), ("figure", "walks"), ("figure", "mill wheel"), ("hand", "raise"), ("way", "forward"), ("claim", "(facing LOD)"), ("call", "Call 3-4, follow:"), ("called", "wheel away"), ("note", "> a note") })
        {
            await Expect(opened.Page.Locator($".word-{kind}", new() { HasText = words }).First).ToBeVisibleAsync();
            Assert.Contains(words, (await opened.Page.Locator($".word-{kind}").AllTextContentsAsync()).Select(t => t.Trim()));
        }
    }

    private static async Task Shows(Opened opened, string name)
    {
        await Expect(opened.Page.Locator(".figure-shown h3")).ToHaveTextAsync(char.ToUpperInvariant(name[0]) + name[1..]);
        var told = await opened.Page.Locator(".figure-shown td").AllTextContentsAsync();
        Assert.Equal(Danced(name), told);
    }

    private static List<string> Danced(string name)
    {
        var words = new List<string>();
        foreach (var role in FigureShown.All(FigureBook.Shipped.Named(name)!, FigureBook.Shipped).SelectMany(s => s.Score.Roles))
        {
            var before = role.Start.Weight;
            foreach (var step in role.Steps)
            {
                words.Add(StepWords.Of(step, before, spelled: true));
                before = step.Weight;
            }
        }

        return words;
    }

    private static IEnumerable<string> Lines(string text) => text.TrimEnd().Split('\n').Select(l => l.TrimEnd());
}
