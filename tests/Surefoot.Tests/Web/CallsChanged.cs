using System.Text.RegularExpressions;
using Surefoot.Dance;
using Surefoot.Dance.Basics;

namespace Surefoot.Tests.Web;

/// <summary>The room in which calls are changed in place, all of it without script.</summary>
public partial class CallsChanged(Studio studio) : IClassFixture<Studio>
{
    private const string Text = "Rope Ladder\nKind: line\nFeet: right free\n\nPart A\n1-4  Vine right, touch L\n5-8  Vine left, touch R\n\nPart B\n1-4  Walk forward R L R L\n5-8  Walk back R L R L\n\nOrder: A A B\n";

    private const string Couple = "Rope Walk\nKind: partner, circle\nFeet: same, left free\n\nLead:\n1-4  Walk forward L R L R\n5-8  Walk back L R L R\nFollow:\n1-4  Walk forward L R L R\n5-8  Walk back L R L R\n";

    private static MultipartFormDataContent Form(params (string Name, string Value)[] fields)
    {
        var form = new MultipartFormDataContent();
        foreach (var (name, value) in fields) form.Add(new StringContent(value), name);
        return form;
    }

    private async Task<string> TextAsync(long page)
    {
        using var library = await studio.LookAsync();
        return (await library.Pages.TextAsync(page))!;
    }

    [Fact]
    public async Task A_call_gets_other_words_is_silenced_and_goes_back_to_what_the_steps_say()
    {
        var page = await studio.AddAsync(Text);
        using var forms = new Forms(studio);
        var room = $"/dance/{page}/calls";
        Assert.Contains("value=\"vine left\"", await forms.PageAsync(room));
        var answer = await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "1"), ("section", "0"), ("from", "3"), ("counts", "2"), ("was", ""), ("role", ""), ("words", "  back   home "), ("do", "change")));
        Assert.Contains("“back home” stands in the page", answer);
        Assert.Contains("5-8  Vine left, touch R\nCall 3-4: back home\n\nPart B", await TextAsync(page));
        Assert.Contains("value=\"back home\"", answer);

        // In its own line, and not beside it.
        await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "2"), ("section", "1"), ("from", "11"), ("counts", "2"), ("was", ""), ("words", "other way"), ("do", "change")));
        Assert.Contains("touch R\nCall 3-4: other way\n\nPart B", await TextAsync(page));
        await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "3"), ("section", "0"), ("from", "3"), ("counts", "2"), ("was", ""), ("words", "other way"), ("do", "none")));
        Assert.Contains("touch R\nCall 3-4: none\n\nPart B", await TextAsync(page));
        await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "4"), ("section", "0"), ("from", "3"), ("counts", "2"), ("was", ""), ("words", ""), ("do", "steps")));
        Assert.Equal(Text, await TextAsync(page));
    }

    [Fact]
    public async Task On_the_last_counts_of_a_part_a_call_is_for_one_dancing_of_it()
    {
        var page = await studio.AddAsync(Text);
        using var forms = new Forms(studio);
        await forms.SendAsync($"/calls/{page}/change", $"/dance/{page}/calls", Form(("version", "1"), ("section", "1"), ("from", "15"), ("counts", "2"), ("was", ""), ("words", "now walk"), ("do", "change")));
        var text = await TextAsync(page);
        Assert.Contains("\nCall 7-8, 2nd time: now walk\n", text);
        var calls = DanceReader.Read(text).Calls.Calls;
        Assert.Equal([15], calls.Where(c => c.Words == "now walk").Select(c => c.From));
    }

    [Fact]
    public async Task A_call_for_one_dancer_or_for_both_is_written_so_that_it_is_heard_by_them()
    {
        var page = await studio.AddAsync(Couple);
        using var forms = new Forms(studio);
        var room = $"/dance/{page}/calls";
        await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "1"), ("section", "0"), ("first", "3"), ("last", "4"), ("role", ""), ("words", "back home"), ("do", "change")));
        // The part ends among the follow's lines, so that it has to say whose it is.
        Assert.EndsWith("Call 3-4, both: back home\n", await TextAsync(page));
        await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "2"), ("section", "0"), ("from", "3"), ("counts", "2"), ("was", ""), ("role", "lead"), ("words", "back home"), ("do", "change")));
        Assert.EndsWith("Call 3-4, lead: back home\n", await TextAsync(page));
        await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "3"), ("section", "-1"), ("from", "-1"), ("counts", "2"), ("was", ""), ("role", ""), ("words", "off we go"), ("do", "change")));
        var opening = Assert.Single(DanceReader.Read(await TextAsync(page)).Calls.Opening);
        Assert.Equal(("off we go", (Role?)null, true), (opening.Words, opening.Role, opening.Written));
    }

    [Fact]
    public async Task What_cannot_be_a_call_and_what_is_older_than_the_page_changes_nothing()
    {
        var page = await studio.AddAsync(Text);
        using var forms = new Forms(studio);
        var room = $"/dance/{page}/calls";
        Assert.Contains("These counts are not in the dance.", await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "1"), ("section", "0"), ("first", "7"), ("last", "9"), ("words", "on"), ("do", "change"))));
        Assert.Contains("Write what is called", await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "1"), ("section", "0"), ("from", "3"), ("counts", "2"), ("words", " "), ("do", "change"))));
        Assert.Contains("The dance was changed meanwhile.", await forms.SendAsync($"/calls/{page}/change", room, Form(("version", "0"), ("section", "0"), ("from", "3"), ("counts", "2"), ("words", "on"), ("do", "change"))));
        Assert.Equal(Text, await TextAsync(page));
    }

    [Fact]
    public async Task The_call_sheet_leads_there_and_a_long_call_is_remarked_on()
    {
        var page = await studio.AddAsync(Text);
        using var forms = new Forms(studio);
        Assert.Matches(Way(), await forms.PageAsync($"/dance/{page}/print?sheet=calls"));
        var answer = await forms.SendAsync($"/calls/{page}/change", $"/dance/{page}/calls", Form(("version", "1"), ("section", "0"), ("from", "3"), ("counts", "2"), ("was", ""), ("words", "now everybody to the left"), ("do", "change")));
        Assert.Contains("\"now everybody to the left\" has 8 syllables, and its counts leave time for 3.", answer);
    }

    [GeneratedRegex("<a href=\"/dance/[0-9]+/calls\">Change the calls</a>")]
    private static partial Regex Way();
}
