using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>How the hands of a pair are at a moment.</summary>
/// <param name="Height">Null while they are apart.</param>
/// <param name="Hold">The named hold they stand in, or null.</param>
/// <param name="Wind">How the arms lie, passes overhead counted.</param>
/// <param name="OverLead">Whose head raised hands are over: 1 for the lead's, 0 for the follow's.</param>
internal readonly record struct Grip(HandHeight? Height, string? Hold, Wind Wind, double OverLead)
{
    /// <summary>Room between a head and the hands above it, in metres. Working value.</summary>
    private const double OverTheHead = 0.10;

    /// <summary>How far from the middle of the head below it a raised hand is, on the side of whoever lifts it, / stature. Working value.</summary>
    private const double OnTheOwnSide = 0.06;

    /// <summary>Heights of joined hands / stature: at the waist, at the shoulder. Common practice.</summary>
    private const double Low = 0.60, AtShoulder = 0.80;

    /// <summary>Side by side inside hands are so far ahead of the shoulders, / stature: else both elbows would stick out behind. Working value.</summary>
    private const double OpenAhead = 0.14;

    /// <summary>Half a trunk with a hand before it, / stature: half the chest's depth and a fist.</summary>
    private const double TrunkAhead = Body.HalfDepth + 0.035;

    /// <summary>An arm begins to lie round a body at so many degrees of wind and does so wholly at the second.</summary>
    private const double Rounding = 130, Rounded = 175;

    /// <summary>Up to so many degrees of wind an arm lies round nothing. Working value.</summary>
    private const double LooseTo = 70;

    /// <summary>Where a hand at the end of an arm that goes round a body is: by the own shoulder, or across the own front at the other hip; / stature.</summary>
    private const double RoundAhead = 0.05, RoundAside = 0.15, AcrossAhead = 0.13, AcrossAside = 0.08;

    /// <summary>Where the rays begin along which hands are moved out of a trunk, as a share of its half depth. Working value.</summary>
    private const double RaysFrom = 0.7;

    /// <summary>How near a hand on its way comes to its own shoulder, / stature. Working value.</summary>
    private const double Folded = 0.12;

    /// <summary>Heights that are tried on the way up to the shoulders, and how often each arm is asked.</summary>
    private const int Levels = 4, Turns = 3;

    /// <summary>True where they are joined and not overhead.</summary>
    public bool IsDown => Height is HandHeight.Low or HandHeight.Shoulder;

    /// <summary>Where the hands of a pair are while two dancers stand so.</summary>
    public PairPlace Place(Pairs pair, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        if (Height == HandHeight.Raised) return PairPlace.Joined(Up(pair, lead, follow, leadStature, followStature));
        if (HoldGrips.Of(Hold, pair) is { } known)
        {
            var (his, hers) = (On(known.Lead), On(known.Follow));
            return known.Lead == known.Follow ? PairPlace.Joined(Drawn(his, pair, lead, follow, leadStature, followStature)) : new(his, hers);
        }

        return PairPlace.Joined(Down(pair, lead, follow, leadStature, followStature));

        HandPlace On(Anchor anchor)
        {
            var (body, stature) = anchor.Body == Role.Lead ? (lead, leadStature) : (follow, followStature);
            return new(body.Beside(anchor.Ahead * stature, anchor.Left * stature), anchor.Up * stature);
        }
    }

    /// <summary>A grip on the way from one to another, neither overhead.</summary>
    public static Grip Between(Grip before, Grip after, double share)
    {
        return before with { Hold = null, Wind = new(Mix(before.Wind.Lead, after.Wind.Lead, share), Mix(before.Wind.Follow, after.Wind.Follow, share), Mix(before.Wind.Apart, after.Wind.Apart, share)) };
    }

    private static double Mix(double from, double to, double share) => from + ((to - from) * share);

    /// <summary>Joined hands that would be in a trunk or at a shoulder, moved out of it.</summary>
    public PairPlace OutOfBodies(PairPlace place, Pairs pair, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        var hand = place.Lead;
        if (hand.Up < Body.ShoulderHeight * Math.Min(leadStature, followStature))
        {
            hand = Drawn(hand with { At = Outside(Outside(hand.At, lead, Wind.Lead, leadStature), follow, Wind.Follow, followStature) }, pair, lead, follow, leadStature, followStature);
        }

        return PairPlace.Joined(PastShoulder(PastShoulder(hand, lead, pair.LeadHand(), leadStature), follow, pair.FollowHand(), followStature));
    }

    // No arm folds so far that its hand is at its shoulder: on the way past it the hand is led round before it.
    private static HandPlace PastShoulder(HandPlace hand, DancerMoved body, Foot side, double stature)
    {
        var (shoulder, up, least) = (body.Shoulder(side, stature), Body.ShoulderHeight * stature, Folded * stature);
        var (way, rise) = (hand.At - shoulder, hand.Up - up);
        var far = Math.Sqrt((way.Length * way.Length) + (rise * rise));
        if (far >= least) return hand;
        way += (body.Beside(1, 0) - body.Middle) * (least - far);
        var length = Math.Sqrt((way.Length * way.Length) + (rise * rise));
        return length < 1e-9 ? hand : new(shoulder + (way * (least / length)), up + (rise * least / length));
    }

    // Over the head of whoever goes under, as far as both arms let it.
    private HandPlace Up(Pairs pair, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        var head = (leadStature * OverLead) + (followStature * (1 - OverLead));
        var up = Math.Min(head + OverTheHead, Math.Min(leadStature, followStature) * Body.RaisedGrip);
        var at = (lead.Middle * OverLead) + (follow.Middle * (1 - OverLead));
        // A little on the side of whoever lifts it: an arm that reached all across would have its elbow in the face below.
        var other = (follow.Shoulder(pair.FollowHand(), followStature) * OverLead) + (lead.Shoulder(pair.LeadHand(), leadStature) * (1 - OverLead));
        var way = other - at;
        if (way.Length > 1e-6) at += way * Math.Min(0.5, OnTheOwnSide * head / way.Length);
        return Drawn(new(at, up), pair, lead, follow, leadStature, followStature);
    }

    private HandPlace Down(Pairs pair, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        var up = (Height == HandHeight.Shoulder ? AtShoulder : Low) * (leadStature + followStature) / 2;
        var at = (lead.Shoulder(pair.LeadHand(), leadStature) + follow.Shoulder(pair.FollowHand(), followStature)) * 0.5;
        // Of two who look the same way; who are face to face have it between them, and an arm that lies round somebody goes its own way.
        var loose = 1 - Math.Max(Easing.LeastJerk(Math.Abs(Wind.Lead), LooseTo, Rounding), Easing.LeastJerk(Math.Abs(Wind.Follow), LooseTo, Rounding));
        at += (lead.Beside(1, 0) - lead.Middle + follow.Beside(1, 0) - follow.Middle) * (loose * OpenAhead * (leadStature + followStature) / 4);
        at = Round(at, lead, pair.LeadHand(), Wind.Lead, leadStature);
        at = Round(at, follow, pair.FollowHand(), Wind.Follow, followStature);
        at = Outside(at, lead, Wind.Lead, leadStature);
        at = Outside(at, follow, Wind.Follow, followStature);
        return Drawn(new(at, up), pair, lead, follow, leadStature, followStature);
    }

    private static Spot Round(Spot at, DancerMoved body, Foot hand, double wind, double stature)
    {
        var share = Easing.LeastJerk(Math.Abs(wind), Rounding, Rounded);
        if (share == 0) return at;
        var own = hand == Foot.Left ? 1 : -1;
        var there = wind > 0 ? body.Beside(RoundAhead * stature, RoundAside * own * stature) : body.Beside(AcrossAhead * stature, -AcrossAside * own * stature);
        return at + ((there - at) * share);
    }

    // No hand is inside a trunk: it is moved out, before the trunk rather than behind it unless the own arm goes that
    // way. Out along rays, so that a hand that goes round a body never jumps.
    private static Spot Outside(Spot at, DancerMoved body, double wind, double stature)
    {
        var seen = body.Seen(at);
        var (ahead, aside) = (TrunkAhead * stature, Body.HalfBreadth * stature);
        var centre = ahead * RaysFrom * ((2 * Easing.LeastJerk(wind, 70, Rounding)) - 1);
        var (x, y) = ((seen.X - centre) / ahead, seen.Y / aside);
        var c = centre / ahead;
        if (((x + c) * (x + c)) + (y * y) >= 1) return at;
        // How many times further from the rays' centre the edge is: the larger root of a quadratic.
        var (square, middle) = ((x * x) + (y * y), x * c);
        if (square < 1e-12) return body.Beside(-Math.Sign(centre) * ahead, 0);
        var times = (Math.Sqrt((middle * middle) + (square * (1 - (c * c)))) - middle) / square;
        return body.Beside(centre + ((seen.X - centre) * times), seen.Y * times);
    }

    // Drawn in as far as either arm asks for it; where that is not enough, towards the height of the shoulders, where arms reach furthest.
    private static HandPlace Drawn(HandPlace hand, Pairs pair, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        var (his, hers) = (lead.Shoulder(pair.LeadHand(), leadStature), follow.Shoulder(pair.FollowHand(), followStature));
        var shoulders = Body.ShoulderHeight * (leadStature + followStature) / 2;
        var best = hand;
        for (var step = 0; step <= Levels; step++)
        {
            var up = hand.Up + ((shoulders - hand.Up) * step / Levels);
            var at = hand.At;
            // One arm after the other, until both have it.
            for (var turn = 0; turn < Turns; turn++) at = Within(Within(at, up, his, leadStature), up, hers, followStature);
            best = new(at, up);
            if ((at - his).Length <= ArmReach.Across(up, leadStature) + 1e-3) break;
        }

        return best;
    }

    private static Spot Within(Spot at, double up, Spot shoulder, double stature)
    {
        var reach = ArmReach.Across(up, stature);
        var way = at - shoulder;
        return way.Length <= reach ? at : shoulder + (way * (reach / way.Length));
    }
}
