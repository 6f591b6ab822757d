using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Surefoot.Web.Components.Parts;
using Surefoot.Web.Deeds;

namespace Surefoot.Tests.Web.Parts;

/// <summary>What the studio says of what was just done.</summary>
public class Notices : Part
{
    private string Say(Note note)
    {
        // As a form's answer leads to a page: the address names the note.
        var answer = (Microsoft.AspNetCore.Http.HttpResults.RedirectHttpResult)Services.GetRequiredService<Notes>().Say("/", note);
        return answer.Url.Split("note=")[1];
    }

    [Fact]
    public void The_place_is_there_before_anything_is_said()
    {
        var bar = Render<NoteBar>();
        Assert.Equal(["status"], Heard(bar));
        Assert.Equal("", Words(bar));
    }

    [Fact]
    public void A_note_can_be_taken_back_and_comes_back_to_the_same_list()
    {
        var word = Say(new("“Bent Nail” is in the bin.", Undo: "/shelf/back/7"));
        var bar = Render<NoteBar>(p => p.Add(b => b.Word, word).Add(b => b.Back, "/?q=nail&page=2"));
        Assert.Equal(["status “Bent Nail” is in the bin. Undo", "button Undo"], Heard(bar));
        Assert.Equal("/shelf/back/7", bar.Find("form[method=post]").GetAttribute("action"));
        Assert.Equal("/?q=nail&page=2", bar.Find("input[name=back]").GetAttribute("value"));
        Assert.Equal("a-token", bar.Find("input[name=__RequestVerificationToken]").GetAttribute("value"));
    }

    [Fact]
    public void What_asks_first_is_a_way_there_and_not_done_at_once()
    {
        var bar = Render<NoteBar>(p => p.Add(b => b.Word, Say(new("The library is what the copy held.", Undo: "/take/back/ab", UndoSays: "Bring back what was here before"))));
        Assert.Contains("link Bring back what was here before", Heard(bar));
        Assert.Empty(bar.FindAll("form"));
    }

    [Fact]
    public void What_was_not_done_looks_like_it_and_offers_nothing_to_take_back()
    {
        var bar = Render<NoteBar>(p => p.Add(b => b.Word, Say(new("That dance is not there any more.", Bad: true))));
        Assert.Single(bar.FindAll(".note.bad"));
        Assert.Equal(["status That dance is not there any more."], Heard(bar));
    }

    [Fact]
    public void A_title_in_a_note_stays_a_title()
    {
        var bar = Render<NoteBar>(p => p.Add(b => b.Word, Say(new(Harm))));
        NothingActs(bar);
    }

    [Fact]
    public void A_word_nobody_gave_says_nothing()
    {
        Assert.Equal("", Words(Render<NoteBar>(p => p.Add(b => b.Word, "0123456789abcdef"))));
    }
}
