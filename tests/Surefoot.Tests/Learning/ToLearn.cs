using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;
using Surefoot.Tests.Properties;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Learning;

/// <summary>What there is to learn, reckoned by hand on small dances and compared.</summary>
public class ToLearn
{
    private const string Head = "A page\nKind: line, 1 wall\nFeet: left free\nPhrase: any\n";

    // Five eights of which no two share three counts in a row, each back on the left foot.
    private static readonly string[] Eights =
    [
        "1-2  Rock forward L, recover R\n3-4  Rock back L, recover R\n5-8  Step forward L, scuff R, step forward R, scuff L\n",
        "1-4  Vine left, touch R together\n5-8  Vine right, touch L together\n",
        "1-2  Heel forward L, hook L\n3&4  Shuffle forward L R L\n5-6  Heel forward R, hook R\n7&8  Shuffle forward R L R\n",
        "1-2  Step forward L, pivot ½ right\n3-4  Stomp L, stomp R\n5-6  Sway left, sway right\n7-8  Step back L, step R together\n",
        "1-2  Cross L over R, point R to the side\n3-4  Cross R over L, point L to the side\n5-6  Walk back L, R\n7&8  Coaster step L\n&  Step R together\n",
    ];

    private static LearningLoad Load(string page, int? bite = null, Role role = Role.Dancer) => LearningLoad.Of(DanceReader.Read(page).Score, role, bite);

    private static string Later(string lines, int by) => System.Text.RegularExpressions.Regex.Replace(
        lines, "^[0-9&-]+", m => System.Text.RegularExpressions.Regex.Replace(m.Value, "[0-9]+", n => $"{int.Parse(n.Value) + by}"), System.Text.RegularExpressions.RegexOptions.Multiline);

    // Handbook "Length and learning" (common practice, no source): five 16-count parts, each an 8 danced twice, are 80 long and 40 to learn.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Five_sixteens_of_doubled_eights_are_80_counts_and_40_to_learn(bool written)
    {
        var page = Head + string.Concat(Eights.Take(4).Append("1-2  Step L to the side, hold\n3-4  Step R together, clap\n5-8  Walk forward L R L R\n")
            .Select((eight, i) => $"\nPart {(char)('A' + i)}  (16 counts)\n{eight}{(written ? "Repeat 1-8\n" : Later(eight, 8))}"));
        var load = Load(page);
        Assert.Equal((80, 40, 0, 0), (load.Counts, load.New, load.Mirrored, load.Changed));
    }

    [Fact]
    public void Where_nothing_comes_twice_every_count_is_to_learn()
    {
        var load = Load(Head + string.Concat(Eights.Take(4).Select((eight, i) => $"\nPart {i + 1}\n{eight}")));
        Assert.Equal((32, 32, 0), (load.Counts, load.New, load.Mirrored));
    }

    [Fact]
    public void One_eight_over_and_over_is_eight_counts_to_learn_wherever_it_is_written()
    {
        var load = Load(Head + $"\nPart A\n{Eights[1]}\nPart B\n{Eights[1]}\nPart C\n{Eights[1]}{Later(Eights[1], 8)}");
        Assert.Equal((32, 8, 0), (load.Counts, load.New, load.Mirrored));
    }

    [Fact]
    public void An_eight_on_the_other_foot_is_told_apart_from_new_ones()
    {
        const string Left = "1-4  Vine left, touch R together\n5-6  Step forward R, touch L\n7&8  Shuffle forward L R L\n";
        const string Right = "9-12  Vine right, touch L together\n13-14  Step forward L, touch R\n15&16  Shuffle forward R L R\n";
        var load = Load(Head + Left + Right);
        Assert.Equal((16, 8, 8), (load.Counts, load.New, load.Mirrored));
    }

    [Fact]
    public void A_variation_costs_the_counts_that_differ()
    {
        var load = Load(Head + Eights[0] + Later(Eights[0], 8).Replace("scuff L", "stomp L"));
        Assert.Equal((16, 9, 1), (load.Counts, load.New, load.Changed));
    }

