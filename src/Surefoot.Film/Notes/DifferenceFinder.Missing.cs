using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>What is left out: between two things that were said, before the first, and at the end of a part.</summary>
internal sealed partial class DifferenceFinder
{
    /// <summary>Seconds between words that are said straight on. Working value: less than a short word takes.</summary>
    private const double Straight = 0.25;

    /// <summary>Words that left and right belong to, before them and behind them.</summary>
    private static readonly string[] BeforeAFoot = ["the", "your", "my", "his", "her", "their", "to", "all", "is", "that's", "on", "of", "just", "from", "at", "it's", "with", "left", "right"];
    private static readonly string[] AfterAFoot = ["hand", "hands", "arm", "shoulder", "side", "so", "now", "then", "here", "there", "away", "foot", "is", "left", "right"];

    private void Missing(Pass pass)
    {
        var last = new Placed?[courses.Count];
        var said = pass.Matched.Where(m => m.Ask >= 0 && !courses[m.Course].Asks[m.Ask].Again).Select(m => courses[m.Course].Asks[m.Ask].Source).ToHashSet();
        foreach (var one in pass.Items)
        {
            if (one.How is Placing.Leads or Placing.Misnames)
            {
                Array.Clear(last);
                last[one.Course] = one;
            }
            else if (one.How is Placing.Again)
            {
                last[one.Course] = one;
            }
            else if (one.How is Placing.Turns)
            {
                // Whoever is turned to begins there, or goes on from before.
                last[one.Course] ??= one;
            }
            else if (one.How is Placing.Ask or Placing.Step or Placing.Count)
            {
                var course = courses[one.Course];
                var first = one.Ask >= 0 && one.How == Placing.Ask ? course.Asks[one.Ask].First : one.Before;
                // Not announced: it goes on from where the part begins.
                if (last.All(l => l is null) && !one.Jumped && one.How == Placing.Ask && one.Before == course.Stages[pass.Stage].First && first > one.Before) Gap(pass, one with { After = one.Before, How = Placing.Leads }, one, course, one.Before, first, said);
                if (last[one.Course] is { } before && !one.Jumped && one.How == Placing.Ask && first > before.After) Gap(pass, before, one, course, before.After, first, said);
                last[one.Course] = one;
            }
        }

        // The end of the part, when the rest of it was said.
        var ends = courses.Select((_, c) => c).Where(c => last[c] is { How: Placing.Ask }).ToList();
        foreach (var c in ends)
        {
            var (course, stage) = (courses[c], courses[c].Stages[pass.Stage]);
            var heard = pass.Items.Where(i => i.Ask >= 0 && i.Course == c).Select(i => i.Ask).Distinct().Count();
            var all = course.Asks.Count(a => a.Stage == pass.Stage && !a.Again);
            if (!pass.BrokenOff && last[c]!.After < stage.End && heard * 2 >= all) Gap(pass, last[c]!, null, course, last[c]!.After, stage.End, said);
        }
    }

    private void Gap(Pass pass, Placed last, Placed? next, Course course, int from, int to, HashSet<TextSpan> said)
    {
        var left = course.Asks.Select((a, i) => (Ask: a, Index: i)).Where(x => x.Ask.First >= from && x.Ask.First < to && !x.Ask.Again && !said.Contains(x.Ask.Source) && !Aligner.Silent(course, x.Index)).ToList();
        if (left.Count is 0 or > 4) return;
        if (next is not null && next.Heard.From - last.Heard.To > OneBreath * (pass.InTurn ? 5 : 2)) return;
        // What is left of it shows that it was said: feet or a way too many beside it, or a word of the dance that fits nowhere.
        var asks = left.ConvertAll(l => l.Ask);
        if (last.How == Placing.Leads && pass is { GoesOn: true, Named: false } && _before?.Items.FindLast(i => i.How == Placing.Ask) is { } earlier && Overfull(earlier, asks)) return;
        if (Remains(pass, last, next, asks) || RemainsBefore(pass, last, left[0].Index, course, to)) return;
        // A few words that are left of one step do not show that two were said.
        if (next is not null && Before(next)) left.RemoveAt(left.Count - 1);
        else if (Overfull(last, asks)) left.RemoveAt(Math.Max(0, left.FindLastIndex(l => last.Heard.Move?.Way is not { } way || Fit.Goes(l.Ask, way))));
        if (left.Count == 0) return;
        // "From the side, so you can see": a way alone, far from the next step, is hardly one.
        if (next is not null && (last.Heard.Move is { Bare: true } || next.Heard.Move is { Bare: true }) && next.Heard.From - last.Heard.To > 2) return;
        var when = FilmTime.OfSeconds(last.How == Placing.Leads && next is not null ? next.Heard.From : last.Heard.To);
        var first = left[0].Ask;
        _found.Add(new(when, DifferenceKind.Missing, Label(first), Counts(course, first, left[^1].Ask), Role(course, first), "", DifferenceWords.Missing(left.ConvertAll(l => Written(l.Ask))), Line(first), Written(first)));
    }

