using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Motion;

/// <summary>
/// One role's feet and middle through a repeat as sums over step lengths. Given lengths they become
/// stances; left unknown they become the rows of the couple's program.
/// </summary>
public sealed class Footwork
{
    /// <summary>How far a touch reaches from under the body, / stature. Working value, from memory.</summary>
    private const double TouchReach = 0.16;

    /// <summary>In a rock the body goes this share of the way with the foot.</summary>
    private const double RockShare = 0.6;

    /// <summary>A foot that locks stands past the other, beside its heel or toe, as near as two soles can be. Working value.</summary>
    private const double Locked = -2.1;

    /// <summary>
    /// Before half a pivot the foot is set nearly in line with the other, else the turn would end with crossed legs: what
    /// was left is right once one looks the other way. Working value.
    /// </summary>
    private const double InLine = -0.5;

    private readonly Form[] _middles;
    private readonly Form[] _lefts;
    private readonly Form[] _rights;
    private readonly Facing[] _leftFacings;
    private readonly Facing[] _rightFacings;

    private Footwork(RoleScore role, double stature, Facing frame)
    {
        Role = role;
        Stature = stature;
        Frame = frame;
        var count = role.Steps.Count + 1;
        (_middles, _lefts, _rights) = (new Form[count], new Form[count], new Form[count]);
        (_leftFacings, _rightFacings) = (new Facing[count], new Facing[count]);
    }

    public RoleScore Role { get; }

    public double Stature { get; }

    /// <summary>The facing that is straight ahead in the sums; places and facings that come out are those of the floor.</summary>
    public Facing Frame { get; }

    public int Stances => _middles.Length;

    /// <summary>The middle after an action; the first is the start and stands for itself.</summary>
    public Form MiddleOf(int stance) => _middles[stance];

    /// <summary>Where a foot is after an action, and which way its toe looks, in the frame.</summary>
    public (Form Place, Facing Looks) FootOf(int stance, Foot foot) =>
        foot == Foot.Left ? (_lefts[stance], _leftFacings[stance]) : (_rights[stance], _rightFacings[stance]);

    public static Footwork Of(RoleScore role, double stature, Facing frame = default)
    {
        var work = new Footwork(role, stature, frame);
        work.Build();
        return work;
    }

    /// <summary>The stances for given lengths and asides of each step, beginning with the middle at a place of the frame.</summary>
    public RoleMotion Dance(Spot start, ReadOnlySpan<double> lengths, ReadOnlySpan<double> asides)
    {
        var middles = Middles(start, lengths, asides);
        var stances = new Stance[Stances];
        for (var i = 0; i < stances.Length; i++)
        {
            var left = new FootPlace(OnFloor(_lefts[i].Value(middles, lengths, asides)), new(_leftFacings[i].Eighths + Frame.Eighths));
            var right = new FootPlace(OnFloor(_rights[i].Value(middles, lengths, asides)), new(_rightFacings[i].Eighths + Frame.Eighths));
            stances[i] = i == 0
                ? new(Count.At(0), left, right, OnFloor(start), Role.Start.Facing, Role.Start.Weight, -1, 0)
                : new(Role.Steps[i - 1].At, left, right, OnFloor(middles[i]), Role.Steps[i - 1].Facing, Role.Steps[i - 1].Weight, i - 1, Role.Steps[i - 1].Turn.Eighths);
        }

        return new(Role.Role, new(stances));
    }

    /// <summary>The middles alone, in the frame.</summary>
    public Spot[] Middles(Spot start, ReadOnlySpan<double> lengths, ReadOnlySpan<double> asides)
    {
        var middles = new Spot[Stances];
        middles[0] = start;
        for (var i = 1; i < middles.Length; i++) middles[i] = _middles[i].Value(middles, lengths, asides);
        return middles;
    }

    /// <summary>True when the middle does not move from one stance to a later one.</summary>
    public bool StaysPut(int from, int to)
    {
        for (var i = from + 1; i <= to; i++)
        {
            if (_middles[i] is not { Terms.Length: 0 } form || form.Base != i - 1 || form.Fixed != Spot.Origin) return false;
        }

        return true;
    }

    private Spot OnFloor(Spot place) => Spot.Origin.Moved(Frame, place.X, place.Y);

    private Facing InFrame(Facing facing) => new(facing.Eighths - Frame.Eighths);

