using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>A pair of joined hands; the height is null where nobody worked it out.</summary>
public readonly record struct JoinedHands(Pairs Pair, HandHeight? Height);

/// <summary>What a couple holds from a moment of the repeat on.</summary>
/// <param name="Name">The hold's name, or null on the way and where what they hold has none.</param>
/// <param name="Words">The hold in words, whether it has a name or not; on the way only the hands.</param>
/// <param name="Apart">The follow's facing against the lead's.</param>
/// <param name="OnTheWay">True while somebody turns, or they change places, and no hold is reached yet.</param>
public sealed record HoldInForce(Count At, string? Name, string Words, Pairs Joined, ValueList<JoinedHands> Hands, Turn Apart, bool OnTheWay)
{
    /// <summary>For a hold without a name, how they stand to each other; it is part of the words.</summary>
    public string Place { get; init; } = "";

    /// <summary>The words for somebody who sees this moment alone: "right hands joined overhead, on the way".</summary>
    public string InFull => OnTheWay ? Words + ", on the way" : Words;

    /// <summary>The hold at every moment at which one of the two acts; the first is before count 1.</summary>
    public static ValueList<HoldInForce> All(CoupleSolution couple) => All(couple, new("lead", "follow"));

    internal static ValueList<HoldInForce> All(CoupleSolution couple, RoleNames names)
    {
        var all = new List<HoldInForce>(couple.Moments.Count);
        for (var m = 0; m < couple.Moments.Count; m++) all.Add(Of(couple, m, names));
        return Arrived(couple, all);
    }

    /// <summary>
    /// The last action of a turn brings them into the hold in which they are then found standing, with the same
    /// hands and the same looks.
    /// </summary>
    private static ValueList<HoldInForce> Arrived(CoupleSolution couple, List<HoldInForce> all)
    {
        var arrived = all.ToArray();
        for (var m = 0; m + 1 < all.Count; m++)
        {
            var (now, next) = (all[m], all[m + 1]);
            var stays = couple.Moments[m].Lead == couple.Moments[m + 1].Lead && couple.Moments[m].Follow == couple.Moments[m + 1].Follow;
            if (now.OnTheWay && !next.OnTheWay && stays && now.Joined == next.Joined) arrived[m] = next with { At = now.At, Hands = now.Hands };
        }

        return arrived.ToValueList();
    }

    private static HoldInForce Of(CoupleSolution couple, int m, RoleNames names)
    {
        var moment = couple.Moments[m];
        var hands = HandsAt(couple, m);
        var (joined, raised) = (Pairs.None, Pairs.None);
        foreach (var (pair, height) in hands)
        {
            joined |= pair;
            if (height == HandHeight.Raised) raised |= pair;
        }

        // A hold whose hands had to be let go is that hold no longer.
        var name = joined == Pairs.None ? "hands free" : moment.Where.Hold is { } hold && Holds.Named(hold)?.Joined == joined ? hold : null;
        var onTheWay = name is null && moment.Turning;
        var words = name is not null ? HoldPhrases.Now(name) : HandPhrases.Joined(joined, raised, names);
        // Without a solution nobody knows where they are.
        var place = name is null && !onTheWay && couple.Hands is not null ? PlaceOf(couple.Motion, moment, names) : "";
        return new(moment.At, name, place.Length > 0 ? $"{words}, {place}" : words, joined, hands, moment.Apart, onTheWay) { Place = place };
    }

    private static ValueList<JoinedHands> HandsAt(CoupleSolution couple, int m)
    {
        var hands = new List<JoinedHands>();
        foreach (var pair in PairsOf.Each)
        {
            PairTrack? track = null;
            foreach (var one in couple.Hands?.Pairs ?? default)
            {
                if (one.Pair == pair) track = one;
            }

            // Where no way was found for a pair, what the page says of it is all that is known.
            if (track is null ? couple.Moments[m].Joined.HasFlag(pair) : track.Heights[m] is not null) hands.Add(new(pair, track?.Heights[m]));
        }

        return hands.ToValueList();
    }

    private static string PlaceOf(DanceMotion motion, Moment moment, RoleNames names)
    {
        if (motion.Of(Role.Lead) is not { } lead || motion.Of(Role.Follow) is not { } follow) return "";
        var way = follow.Stances[moment.FollowStance].Middle - lead.Stances[moment.LeadStance].Middle;
        var seen = Spot.Origin.Moved(new(-moment.Lead.Eighths), way.X, way.Y);
        return HandPhrases.Place(moment.Apart, seen.X, seen.Y, names);
    }
}
