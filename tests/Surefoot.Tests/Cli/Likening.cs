using System.Text.Json.Nodes;
using Json.Schema;
using Surefoot.Library;
using Surefoot.Library.Sqlite;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Cli;

/// <summary>What is like a dance, in a folder and in a library; and the same for other programs.</summary>
public class Likening
{
    private const string Head = "Kind: line, 4 walls\nFeet: left free\nPhrase: any\n";

    private const string Lamp = "Lamp Oil\n" + Head + "\nPart A  (8 counts)\n1-4  Vine left, scuff R\n5-8  Vine right, touch L\n\nPart C  (8 counts)\n1-2  Heel forward L, step L together\n3-4  Heel forward R, step R together\n5-8  Jazz box L, step R together\n";

    private static readonly string Barrel = Lamp.Replace("Lamp Oil", "Barrel Lid").Replace("Jazz box L, step R together", "Walk forward L, R, L, R");

    [Fact]
    public async Task A_library_is_asked_about_a_page_of_the_disk_and_about_its_own_dances()
    {
        using var notebook = new Asked.Notebook();
        var page = notebook.Write("lamp.dance", Lamp);
        var file = await LibraryAsync(notebook, Barrel, "Gate Post\n" + Head + "\n1-4  Charleston L\n");
        var asked = Asked.For("like", page, "--library", file);
        Assert.Equal(0, asked.Exit);
        Assert.Contains("Like Lamp Oil, of 2 other dances:", asked.Out, StringComparison.Ordinal);
        Assert.Contains("Barrel Lid  (The hall, barrel-lid). A variant: differs in 4 counts.", asked.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Gate Post", asked.Out, StringComparison.Ordinal);

        // As the studio answers beside the dance itself.
        await LibraryAsync(notebook, Lamp);
        asked = Asked.For("like", "lamp oil", "--library", file);
        Assert.Contains("Like Lamp Oil, of 2 other dances:", asked.Out, StringComparison.Ordinal);
        using var library = await DanceLibrary.OpenAsync(new SqliteStore(file));
        var lamp = (await library.Catalogue.ListAsync(new())).Dances.Single(d => d.Title == "Lamp Oil").Page;
        Assert.Equal((await library.Likes.OfAsync(lamp)).Select(l => l.Verdict.Says), Json("like", "Lamp Oil", "--library", file)["likes"]!.AsArray().Select(l => (string)l!["says"]!));
    }

    [Fact]
    public async Task What_is_not_there_is_said_and_no_library_is_made()
    {
        using var notebook = new Asked.Notebook();
        var nowhere = Path.Combine(notebook.Folder, "nowhere.db");
        var asked = Asked.For("like", notebook.Write("lamp.dance", Lamp), "--library", nowhere);
        Assert.Equal(2, asked.Exit);
        Assert.Contains("there is no such library", asked.Err, StringComparison.Ordinal);
        Assert.False(File.Exists(nowhere));
        Assert.Contains("not a library", Asked.For("like", "Lamp Oil", "--library", notebook.Write("plain.db", "no database at all, whatever it is called")).Err, StringComparison.Ordinal);
        var file = await LibraryAsync(notebook, Barrel);
        Assert.Contains("Did you mean: Barrel Lid", Asked.For("like", "Barel Lid", "--library", file).Err, StringComparison.Ordinal);
        Assert.Contains("say one of the two", Asked.For("like", "Barrel Lid", "--library", file, "--among", ".").Err, StringComparison.Ordinal);
        await LibraryAsync(notebook, Barrel);
        asked = Asked.For("like", "Barrel Lid", "--library", file);
        Assert.Equal(2, asked.Exit);
        Assert.Contains("barrel-lid-2", asked.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_json_of_all_three_follows_its_schema()
    {
        using var notebook = new Asked.Notebook();
        var (lamp, barrel) = (notebook.Write("lamp.dance", Lamp), notebook.Write("barrel.dance", Barrel));
        var compared = Json("compare", lamp, barrel);
        Follows("compare", compared);
        Assert.Equal(("variant", 4, 16), ((string)compared["verdict"]!, (int)compared["differing"]!, (int)compared["first"]!["counts"]!));
        Assert.Equal(16, compared["rows"]!.AsArray().Where(r => r!["first"] is not null).Sum(r => (int)r!["counts"]!));
        var like = Json("like", lamp);
        Follows("like", like);
        Assert.Equal(("Barrel Lid", 1), ((string)like["likes"]![0]!["title"]!, (int)like["others"]!));
        Follows("like", Json("like", lamp, "--library", await LibraryAsync(notebook, Barrel)));
        var learn = Json("learn", lamp, "--knows", barrel);
        Follows("learn", learn);
        Assert.Equal((1, 16, 8), ((int)learn["dancesKnown"]!, (int)learn["roles"]![0]!["bites"]![2]!["new"]!, (int)learn["roles"]![0]!["bites"]![2]!["known"]!));
        foreach (var page in Root.Pages("demo", "dances").Where(p => Path.GetFileName(p) != "figures.dance")) Follows("learn", Json("learn", page));
        Follows("like", Json("like", Root.At("demo", "dances", "circle", "weathervane.dance"), "--among", Root.At("demo", "dances")));
    }

    private static JsonNode Json(params string[] asked) => JsonNode.Parse(Asked.For([.. asked, "--json"]).Out)!;

    private static void Follows(string schema, JsonNode json)
    {
        var result = JsonSchema.FromFile(Root.At("docs", schema + ".schema.json")).Evaluate(json, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", result.Details.Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
    }

    // The hall's library, with more dances in it.
    private static async Task<string> LibraryAsync(Asked.Notebook notebook, params string[] pages)
    {
        var file = Path.Combine(notebook.Folder, "hall.db");
        using var library = await DanceLibrary.OpenAsync(new SqliteStore(file));
        var hall = (await library.Notebooks.AllAsync()) is [var there] ? there : (await library.Notebooks.AddAsync("The hall")).Notebook!;
        foreach (var page in pages) Assert.Null((await library.Pages.AddAsync(hall.Id, page)).Refusal);
        return file;
    }
}
