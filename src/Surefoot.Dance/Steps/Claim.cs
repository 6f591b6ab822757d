using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Steps;

/// <summary>A stated fact.</summary>
public abstract record Claim;

/// <summary>"(facing RLOD)", "[6:00]".</summary>
public sealed record FacingClaim(Facing Facing) : Claim;

/// <summary>"(facing partner)", "(back to back)", "(side by side)".</summary>
public sealed record RelationClaim(Relation Relation) : Claim;

/// <summary>"(weight on left)", "(left free)", "(weight even)".</summary>
public sealed record WeightClaim(Weight Weight) : Claim;

/// <summary>"(feet together)", "(feet apart)".</summary>
public sealed record FeetClaim(bool Together) : Claim;

/// <summary>"(16 counts)".</summary>
public sealed record LengthClaim(int Counts) : Claim;

/// <summary>"(sweetheart)": compared once the couple is solved.</summary>
public sealed record HoldClaim(string Hold) : Claim;

public enum Relation
{
    FacingEachOther,
    SameWay,
    BackToBack,
}
