namespace Surefoot.Dance.Motion;

/// <summary>
/// Body measures as fractions of stature. Ratios of means of ANSUR II (Gordon et al. 2014,
/// NATICK/TR-15/007), the mean of the men's and the women's column, because roles are not sexes.
/// </summary>
public static class Body
{
    /// <summary>Stature in metres for which the step lengths are given.</summary>
    public const double ReferenceStature = 1.70;

    /// <summary>Stature of a lead in metres where the page sets none; the mean of ANSUR II's men.</summary>
    public const double LeadStature = 1.75;

    /// <summary>Stature of a follow in metres where the page sets none; the mean of ANSUR II's women.</summary>
    public const double FollowStature = 1.63;

    /// <summary>Foot length / stature, (0.154 + 0.151) / 2.</summary>
    public const double FootLength = 0.1525;

    /// <summary>Foot breadth / stature, (0.058 + 0.057) / 2.</summary>
    public const double FootBreadth = 0.0575;

    /// <summary>
    /// From the middle of the body to the middle of a foot that stands under it, / stature.
    /// Working value, from memory: ankles of a quiet stance are about a tenth of stature apart.
    /// Larger values make in-place turns wander further.
    /// </summary>
    public const double HalfStance = 0.052;

    /// <summary>A body seen from above, across and through, in metres (FHWA-RD-98-107, section 2.1).</summary>
    public const double EllipseAcross = 0.60;

    /// <inheritdoc cref="EllipseAcross"/>
    public const double EllipseThrough = 0.50;

    /// <summary>
    /// From the middle of the body to a shoulder joint / stature: half the breadth between the joints, mean of
    /// 0.237 and 0.224. Lead and follow alike.
    /// </summary>
    public const double HalfShoulders = 0.115;

    /// <summary>
    /// Straight arm from the shoulder joint to the grip / stature: upper arm 0.191 with forearm and hand to the
    /// middle of the grip 0.199 and 0.195, which is 0.390 and 0.386; mean.
    /// </summary>
    public const double ArmToGrip = 0.388;

    /// <summary>Standing height of the shoulder joint / stature.</summary>
    public const double ShoulderHeight = 0.820;

    /// <summary>
    /// Standing height of the elbow, and of hands at the waist, / stature: the shoulder joint's less the upper
    /// arm, 0.820 - 0.191.
    /// </summary>
    public const double ElbowHeight = 0.629;

    /// <summary>From the middle of the body to the back / stature: half of the chest's depth, mean of 0.145 and 0.152.</summary>
    public const double HalfDepth = 0.074;

    /// <summary>Half the widest shoulders / stature: half of the mean of 0.291 and 0.277.</summary>
    public const double HalfBreadth = 0.142;

    /// <summary>Half a head seen from above, across and through, / stature, from memory.</summary>
    public const double HeadAside = 0.045;

    /// <inheritdoc cref="HeadAside"/>
    public const double HeadAhead = 0.057;

    /// <summary>Height of a grip raised overhead while standing / stature, mean of 1.223 and 1.211.</summary>
    public const double RaisedGrip = 1.217;
}
