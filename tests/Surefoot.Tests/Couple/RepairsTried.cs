using CsCheck;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;
using Surefoot.Tests.Properties;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>What would mend a place that cannot be reached: offered only when it does.</summary>
public class RepairsTried
{
    private const string SheRocks = "1-4  Lead: walk forward L R L R. Follow: rock forward L, recover R, rock back L, recover R\n5-8  Walk forward L R L R";

    [Theory]
    [InlineData(SheRocks, "let the lead step on the spot on counts 1 to 4, or give the follow two shuffles forward on counts 1 to 4.")]
    [InlineData("1-4  Lead: walk forward L R L R. Follow: walk back L R L R\n5-8  Walk forward L R L R", "let the follow step forward instead of back on counts 1 to 4, or let the lead step on the spot on counts 1 to 4.")]
    [InlineData("1-2  Lead: step forward L 0.7 m, step forward R 0.7 m. Follow: step forward L 0.2 m, step forward R 0.2 m\n3-4  Walk forward L R", "let the lead take steps of a fitting length on counts 1 to 2 instead of the length named, or let the lead step on the spot on counts 1 to 2.")]
    public void Are_told_the_most_modest_first(string steps, string told)
    {
        var problem = Assert.Single(Read(Page("sweetheart", "same, left free", steps)).Problems, p => p.Name == "hold-place");
        Assert.EndsWith("What would mend it: " + told, problem.Reason);
    }

    [Fact]
    public void Hands_are_let_go_where_both_come_back_to_each_other()
    {
        var problem = Assert.Single(Read(Page("two hands", "opposite, lead left free", "1-4  Lead: vine left, touch R. Follow: step across R, step side L, step across R, touch together L\n5-8  Lead: vine right, touch L. Follow: step across L, step side R, step across L, touch together R", "lead inside, follow outside")).Problems);
        Assert.EndsWith(", or let go of the hands on count 1 and take them again on count 6.", problem.Reason);
    }

    [Fact]
    public void The_figures_are_those_of_the_tables()
    {
        var place = Assert.Single(Read(Page("sweetheart", "same, left free", SheRocks)).Couple!.Impossible);
        var shortfall = place.Shortfall!;
        Assert.Equal(Role.Lead, shortfall.Role);
        Assert.True(shortfall.TooFar);
        // Four walks of 0.15 m at least for 1.70 m, by a lead of 1.75 m.
        Assert.Equal(4 * 0.15 * 1.75 / 1.70, shortfall.Limit, 0.001);
        // She may be 0.15 m from the middle of the hold on one side and then on the other, at a mean stature of 1.69 m; her rocks bring her nowhere.
        Assert.Equal(2 * 0.15 * 1.69 / 1.70, shortfall.Needed, 0.001);
        var problem = Assert.Single(Read(Page("sweetheart", "same, left free", SheRocks)).Problems);
        Assert.StartsWith("Four steps forward take the lead at least 0.6 m, but to stay with the follow the lead may come only 0.3 m.", problem.Reason);
    }

    [Fact]
    public void A_couple_that_leaves_its_lane_is_shown_as_it_dances()
    {
        var reading = Read(Page("sweetheart", "same, left free", "1  Step forward L ¼ left\n2-5  Walk forward R L R L\n6-9  Walk forward R L R L\n10  Step together R ¼ right"));
        Assert.Equal(OutOfPlaceKind.Track, Assert.Single(reading.Couple!.Impossible).Kind);
        Assert.Equal(reading.Couple.Motion, reading.Motion);
        // As little as may be: eight walks as short as they get, not the four metres of usual ones.
        Assert.True(reading.Motion.Of(Role.Lead)!.Travel.Y < 2);
        Assert.Contains(Assert.Single(reading.Problems).Fixes, f => f.Title == "Let both dancers step back instead of forward on counts 6 to 9");
    }

    [Fact]
    public void Every_edit_offered_mends_what_it_is_offered_for()
    {
        var offered = 0;
        Gen.Select(Gen.Int[0, Fours.Length - 1], Gen.Int[0, Fours.Length - 1]).Array[2, 4].Each(
            fours =>
            {
                var text = Page("sweetheart", "same, left free", string.Concat(fours.Select((f, i) => $"{(4 * i) + 1}-{(4 * i) + 4}  Lead: {Fours[f.Item1]}. Follow: {Fours[f.Item2]}\n")));
                foreach (var problem in Read(text).Problems)
                {
                    if (problem.Name is not ("hold-place" or "loop-place")) continue;
                    var place = Read(text).Couple!.Impossible[0];
                    foreach (var fix in problem.Fixes)
                    {
                        Assert.Equal(Sureness.Idea, fix.Sureness);
                        Interlocked.Increment(ref offered);
                        var mended = Read(TextEdits.Apply(text, fix.Edits)).Couple!;
                        if (place.Repairs[0].Whole) Assert.True(place.Kind == OutOfPlaceKind.Track ? mended.Impossible.Count == 0 : mended.InPlace);
                        else Assert.True(mended.InPlace || mended.Impossible[0].At > place.At);
                    }
                }
            },
            iter: 200);
        Assert.True(offered > 10, $"{offered} offered");
    }

    // All end on the foot on which they began.
    private static readonly string[] Fours =
    [
        "walk forward L R L R", "walk forward L R L R", "walk back L R L R", "step in place L R L R", "rock forward L, recover R, rock back L, recover R",
        "step forward L 0.8 m, step forward R 0.8 m, step forward L, step forward R", "coaster step L, coaster step R",
    ];
}
