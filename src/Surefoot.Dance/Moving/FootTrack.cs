using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Moving;

/// <summary>
/// One foot through a repeat. It leaves the floor once the other has taken the weight, is down in time to take it
/// on its count, and stands still in between; only a turn makes it turn where it stands.
/// </summary>
internal sealed class FootTrack
{
    /// <summary>A foot that has been free for longer sets out so many counts before its action. Working value.</summary>
    private const double SetOut = 1;

    /// <summary>A kicking foot is back under the body after so many counts at most. Working value.</summary>
    private const double SwingBack = 0.5;

    /// <summary>Share of a kick that is left when it has swung back. Working value.</summary>
    private const double AfterSwing = 0.35;

    /// <summary>Two places nearer than this, in metres, are one: what is rounded off is no step.</summary>
    private const double Same = 1e-9;

    /// <summary>Degrees a foot is twisted when heels or toes part. Working value: it can be seen and toes do not meet.</summary>
    private const double Swivel = 25;

    private readonly record struct Pose(Spot At, double Up, double Angle, double Toe);

    private readonly record struct Move(double End, Pose From, Pose To, double Lift);

    private readonly Foot _foot;
    private readonly double _stature;
    private readonly Pose _start;
    private readonly double[] _starts;
    private readonly Move[] _moves;

    /// <param name="times">When each stance is reached, in counts.</param>
    /// <param name="handover">How long before each stance its weight begins to move there, in counts.</param>
    public FootTrack(RoleScore role, RoleMotion motion, Foot foot, double stature, double[] times, double[] handover)
    {
        (_foot, _stature) = (foot, stature);
        var (starts, moves) = (new List<double>(), new List<Move>());
        var stances = motion.Stances;
        var body = 45.0 * stances[0].Facing.Eighths;
        _start = new(stances[0].Foot(foot).At, 0, Near(45.0 * stances[0].Foot(foot).Facing.Eighths, body), 0);
        var (pose, free) = (_start, times[0]);
        // Where the toe looks but for what it is twisted.
        var (straight, twist) = (_start.Angle, 0.0);
        for (var i = 1; i < stances.Count; i++)
        {
            var (step, before, stance) = (role.Steps[i - 1], stances[i - 1], stances[i]);
            body += 45.0 * stance.Turned;
            var ready = Carries(before) ? times[i - 1] : free;
            if (Carries(before) && !Carries(stance)) free = times[i];
            var acts = step.Foot.Single() == foot || step.Foot == FootUse.Both;
            var hops = step.Kind == ActionKind.Hop && Carries(before);
            var moved = !IsSame(before.Foot(foot).At, stance.Foot(foot).At);
            straight = Turned(before, stance, straight, body);
            if (step.Kind == ActionKind.Swivel) twist = Twist(step);
            else if (acts && step.Kind.PlacesFoot()) twist = 0;
            var angle = straight + twist;
            if (!acts && !hops && !moved && angle == pose.Angle) continue;
            var gesture = acts ? Gesture.Of(step) : default;
            var flying = acts && gesture.Ahead is not null && step.Kind.InTheAir();
            var to = flying ? InTheAir(stance, gesture, body)
                : new Pose((acts || moved || pose.Up == 0) && !IsSame(pose.At, stance.Foot(foot).At) ? stance.Foot(foot).At : pose.At, acts ? gesture.Up * stature : pose.Up, angle, acts ? gesture.Toe : pose.Toe);
            // Weight that comes back to a foot, or a turn, does not lift it.
            var lift = hops ? Gesture.Hop * stature : acts && (moved || flying || step.Kind.PlacesFoot()) ? gesture.Lift * stature : 0;
            if (to == pose && lift == 0) continue;
            // A foot that takes the weight is down a little before its count, so that the weight is on it when the count comes.
            var down = times[i] - (Carries(stance) && (moved || (lift > 0 && !hops)) ? handover[i] : 0);
            Add(Math.Max(ready, times[i] - SetOut), Math.Max(ready, down), to, lift);
            if (!gesture.Swings) continue;
            var next = i < stances.Count - 1 ? times[i + 1] - times[i] : SwingBack;
            var back = InTheAir(stance, gesture with { Ahead = gesture.Ahead * AfterSwing, Up = gesture.Up * AfterSwing }, body);
            Add(times[i], times[i] + Math.Min(SwingBack, next / 2), back, 0);
        }

        (_starts, _moves) = ([.. starts], [.. moves]);

        void Add(double from, double to, Pose pose_, double lift)
        {
            // A foot never begins its next action before it has done the last one.
            if (moves.Count > 0) from = Math.Max(from, moves[^1].End);
            starts.Add(Math.Min(from, to));
            moves.Add(new(to, pose, pose_, lift));
            (pose, free) = (pose_, Math.Max(free, to));
        }
    }

    /// <param name="share">Share of the weight that is meant for this foot then.</param>
    public FootMoved At(double now, double share)
    {
        var i = Easing.Last(_starts, now);
        if (i < 0) return new(_start.At, 0, _start.Angle, 0, share, true);
        var move = _moves[i];
        var (from, to) = (move.From, move.To);
        if (now >= move.End) return new(to.At, to.Up, to.Angle, to.Toe, to.Up > 0 ? 0 : share, true);
        var part = (now - _starts[i]) / (move.End - _starts[i]);
        var s = Easing.LeastJerk(part);
        var up = from.Up + ((to.Up - from.Up) * s) + (move.Lift * Easing.Arc(part));
        // A foot in the air, or on its way, carries nothing.
        var still = part <= 0 || (move.Lift == 0 && from.At == to.At);
        var carries = up == 0 && still;
        return new(from.At + ((to.At - from.At) * s), up, from.Angle + ((to.Angle - from.Angle) * s), from.Toe + ((to.Toe - from.Toe) * s), carries ? share : 0, still);
    }

    // Heels apart turn both toes in, and toes apart turn them out.
    private double Twist(ScoreStep step)
    {
        if (step.Direction != Direction.Apart) return 0;
        var inward = _foot == Foot.Left ? -Swivel : Swivel;
        return step.Figure?.StartsWith("toe", StringComparison.Ordinal) == true ? -inward : inward;
    }

    private static bool IsSame(Spot one, Spot other) => (one - other).Length < Same;

    private bool Carries(Stance stance) => stance.Weight.Free() != _foot;

    private double Turned(Stance before, Stance stance, double angle, double body)
    {
        var (was, now) = (before.Foot(_foot).Facing, stance.Foot(_foot).Facing);
        // A whole turn on this foot ends as it began and still turns it.
        return was == now && Math.Abs(angle - body) <= 180 ? angle : Near(45.0 * now.Eighths, body);
    }

    private Pose InTheAir(Stance stance, Gesture gesture, double body)
    {
        var outward = _foot == Foot.Left ? 1 : -1;
        var side = (Motion.Body.HalfStance + gesture.Outward) * outward;
        return new(stance.Middle.Moved(stance.Facing, gesture.Ahead!.Value * _stature, side * _stature), gesture.Up * _stature, body, gesture.Toe);
    }

    // The angle with the same toe direction that is nearest to where the body looks.
    private static double Near(double angle, double body) => angle + (360 * Math.Round((body - angle) / 360));
}
