using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>A place of hers that has to be so far from a place of his, along a way of the frame.</summary>
/// <param name="Lead">His places with their shares: one, or two halves for the middle between two moments. Likewise hers.</param>
/// <param name="Way">From him to her, of length 1.</param>
/// <param name="Metres">How far, at least.</param>
/// <param name="Missing">How much of that is missing where it was found.</param>
internal sealed record Apart((Form Place, double Share)[] Lead, (Form Place, double Share)[] Follow, Spot Way, double Metres, double Missing)
{
    /// <summary>
    /// Price a metre of being nearer. Above that of any step, so that dancers go round each other where they can,
    /// and far below that of being out of place, so that it never makes a dance impossible.
    /// </summary>
    public const double Price = 100;
}
