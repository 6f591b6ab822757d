using Surefoot.Dance.Basics;
using Surefoot.Film.Alignment;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>Cuts a film, laid along the dance, where another part, or the same one anew, begins.</summary>
internal static class PassMaker
{
    /// <summary>Seconds of silence or talk after which going on is a new beginning. Working value.</summary>
    private const double Break = 6;

    /// <summary>Words that nobody says between two steps at tempo. Working value.</summary>
    private const int LongTalk = 5;

    public static List<Pass> Of(List<Placed> placed, List<Course> courses)
    {
        var all = new List<Pass>();
        Pass? now = null;
        Placed? last = null;
        var side = FilmSide.Unsaid;
        var announced = false;
        // Counting in starts a run of the whole dance, or after "with counts" a counting of one part.
        var (running, counted) = (false, false);
        // When the whole dance was last announced.
        double? top = null;
        foreach (var one in placed)
        {
            switch (one.Heard.Kind)
            {
                case HeardKind.CountIn when one.How == Placing.Leads: running |= !counted; break;
                case HeardKind.Tally: (running, counted) = (false, true); break;
                case HeardKind.Part or HeardKind.Side or HeardKind.Role: (running, counted) = (false, false); break;
                case HeardKind.Talk when one.Heard.Words > LongTalk: (running, counted) = (false, false); break;
                default: break;
            }

            if (one.Heard.Kind == HeardKind.Top && one.How == Placing.Leads) top = one.Heard.To;
            else if (one.Heard.Kind is HeardKind.Part or HeardKind.Role or HeardKind.Restart || one.How is Placing.Ask or Placing.Step or Placing.Count) top = null;
            if (one.Heard.Kind == HeardKind.Restart && now is not null) now.BrokenOff = true;
            if (one.Heard.Kind == HeardKind.Side)
            {
                side = one.Heard.Side;
                // "One more time part A, from the side": it is said of what was just named.
                if (now is { Named: true, MatchedCount: 0 }) now.Side = side;
            }

            if (Begins(one, now, courses) is { } stage)
            {
                var goesOn = now is not null && one.How is Placing.Ask or Placing.Step or Placing.Count && one.Heard.From - now!.To < Break && !one.Jumped && !announced;
                if (counted && now is { InTime: true } && one.How is Placing.Ask or Placing.Step) counted = false;
                var open = now;
                now = new(stage, one.Course, one.Heard.From) { GoesOn = goesOn, Side = side, InTime = running || counted };
                all.Add(now);
                if (one.How == Placing.Ask && last is not null && OnceMore(last, one))
                {
                    // Its first step was said twice, and the part begins with the first of the two.
                    open?.Items.Remove(last);
                    now.From = last.Heard.From;
                    now.Items.Add(last);
                }
            }

            if (one.How is Placing.Ask or Placing.Step or Placing.Count) announced = false;
            else if (one.Heard.Kind is HeardKind.Top or HeardKind.Tally or HeardKind.CountIn) announced = true;
            last = one;
            if (now is null) continue;
            Take(one, now);
            if (one is { Heard.Kind: HeardKind.CountIn, How: Placing.Leads } && top is { } since && one.Heard.From - since < Break) now.Whole = now.Stage == 0;
        }

        return Joined(all);
    }

    private static bool OnceMore(Placed before, Placed first) => before is { How: Placing.Talk, Heard.Move: { Bare: false } said } && first.Heard.Move is { } move && said.SameHead(move) && first.Heard.From - before.Heard.To < Break / 2;

