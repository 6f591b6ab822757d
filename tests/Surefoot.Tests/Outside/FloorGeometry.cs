using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Tests.Properties;
using GeometricShapeFactory = NetTopologySuite.Utilities.GeometricShapeFactory;

namespace Surefoot.Tests.Outside;

/// <summary>Outlines, rings and rooms against NetTopologySuite, a general geometry library, and published tables.</summary>
public class FloorGeometry
{
    private static readonly Gen<Outline> AnyOutline =
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-720, 720], Gen.Double[0.05, 0.4], Gen.Double[0.05, 0.4], (x, y, angle, ahead, aside) => new Outline(new(x, y), angle, ahead, aside));

    private static NetTopologySuite.Geometries.Geometry Ellipse(Outline outline)
    {
        var factory = new GeometricShapeFactory { Centre = new(0, 0), Width = 2 * outline.Ahead, Height = 2 * outline.Aside, NumPoints = 240 };
        return AffineTransformation.RotationInstance(outline.Angle * Math.PI / 180).Translate(outline.Middle.X, outline.Middle.Y).Transform(factory.CreateEllipse());
    }

    [Fact]
    public void A_gap_between_two_outlines_is_their_distance() => Gen.Select(AnyOutline, AnyOutline).Each((one, other) =>
    {
        var (gap, distance) = (Outline.Gap(one, other), Ellipse(one).Distance(Ellipse(other)));
        if (distance > 0.02) Assert.Equal(distance, gap, 0.008 + (0.04 * distance));
        else Assert.True(gap < 0.03, $"{gap} for {distance}");
        // And where they share room, no gap is told.
        if (gap > 0.002) Assert.True(distance > 0);
    }, iter: 300);

    [Fact]
    public void Shifted_as_far_as_told_two_outlines_just_touch() => Gen.Select(AnyOutline, AnyOutline).Each((one, other) =>
    {
        var shift = Outline.ClearAhead(one, other);
        if (double.IsInfinity(shift)) return;
        var shifted = other with { Middle = other.Middle + new Spot(shift + 0.001, 0) };
        Assert.False(Ellipse(one).Buffer(-1e-3).Intersects(Ellipse(shifted).Buffer(-1e-3)), $"{shift}");
        // A hand's breadth less is too near, unless they pass beside each other.
        if (Math.Abs(other.Middle.Y - one.Middle.Y) > 0.3) return;
        var nearer = other with { Middle = other.Middle + new Spot(shift - 0.06, 0) };
        Assert.True(Ellipse(one).Intersects(Ellipse(nearer)), $"{shift}");
    }, iter: 300);

    [Fact]
    public void Asked_only_whether_they_are_clear_two_outlines_answer_as_when_asked_how_far() => Gen.Select(AnyOutline, AnyOutline, Gen.Double[-0.3, 0.3]).Each(
        asked =>
        {
            var (one, other, gap) = asked;
            Assert.Equal(Outline.Gap(one, other) >= gap, Outline.IsClear(one, other, gap));
            // What is enough ends the search only where the answer is not more than that.
            var (whole, soon) = (Outline.ClearAhead(one, other), Outline.ClearAhead(one, other, gap));
            if (whole > gap) Assert.Equal(whole, soon);
            else Assert.True(soon <= gap);
        },
        iter: 2000);

    [Theory]
    [InlineData(12, 18, 1.9)]
    [InlineData(9, 9, 1.0)]
    [InlineData(6, 20, 2.5)]
    public void A_lap_is_the_outline_of_the_room_drawn_in_with_round_corners(double one, double other, double inset)
    {
        var ring = Ring.In(new(one, other), inset)!;
        var inner = new GeometryFactory().ToGeometry(new Envelope(inset, one - inset, inset, other - inset));
        var corner = Math.Min(3, (Math.Min(one, other) - (2 * inset)) / 2);
        var round = inner.Buffer(-corner + 1e-6, 128).Buffer(corner - 1e-6, 128);
        Assert.Equal(((Polygon)round).ExteriorRing.Length, ring.Lap, 0.01);
    }

    /// <summary>International Building Code, Table 1004.5 (as printed by the city of Chesapeake): 7 and 15 net square feet; a floor of 42 by 50 feet is 2,100 square feet.</summary>
    [Fact]
    public void The_occupant_load_is_the_area_over_the_published_factor()
    {
        var room = new Room(42 * Room.Foot, 50 * Room.Foot);
        Assert.Equal(300, room.OccupantLoad(7));
        Assert.Equal(140, room.OccupantLoad(15));
        // 7 square feet are 0.65 square metres, as the older text of section 1004.2 has it.
        Assert.Equal(0.65, 7 * Room.Foot * Room.Foot, 0.001);
    }
}
