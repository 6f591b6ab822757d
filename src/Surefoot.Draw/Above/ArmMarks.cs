using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Draw.Feet;

namespace Surefoot.Draw.Above;

/// <summary>How high an arm's hand is, for what is drawn over what.</summary>
internal enum ArmLevel
{
    Waist,
    Shoulder,
    Overhead,
}

/// <summary>Arms from shoulder over elbow to hand: the lead's full, the follow's two lines; raised hands in a double ring.</summary>
internal static class ArmMarks
{
    /// <summary>Breadth of an arm on the picture.</summary>
    private const double Breadth = 20;

    /// <summary>Hands above a shoulder by more than this, in metres, are drawn over the heads.</summary>
    private const double Overhead = 0.12;

    /// <summary>Hands so far below a shoulder, / stature, are at the waist.</summary>
    private const double Below = 0.14;

    /// <summary>Both arms of a dancer as far as they are at one level.</summary>
    public static string Draw(PictureStyle style, View view, MovingDancer dancer, DancerMoved at, (HandMoved Left, HandMoved Right) hands, ArmLevel level) =>
        Arm(style, view, dancer, at, Foot.Left, hands.Left, level) + Arm(style, view, dancer, at, Foot.Right, hands.Right, level);

    /// <summary>Marks where hands are joined; each place once.</summary>
    public static string Joints(PictureStyle style, View view, IEnumerable<HandMoved> hands)
    {
        var text = new StringBuilder();
        foreach (var hand in hands.Where(h => h.Joined != Pairs.None).DistinctBy(h => (Svg.N(view.X(h.At)), Svg.N(view.Y(h.At)))))
        {
            var (x, y) = (Svg.N(view.X(hand.At)), Svg.N(view.Y(hand.At)));
            text.Append($"<circle cx=\"{x}\" cy=\"{y}\" r=\"17\" fill=\"{style.Palette.Paper}\" stroke=\"{style.Palette.Ink}\" stroke-width=\"6\"/>");
            if (hand.Up > Body.ShoulderHeight * Body.ReferenceStature + Overhead) text.Append($"<circle cx=\"{x}\" cy=\"{y}\" r=\"29\" fill=\"none\" stroke=\"{style.Palette.Ink}\" stroke-width=\"5\"/>");
        }

        return text.ToString();
    }

    private static string Arm(PictureStyle style, View view, MovingDancer dancer, DancerMoved at, Foot side, HandMoved hand, ArmLevel level)
    {
        var above = hand.Up - (Body.ShoulderHeight * dancer.Stature);
        if (level != (above > Overhead ? ArmLevel.Overhead : above < -Below * dancer.Stature ? ArmLevel.Waist : ArmLevel.Shoulder)) return "";
        var (shoulder, elbow) = (at.Shoulder(side, dancer.Stature), Elbow.Of(at, dancer.Stature, side, hand).At);
        var way = $"M{Place(view, shoulder)}L{Place(view, elbow)}L{Place(view, hand.At)}";
        var line = "fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\"";
        var arm = $"<path d=\"{way}\" {line} stroke=\"{style.Palette.Ink}\" stroke-width=\"{Svg.N(Breadth)}\"/>";
        if (dancer.Role == Role.Follow) arm += $"<path d=\"{way}\" {line} stroke=\"{style.Palette.Paper}\" stroke-width=\"{Svg.N(Breadth - 9)}\"/>";
        return arm;
    }

    private static string Place(View view, Spot at) => $"{Svg.N(view.X(at))} {Svg.N(view.Y(at))}";
}
