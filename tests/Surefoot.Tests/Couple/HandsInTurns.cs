using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Tests.Support;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>What hands do while somebody turns, or both do. Common practice, no source.</summary>
public class HandsInTurns
{
    [Theory]
    [InlineData("circle/pebble-fence-polka.dance", Pairs.RightLeft, 19, 22)]
    [InlineData("circle/kettle-lid-shuffle.dance", Pairs.RightRight, 17, 18)]
    [InlineData("circle/kettle-lid-shuffle.dance", Pairs.RightRight, 29, 30)]
    [InlineData("circle/five-barns.dance", Pairs.RightRight, 49, 52)]
    public void Hands_go_up_with_the_first_step_of_a_turn_and_are_up_until_she_is_round(string dance, Pairs pair, int from, int to)
    {
        var couple = DemoNotebook.Read(dance).Couple!;
        var track = couple.Hands!.Pairs.Single(p => p.Pair == pair);
        for (var m = 0; m < couple.Moments.Count; m++)
        {
            var at = couple.Moments[m].At;
            if (at >= Count.At(from) && at < Count.At(to)) Assert.Equal(HandHeight.Raised, track.Heights[m]);
        }
    }

    [Fact]
    public void A_hold_stated_of_words_that_are_danced_again_is_theirs_again()
    {
        var couple = DemoNotebook.Read("circle/kettle-lid-shuffle.dance").Couple!;
        foreach (var count in new[] { 18, 26 }) Assert.Equal("right side to right side", At(couple, count).Where.Hold);
        foreach (var count in new[] { 22, 30 }) Assert.Equal("sweetheart", At(couple, count).Where.Hold);
    }

    [Fact]
    public void What_was_stated_of_other_words_is_not_asked_where_they_cannot_be_so()
    {
        var page = Page("sweetheart", "same, left free", "1-4  Walk forward L R L R (sweetheart)\n5-6  Walk forward L R, release both hands\n7-8  Walk forward L R\n9-12  Repeat 1-4\n13-16  Walk forward L R L R, take both hands (sweetheart)");
        var reading = Read(page);
        Assert.DoesNotContain(reading.Problems, p => p.Name == "hold-claim");
        Assert.NotEqual("sweetheart", At(reading.Couple!, 12).Where.Hold);
    }

    [Fact]
    public void Two_who_turn_as_one_stay_as_near_as_their_hold_has_them()
    {
        var couple = DemoNotebook.Read("circle/weathervane.dance").Couple!;
        Assert.Equal(new Turn(4), At(couple, 52).Lead - At(couple, 48).Lead);
        foreach (var moment in couple.Moments.Where(m => m.At >= Count.At(48) && m.At <= Count.At(57))) Assert.InRange(Seen(couple, moment).Length, 0.25, 0.6);
        Assert.All(couple.Hands!.Pairs, p => Assert.DoesNotContain(HandHeight.Raised, couple.Moments.Select((m, i) => m.At > Count.At(48) ? p.Heights[i] : null)));
    }

    [Fact]
    public void Who_takes_both_hands_after_a_turn_has_both_and_lets_go_when_the_page_says_so()
    {
        var couple = DemoNotebook.Read("circle/split-rail-cha-cha.dance").Couple!;
        var track = couple.Hands!.Pairs.Single(p => p.Pair == Pairs.LeftRight);
        HandHeight? HeightAt(int count) => track.Heights[couple.Moments.ToList().FindLastIndex(m => m.At <= Count.At(count))];
        Assert.NotNull(HeightAt(32));
        Assert.Null(HeightAt(33));
    }

    [Fact]
    public void Hands_are_as_high_as_the_hold_has_them()
    {
        var couple = DemoNotebook.Read("circle/kettle-lid-shuffle.dance").Couple!;
        foreach (var track in couple.Hands!.Pairs)
        {
            for (var m = 0; m < couple.Moments.Count; m++)
            {
                if (!couple.Moments[m].Turning && couple.Moments[m].Where.Hold is ("sweetheart" or "left sweetheart") && track.Heights[m] is { } height) Assert.Equal(HandHeight.Shoulder, height);
            }
        }
    }

    [Fact]
    public void Hands_stay_up_between_the_halves_of_a_turn()
    {
        var couple = DemoNotebook.Read("circle/kettle-lid-shuffle.dance").Couple!;
        var track = couple.Hands!.Pairs.Single(p => p.Pair == Pairs.RightRight);
        var between = couple.Moments.Select((moment, m) => (moment, track.Heights[m])).Where(m => m.moment.At > Count.At(17) && m.moment.At < Count.At(22)).ToList();
        Assert.Contains(between, m => m.moment.Where.Hold == "right side to right side");
        Assert.All(between, m => Assert.Equal(HandHeight.Raised, m.Item2));
        // Down again where they walk on.
        Assert.Equal(HandHeight.Shoulder, track.Heights[couple.Moments.ToList().FindLastIndex(m => m.At <= Count.At(23))]);
    }

    private static Moment At(CoupleSolution couple, int count) => couple.Moments.Last(m => m.At <= Count.At(count));
}
