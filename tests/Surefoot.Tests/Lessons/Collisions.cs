using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Sheets;

namespace Surefoot.Tests.Lessons;

/// <summary>Wishes that cannot all be kept.</summary>
public class Collisions
{
    private const string Two = "Short\nFrom: 12 January 2027\nUntil: 30 March 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\n";

    // By 19 January there are two lessons of 32 new counts. Salt Lick has 40 to learn, Both Footbridges 36, Dinner Bell Six 24.
    [Fact]
    public void Two_dances_for_which_there_is_only_room_for_one_collide_and_the_third_is_not_blamed()
    {
        var plan = Terms.Plan(Two + "Salt Lick Cha-Cha, by 19 January\nSecond Gatepost, by 30 March\nBoth Footbridges, by 19 January\n");
        var collision = Assert.Single(plan.Collisions);
        var both = new[] { plan.Case.Course("Salt Lick Cha-Cha").Index, plan.Case.Course("Both Footbridges").Index };
        Assert.Equal(both.Order(), collision.With.Append(collision.GivenUp).Order());
        // Given up is the date and not the dance, and the plan says when instead.
        Assert.NotNull(collision.Instead);
        PlanChecker.Check(plan);
        var says = LessonWords.Of(plan.Case, collision);
        Assert.Contains("These cannot all be kept: ", says);
        Assert.Contains("76 new counts", says);
        Assert.Contains("2 lessons", says);
        Assert.Contains("room for 64 new counts", says);
    }

    [Fact]
    public void Without_any_one_of_what_collides_the_others_can_be_kept()
    {
        const string wishes = "Salt Lick Cha-Cha, by 26 January\nBoth Footbridges, by 26 January\nLamp Room Supper, by 26 January\nDinner Bell Six, by 26 January\nSecond Gatepost, by 30 March\n";
        var plan = Terms.Plan(Two + wishes);
        Assert.NotEmpty(plan.Collisions);
        var collision = plan.Collisions[0];
        foreach (var one in collision.With.Append(collision.GivenUp))
        {
            var others = collision.With.Append(collision.GivenUp).Where(o => o != one).Select(o => plan.Case.Courses[o].Dance.Title);
            Assert.Empty(Terms.Plan(Two + string.Concat(others.Select(o => $"{o}, by 26 January\n"))).Collisions);
        }
    }

    [Fact]
    public void A_wish_that_cannot_be_kept_even_by_itself_is_told_by_itself()
    {
        var plan = Terms.Plan(Two + "Salt Lick Cha-Cha, by 12 January\nSecond Gatepost, by 30 March\n");
        var collision = Assert.Single(plan.Collisions);
        Assert.Empty(collision.With);
        Assert.StartsWith("This cannot be kept even by itself: Salt Lick Cha-Cha by 12 January.", LessonWords.Of(plan.Case, collision));
        Assert.Equal(new DateOnly(2027, 1, 19), collision.Instead);
    }

    [Fact]
    public void What_comes_before_a_dance_is_part_of_its_wish()
    {
        // Each alone fits into two lessons; one after the other they do not.
        var plan = Terms.Plan(Two + "Lamp Room Supper\nDinner Bell Six, by 12 January, after Lamp Room Supper\n");
        Assert.Equal(plan.Case.Course("Dinner Bell Six").Index, Assert.Single(plan.Collisions).GivenUp);
    }

    [Fact]
    public void A_dance_without_a_wish_date_is_left_out_where_there_is_no_room()
    {
        var plan = Terms.Plan("Short\nFrom: 12 January 2027\nUntil: 20 January 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nSalt Lick Cha-Cha, by 19 January\nBoth Footbridges\n");
        Assert.Empty(plan.Collisions);
        Assert.Equal(plan.Case.Course("Both Footbridges").Index, Assert.Single(plan.LeftOut).Course);
    }
}
