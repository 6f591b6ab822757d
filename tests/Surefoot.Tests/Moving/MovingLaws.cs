using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Tests.Properties;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Moving;

/// <summary>Between the counts a mirrored or turned dance is the image of the dance: bodies, feet and hands.</summary>
public class MovingLaws
{
    private const int Pages = 100;

    private const double Close = 1e-9;

    [Fact]
    public void The_mirrored_page_moves_as_the_mirror_image() => RandomPages.CircleDance.Each(page =>
    {
        var (here, there) = (Read(page), Read(Mirrored(page)));
        if (!AreMirrored(here.Score, there.Score) || here.Couple!.Impossible.Count > 0 || there.Couple!.Impossible.Count > 0) return;
        Images(here, there, s => s with { Y = -s.Y }, mirrored: true);
    }, iter: Pages);

    [Fact]
    public void A_page_begun_with_another_facing_moves_the_same_turned() => Gen.Select(RandomPages.CircleDance, Gen.Int[1, 7]).Each((page, eighths) =>
    {
        var turned = page.Replace("Facing: line of dance\n", $"Facing: {new Facing(eighths).Name(Floor.Track)}\n");
        // The lane is about the room, not about the couple.
        var anywhere = CoupleLimits.Usual with { Radial = 1000 };
        var (here, there) = (Anywhere(Read(page)), Anywhere(Read(turned)));
        if (here.Couple!.Impossible.Count > 0) return;
        Images(here, there, s => Spot.Origin.Moved(new(eighths), s.X, s.Y), mirrored: false);

        Reading Anywhere(Reading reading)
        {
            var couple = CoupleSolve.Of(reading.Score, Proven, anywhere)!;
            return reading with { Couple = couple, Motion = couple.Motion };
        }
    }, iter: Pages);

    private static void Images(Reading here, Reading there, Func<Spot, Spot> moved, bool mirrored)
    {
        var (one, other) = (MovingDance.Of(here.Score, here.Motion, here.Couple), MovingDance.Of(there.Score, there.Motion, there.Couple));
        for (var now = 0.0; now < one.End; now += 0.3)
        {
            foreach (var dancer in one.Dancers)
            {
                var (a, b) = (dancer.At(now), other.Of(dancer.Role)!.At(now));
                Near(a.Middle, b.Middle, "body");
                Near(a.Left.At, mirrored ? b.Right.At : b.Left.At, "left foot");
                Near(a.Right.At, mirrored ? b.Left.At : b.Right.At, "right foot");
                Assert.Equal(a.Left.Weight, mirrored ? b.Right.Weight : b.Left.Weight, Close);
                var (hands, others) = (one.Hands(dancer.Role, now), other.Hands(dancer.Role, now));
                Near(hands.Left.At, mirrored ? others.Right.At : others.Left.At, "left hand");
                Near(hands.Right.At, mirrored ? others.Left.At : others.Right.At, "right hand");

                void Near(Spot at, Spot image, string what) => Assert.True((moved(at) - image).Length < Close, $"{dancer.Role}'s {what} at {now}: {moved(at)} against {image}");
            }
        }
    }
}
