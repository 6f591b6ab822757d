using Surefoot.Dance;
using Surefoot.Likeness;
using Surefoot.Tests.Cli;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Likeness;

/// <summary>Two dances laid side by side: what is said of them, on pages written for it.</summary>
public class Twins
{
    private const string Head = "Kind: line, 4 walls\nFeet: left free\nPhrase: any\n";

    private const string A = "\nPart A  (8 counts)\n1-4  Vine left, scuff R\n5-8  Vine right, touch L\n";

    private const string B = "\nPart B  (8 counts)\n1-2  Rock forward L, recover R\n3&4  Coaster step L\n5-6  Step forward R, pivot ½ left\n7-8  Stomp R, hold\n";

    // Ends ready for the left foot, as it began.
    private const string C = "\nPart C  (8 counts)\n1-2  Heel forward L, step L together\n3-4  Heel forward R, step R together\n5-8  Jazz box L, step R together\n";

    private static Verdict Told(string first, string second) => Verdict.Of(DanceReader.Read(first).Score, DanceReader.Read(second).Score);

    [Fact]
    public void The_same_steps_under_two_names_are_one_dance()
    {
        var told = Told("Lamp Oil\n" + Head + A + C, "Barrel Lid\n" + Head + A.Replace("Part A", "Section 1").Replace("5-8  Vine right, touch L", "5-6 step R to the side, step L behind R\n7-8  step R to the side, touch L together") + C);
        Assert.Equal((VerdictKind.Same, "The same dance under another name."), (told.Kind, told.Says));
        Assert.Equal(1, told.Compared.Share);
    }

    [Theory]
    [InlineData("ABA", "ACB")]
    [InlineData("AAB", "ACCB")]
    [InlineData("BAC", "BCA")]
    [InlineData("BAC", "ABCA")]
    public void What_is_danced_elsewhere_is_not_shown_as_missing_as_well(string first, string second)
    {
        var parts = new Dictionary<char, string> { ['A'] = A, ['B'] = B, ['C'] = C };
        string Page(string order) => "Lamp Oil\n" + Head + string.Concat(order.Select((part, i) => parts[part].Replace($"Part {part}", $"Section {i + 1}", StringComparison.Ordinal)));
        var rows = Told(Page(first), Page(second)).Compared.Rows;
        var beside = rows.Where(r => r.First is not null).Select(r => r.Second).OfType<int>().ToHashSet();
        Assert.DoesNotContain(rows, r => r.First is null && beside.Contains(r.Second!.Value));
        // And none is missing.
        Assert.Equal(8 * second.Length, rows.Select(r => r.Second).OfType<int>().Distinct().Count());
    }

    [Fact]
    public void A_dance_begun_on_the_other_foot_is_told_as_such()
    {
        var told = Told("Lamp Oil\n" + Head + A + C, "Lamp Oil\n" + Mirror(Head + A + C));
        Assert.Equal("The same dance, begun on the other foot.", told.Says);
    }

    [Fact]
    public void A_dance_that_begins_its_repeat_elsewhere_is_the_same_going_round()
    {
        var told = Told("Lamp Oil\n" + Head + A + C, "Barrel Lid\n" + Head + C + A);
        Assert.Equal("The same dance under another name, begun 8 counts later in the repeat.", told.Says);
    }

    [Fact]
    public void A_version_says_in_how_many_counts_it_differs()
    {
        var told = Told("Lamp Oil\n" + Head + A + C, "Barrel Lid\n" + Head + A.Replace("scuff R", "touch R") + C.Replace("3-4  Heel forward R, step R together", "3-4  Kick R forward, stomp R"));
        Assert.Equal((VerdictKind.Variant, "A variant: differs in 3 counts."), (told.Kind, told.Says));
        Assert.Equal([Fate.Near], told.Compared.Rows.Where(r => r.First == 3).Select(r => r.Fate));
    }

    [Fact]
    public void A_shared_part_is_named_in_both_dances()
    {
        var told = Told("Lamp Oil\n" + Head + A + C, "Barrel Lid\n" + Head + "\nPart A  (8 counts)\n1-4  Charleston L\n5-8  Charleston L\n" + C.Replace("Part C", "Part B") + "\nPart C  (8 counts)\n1-4 Walk back L, R, L, R\n5-8 Walk forward L, R, L, R\n");
        Assert.Equal((VerdictKind.SharesPart, "Shares Part C (there Part B)."), (told.Kind, told.Says));
    }