    private void Build()
    {
        var half = Body.HalfStance * Stature;
        var facing = InFrame(Role.Start.Facing);
        var (left, right) = (Form.Middle(0).Moved(Off(facing, half)), Form.Middle(0).Moved(Off(facing, -half)));
        var (leftFacing, rightFacing) = (facing, facing);
        // How far beside the middle each foot stands, as a share of the usual: a body comes back over a foot as it stood over it.
        var (leftBeside, rightBeside) = (1.0, 1.0);
        Keep(0, Form.Middle(0));
        for (var i = 0; i < Role.Steps.Count; i++)
        {
            var step = Role.Steps[i];
            var before = i == 0 ? Role.Start.Weight : Role.Steps[i - 1].Weight;
            var middle = Form.Middle(i);
            if (!step.Turn.IsNone)
            {
                // The body turns on the ball of the standing foot, which stays; the middle swings round it.
                facing = InFrame(step.Facing);
                if (before.Free()?.Other() is { } standing)
                {
                    middle = Over(standing, standing == Foot.Left ? left : right);
                    // In a pivot both feet turn on their balls; else only the one that stands.
                    if (step.Kind == ActionKind.Pivot || standing == Foot.Left) leftFacing = facing;
                    if (step.Kind == ActionKind.Pivot || standing == Foot.Right) rightFacing = facing;
                }
                else
                {
                    leftFacing = rightFacing = facing;
                }
            }

            if (step.Foot.Single() is { } moving && step.Kind.PlacesFoot() && step.Kind != ActionKind.Drop)
            {
                var outward = moving == Foot.Left ? 1 : -1;
                var (forward, side, ahead) = Course(step.Direction);
                var beside = Beside(i);
                var along = Spot.Origin.Moved(facing, forward, side * outward);
                var foot = Spot.Origin.Moved(facing, ahead * Stature, outward * half * beside);
                if (step.Kind.Rule() == WeightRule.Takes)
                {
                    // A step gives way a little to the side of where it goes.
                    var aside = Math.Abs(forward) >= Math.Abs(side) ? Spot.Origin.Moved(facing, 0, 1) : Spot.Origin.Moved(facing, 1, 0);
                    if (forward == 0 && side == 0) along = Spot.Origin.Moved(facing, 1, 0);
                    var place = middle.With(new(i, along, aside));
                    // The body stands over the new foot, but in a rock it stays behind.
                    Set(moving, step.Kind == ActionKind.Rock ? place.Moved(foot) : Form.Middle(i + 1).Moved(foot));
                    middle = step.Kind == ActionKind.Rock ? middle.With(new(i, along * RockShare, aside * RockShare)) : place;
                }
                else
                {
                    Set(moving, middle.Moved((along * (TouchReach * Stature)) + foot));
                }

                if (moving == Foot.Left) leftBeside = beside;
                else rightBeside = beside;
            }
            else if (step.Kind == ActionKind.Jump)
            {
                var spread = step.Direction == Direction.Apart ? 2.2 * half : half;
                (left, right) = (middle.Moved(Off(facing, spread)), middle.Moved(Off(facing, -spread)));
                leftFacing = rightFacing = facing;
                leftBeside = rightBeside = 1;
            }
            else if (step.Weight.Free()?.Other() is { } standing && step.Weight != before)
            {
                // Weight comes back over a foot that never moved.
                middle = Over(standing, standing == Foot.Left ? left : right);
            }

            Keep(i + 1, middle);

            Form Over(Foot standing, Form place) => place.Moved(Off(facing, standing == Foot.Left ? -half * leftBeside : half * rightBeside));

            void Set(Foot moved, Form place)
            {
                if (moved == Foot.Left) (left, leftFacing) = (place, facing);
                else (right, rightFacing) = (place, facing);
            }
        }

        // Which share of the usual width a foot stands beside the middle; less than nothing is on the other side of it.
        double Beside(int i)
        {
            var step = Role.Steps[i];
            if (step.Direction is Direction.LockBehind or Direction.LockFront) return Locked;
            var pivots = step.Direction == Direction.Forward && i + 1 < Role.Steps.Count && Role.Steps[i + 1] is { Kind: ActionKind.Pivot } next && Math.Abs(next.Turn.Eighths) is 3 or 4 or 5 && next.Weight != step.Weight;
            return pivots ? InLine : 1;
        }

        void Keep(int stance, Form middle)
        {
            _middles[stance] = middle;
            (_lefts[stance], _rights[stance]) = (left, right);
            (_leftFacings[stance], _rightFacings[stance]) = (leftFacing, rightFacing);
        }
    }

    private static Spot Off(Facing facing, double left) => Spot.Origin.Moved(facing, 0, left);

    // Forward, outward, and how far the foot itself stands ahead of the body's middle (/ stature): a foot that
    // crosses lands past the other foot's toe or heel.
    private static (double Forward, double Outward, double Ahead) Course(Direction direction) => direction switch
    {
        Direction.Forward => (1, 0, 0),
        Direction.Back => (-1, 0, 0),
        Direction.Side => (0, 1, 0),
        Direction.DiagonalForward => (0.7, 0.7, 0),
        Direction.DiagonalBack => (-0.7, 0.7, 0),
        Direction.Across => (0, -1, 0.06),
        Direction.Behind => (0, -1, -0.06),
        Direction.ForwardAcross => (0.9, -0.4, 0),
        Direction.LockBehind => (0, 0, -0.085),
        Direction.LockFront => (0, 0, 0.085),
        Direction.Apart => (0, 1, 0),
        _ => (0, 0, 0),
    };
}
