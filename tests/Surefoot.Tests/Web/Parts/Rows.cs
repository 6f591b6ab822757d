using Bunit;
using Surefoot.Dance.Basics;
using Surefoot.Web.Components.Parts;

namespace Surefoot.Tests.Web.Parts;

/// <summary>What the shelf says of one dance.</summary>
public class Rows : Part
{
    private IRenderedComponent<DanceRow> Row(Surefoot.Library.ShelfItem dance, int? at = null, string? notebook = null) =>
        Render<DanceRow>(p => p.Add(r => r.Dance, dance).Add(r => r.At, at).Add(r => r.Notebook, notebook));

    [Fact]
    public void A_dance_is_a_way_to_it_with_its_facts_and_a_menu_named_for_it()
    {
        var row = Row(Dance(couples: true, floor: Floor.Track, walls: null));
        Assert.Equal(["link Bent Nail", "disclosure More to do with Bent Nail", "link Names, songs, files", "button Copy", "button Move to the bin"], Heard(row));
        Assert.Equal("/dance/7", row.Find(".called > a").GetAttribute("href"));
        Assert.Equal(["Couples, circle", "beginner", "32 counts, 4/4", "100–110 a minute", "Clean"], row.FindAll(".dance > span").Select(s => s.TextContent));
    }

    [Theory]
    [InlineData(0, 0, "Clean")]
    [InlineData(0, 1, "1 warning")]
    [InlineData(0, 3, "3 warnings")]
    [InlineData(1, 4, "1 place cannot be danced")]
    [InlineData(2, 0, "2 places cannot be danced")]
    public void How_sound_it_is_is_said_in_words(int errors, int warnings, string says)
    {
        Assert.Equal(says, Row(Dance(errors: errors, warnings: warnings)).Find(".state").TextContent);
    }

    [Theory]
    [InlineData(1, "Line, 1 wall")]
    [InlineData(4, "Line, 4 walls")]
    [InlineData(null, "Line")]
    public void A_line_dance_says_its_walls(int? walls, string says)
    {
        Assert.Equal(says, Row(Dance(walls: walls)).Find(".kind").TextContent);
    }

    [Theory]
    [InlineData(100, 110, "100–110 a minute")]
    [InlineData(108, 108, "108 a minute")]
    [InlineData(null, 96, "96 a minute")]
    [InlineData(null, null, "")]
    public void A_tempo_is_said_as_far_as_it_is_known(int? from, int? to, string says)
    {
        Assert.Equal(says, Row(Dance(from: from, to: to)).Find(".tempo").TextContent);
    }

    [Fact]
    public void Other_names_tags_the_place_and_the_notebook_stand_beside_the_name()
    {
        var row = Row(Dance(also: ["The Nail", "Crooked"], tags: ["Tuesdays & more"]), at: 9, notebook: "Autumn");
        Assert.Equal(["also The Nail, Crooked", "from count 9"], row.FindAll(".also").Select(s => s.TextContent));
        // Where something was found the page opens.
        Assert.Equal("/dance/7?count=9", row.Find(".called a").GetAttribute("href"));
        Assert.Contains("Autumn", row.Find(".marks").TextContent);
        Assert.Equal("/?tag=Tuesdays%20%26%20more", row.Find("a.tag").GetAttribute("href"));
        Assert.Empty(Row(Dance()).FindAll(".also, .marks"));
    }

    [Fact]
    public void A_page_without_a_title_is_called_by_its_name()
    {
        Assert.Contains("link sunday/dance-7", Heard(Row(Dance(title: ""))));
    }

    [Fact]
    public void Names_and_tags_are_words_whatever_they_look_like()
    {
        NothingActs(Row(Dance(title: Harm, also: [Harm], tags: [Harm], level: Harm), notebook: Harm));
    }
}
