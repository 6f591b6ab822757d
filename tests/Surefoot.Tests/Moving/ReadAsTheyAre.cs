using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;

namespace Surefoot.Tests.Moving;

/// <summary>Actions look like what they are: what a teacher would see at once. Common practice, no source.</summary>
public class ReadAsTheyAre
{
    [Fact]
    public void A_kick_stretches_the_leg_and_a_hitch_does_not()
    {
        var (kick, hitch) = (Dance("1-2  Step L, kick R"), Dance("1-2  Step L, hitch R"));
        // Length of the leg from hip to sole against what it could be: hips and ankles by the published fractions of the body's table.
        Assert.InRange(Leg(kick, 2), 0.92, 1.0);
        Assert.InRange(Leg(hitch, 2), 0.4, 0.75);
    }

    [Fact]
    public void A_foot_that_locks_stands_past_the_other_and_does_not_tread_on_it()
    {
        var behind = Feet(Dance("1-2  Step forward L, lock behind R"), 2);
        Assert.True(behind.Right.Left > behind.Left.Left + 0.05, $"{behind}");
        Assert.True(behind.Right.Ahead < behind.Left.Ahead - 0.08, $"{behind}");
        var front = Feet(Dance("1-2  Step back L, lock in front R"), 2);
        Assert.True(front.Right.Left > front.Left.Left + 0.05, $"{front}");
        Assert.True(front.Right.Ahead > front.Left.Ahead + 0.08, $"{front}");
    }

    [Fact]
    public void Weight_that_comes_back_to_a_locked_foot_does_not_push_the_body_aside()
    {
        var moved = Dance("1-4  Step forward R, lock behind L, rock forward R, recover L");
        Assert.InRange(Math.Abs(moved.At(4).Middle.Y - moved.At(2).Middle.Y), 0, 1e-9);
    }

    [Theory]
    [InlineData("1-2  Step forward L, pivot ½ right")]
    [InlineData("1-2  Step forward R, pivot ½ left")]
    public void Half_a_pivot_ends_with_feet_nearly_in_line(string line)
    {
        var feet = Feet(Dance(line), 2);
        // Left of right would be usual; a little past it is in line, a hip's width past it crossed.
        Assert.InRange(feet.Left.Left - feet.Right.Left, -0.07, 0.1);
        Assert.True(Math.Abs(feet.Left.Ahead - feet.Right.Ahead) > 0.3, $"{feet}");
    }

    [Fact]
    public void Heels_part_and_come_together_again()
    {
        var moved = Dance("1-2  Heel splits");
        Assert.InRange(moved.At(1).Left.Angle - moved.At(1).Right.Angle, -60, -40);
        Assert.Equal(0, moved.At(2).Left.Angle - moved.At(2).Right.Angle, 1e-9);
        var toes = Dance("1-2  Toe splits");
        Assert.InRange(toes.At(1).Left.Angle - toes.At(1).Right.Angle, 40, 60);
    }

    [Fact]
    public void A_sway_goes_over_the_foot_also_where_feet_are_closed()
    {
        var moved = Dance("1-2  Sway L, sway R");
        var (one, other) = (moved.At(1).Middle, moved.At(2).Middle);
        Assert.InRange((one - other).Length, 0.08, 0.15);
        Assert.Equal(moved.At(0).Left.At, moved.At(2).Left.At);
    }

    private static MovingDancer Dance(string line)
    {
        var reading = DanceReader.Read($"Sheet\nKind: line\nPhrase: any\n\n{line}\n");
        return MovingDance.Of(reading.Score, reading.Motion, reading.Couple).Dancers[0];
    }

    private static ((double Ahead, double Left) Left, (double Ahead, double Left) Right) Feet(MovingDancer dancer, double count)
    {
        var at = dancer.At(count);
        return (Seen(at.Left.At), Seen(at.Right.At));

        (double Ahead, double Left) Seen(Spot foot)
        {
            var (way, looks) = (foot - at.Middle, new Facing((int)Math.Round(at.Angle / 45)));
            return ((way.X * looks.Cosine) + (way.Y * looks.Sine), (way.Y * looks.Cosine) - (way.X * looks.Sine));
        }
    }

    // Handbook: hip height 0.53 of stature, the ankle 0.039 above the sole (Drillis and Contini); the leg reaches from one to the other.
    private static double Leg(MovingDancer dancer, double count)
    {
        const double Stature = Body.ReferenceStature, Hip = 0.53, Ankle = 0.039;
        var (foot, at) = (dancer.At(count).Right, Feet(dancer, count).Right);
        return Math.Sqrt((at.Ahead * at.Ahead) + Math.Pow((Hip * Stature) - foot.Up - (Ankle * Stature), 2)) / ((Hip - Ankle) * Stature);
    }
}
