using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web;

/// <summary>What the studio answers about a text, compared with reading the same text here.</summary>
public class Reading(Studio studio) : IClassFixture<Studio>
{
    public static TheoryData<string> Dances => DemoNotebook.Dances;

    public static TheoryData<string> Mistakes => DemoNotebook.Mistakes;

    [Theory]
    [MemberData(nameof(Mistakes))]
    public async Task Problems_stand_where_the_reader_puts_them(string mistake)
    {
        var reading = DemoNotebook.ReadMistake(mistake);
        using var known = await Ask(reading.Page.Source.Text);
        var told = known.RootElement.GetProperty("problems").EnumerateArray().ToList();
        Assert.Equal(reading.Problems.Count, told.Count);
        for (var i = 0; i < told.Count; i++)
        {
            var problem = reading.Problems[i];
            Assert.Equal(problem.Name, told[i].GetProperty("name").GetString());
            Assert.Equal(problem.Message, told[i].GetProperty("message").GetString());
            Assert.Equal(problem.Span, TextSpan.Between(told[i].GetProperty("from").GetInt32(), told[i].GetProperty("to").GetInt32()));
            Assert.Equal(problem.Fixes.Select(f => f.Title), told[i].GetProperty("fixes").EnumerateArray().Select(f => f.GetProperty("title").GetString()!));
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public async Task Every_step_has_its_count_and_its_words(string dance)
    {
        var reading = DemoNotebook.Read(dance);
        using var known = await Ask(reading.Page.Source.Text);
        var places = known.RootElement.GetProperty("places").EnumerateArray().Select(p => (p.GetProperty("role").GetString(), p.GetProperty("at").GetDouble(), p.GetProperty("from").GetInt32(), p.GetProperty("to").GetInt32())).ToList();
        var steps = reading.Score.Roles.SelectMany(r => r.Steps.Select(s => ((string?)r.Role.Word(), s.At.Value.ToDouble(), s.Source.Start, s.Source.End))).ToList();
        Assert.Equal(steps, places);
    }

    [Fact]
    public async Task Every_figure_and_word_of_the_book_is_offered()
    {
        using var lists = JsonDocument.Parse(await studio.Http.GetStringAsync(studio.Address + "/words.json"));
        var spellings = lists.RootElement.GetProperty("words").EnumerateArray()
            .SelectMany(w => w.GetProperty("spellings").EnumerateArray().Select(s => (w.GetProperty("group").GetString(), s.GetString()))).ToHashSet();
        Assert.All(FigureBook.Shipped.All.SelectMany(f => f.OtherNames.Prepend(f.Name)), name => Assert.Contains(("figure", name), spellings));
        Assert.All(FigureBook.Shipped.Rows.Where(r => r.Kind == "verb").SelectMany(r => r.Spellings), word => Assert.Contains(("step", word.TrimStart('=')), spellings));
        // The hall's own figures too.
        Assert.Contains(("figure", "mill wheel"), spellings);
        Assert.Equal("stomp", lists.RootElement.GetProperty("forms").GetProperty("stomped").GetString());
    }

    private async Task<JsonDocument> Ask(string text)
    {
        using var answer = await studio.Http.PostAsync($"{studio.Address}/live/tests-of-reading?number=1", new StringContent(text));
        Assert.True(answer.IsSuccessStatusCode, $"{answer.StatusCode}");
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
    }
}
