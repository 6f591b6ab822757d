using System.Text.Json;
using Json.Schema;
using Surefoot.Draw;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Cli;

/// <summary>surefoot motion, surefoot floor and surefoot draw --count, as somebody types them.</summary>
public class Moving
{
    public static TheoryData<string> Dances => DemoNotebook.Dances;

    private static string Page(string dance) => Root.At("demo", "dances", dance);

    [Theory]
    [MemberData(nameof(Dances))]
    public void The_motion_follows_its_schema(string dance)
    {
        var asked = Asked.For("motion", Page(dance), "--json", "--rate", "20");
        Assert.Equal(0, asked.Exit);
        using var json = JsonDocument.Parse(asked.Out);
        var schema = JsonSchema.FromFile(Root.At("docs", "motion.schema.json"));
        var result = schema.Evaluate(json.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("\n", (result.Details ?? []).Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
        var root = json.RootElement;
        var samples = root.GetProperty("samples").GetInt32();
        Assert.Equal(MotionFile.Fields, root.GetProperty("fields").EnumerateArray().Select(f => f.GetString()!));
        foreach (var dancer in root.GetProperty("dancers").EnumerateArray()) Assert.Equal(samples * MotionFile.Fields.Count, dancer.GetProperty("values").GetArrayLength());
        // As long as the dance is at its tempo, and one count more.
        var seconds = (root.GetProperty("counts").GetDouble() + 1) * 60 / root.GetProperty("tempo").GetInt32();
        Assert.InRange((samples - 1) / 20.0, seconds - 1e-9, seconds + 0.05);
    }

    [Fact]
    public void A_number_that_is_none_is_answered_in_words()
    {
        var asked = Asked.For("motion", Page("circle/weathervane.dance"), "--json", "--rate", "fast");
        Assert.Equal(2, asked.Exit);
        Assert.Equal("After --rate comes a whole number from 1 to 240, not \"fast\".\n", asked.Err);
    }

    [Theory]
    [InlineData("12x18")]
    [InlineData("40x60ft")]
    [InlineData("12,5 × 18 m")]
    [InlineData("3x3")]
    [InlineData(null)]
    public void The_floor_follows_its_schema(string? room)
    {
        var schema = JsonSchema.FromFile(Root.At("docs", "floor.schema.json"));
        foreach (var dance in (string[])["circle/weathervane.dance", "line/odd-corner.dance"])
        {
            var asked = room is null ? Asked.For("floor", Page(dance), "--json") : Asked.For("floor", Page(dance), "--json", "--room", room);
            Assert.Equal(0, asked.Exit);
            using var json = JsonDocument.Parse(asked.Out);
            Assert.True(schema.Evaluate(json.RootElement).IsValid, asked.Out);
        }
    }

    [Theory]
    [InlineData("12")]
    [InlineData("0x18")]
    [InlineData("big")]
    [InlineData("12x18x3")]
    public void A_room_that_is_none_is_answered_in_words(string room)
    {
        var asked = Asked.For("floor", Page("circle/weathervane.dance"), "--room", room);
        Assert.Equal(2, asked.Exit);
        Assert.Contains("such as 12x18", asked.Err);
    }

    [Fact]
    public void The_floor_defers_to_local_codes_once()
    {
        var asked = Asked.For("floor", Page("circle/weathervane.dance"), "--room", "12x18");
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(asked.Out, "local codes"));
        Assert.Contains("Table 1004.5", asked.Out);
        Assert.Contains("332 people", asked.Out);
    }

    [Theory]
    [InlineData("15")]
    [InlineData("3&")]
    [InlineData("&3")]
    [InlineData("1")]
    [InlineData("64")]
    public void Any_count_can_be_drawn(string count)
    {
        var asked = Asked.For("draw", Page("circle/weathervane.dance"), "--count", count);
        Assert.Equal(0, asked.Exit);
        var picture = System.Xml.Linq.XDocument.Parse(asked.Out);
        Assert.Equal("svg", picture.Root!.Name.LocalName);
        Assert.Contains("Count", picture.Descendants().First(e => e.Name.LocalName == "desc").Value);
    }

    [Fact]
    public void A_count_is_that_of_the_part_where_one_is_named()
    {
        var (whole, part) = (Asked.For("draw", Page("circle/weathervane.dance"), "--count", "19"), Asked.For("draw", Page("circle/weathervane.dance"), "--part", "B", "--count", "3"));
        Assert.Equal(whole.Out, part.Out);
    }

    [Theory]
    [InlineData("65")]
    [InlineData("0")]
    [InlineData("soon")]
    [InlineData("-3")]
    public void A_count_that_is_none_is_answered_in_words(string count)
    {
        var asked = Asked.For("draw", Page("circle/weathervane.dance"), "--count", count);
        Assert.Equal(2, asked.Exit);
        Assert.DoesNotContain("stumbled", asked.Err);
    }
}