    // The stage of a new pass, or null where the one that is open goes on.
    private static int? Begins(Placed one, Pass? now, List<Course> courses)
    {
        var course = courses[one.Course];
        switch (one.How)
        {
            case Placing.Leads or Placing.Misnames:
                return course.StageAt(one.After);
            case Placing.Ask or Placing.Step or Placing.Count:
                var stage = one.Ask >= 0 ? course.Asks[one.Ask].Stage : course.StageAt(Math.Max(0, one.After - 1));
                if (now is null || now.Stage != stage) return stage;
                // The same part from its beginning.
                return one.Jumped && now.MatchedCount > 1 && one.Ask >= 0 && course.Asks[one.Ask].First == course.Stages[stage].First && one.How != Placing.Step ? stage : null;
            case Placing.Turns when one.Heard.Role is not null && now is not null && one.Jumped && now.MatchedCount > 2 && one.After == course.Stages[now.Stage].First:
                return now.Stage;
            default:
                return null;
        }
    }

    private static void Take(Placed one, Pass now)
    {
        now.Items.Add(one);
        if (one.How != Placing.Talk) now.To = Math.Max(now.To, one.Heard.To);
        switch (one.Heard.Kind)
        {
            case HeardKind.CountIn when one.How == Placing.Leads:
                now.InTime = true;
                now.CountedIn = one.Heard.From;
                break;
            case HeardKind.Part when one.How is Placing.Leads or Placing.Misnames:
                now.Named = true;
                break;
            case HeardKind.Role when one.How == Placing.Turns || now.MatchedCount == 0:
                if (now.MatchedCount == 0) now.Role = one.Heard.Role;
                else if (one.Heard.Role != now.Role) now.InTurn = true;
                break;
            default:
                break;
        }
    }

    // One more of what a part ended with, and nothing after it: no part was begun, though it would begin with the same.
    private static bool Once(Pass pass, List<Pass> kept, Pass? next) => pass is { MatchedCount: 1, Named: false, GoesOn: true, InTime: false } && kept.Count > 0 && !kept[^1].InTime
        && pass.Items.Find(i => i.How == Placing.Ask)?.Heard.Move is { } move && kept[^1].Items.FindLast(i => i.How == Placing.Ask)?.Heard.Move is { } last && move.SameHead(last)
        && (next is null || !next.GoesOn || next.Named);

    // A pass in which nothing is danced belongs to the next of the same part, or is talk.
    private static List<Pass> Joined(List<Pass> all)
    {
        var kept = new List<Pass>();
        for (var i = 0; i < all.Count; i++)
        {
            var pass = all[i];
            if (pass.MatchedCount == 0 || (pass.MatchedCount == 1 && !pass.Named && !pass.GoesOn))
            {
                if (i + 1 < all.Count && pass.CountedIn is { } begun && !all[i + 1].Named && all[i + 1].CountedIn is null && all[i + 1].Stage != pass.Stage && all[i + 1].From - pass.To < 2 * Break)
                {
                    // The first steps after counting in were not understood.
                    (all[i + 1].From, all[i + 1].CountedIn, all[i + 1].GoesOn, all[i + 1].Whole) = (begun, begun, false, pass.Whole);
                }
                else if (i + 1 < all.Count && all[i + 1].Stage == pass.Stage && all[i + 1].From - pass.To < Break)
                {
                    var next = all[i + 1];
                    // "From the beginning" in the greeting is no part yet.
                    var named = next.Named && !pass.Named && pass.CountedIn is null;
                    next.Items.InsertRange(0, pass.Items);
                    next.Named |= pass.Named;
                    next.CountedIn ??= pass.CountedIn;
                    next.Whole |= pass.Whole;
                    next.Role ??= pass.Role;
                    next.GoesOn = false;
                    // A cue such as "with counts" comes well before the counts.
                    if (!named) next.From = next.CountedIn is { } counted && !pass.Named ? counted : pass.From;
                }

                continue;
            }

            if (Once(pass, kept, i + 1 < all.Count ? all[i + 1] : null))
            {
                kept[^1].Items.AddRange(pass.Items.Select(x => x with { How = Placing.Talk }));
                kept[^1].To = Math.Max(kept[^1].To, pass.To);
                continue;
            }

            if (pass.InTurn) pass.Role = null;
            kept.Add(pass);
        }

        return kept;
    }
}
