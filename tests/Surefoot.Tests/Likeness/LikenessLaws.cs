using System.Text.RegularExpressions;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Likeness;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Likeness;

/// <summary>What must hold of likeness, whatever the dances.</summary>
public class LikenessLaws
{
    private static DanceScore Read(string page) => DanceReader.Read(page).Score;

    private static double Share(string a, string b) => Verdict.Of(Read(a), Read(b)).Compared.Share;

    [Fact]
    public void Another_name_other_blanks_and_another_way_of_counting_change_no_likeness() => Gen.Select(RandomPages.Any, RandomPages.Any).Each((page, other) =>
    {
        var share = Share(page, other);
        Assert.Equal(share, Share(Regex.Replace(page, "^A random (dance|circle)", "Quite Another Name"), other), 9);
        Assert.Equal(share, Share(page.Replace(", ", ",  ").Replace("\n\n", "\n\n\n"), other), 9);
        Assert.Equal(share, Share(CountedThrough(page), other), 9);
    });

    [Fact]
    public void Another_wall_to_begin_with_changes_no_likeness() => Gen.Select(RandomPages.LineDance, RandomPages.Any, Gen.Int[1, 3]).Select((a, b, q) => (a, b, q)).Each(all =>
    {
        var (page, other, quarter) = all;
        var clock = ((string[])["12:00", "9:00", "6:00", "3:00"])[quarter];
        Assert.Equal(Share(page, other), Share(page.Replace("Kind: line\n", $"Kind: line\nFacing: {clock}\n"), other), 9);
    });

    [Fact]
    public void A_dance_in_the_mirror_is_the_same_dance() => Gen.Select(RandomPages.Any, RandomPages.Any).Each((page, other) =>
    {
        var (here, there) = (DanceSteps.Of(Read(page)), DanceSteps.Of(Read(other)));
        Assert.Equal(1, Compared.Of(here, here.Mirrored).Share);
        Assert.Equal(Compared.Of(here, there).Share, Compared.Of(here.Mirrored, there).Share, 9);
        Assert.Equal(here.Counts.ToArray(), here.Mirrored.Mirrored.Counts.ToArray());
    });

    [Fact]
    public void It_does_not_matter_which_of_two_comes_first() => Gen.Select(RandomPages.Any, RandomPages.Any).Each((a, b) => Assert.Equal(Share(a, b), Share(b, a), 9));

    [Fact]
    public void A_dance_is_its_own_nearest() => RandomPages.Any.Array[8].Each(pages =>
    {
        var index = new NearestDances();
        var dances = pages.Select(p => DanceSteps.Of(Read(p))).ToList();
        for (var i = 0; i < dances.Count; i++) index.Put(i, dances[i]);
        foreach (var dance in dances)
        {
            var near = index.Ask(dance, 8);
            Assert.Equal(1, near[0].Share);
            Assert.Equal(dance.Counts.ToArray(), Counts(dances[(int)near[0].Key]).Length == dance.Length ? dance.Counts.ToArray() : []);
        }

        static CountOfTwo[] Counts(DanceSteps dance) => dance.Counts.ToArray();
    });

    // Nobody on the random pages fans both feet apart: nothing there is like it.
    private static readonly CountSteps Strange = default(CountSteps)
        .And(1, CountStep.Of(ActionKind.Fan, Direction.Apart, 7, FootUse.Both)).And(3, CountStep.Of(ActionKind.Bounce, Direction.Apart, 5, FootUse.Both));

    [Fact]
    public void Every_further_count_that_is_changed_leaves_less_in_common() => RandomPages.Any.Each(page =>
    {
        var dance = DanceSteps.Of(Read(page));
        var counts = dance.Counts.ToArray();
        var last = 1.0;
        // As long as a passage is left that is long enough to be one.
        for (var at = 0; at < counts.Length - 4; at++)
        {
            counts[at] = new(Strange, Strange);
            var share = Compared.Of(dance, new(counts)).Share;
            Assert.True(share < last, $"{share} after {last}");
            last = share;
        }
    });

    [Fact]
    public void In_whatever_order_counts_are_changed_nothing_comes_nearer() => Gen.Select(RandomPages.Any, Gen.Int[0, 1000]).Each((page, seed) =>
    {
        var dance = DanceSteps.Of(Read(page));
        var counts = dance.Counts.ToArray();
        var last = 1.0;
        foreach (var at in Enumerable.Range(0, counts.Length).OrderBy(i => (i + seed) * 7919 % 1009))
        {
            counts[at] = new(Strange, Strange);
            var share = Compared.Of(dance, new(counts)).Share;
            Assert.True(share <= last, $"{share} after {last}");
            last = share;
        }

        Assert.Equal(0, last);
    });

    [Fact]
    public void What_is_kept_comes_back_as_it_was() => RandomPages.Any.Each(page =>
    {
        var dance = DanceSteps.Of(Read(page));
        Assert.Equal(dance.Counts.ToArray(), DanceSteps.FromBytes(dance.ToBytes()).Counts.ToArray());
    });

    [Fact]
    public void Any_action_is_packed_without_loss() => Gen.Select(Gen.Int[0, 31], Gen.Int[0, 12], Gen.Int[-15, 15], Gen.Int[0, 3]).Each((kind, direction, turn, foot) =>
    {
        if ((ActionKind)kind == ActionKind.Hold) return;
        var step = CountStep.Of((ActionKind)kind, (Direction)direction, turn, (FootUse)foot);
        Assert.Equal(((ActionKind)kind, (Direction)direction, turn, (FootUse)foot), (step.Kind, step.Direction, step.Turn, step.Foot));
        Assert.Equal(step, step.Mirrored.Mirrored);
        Assert.False(step.IsNothing);
    }, iter: 2000);

    // Parts counted on from where the last one ended.
    private static string CountedThrough(string page)
    {
        var before = -8;
        return string.Join('\n', page.Split('\n').Select(line =>
        {
            if (line.StartsWith("Part ", StringComparison.Ordinal)) before += 8;
            return Regex.Replace(line, "^&?[1-8][0-9&-]*(?=  )", m => Regex.Replace(m.Value, "[0-9]+", n => $"{int.Parse(n.Value) + before}"));
        }));
    }
}
