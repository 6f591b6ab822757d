using System.Text.Json.Nodes;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Tests.Cli;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Sheets;

/// <summary>What the program itself prints of couples that were solved.</summary>
public class AskedForSheets
{
    private static readonly string Quilt = Root.At("demo", "dances", "circle", "folded-quilt.dance");
    private static readonly string Rail = Root.At("demo", "dances", "circle", "split-rail-cha-cha.dance");

    [Theory]
    [InlineData("--text", "+ on 1& raise")]
    [InlineData("--markdown", "+ *on 1& raise")]
    public void A_sheet_has_what_the_hands_have_to_do(string form, string line)
    {
        var asked = Asked.For("sheet", Quilt, form);
        Assert.Equal(0, asked.Exit);
        Assert.Contains(line, asked.Out);
    }

    [Fact]
    public void The_printed_sheet_has_it_too()
    {
        using var notebook = new Asked.Notebook();
        var file = Path.Combine(notebook.Folder, "quilt.html");
        Assert.Equal(0, Asked.For("sheet", Quilt, "--out", file).Exit);
        Assert.Contains("<tr class=\"ours\">", File.ReadAllText(file));
    }

    [Fact]
    public void Pictures_show_the_couple_as_solved_and_not_each_alone()
    {
        using var notebook = new Asked.Notebook();
        var file = Path.Combine(notebook.Folder, "rail.svg");
        Assert.Equal(0, Asked.For("draw", Rail, "--out", file).Exit);
        var (solved, alone) = (DemoNotebook.Read(Path.Combine("circle", "split-rail-cha-cha.dance")), DanceReader.Read(File.ReadAllText(Rail)));
        Assert.True(solved.Couple!.Effort > 0, "usual steps would do, so this dance shows nothing");
        var drawn = File.ReadAllText(file).Trim();
        Assert.Equal(FootPicture.SvgOfDance(solved.Score, solved.Motion).Trim(), drawn);
        Assert.NotEqual(FootPicture.SvgOfDance(alone.Score, alone.Motion).Trim(), drawn);

        var sheet = Path.Combine(notebook.Folder, "rail.html");
        Assert.Equal(0, Asked.For("sheet", Rail, "--out", sheet).Exit);
        Assert.Equal(HtmlSheet.Write(solved.Score, solved.Motion, new(), solved.Couple), File.ReadAllText(sheet));
    }

    [Theory]
    [InlineData("split-rail-cha-cha", "27", "one hand", true, "left-right low")]
    [InlineData("split-rail-cha-cha", "20", "wrap", true, "left-right low, right-left low")]
    [InlineData("split-rail-cha-cha", "30", "lead’s left and follow’s right hand joined overhead, on the way", false, "left-right overhead")]
    [InlineData("beeskep-waltz", "39", "lead’s left and follow’s right hand joined overhead, follow in front of lead", false, "left-right overhead")]
    public void Steps_tell_the_hold_and_the_hands_at_every_count(string dance, string count, string hold, bool named, string hands)
    {
        var json = JsonNode.Parse(Asked.For("steps", "--json", Root.At("demo", "dances", "circle", dance + ".dance")).Out)!;
        var all = json["roles"]!.AsArray().SelectMany(r => r!["steps"]!.AsArray()).ToList();
        Assert.All(all, step => Assert.NotEmpty((string)step!["hold"]!));
        var steps = all.Where(s => (string)s!["count"]! == count).ToList();
        Assert.NotEmpty(steps);
        Assert.All(steps, step =>
        {
            Assert.Equal((hold, named), ((string)step!["hold"]!, (bool)step["named"]!));
            Assert.Equal(hands, string.Join(", ", step["hands"]!.AsArray().Select(h => $"{h!["lead"]}-{h["follow"]} {h["height"]}")));
        });
    }

    [Fact]
    public void Whoever_dances_alone_holds_nothing()
    {
        var asked = Asked.For("steps", "--json", Root.At("demo", "dances", "line", "odd-corner.dance"));
        Assert.DoesNotContain("\"hold\":", asked.Out);
        Assert.DoesNotContain("  hold\n", Asked.For("steps", Root.At("demo", "dances", "line", "odd-corner.dance")).Out);
    }

    [Fact]
    public void The_table_of_steps_names_the_hold_where_it_changes()
    {
        var lines = Asked.For("steps", Rail).Out.Split('\n');
        var from = Array.FindIndex(lines, l => l.StartsWith("Part C", StringComparison.Ordinal));
        Assert.EndsWith("  hold", lines[from + 2]);
        Assert.EndsWith("  two hands", lines[from + 3]);
        Assert.EndsWith("  left", lines[from + 4]);
        Assert.EndsWith("  one hand", lines[from + 5]);
        Assert.Equal(Holds.All.Count(h => h.Name == "one hand"), lines.Count(l => l.EndsWith("  one hand", StringComparison.Ordinal)));
    }
}
