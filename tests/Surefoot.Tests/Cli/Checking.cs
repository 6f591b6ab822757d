using System.Text;
using System.Text.Json.Nodes;
using Json.Schema;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Cli;

public class Checking
{
    private const string Good = """
        Wagon Wheel Walk
        Kind: line, 1 wall
        Phrase: any

        1-4  Rocking chair R
        5-8  Jazz box R, together
        """;

    private const string Bad = """
        Lantern Swing
        Kind: partner, circle
        Hold: sweetheart
        Feet: same, left free
        Phrase: any

        Part A  Rocks and shuffles  (8 counts)
        1-2    Rock forward L, recover R
        3&4    Shuffle back L R L
        5-6    Rock back L, recover R
        7&8    Shuffle forward R L R
        """;

    [Fact]
    public void A_good_page_exits_with_0()
    {
        using var notebook = new Asked.Notebook();
        Assert.Equal(0, Asked.For("check", notebook.Write("good.dance", Good)).Exit);
    }

    [Fact]
    public void A_problem_is_shown_with_its_words_underlined_and_a_way_out()
    {
        using var notebook = new Asked.Notebook();
        var asked = Asked.For("check", notebook.Write("bad.dance", Bad));
        Assert.Equal(1, asked.Exit);
        Assert.Contains("error  weight-same-foot", asked.Out);
        Assert.Contains("  5-6    Rock back L, recover R\n         ^^^^^^^^^^^\n", asked.Out);
        Assert.Contains("weight is already on the left foot", asked.Out);
        Assert.Contains("Did you mean: Rock back R, recover L", asked.Out);
        Assert.DoesNotContain("\u001b", asked.Out);
    }

    [Fact]
    public void What_cannot_be_read_exits_with_2_and_says_so_and_the_rest_is_checked()
    {
        using var notebook = new Asked.Notebook();
        var asked = Asked.For("check", Path.Combine(notebook.Folder, "nowhere.dance"), notebook.Write("bad.dance", Bad));
        Assert.Equal(2, asked.Exit);
        Assert.Contains("nowhere.dance", asked.Err);
        Assert.Contains("weight-same-foot", asked.Out);
    }

    [Fact]
    public void Old_encodings_are_told_apart_in_plain_words()
    {
        using var notebook = new Asked.Notebook();
        var file = Path.Combine(notebook.Folder, "old.dance");
        File.WriteAllBytes(file, Encoding.Latin1.GetBytes("Caf\u00e9 Waltz\n1-3 Waltz basic L\n"));
        var asked = Asked.For("check", file);
        Assert.Equal(2, asked.Exit);
        Assert.Contains("UTF-8", asked.Err);
        Assert.DoesNotContain("Exception", asked.Err);
    }

    [Fact]
    public void A_folder_is_checked_whole_with_the_halls_own_figures()
    {
        var asked = Asked.For("check", Root.At("demo", "dances"));
        Assert.Equal(0, asked.Exit);
        Assert.Contains("22 pages", asked.Out);
    }

