using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>One pair of hands through the repeat: what the page leaves open, and the way that was found.</summary>
internal sealed record PairWay(Pairs Pair, HandPath Path, PairRule[] Rules, Wind[] Winds, HandPath.State[] States);
