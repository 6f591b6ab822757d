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
    public void What_comes_too_late_is_finished_in_the_next_lesson_before_a_dance_without_a_day()
    {
        var plan = Terms.Plan(Two + "Dinner Bell Six, by 12 January\nLamp Room Supper, by 12 January\nSalt Lick Cha-Cha\nHen House Hurry, by 23 March, after Dinner Bell Six\n");
        var collision = Assert.Single(plan.Collisions);
        Assert.Equal(new DateOnly(2027, 1, 19), collision.Instead);
        // Not blamed for it is what only comes after one of the two.
        Assert.Equal(["Dinner Bell Six", "Lamp Room Supper"], collision.With.Append(collision.GivenUp).Select(c => plan.Case.Courses[c].Dance.Title).Order());
        PlanChecker.Check(plan);
    }

    [Fact]
    public void What_comes_before_a_dance_is_part_of_its_wish()
    {
        // Each alone fits into two lessons; one after the other they do not.
        var plan = Terms.Plan(Two + "Lamp Room Supper\nDinner Bell Six, by 12 January, after Lamp Room Supper\n");
        Assert.Equal(plan.Case.Course("Dinner Bell Six").Index, Assert.Single(plan.Collisions).GivenUp);
    }

    [Fact]
    public void A_dance_that_has_to_wait_for_another_says_so_and_no_sum_that_would_do()
    {
        // 44 of 64 new counts until 19 January: the sum would do, but each needs lessons of its own, one after the other.
        var plan = Terms.Plan(Two + "Both Footbridges\nDinner Bell Six, by 19 January, after Both Footbridges\n");
        var collision = Assert.Single(plan.Collisions);
        Assert.Equal("One comes after the other, in later lessons: Both Footbridges takes 2 lessons and is finished on 19 January at the earliest, Dinner Bell Six takes one lesson and is finished on 26 January at the earliest. Until 19 January 2027 that cannot be.", collision.Why);
        ReasonChecker.Check(plan, collision);
    }

    [Fact]
    public void A_couples_dance_before_the_first_couples_evening_says_that_there_is_none()
    {
        var plan = Terms.Plan("Short\nFrom: 12 January 2027\nUntil: 30 March 2027\nClosed: 13 January to 24 January\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nThursday 19:00, 60 minutes, beginners, couples\nDances\nFive Barns, by 20 January\n");
        Assert.Equal("Five Barns is a couples' dance, and until 20 January 2027 there is no lesson for beginners in which it could be taught; the first is on 28 January 2027.", Assert.Single(plan.Collisions).Why);
    }

    [Fact]
    public void Room_that_would_do_only_if_bites_were_cut_is_not_called_too_little()
    {
        // Two lessons of 20 new counts are room for 40, but a bite of 8 fits twice into each.
        var plan = Terms.Plan("Short\nFrom: 12 January 2027\nUntil: 30 March 2027\nEvenings\nTuesday 19:00, 60 minutes, beginners, line dances, at most 20 new counts\nDances\nSalt Lick Cha-Cha, by 19 January\n");
        var collision = Assert.Single(plan.Collisions);
        Assert.Equal("Salt Lick Cha-Cha by itself takes at least 3 lessons, as its bites fit into them (room for 20 new counts and 55 minutes); until 19 January 2027 there are 2 lessons.", collision.Why);
        ReasonChecker.Check(plan, collision);
    }

    [Fact]
    public void A_reason_speaks_of_the_day_that_is_too_early_and_not_of_a_later_one()
    {
        var plan = Terms.Plan(Two + "Salt Lick Cha-Cha, by 12 January\nSecond Gatepost, by 30 March, after Salt Lick Cha-Cha\n");
        Assert.Equal("It has 40 new counts to learn; until 12 January 2027 there is one lesson, with room for 32 new counts.", Assert.Single(plan.Collisions).Why);
    }

    [Fact]
    public void A_dance_without_a_wish_date_is_left_out_where_there_is_no_room()
    {
        var plan = Terms.Plan("Short\nFrom: 12 January 2027\nUntil: 20 January 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nSalt Lick Cha-Cha, by 19 January\nBoth Footbridges\n");
        Assert.Empty(plan.Collisions);
        Assert.Equal(plan.Case.Course("Both Footbridges").Index, Assert.Single(plan.LeftOut).Course);
    }
}
