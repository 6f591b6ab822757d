using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Couple;

/// <summary>What a couple's places are solved from: both dancers' footwork, how long their steps may be, and where each moment has her.</summary>
internal sealed record CoupleSetting
{
    private CoupleSetting(DanceScore score, RoleScore lead, RoleScore follow, CoupleLimits limits)
    {
        (Score, Limits) = (score, limits);
        var statures = (Lead: OneDancer.StatureOf(score.Facts, Role.Lead), Follow: OneDancer.StatureOf(score.Facts, Role.Follow));
        var mean = (statures.Lead + statures.Follow) / 2;
        Scale = mean / Body.ReferenceStature;
        Frame = CoupleFrame.Of(lead, score.Facts.Hold);
        (Lead, Follow) = (Footwork.Of(lead, statures.Lead, Frame.Ahead), Footwork.Of(follow, statures.Follow, Frame.Ahead));
        Moments = HoldTrack.Of(score, Lead, Follow, limits);
        (LeadRoom, FollowRoom) = (StepRoom.Of(Lead, mean, limits), StepRoom.Of(Follow, mean, limits));
    }

    public DanceScore Score { get; }

    public CoupleLimits Limits { get; }

    /// <summary>The mean stature of the two against that for which the limits are given.</summary>
    public double Scale { get; }

    public CoupleFrame Frame { get; }

    public Footwork Lead { get; }

    public Footwork Follow { get; }

    public StepLength[] LeadRoom { get; }

    public StepLength[] FollowRoom { get; }

    public List<Moment> Moments { get; init; }

    /// <summary>How far in or out of where it began a repeat may end, in metres; null where there is no lane.</summary>
    public double? Lane => Score.Facts.Floor == Floor.Track ? Limits.Radial * Scale : null;

    /// <returns>Nothing where there are no two who dance.</returns>
    public static CoupleSetting? Of(DanceScore score, CoupleLimits limits) =>
        score.Of(Role.Lead) is { Steps.Count: > 0 } lead && score.Of(Role.Follow) is { Steps.Count: > 0 } follow ? new(score, lead, follow, limits) : null;

    /// <summary>False where a moment asks nothing that the one before has not asked: nobody moves and nothing changes.</summary>
    public bool AsksAnew(int m) =>
        m == 0 || !Lead.StaysPut(Moments[m - 1].LeadStance, Moments[m].LeadStance) || !Follow.StaysPut(Moments[m - 1].FollowStance, Moments[m].FollowStance)
            || Moments[m].Where != Moments[m - 1].Where || Moments[m].Lead != Moments[m - 1].Lead;

    /// <summary>The motion for given lengths and asides of everybody's steps.</summary>
    public DanceMotion Dance((double[] Lengths, double[] Asides) lead, (double[] Lengths, double[] Asides) follow, Spot followStart) =>
        new([Lead.Dance(Spot.Origin, lead.Lengths, lead.Asides), Follow.Dance(followStart, follow.Lengths, follow.Asides)]);
}
