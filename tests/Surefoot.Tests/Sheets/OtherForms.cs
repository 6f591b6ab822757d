using System.Xml.Linq;
using AngleSharp.Html.Parser;
using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Sheets;

/// <summary>Sheets as text and Markdown, and foot pictures, for every dance of the demo notebook.</summary>
public class OtherForms
{
    public static TheoryData<string> Dances => DemoNotebook.Dances;

    public static TheoryData<string> Mistakes => DemoNotebook.Mistakes;

    [Theory]
    [MemberData(nameof(Dances))]
    public void A_good_dance_has_nothing_to_mend_and_nothing_to_ask(string dance) =>
        Assert.Empty(DemoNotebook.Read(dance).Problems.Select(p => $"{p.Name}: {p.Message}"));

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_page_of_the_mistakes_shows_its_one_mistake(string name)
    {
        var problems = DemoNotebook.ReadMistake(name).Problems;
        Assert.NotEmpty(problems);
        Assert.All(problems, problem => Assert.Equal(name, problem.Name));
    }

    [Fact]
    public void The_notebook_has_at_least_eighteen_dances() => Assert.True(DemoNotebook.Dances.Count >= 18);

    [Theory]
    [MemberData(nameof(Dances))]
    public void As_text_it_fits_a_mail_and_names_every_count(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        var text = TextSheet.Write(reading.Score, new(), reading.Couple);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 78, line));
        foreach (var part in reading.Score.Parts) Assert.Contains(part.Label, text);
        Assert.StartsWith(reading.Score.Title, text);
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void As_markdown_it_has_a_heading_for_every_part(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        var lines = MarkdownSheet.Write(reading.Score, new(), reading.Couple).Split('\n');
        Assert.StartsWith("# ", lines[0]);
        foreach (var part in reading.Score.Parts) Assert.Contains(lines, line => line.StartsWith('#') && line.Contains(part.Label, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Every_foot_picture_is_a_drawing_with_words_for_those_who_cannot_see_it(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        for (var section = 0; section < reading.Score.Sections.Count; section++)
        {
            var svg = XDocument.Parse(FootPicture.Svg(reading.Score, reading.Motion, section));
            XNamespace ns = "http://www.w3.org/2000/svg";
            Assert.Equal(ns + "svg", svg.Root!.Name);
            Assert.NotEmpty(svg.Descendants(ns + "title"));
            var words = string.Concat(svg.Descendants(ns + "desc").Select(d => d.Value));
            foreach (var role in reading.Score.Roles)
            {
                // The description tells every change of weight of the part.
                Assert.True(words.Length > 10 * role.Steps.Count(s => s.Section == section && s.ChangesWeight) / 2, words);
            }
        }
    }

    [Fact]
    public void The_opening_sentence_says_how_much_there_is_to_learn()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "five-barns.dance"));
        var text = TextSheet.Write(reading.Score, new(), reading.Couple).ReplaceLineEndings(" ");
        Assert.Contains("80 counts in five parts, of which 40", string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
    }

    [Fact]
    public void A_title_with_marks_of_the_web_is_only_words()
    {
        var reading = Dance.DanceReader.Read("<b>Bold</b> & \"Plain\"\nKind: line, 1 wall\n\n1-4 Rocking chair R (<script>)\n");
        var html = HtmlSheet.Write(reading.Score, reading.Motion, new());
        var page = new HtmlParser().ParseDocument(html);
        Assert.Equal("<b>Bold</b> & \"Plain\"", page.QuerySelector("h1")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("script, h1 b"));
    }

    [Fact]
    public void One_role_alone_has_that_roles_words_and_what_the_partners_say_of_hands()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "split-rail-cha-cha.dance"));
        var lead = TextSheet.Write(reading.Score, new() { Only = Role.Lead });
        var follow = TextSheet.Write(reading.Score, new() { Only = Role.Follow });
        Assert.NotEqual(lead, follow);
        static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("under his left", follow);
        // He is the one who leads it, so he has to read it.
        Assert.Contains("Step in place R, step in place L (follow: step in place L ¼ right under his left hand, step in place R ¼ right)", Words(lead));
        Assert.Contains("Repeat 1-8\n", lead);
        Assert.Contains("(lead: triple in place L R L, raise left hand)", Words(follow));
        // What is about feet alone stays with whose feet they are.
        Assert.DoesNotContain("lead: rock", follow);
    }
}
