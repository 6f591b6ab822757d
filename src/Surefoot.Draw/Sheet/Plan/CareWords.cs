using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>Where the work can hurt, said once and only where it applies; at most two sentences.</summary>
internal static class CareWords
{
    /// <summary>Eighths of a turn within <see cref="Window"/> from which somebody may grow dizzy: a full turn. Working value.</summary>
    private const int DizzyEighths = 8;

    /// <summary>Counts over which turning is added up. Working value.</summary>
    private const int Window = 4;

    public static string Of(DanceScore score, Role? only)
    {
        var spins = score.Roles.Any(r => (only is null || r.Role == only || !score.Facts.ForCouples) && Spins(r));
        var raised = score.Hands.Any(h => h.Words.Verb is HandVerb.Under or HandVerb.Over or HandVerb.Raise);
        var hammerlock = IsHammerlock(score.Facts.Hold)
            || score.Hands.Any(h => IsHammerlock(h.Words.Hold))
            || score.Claims.Any(c => c.Claim is HoldClaim hold && IsHammerlock(hold.Hold))
            || score.Roles.Any(r => r.Steps.Any(s => IsHammerlock(s.Figure)));
        var sentences = new List<string>();
        if (hammerlock) sentences.Add("Go gently into the hammerlock, keep the arm low, and leave it out when a shoulder complains.");
        if (raised) sentences.Add("Never force an arm on the way under: let go when a hand is caught.");
        if (spins) sentences.Add("Mind spilled drinks and sticky soles when you turn, and stop when you are dizzy.");
        if (score.Facts.ForCouples && score.Facts.Floor == Floor.Track)
        {
            sentences.Add("On a full floor take smaller steps and mind the couple ahead.");
        }

        if (sentences.Count == 0) sentences.Add("Warm up first, and mind wet spots on the floor.");
        return string.Join(' ', sentences.Take(2));
    }

    private static bool IsHammerlock(string? hold) => Holds.Named(hold)?.Kind == "hammerlock";

    private static bool Spins(RoleScore role)
    {
        for (var i = 0; i < role.Steps.Count; i++)
        {
            var turned = 0;
            for (var j = i; j < role.Steps.Count && role.Steps[j].At - role.Steps[i].At < Beats.Of(Window); j++)
            {
                turned += role.Steps[j].Turn.Eighths;
                if (Math.Abs(turned) >= DizzyEighths) return true;
            }
        }

        return false;
    }
}
