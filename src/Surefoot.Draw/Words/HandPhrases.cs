using Surefoot.Dance.Basics;

namespace Surefoot.Draw.Words;

/// <summary>Joined hands and how a couple stands to each other, in words for holds that have no name.</summary>
internal static class HandPhrases
{
    /// <summary>"right hands", "both hands", "lead’s left and follow’s right hand".</summary>
    public static string Of(Pairs pairs, RoleNames names) => pairs switch
    {
        Pairs.RightRight => "right hands",
        Pairs.LeftLeft => "left hands",
        Pairs.LeftRight => $"{names.Bare(Role.Lead)}’s left and {names.Bare(Role.Follow)}’s right hand",
        Pairs.RightLeft => $"{names.Bare(Role.Lead)}’s right and {names.Bare(Role.Follow)}’s left hand",
        Pairs.Facing or Pairs.Alike => "both hands",
        _ => Phrases.And([.. PairsOf.Each.Where(p => pairs.HasFlag(p)).Select(p => Of(p, names))]),
    };

    /// <summary>"right hands joined overhead", "two hands joined, lead’s left and follow’s right hand overhead".</summary>
    public static string Joined(Pairs joined, Pairs raised, RoleNames names)
    {
        var up = joined & raised;
        var all = joined switch
        {
            Pairs.None => "hands free",
            // "Both hands" would not say which hand has which.
            Pairs.Alike => "right hands and left hands joined",
            Pairs.Facing => HoldPhrases.Now("two hands"),
            _ => $"{Of(joined, names)} joined",
        };
        if (up == Pairs.None) return all;
        return up == joined ? $"{all} overhead" : $"{all}, {Of(up, names)} overhead";
    }

    /// <summary>Where the follow is, seen from the lead, and how they look.</summary>
    /// <param name="apart">The follow's facing against the lead's.</param>
    /// <param name="ahead">Metres in front of the lead; behind is below 0.</param>
    /// <param name="left">Metres to the lead's left.</param>
    public static string Place(Turn apart, double ahead, double left, RoleNames names)
    {
        var (lead, follow) = (names.Bare(Role.Lead), names.Bare(Role.Follow));
        var round = new Facing(apart.Eighths).Eighths;
        var off = Math.Min(round, 8 - round);
        var beside = Math.Abs(left) > Math.Abs(ahead);
        var side = $"{follow} on {lead}’s {(left > 0 ? "left" : "right")}";
        return (off, beside) switch
        {
            (0, true) => $"side by side, {side}",
            (0, false) => ahead > 0 ? $"{follow} in front of {lead}" : $"{lead} in front of {follow}",
            (4, true) => $"{side}, facing opposite ways",
            (4, false) => ahead > 0 ? "facing each other" : "back to back",
            (_, true) => $"{side}, at an angle",
            _ => $"{follow} {(ahead > 0 ? "in front of" : "behind")} {lead}, at an angle",
        };
    }
}
