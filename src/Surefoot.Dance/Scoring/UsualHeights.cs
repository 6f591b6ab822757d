namespace Surefoot.Dance.Scoring;

/// <summary>How tall a hall's dancers are where a page does not say, in metres; null for the usual ones (see <see cref="Motion.Body"/>).</summary>
public readonly record struct UsualHeights(double? Lead, double? Follow)
{
    internal DanceScore On(DanceScore score) => Lead is null && Follow is null
        ? score
        : score with { Facts = score.Facts with { LeadStature = score.Facts.LeadStature ?? Lead, FollowStature = score.Facts.FollowStature ?? Follow } };
}
