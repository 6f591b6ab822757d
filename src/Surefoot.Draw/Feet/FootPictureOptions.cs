using Surefoot.Dance.Basics;

namespace Surefoot.Draw;

/// <summary>How foot pictures are to look.</summary>
public sealed record FootPictureOptions
{
    /// <summary>One role alone, or null for everybody.</summary>
    public Role? Only { get; init; }

    /// <summary>Light marks on a dark ground, for a screen; paper wants the other way round.</summary>
    public bool Dark { get; init; }

    /// <summary>Width of the whole picture in millimetres when printed as it is; usual 182, which is A4 with margins of 14 mm.</summary>
    public double Width { get; init; } = 182;

    /// <summary>
    /// Width of one count's panel in millimetres: usual 19. Panels get smaller where the widest line of
    /// the dance asks for it, but not below 13, where the letters on the soles could not be read on paper.
    /// </summary>
    public double Panel { get; init; } = 19;

    /// <summary>How much larger than usual counts and words are beside the panels; for large print.</summary>
    public double Words { get; init; } = 1;

    /// <summary>Puts the key under the picture.</summary>
    public bool Key { get; init; } = true;

    /// <summary>Says "as 1–6" in place of drawing counts that are danced again in the same way.</summary>
    public bool LeaveOutRepeats { get; init; }

    /// <summary>What the hall calls the lead.</summary>
    public string LeadWord { get; init; } = "Lead";

    /// <summary>What the hall calls the follow.</summary>
    public string FollowWord { get; init; } = "Follow";
}