    // Words before a step that are not its own are the end of what was said before it; those after it cannot be.
    private bool Before(Placed next) => next is { How: Placing.Ask, Heard.Move: { } move } && (move.Stray.Count > 0 || (move.FeetBefore && Fit.Clashes(move, courses[next.Course].Asks[next.Ask]).HasFlag(Clash.Feet)) || (move.TurnBefore && courses[next.Course].Asks[next.Ask].Turned == 0));

    private bool Overfull(Placed one, List<Ask> left)
    {
        if (one is not { How: Placing.Ask, Heard.Move: { } move }) return false;
        var ask = courses[one.Course].Asks[one.Ask];
        var most = Math.Max(ask.Feet.Count, ask.PageSides.Count);
        // Of several feet people name all or the first: what else was named was said of something else.
        if (move.Sides.Count == 1 && ask.PageSides.Count > 1 && move.Sides[0] != ask.PageSides[0] && move.Sides[0] != ask.Feet.DefaultIfEmpty(ask.PageSides[0]).First()) return true;
        if (move.Sides.Count > 1 && move.Sides.Count < most && move.Sides.Count != ask.PageSides.Count && left[0].Feet.DefaultIfEmpty(move.Sides[0].Other()).First() == move.Sides[^1] && left[0].Steps.Count == 1) return true;
        // Which way round an amount turns that was not heard.
        var turning = move.Turn is null && ask.Turned != 0 && ask.TurnSide is { } round && move.Sides.Contains(ask.PageTurn ?? round) ? 1 : 0;
        return move.Sides.Count > most + turning || (move.Way is { } way && (!Fit.Goes(ask, way) || (move.WayAfterFeet && !ask.PageWays.Contains(way)))) || (move.Turn is not null && ask.Turned == 0)
            || (move.Way is Direction.InPlace && ask.Figure is null && !Written(ask).Contains("place", StringComparison.OrdinalIgnoreCase) && left.Exists(a => a.Figure is not null && Fit.Goes(a, Direction.InPlace)));
    }

    // Of two alike beside each other the one that was heard may as well be the second: then the first was not heard, and
    // something may be left of it.
    private bool RemainsBefore(Pass pass, Placed last, int left, Course course, int to)
    {
        for (var (heard, unheard) = (last, left); heard is { How: Placing.Ask, Jumped: false, Heard.Move: { } move } && heard.Ask == unheard - 1; unheard = heard.Ask)
        {
            if (course.Asks[unheard].End > to || Fit.Of(move, course.Asks[unheard]) is not { } fits || fits < Fit.Of(move, course.Asks[heard.Ask]) || Fit.Clashes(move, course.Asks[unheard]) != Clash.None) return false;
            var at = pass.Items.IndexOf(heard);
            var before = pass.Items.Take(at).LastOrDefault(i => i.Course == heard.Course && i.How is not Placing.Talk);
            if (before is null) return false;
            List<Ask> first = [course.Asks[heard.Ask]];
            if (Remains(pass, before, heard, first) || Before(heard) || Overfull(before, first)) return true;
            heard = before;
        }

        return false;
    }