    [Fact]
    public void Dances_that_share_nothing_are_called_others()
    {
        var told = Told("Lamp Oil\n" + Head + A, "Barrel Lid\n" + Head + B);
        Assert.Equal(VerdictKind.Different, told.Kind);
        Assert.Equal(VerdictKind.Different, Told("Lamp Oil\n" + Head + A, "Barrel Lid\n" + Head).Kind);
    }

    [Fact]
    public void Counts_that_were_put_in_stand_alone_and_what_follows_is_alike_again()
    {
        var (first, second) = (DanceReader.Read("Lamp Oil\n" + Head + A + C).Score, DanceReader.Read("Barrel Lid\n" + Head + A + "\nPart X  (2 counts)\n1-2  Stomp L, stomp R\n" + C).Score);
        var compared = Verdict.Of(first, second).Compared;
        Assert.Equal((16, 16, 2), (compared.AlikeInFirst, compared.AlikeInSecond, compared.Differing));
        Assert.Equal([16, 17], compared.Rows.Where(r => r.Fate == Fate.Alone).Select(r => r.Second!.Value + 8));
        var laid = LaidOut.Of(first, second, compared);
        Assert.Equal([("Part A, 1 to 8", "Part A, 1 to 8"), (null, "Part X, 1"), (null, "Part X, 2"), ("Part C, 1 to 8", "Part C, 1 to 8")], laid.Select(l => (l.First, l.Second)));
        Assert.Equal("L stomp", laid[1].SecondWords.Replace(" in place", ""));
    }

    [Fact]
    public void A_long_stretch_of_one_dance_alone_is_one_line()
    {
        var (first, second) = (DanceReader.Read("Lamp Oil\n" + Head + A + C).Score, DanceReader.Read("Barrel Lid\n" + Head + A + B + C).Score);
        var alone = Assert.Single(LaidOut.Of(first, second, Verdict.Of(first, second).Compared), l => l.Fate == Fate.Alone);
        Assert.Equal((8, null, "Part B, 1 to 8", ""), (alone.Counts, alone.First, alone.Second, alone.SecondWords));
    }

    [Fact]
    public void No_count_of_either_dance_is_missing_side_by_side()
    {
        foreach (var (a, b) in DemoPairs())
        {
            var compared = Verdict.Of(a, b).Compared;
            Assert.Equal(Enumerable.Range(0, compared.FirstLength), compared.Rows.Select(r => r.First).OfType<int>());
            Assert.Equal(Enumerable.Range(0, compared.SecondLength), compared.Rows.Select(r => r.Second).OfType<int>().Distinct().Order());
        }
    }

    [Fact]
    public void Compare_and_like_can_be_typed()
    {
        using var notebook = new Asked.Notebook();
        var lamp = notebook.Write("lamp.dance", "Lamp Oil\n" + Head + A + C);
        var barrel = notebook.Write("barrel.dance", "Barrel Lid\n" + Head + A + C.Replace("Jazz box L, step R together", "Walk forward L, R, L, R"));
        notebook.Write("other.dance", "Gate Post\n" + Head + B);
        var compared = Asked.For("compare", lamp, barrel);
        Assert.Equal(0, compared.Exit);
        Assert.Contains("A variant: differs in 4 counts.", compared.Out, StringComparison.Ordinal);
        Assert.Contains("Part A, 1 to 8", compared.Out, StringComparison.Ordinal);
        var like = Asked.For("like", lamp, "--among", notebook.Folder);
        Assert.Equal(0, like.Exit);
        Assert.Contains("Barrel Lid", like.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Gate Post", like.Out, StringComparison.Ordinal);
        var learn = Asked.For("learn", lamp, "--knows", barrel);
        Assert.Contains("The dancer learns 16 of 16 counts, taken 8 at a time", learn.Out, StringComparison.Ordinal);
        Assert.Contains("you know 8 from the dance you know", learn.Out, StringComparison.Ordinal);
        Assert.Equal(2, Asked.For("compare", lamp).Exit);
    }

    private static IEnumerable<(Dance.Scoring.DanceScore, Dance.Scoring.DanceScore)> DemoPairs()
    {
        var scores = Root.Pages("demo", "dances").Select(p => DanceReader.Read(File.ReadAllText(p)).Score).Where(s => s.Counts.Ceiling > 0).ToList();
        Assert.True(scores.Count > 15);
        return scores.SelectMany(a => scores.Where(b => b != a).Select(b => (a, b)));
    }

    internal static string Mirror(string page) => System.Text.RegularExpressions.Regex.Replace(page, @"\b(L|R|left|right)\b", m => m.Value switch { "L" => "R", "R" => "L", "left" => "right", _ => "left" });
}