    [Fact]
    public void In_smaller_bites_there_is_less_that_is_new()
    {
        // One bar, its mirror image, and the first again: eight counts that are new as a whole.
        const string Page = Head + "1-4  Vine left, touch R together\n5-8  Vine right, touch L together\n";
        Assert.Equal((8, 0), (Load(Page, 8).New, Load(Page, 8).Mirrored));
        Assert.Equal((4, 4), (Load(Page, 4).New, Load(Page, 4).Mirrored));
    }

    [Fact]
    public void Each_role_has_its_own_load()
    {
        const string Page = "Two\nKind: partner, circle\nHold: sweetheart\nFeet: same, left free\nPhrase: any\n\nPart A\n1-4  Walk forward L R L R\n5-8  Rocking chair L\n\nPart B\n1-8  Lead: walk forward L R L R, rock forward L, recover R, rock back L, recover R. Follow: walk back L R L R, walk forward L R L R\n";
        Assert.Equal((8, 16), (Load(Page, role: Role.Lead).New, Load(Page, role: Role.Follow).New));
    }

    [Fact]
    public void Who_knows_other_dances_knows_what_they_share_with_this_one()
    {
        static DanceScore Dance(params int[] eights) => DanceReader.Read(Head + string.Concat(eights.Select((e, i) => $"\nPart {i + 1}\n{Eights[e]}"))).Score;
        var dance = Dance(0, 1, 2, 3);
        Assert.Equal((32, 24), LearningLoad.Of(dance, Role.Dancer, null, [Dance(0), Dance(3, 2)]) is var load ? (load.New, load.Known) : default);
        Assert.Equal(0, LearningLoad.Of(dance, Role.Dancer, null, [Dance(4)]).Known);
        Assert.Equal("Of these 32 counts you know 24 from the 2 dances you know.", Assert.Single(LearningWords.Known(dance, [Dance(0), Dance(3, 2)])));
    }

    [Fact]
    public void No_more_is_new_than_there_is_and_smaller_bites_are_never_more() => RandomPages.Any.Each(page =>
    {
        var score = DanceReader.Read(page).Score;
        foreach (var role in score.Roles)
        {
            var sizes = LearningLoad.AtEverySize(score, role.Role);
            Assert.All(sizes, l => Assert.InRange(l.New + l.Mirrored, 0, l.Counts));
            Assert.True(sizes[0].New <= sizes[^1].New, page);
            Assert.Equal(sizes[^1].New, LearningLoad.Of(score, role.Role, null, [score]) is var known ? known.Known : 0);
        }
    });

    [Fact]
    public void A_page_danced_twice_has_no_more_to_learn() => RandomPages.Eight.Array[1, 3].Each(eights =>
    {
        var once = Head + RandomPages.Parts(eights);
        // Where a part does not end on the foot it began on, dancing it again is its mirror image.
        if (DanceReader.Read(once).Score.Roles[0] is var role && (role.End.Weight != role.Start.Weight || role.Steps.Any(s => s.Conflict is not Conflict.None))) return;
        var keys = string.Join(' ', eights.Select((_, i) => (char)('A' + i)));
        Assert.Equal(Load(once).New, Load(once.Replace("Phrase: any\n", $"Phrase: any\nOrder: {keys} {keys}\n")).New);
    });

    [Fact]
    public void The_sheet_says_in_its_opening_how_much_is_new()
    {
        var text = TextSheet.Write(DanceReader.Read(Head + $"\nPart A\n{Eights[1]}\nPart B\n{Eights[1]}").Score, new()).ReplaceLineEndings(" ");
        Assert.Contains("16 counts in two parts, of which 8 are to learn", text, StringComparison.Ordinal);
        Assert.Equal(40, LearningLoad.Of(DemoNotebook.Read(Path.Combine("circle", "five-barns.dance")).Score, Role.Lead).New);
    }
}