    [Fact]
    public void Sure_fixes_are_shown_and_then_written_and_nothing_else_is_touched()
    {
        using var notebook = new Asked.Notebook();
        var file = notebook.Write("slip.dance", "\uFEFF" + Good.Replace("Rocking", "Rockingg").ReplaceLineEndings("\r\n") + "\r\n> Rockingg stays in a note.\r\n");
        var asked = Asked.For("check", "--fix", file);
        var bytes = File.ReadAllBytes(file);
        var text = File.ReadAllText(file);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        Assert.Contains("1-4  Rocking chair R\r\n", text);
        Assert.Contains("> Rockingg stays in a note.\r\n", text);
        Assert.Contains("Rocking chair R", asked.Out);
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void The_json_follows_its_schema(string page)
    {
        var schema = JsonSchema.FromFile(Root.At("docs", "check.schema.json"));
        var json = JsonNode.Parse(Asked.For("check", "--json", Root.At(page)).Out)!;
        var result = schema.Evaluate(json, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", result.Details.Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void The_steps_follow_their_schema(string page)
    {
        var schema = JsonSchema.FromFile(Root.At("docs", "steps.schema.json"));
        var json = JsonNode.Parse(Asked.For("steps", "--json", Root.At(page)).Out)!;
        var result = schema.Evaluate(json, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", result.Details.Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
    }

    [Theory]
    [InlineData("circle/split-rail-cha-cha")]
    [InlineData("line/both-footbridges")]
    [InlineData("line/odd-corner")]
    public void The_calls_follow_their_schema(string page)
    {
        var schema = JsonSchema.FromFile(Root.At("docs", "calls.schema.json"));
        var json = JsonNode.Parse(Asked.For("calls", Root.At("demo", "dances", page + ".dance"), "--json").Out);
        var result = schema.Evaluate(json, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", result.Details.Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
        Assert.NotEmpty(json!["calls"]!.AsArray());
    }

    [Fact]
    public void Calls_are_listed_under_their_parts_for_one_role_or_to_print()
    {
        var page = Root.At("demo", "dances", "circle", "split-rail-cha-cha.dance");
        var all = Asked.For("calls", page).Out;
        Assert.Contains("Part A", all);
        Assert.Contains("follow: ", all);
        var hers = Asked.For("calls", page, "--role", "follow").Out;
        Assert.DoesNotContain("lead: ", hers);
        Assert.Contains("for the follow", hers);
        var sheet = Asked.For("calls", page, "--sheet").Out;
        Assert.StartsWith("<!DOCTYPE html>", sheet);
        Assert.Contains("<title>Calls for Split Rail Cha-Cha</title>", sheet);
    }

    [Fact]
    public void A_page_without_a_dance_has_no_calls_and_says_so()
    {
        using var notebook = new Asked.Notebook();
        var asked = Asked.For("calls", notebook.Write("empty.dance", "Empty\n"));
        Assert.Equal(2, asked.Exit);
        Assert.Contains("no dance to call", asked.Err);
    }

    [Fact]
    public void Sheets_that_were_read_follow_their_schema()
    {
        var schema = JsonSchema.FromFile(Root.At("docs", "read.schema.json"));
        var sheets = Directory.GetFiles(Root.At("corpus", "sheets"), "*.txt");
        var json = JsonNode.Parse(Asked.For(["read", "--json", .. sheets]).Out)!;
        var result = schema.Evaluate(json, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", result.Details.Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
        Assert.Equal(sheets.Length, json["sheets"]!.AsArray().Count);
    }

    [Fact]
    public void A_sheet_that_was_read_is_written_beside_and_never_over_a_page()
    {
        using var notebook = new Asked.Notebook();
        var sheet = notebook.Write("old.txt", File.ReadAllText(Root.At("corpus", "sheets", "numbered-list.txt")));
        Asked.For("read", "--write", sheet);
        var page = Path.ChangeExtension(sheet, ".dance");
        var written = File.ReadAllText(page);
        Assert.Contains("8      R touches beside left", written);
        File.WriteAllText(page, "Mine\n");
        Assert.Contains("a page of that name", Asked.For("read", "--write", sheet).Err);
        Assert.Equal("Mine\n", File.ReadAllText(page));
        Assert.Contains("nothing in it", Asked.For("read", notebook.Write("empty.txt", "  \n")).Err);
        Assert.Contains("not a document", Asked.For("read", notebook.Write("packed.docx", "PK\u0003\u0004 nothing")).Err);
    }

    [Fact]
    public void Sheets_are_read_with_the_hall_s_own_words()
    {
        using var notebook = new Asked.Notebook();
        var sheet = notebook.Write("old.txt", "Gate Post\n\n1-4 Walk right, left, right, frobble\n5-8 Walk left, right, left, frobble\n");
        var words = notebook.Write("hall-words.rules", "> ours\nfrobble => hitch\n");
        var asked = Asked.For("read", sheet, "--words", words);
        Assert.Equal(0, asked.Exit);
        Assert.Contains("Walk right, left, right, hitch", asked.Out, StringComparison.Ordinal);
        Assert.Contains("assumed: \"frobble\" is \"hitch\", the hall's own word (lines 3, 4).", asked.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("Not understood", asked.Err, StringComparison.Ordinal);
        var json = JsonNode.Parse(Asked.For("read", "--json", sheet, "--words", words).Out)!;
        Assert.True(JsonSchema.FromFile(Root.At("docs", "read.schema.json")).Evaluate(json).IsValid);
        Assert.Equal([3, 4], json["sheets"]![0]!["words"]!.AsArray().Select(w => (int)w!["line"]!));
        Assert.Contains("the hall's own word", (string)json["sheets"]![0]!["lines"]![2]!["assumed"]![0]!, StringComparison.Ordinal);
        var broken = Asked.For("read", sheet, "--words", notebook.Write("broken.rules", "no arrow\nfrobble => hitch\n"));
        Assert.Equal(2, broken.Exit);
        Assert.Contains("broken.rules, line 1:", broken.Err, StringComparison.Ordinal);
        Assert.Contains("hitch", broken.Out, StringComparison.Ordinal);
        Assert.Equal(2, Asked.For("read", sheet, "--words", Path.Combine(notebook.Folder, "none.rules")).Exit);
    }

    [Fact]
    public void The_json_says_what_the_issue_of_a_page_is_and_where()
    {
        using var notebook = new Asked.Notebook();
        var page = JsonNode.Parse(Asked.For("check", "--json", notebook.Write("bad.dance", Bad)).Out)!["pages"]![0]!;
        Assert.Equal("Lantern Swing", (string)page["title"]!);
        Assert.Equal(8, (int)page["counts"]!);
        var problem = page["problems"]![0]!;
        Assert.Equal(("weight-same-foot", "error", 10, 8, 11), ((string)problem["name"]!, (string)problem["severity"]!, (int)problem["line"]!, (int)problem["column"]!, (int)problem["length"]!));
        Assert.Equal("5", (string)problem["count"]!);
        var edits = problem["fixes"]![0]!["edits"]!.AsArray();
        Assert.Equal(2, edits.Count);
        Assert.Equal((10, 18, 1, "R"), ((int)edits[0]!["line"]!, (int)edits[0]!["column"]!, (int)edits[0]!["length"]!, (string)edits[0]!["text"]!));
    }

    [Fact]
    public void The_steps_run_from_1_through_the_dance_with_the_trades_facings()
    {
        using var notebook = new Asked.Notebook();
        var steps = JsonNode.Parse(Asked.For("steps", "--json", notebook.Write("bad.dance", Bad)).Out)!;
        Assert.Equal("4/4", (string)steps["meter"]!);
        var follow = steps["roles"]!.AsArray().Single(r => (string)r!["role"]! == "follow")!["steps"]!.AsArray();
        Assert.Equal(["1", "2", "3", "3&", "4", "5", "6", "7", "7&", "8"], follow.Select(s => (string)s!["count"]!));
        Assert.All(follow, step => Assert.Equal("LOD", (string)step!["facing"]!));
    }

    [Theory]
    [InlineData("weight-same-foot")]
    [InlineData("phrase")]
    public void A_problem_can_be_explained(string name)
    {
        var asked = Asked.For("explain", name);
        Assert.Equal(0, asked.Exit);
        Assert.Contains(name, asked.Out);
        Assert.DoesNotContain("```", asked.Out);
    }

    [Fact]
    public void Every_problem_is_listed() =>
        Assert.All(Dance.Checks.AllChecks.List, check => Assert.Contains(check.Name, Asked.For("explain").Out));

    [Fact]
    public void Words_tells_everything_and_one_figure_from_either_foot()
    {
        var all = Asked.For("words").Out;
        foreach (var figure in Dance.Figures.FigureBook.Shipped.All) Assert.Contains(figure.Name, all);
        var sailor = Asked.For("words", "sailor").Out;
        Assert.Contains("behind", sailor);
        Assert.Contains("left", sailor);
        Assert.Contains("right", sailor);
    }

    [Theory]
    [InlineData("chek")]
    [InlineData("check")]
    [InlineData("sheet", "--colour")]
    [InlineData("explain", "wieght-lost")]
    public void A_slip_of_the_hand_is_answered_in_plain_words(params string[] typed)
    {
        var asked = Asked.For(typed);
        Assert.Equal(2, asked.Exit);
        Assert.NotEmpty(asked.Err + asked.Out);
        Assert.DoesNotContain("Exception", asked.Err);
        Assert.DoesNotContain("   at ", asked.Err);
    }

    [Fact]
    public void Tidy_prints_the_page_in_its_usual_form()
    {
        using var notebook = new Asked.Notebook();
        var asked = Asked.For("tidy", notebook.Write("odd.dance", "Odd One\nKIND:line, 1 wall\n1–2 RK FWD R,REC L\n3 – 4 tch R tog , HOLD\n"));
        Assert.Contains("Kind: line, 1 wall\n", asked.Out);
        Assert.Contains("1-2    rock forward R, recover L\n", asked.Out, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_folder_of_sheets_has_a_list_to_open()
    {
        using var notebook = new Asked.Notebook();
        notebook.Write("good.dance", Good);
        var into = Path.Combine(notebook.Folder, "sheets");
        Assert.Equal(0, Asked.For("sheet", notebook.Folder, "--out", into).Exit);
        Assert.Contains("Wagon Wheel Walk", File.ReadAllText(Path.Combine(into, "index.html")));
        Assert.True(File.Exists(Path.Combine(into, "good.html")));
    }

    public static TheoryData<string> Everything =>
        [.. Root.Pages("demo").Concat(Root.Pages("corpus", "published")).Concat(Root.Pages("corpus", "page")).Select(p => Path.GetRelativePath(Root.Folder, p))];
}
