using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Turns in which both pairs go over one head. Where the page leaves a pair free it is let go for the turn; where it does not, the arms end otherwise than they began.</summary>
internal sealed class HandTwists(IReadOnlyList<Moment> moments, Hold? start)
{
    /// <returns>The two pairs' ways, one of them let go where that keeps the arms clear, and what is left twisted.</returns>
    public (PairWay One, PairWay Other, List<HandTrouble> Troubles) Of(PairWay one, PairWay other, Func<PairRule[], HandPath, HandPath.State[]?> find)
    {
        var troubles = new List<HandTrouble>();
        var halves = Halves(one, other);
        for (var m = 1; m < moments.Count; m++)
        {
            if (!moments[m].Turning) continue;
            var last = m;
            while (last + 1 < moments.Count && moments[last + 1].Turning) last++;
            if (halves[last].Halves != halves[m - 1].Halves && halves[last].Halves != halves[last].Taken && Joined(one, last) && Joined(other, last))
            {
                var follow = one.States[last].Follow != one.States[m - 1].Follow;
                if (LetGo(one, other, (m, last), halves[last].Halves > halves[m - 1].Halves ? Foot.Left : Foot.Right, follow, find) is var (freeOne, freeOther))
                {
                    (one, other) = (freeOne, freeOther);
                    halves = Halves(one, other);
                }
                else
                {
                    var (hindered, needed) = TwistTrack.Hindered(moments, halves, one.Pair | other.Pair, last, start);
                    troubles.Add(new(HandTroubleKind.Twisted, moments[m].At, one.Pair | other.Pair, follow ? Role.Follow : Role.Lead, 0, HandVerb.Release) { Twist = new(halves[last].Halves, hindered, needed) });
                }
            }

            m = last;
        }

        return (one, other, troubles);
    }

    private (int Halves, int Taken)[] Halves(PairWay one, PairWay other) => TwistTrack.Of(moments, (one.Pair, one.States), (other.Pair, other.States), start);

    private static bool Joined(PairWay way, int m) => way.States[m].Height is not null;

    // Turning right one goes under one's right hand, turning left under one's left hand:
    // common practice. So the other one is let go.
    private static (PairWay, PairWay)? LetGo(PairWay one, PairWay other, (int From, int To) turn, Foot way, bool follow, Func<PairRule[], HandPath, HandPath.State[]?> find)
    {
        var oneStays = (follow ? one.Pair.FollowHand() : one.Pair.LeadHand()) == way;
        var (stays, goes) = oneStays ? (one, other) : (other, one);
        if (Freed(goes, turn, find) is { } freed) return oneStays ? (stays, freed) : (freed, stays);
        return Freed(stays, turn, find) is { } instead ? oneStays ? (instead, goes) : (goes, instead) : null;
    }

    private static PairWay? Freed(PairWay way, (int From, int To) turn, Func<PairRule[], HandPath, HandPath.State[]?> find)
    {
        var rules = (PairRule[])way.Rules.Clone();
        for (var m = turn.From; m <= turn.To; m++)
        {
            if (!rules[m].Allowed.HasFlag(PairStates.Released) || m == turn.To && rules[m].Hold is not null) return null;
            rules[m] = rules[m] with { Allowed = PairStates.Released };
        }

        return find(rules, way.Path) is { } states ? way with { Rules = rules, States = states } : null;
    }
}
