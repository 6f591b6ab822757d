using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// The frame in which a couple is solved: ahead is where the lead looks at the start, and a dance that begins
/// with his right foot is seen in a mirror. A page, its mirror image and the same page begun with another
/// facing so make the very same program, and dance alike to the last bit.
/// </summary>
internal readonly record struct CoupleFrame(Facing Ahead, bool Mirrored)
{
    /// <summary>1, or -1 in the mirror: by this the y of places is multiplied.</summary>
    public int Side => Mirrored ? -1 : 1;

    public static CoupleFrame Of(RoleScore lead, string? hold)
    {
        foreach (var step in lead.Steps)
        {
            if (step.Foot.Single() is { } foot) return new(lead.Start.Facing, foot == Foot.Right);
        }

        return new(lead.Start.Facing, Holds.Named(hold) is { Left: > 0 });
    }

    /// <summary>A facing of the floor in this frame.</summary>
    public Facing Of(Facing facing) => new((facing.Eighths - Ahead.Eighths) * Side);

    /// <summary>A place in the lead's own frame, seen in the mirror if need be.</summary>
    public Spot Of(Spot place) => place with { Y = place.Y * Side };

    /// <summary>A way across the floor in this frame.</summary>
    public Spot Across(Facing facing)
    {
        var seen = Of(facing);
        return new(seen.Cosine, seen.Sine);
    }
}
