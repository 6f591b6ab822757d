using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Outside;

/// <summary>Facings and places against NetTopologySuite's affine transformations, a general geometry library.</summary>
public class Geometry
{
    private const double Close = 1e-9;

    [Fact]
    public void Moving_seen_by_a_dancer_is_a_rotation_and_a_translation() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Int[-40, 40], Gen.Double[-2, 2], Gen.Double[-2, 2]).Each((x, y, eighths, ahead, left) =>
        {
            var ours = new Spot(x, y).Moved(new Facing(eighths), ahead, left);
            var theirs = AffineTransformation.RotationInstance(eighths * Math.PI / 4).Translate(x, y).Transform(new(ahead, left), new Coordinate());
            Assert.Equal(theirs.X, ours.X, Close);
            Assert.Equal(theirs.Y, ours.Y, Close);
        }, iter: 2000);

    [Fact]
    public void A_mirrored_dance_moves_as_the_reflection_of_the_dance() => RandomPages.LineDance.Each(page =>
    {
        var mirror = System.Text.RegularExpressions.Regex.Replace(page, @"\b(L|R|left|right)\b", m => m.Value switch { "L" => "R", "R" => "L", "left" => "right", _ => "left" });
        var (here, there) = (DanceReader.Read(page), DanceReader.Read(mirror));
        if (here.Score.Roles[0].Steps.Any(s => s.Conflict != Conflict.None || s.Weight == Weight.Both)) return;
        var reflect = AffineTransformation.ReflectionInstance(1, 0);
        for (var i = 0; i < here.Motion.Roles[0].Stances.Count; i++)
        {
            var (a, b) = (here.Motion.Roles[0].Stances[i], there.Motion.Roles[0].Stances[i]);
            Same(reflect, a.Middle, b.Middle);
            Same(reflect, a.Left.At, b.Right.At);
            Same(reflect, a.Right.At, b.Left.At);
        }
    });

    [Fact]
    public void Four_walls_of_a_dance_are_its_first_wall_turned() => Gen.Select(RandomPages.LineDance, Gen.Int[1, 3]).Each((page, quarter) =>
    {
        var clock = ((string[])["12:00", "9:00", "6:00", "3:00"])[quarter];
        var (here, there) = (DanceReader.Read(page), DanceReader.Read(page.Replace("Kind: line\n", $"Kind: line\nFacing: {clock}\n")));
        var turn = AffineTransformation.RotationInstance(quarter * Math.PI / 2);
        for (var i = 0; i < here.Motion.Roles[0].Stances.Count; i++) Same(turn, here.Motion.Roles[0].Stances[i].Middle, there.Motion.Roles[0].Stances[i].Middle);
    });

    private static void Same(AffineTransformation moved, Spot a, Spot b)
    {
        var theirs = moved.Transform(new(a.X, a.Y), new Coordinate());
        Assert.Equal(theirs.X, b.X, Close);
        Assert.Equal(theirs.Y, b.Y, Close);
    }
}
