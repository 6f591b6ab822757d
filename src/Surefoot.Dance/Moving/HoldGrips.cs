using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Moving;

/// <summary>A place on or before a body, as shares of stature: ahead of its middle, to its left, above the floor.</summary>
internal readonly record struct Anchor(Role Body, double Ahead, double Left, double Up)
{
    public Anchor Mirrored() => this with { Left = -Left };
}

/// <summary>
/// Where the hands of the named holds are. Common practice, no source; the numbers are working values. Holds that
/// are not here have their hands between the two dancers.
/// </summary>
internal static class HoldGrips
{
    private const double Waist = 0.60, Hip = 0.55, Shoulder = 0.82;

    /// <summary>Lead's hand and follow's hand; the same place where they are joined. Null where nothing special is known.</summary>
    public static (Anchor Lead, Anchor Follow)? Of(string? hold, Pairs pair)
    {
        if (Holds.Named(hold) is not { } known) return null;
        if (!known.OtherWay) return OneWay(known.Kind, pair);
        return OneWay(known.Kind, pair.Mirrored()) is var (lead, follow) ? (lead.Mirrored(), follow.Mirrored()) : null;
    }

    private static (Anchor Lead, Anchor Follow)? OneWay(string hold, Pairs pair) => (hold, pair) switch
    {
        ("sweetheart", Pairs.RightRight) => One(Role.Follow, -0.01, -0.15, Shoulder),
        ("sweetheart", Pairs.LeftLeft) => One(Role.Lead, 0.15, 0.04, 0.72),
        ("skaters", Pairs.RightRight) => One(Role.Follow, -0.05, -0.11, 0.58),
        ("skaters", Pairs.LeftLeft) => One(Role.Lead, 0.15, 0.02, Waist),
        ("shadow", Pairs.RightRight) => One(Role.Follow, 0.02, -0.15, Shoulder),
        ("shadow", Pairs.LeftLeft) => One(Role.Follow, 0.02, 0.15, Shoulder),
        ("lead in front", Pairs.RightRight) => One(Role.Lead, 0.02, -0.15, Shoulder),
        ("lead in front", Pairs.LeftLeft) => One(Role.Lead, 0.02, 0.15, Shoulder),
        ("wrap", Pairs.RightLeft) => One(Role.Follow, 0.03, -0.13, 0.58),
        ("wrap", Pairs.LeftRight) => One(Role.Follow, 0.14, 0.05, Waist),
        ("hammerlock", Pairs.RightLeft) => One(Role.Follow, -0.09, 0, Hip),
        // His right hand lies on her left shoulder blade, her left on his upper arm; the others are joined at the side.
        ("closed", Pairs.LeftRight) => One(Role.Lead, 0.14, 0.27, 0.80),
        ("closed" or "promenade", Pairs.RightLeft) => (new(Role.Follow, -0.08, 0.06, 0.74), new(Role.Lead, 0.03, -0.14, 0.76)),
        ("promenade", Pairs.LeftRight) => One(Role.Lead, 0.24, 0.20, 0.78),
        _ => null,
    };

    private static (Anchor, Anchor) One(Role body, double ahead, double left, double up) => (new(body, ahead, left, up), new(body, ahead, left, up));
}