    private bool Remains(Pass pass, Placed last, Placed? next, List<Ask> left)
    {
        var from = Math.Max(0, pass.Items.IndexOf(last) + 1);
        var to = next is null ? pass.Items.Count : pass.Items.IndexOf(next);
        // Of a figure with a longer name some of the name would be left.
        var written = left.SelectMany(a => a.Figure is { } name && name.Split(' ', '-') is { Length: > 1 } names ? names : page.Words(a.Source).ToLowerInvariant().Split(' ', ',', '.')).Where(w => w.Length > 2 && !Everyday.Contains(w)).ToHashSet(StringComparer.Ordinal);
        // What was said before a part that nobody announced lies at the end of the one before.
        var earlier = from == 0 && pass is { GoesOn: true, Named: false } && _before is not null ? _before.Items.AsEnumerable().Reverse().TakeWhile(i => i.How == Placing.Talk && next is not null && next.Heard.From - i.Heard.To < OneBreath / 2) : [];
        return earlier.Concat(pass.Items.Skip(from).Take(Math.Max(0, to - from))).Any(i => i.How == Placing.Talk && (next is not null || i.Heard.From - SaidBefore(pass, i, last) < OneBreath / 2)
            && (i.Heard.Kind == HeardKind.Step || Astray(pass, i, last, next) || (i.Heard.Kind == HeardKind.Talk && (LeftIn(SpokenRules.Shipped.WithoutTalk(i.Heard.Said).Split(' ', StringSplitOptions.RemoveEmptyEntries), left, written) || (i.Heard.From - last.Heard.To < Straight && OnAFoot(i.Heard.Said, left[0]))))));
    }

    // When the last thing was said that is no talk, of whomever.
    private static double SaidBefore(Pass pass, Placed talk, Placed last) => pass.Items.IndexOf(talk) is var at and > 0 ? Math.Max(last.Heard.To, pass.Items.Take(at).Where(i => i.How != Placing.Talk).Select(i => i.Heard.To).DefaultIfEmpty(0).Max()) : last.Heard.To;

    // A word that stands alone right after a step is hardly talk: it is what was made of the next one's name. Beside a way
    // by itself it is what was made of that one's verb.
    private static bool Astray(Pass pass, Placed one, Placed last, Placed? next) => one.Heard is { Kind: HeardKind.Talk, Words: 1 } && one.Heard.Said != PutRight.Mark
        && last is { How: Placing.Ask } && pass.Items.IndexOf(one) == pass.Items.IndexOf(last) + 1 && one.Heard.From - last.Heard.To < Straight
        && (next is null || (pass.Items.IndexOf(next) == pass.Items.IndexOf(one) + 1 && next is { How: Placing.Ask, Heard.Move.Bare: false }));

    // "On the right, we will do that again": what is left of a step, however long the talk after it is.
    private static bool OnAFoot(string said, Ask left) => said.Split(' ') is [var one, var two, var side, ..] && (one, two) is ("on", "the") or ("with", "your") && left.Feet.Any(f => f.Word() == side);

    // "Keep it small, left, make sure": a foot that belongs to no word beside it is what is left of its step.
    private static bool Alone(string[] said, string foot)
    {
        for (var i = 1; i + 1 < said.Length; i++)
        {
            if (said[i] == foot && !BeforeAFoot.Contains(said[i - 1]) && !AfterAFoot.Contains(said[i + 1])) return true;
        }

        return false;
    }

    // A word of its name, its feet, its turn, or "with your" and then nothing.
    private static bool LeftIn(string[] said, List<Ask> left, HashSet<string> written)
    {
        if (said.Any(written.Contains)) return true;
        if (said is [.., "on", "the"] or [.., "with", "your"]) return true;
        var feet = said.Where(w => w is "left" or "right").ToList();
        if (said.Length <= 4 && left[0].Steps.Count == 1 && left[0].Feet.Any(foot => feet.Contains(foot.Word()))) return true;
        // "The left" for "vine left".
        if (said is ["the" or "that" or "them" or "just", var named, ..] && left[0].PageSides is [var only] && named == only.Word() && !(said.Length > 2 && AfterAFoot.Contains(said[2]))) return true;
        if (left[0].Steps.Count == 1 && left[0].Feet.Any(foot => Alone(said, foot.Word()))) return true;
        if (feet.Count > 1 && left.Exists(a => a.PageSides.Select(f => f.Word()).SequenceEqual(feet, StringComparer.Ordinal))) return true;
        return left.Exists(a => a.Turned != 0) && said.Any(w => w is "half" or "quarter" or "quarters");
    }
}
