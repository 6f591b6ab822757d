using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Moving;

/// <summary>
/// One dancer at any moment of a repeat. Time is in counts as dancers number them: the action of count 3 is
/// done at 3.0, and the dancer sets out for count 1 at 0.0.
/// </summary>
public sealed class MovingDancer
{
    /// <summary>The weight takes so many counts to change feet, or this share of the time since the action before. Working values.</summary>
    private const double Handover = 0.12, HandoverShare = 0.25;

    private readonly RoleMotion _motion;
    private readonly BodyTrack _body;
    private readonly FootTrack _left;
    private readonly FootTrack _right;
    private readonly double[] _times;
    private readonly double[] _handover;

    public MovingDancer(RoleScore score, RoleMotion motion, double stature)
    {
        (_motion, Role, Stature) = (motion, score.Role, stature);
        _times = new double[motion.Stances.Count];
        for (var i = 0; i < _times.Length; i++) _times[i] = motion.Stances[i].At.Value.ToDouble();
        // Two actions on one count are a fault of the page; time still goes on.
        for (var i = 1; i < _times.Length; i++) _times[i] = Math.Max(_times[i], _times[i - 1]);
        _handover = new double[_times.Length];
        for (var i = 1; i < _times.Length; i++) _handover[i] = Math.Min(Handover, HandoverShare * (_times[i] - _times[i - 1]));
        _body = new(score, motion, stature);
        _left = new(score, motion, Foot.Left, stature, _times, _handover);
        _right = new(score, motion, Foot.Right, stature, _times, _handover);
    }

    public Role Role { get; }

    /// <summary>In metres.</summary>
    public double Stature { get; }

    /// <param name="count">0 is before the first action; after the last action the dancer stands.</param>
    public DancerMoved At(double count)
    {
        var (middle, angle) = _body.At(count);
        var i = Math.Max(0, Easing.Last(_times, count));
        var left = Share(_motion.Stances[i].Weight);
        if (i + 1 < _times.Length) left += (Share(_motion.Stances[i + 1].Weight) - left) * Easing.LeastJerk(count, _times[i + 1] - _handover[i + 1], _times[i + 1]);
        return new(middle, angle, _left.At(count, left), _right.At(count, 1 - left));
    }

    private static double Share(Weight weight) => weight switch { Weight.Left => 1, Weight.Right => 0, _ => 0.5 };
}
