using System.Text.RegularExpressions;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Tests.Properties;
using Surefoot.Tests.Solver;
using Surefoot.Tests.Support;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>What holds of every couple, whatever they dance.</summary>
public class CoupleLaws
{
    private const int Pages = 150;

    [Fact]
    public void The_same_page_is_danced_the_same_to_the_last_bit() => RandomPages.CircleDance.Each(page =>
    {
        var (one, two) = (Read(page), Read(page));
        Assert.Equal(one.Motion, two.Motion);
        Assert.Equal(one.Problems, two.Problems);
    }, iter: Pages);

    [Fact]
    public void The_mirrored_page_is_danced_as_the_mirror_image() => RandomPages.CircleDance.Each(page =>
    {
        var (here, there) = (Read(page), Read(Mirrored(page)));
        if (!AreMirrored(here.Score, there.Score)) return;
        Assert.Equal(here.Couple!.Impossible.Count, there.Couple!.Impossible.Count);
        if (here.Couple.Impossible.Count > 0 && here.Couple.Impossible[0].Kind == OutOfPlaceKind.Track) return;
        Same(here.Couple.Motion, there.Couple.Motion, s => s with { Y = -s.Y });
    }, iter: Pages);

    [Fact]
    public void The_demo_dances_are_mirrored_too()
    {
        foreach (var file in Root.Pages("demo", "dances", "circle"))
        {
            var text = File.ReadAllText(file);
            // The hall's figures are not in this book.
            if (Regex.IsMatch(text, "threshing|mill wheel|quilt", RegexOptions.IgnoreCase)) continue;
            var (here, there) = (Read(text), Read(Mirrored(text)));
            if (AreMirrored(here.Score, there.Score)) Same(here.Couple!.Motion, there.Couple!.Motion, s => s with { Y = -s.Y });
        }
    }

    [Fact]
    public void A_page_begun_with_another_facing_is_danced_the_same_turned() => Gen.Select(RandomPages.CircleDance, Gen.Int[1, 7]).Each((page, eighths) =>
    {
        var turned = page.Replace("Facing: line of dance\n", $"Facing: {new Facing(eighths).Name(Floor.Track)}\n");
        // How far a repeat may wander in or out is about the room, not about the couple.
        var anywhere = CoupleLimits.Usual with { Radial = 1000 };
        var (here, there) = (CoupleSolve.Of(Read(page).Score, Proven, anywhere)!, CoupleSolve.Of(Read(turned).Score, Proven, anywhere)!);
        // What would mend it is about the room as well: nobody is sent round it the wrong way.
        OutOfPlace Proof(OutOfPlace place) => place with { Metres = Math.Round(place.Metres, 6), Repairs = default };
        Assert.Equal(here.Impossible.Select(Proof), there.Impossible.Select(Proof));
        Same(here.Motion, there.Motion, s => Spot.Origin.Moved(new(eighths), s.X, s.Y));
    }, iter: Pages);

    [Fact]
    public void Longer_arms_wider_holds_and_freer_steps_make_nothing_impossible() => Gen.Select(RandomPages.CircleDance, Gen.Double[1, 1.5]).Each((page, by) =>
    {
        var score = Read(page).Score;
        var usual = CoupleSolve.Of(score, Proven)!;
        if (usual.Impossible.Count > 0) return;
        var limits = CoupleLimits.Usual;
        foreach (var wider in (CoupleLimits[])
        [
            limits with { Arms = by }, limits with { Steps = by }, limits with { HoldGive = limits.HoldGive * by, RaisedGive = limits.RaisedGive * by },
            limits with { Aside = limits.Aside * by }, limits with { Radial = limits.Radial * by },
        ])
        {
            Assert.Empty(CoupleSolve.Of(score, Proven, wider)!.Impossible);
        }
    }, iter: Pages / 2);

    [Fact]
    public void Longer_arms_bring_no_trouble_for_the_hands() => Gen.Select(RandomPages.CircleDance, Gen.Double[1, 1.5]).Each((page, by) =>
    {
        var score = Read(page).Score;
        // Only from nothing: a stretch of arms all but straight is one trouble, and longer arms may make two of it.
        if (CoupleSolve.Of(score, Proven)! is not { Hands: { } hands } usual || hands.Troubles.Any(t => t.Kind != HandTroubleKind.Twisted)) return;
        // The same places with longer arms; elsewhere they would stand in another way.
        var longer = HandsSolved.Of(score, usual.Motion, usual.Moments, CoupleLimits.Usual with { Arms = by });
        Assert.DoesNotContain(longer.Troubles, t => t.Kind != HandTroubleKind.Twisted);
    }, iter: Pages / 2);

    [Fact]
    public void Taking_a_hold_away_makes_nothing_impossible() => RandomPages.CircleDance.Each(page =>
    {
        if (Read(page).Couple!.Impossible.Count > 0) return;
        Assert.DoesNotContain(Read(Regex.Replace(page, "Hold: .*\n", "Hold: hands free\n")).Couple!.Impossible, i => i.Kind != OutOfPlaceKind.Track);
    }, iter: Pages);

    [Fact]
    public void Taller_couples_give_in_proportion_and_never_more() => Gen.Select(RandomPages.CircleDance, Gen.Int[1, 12]).Each((page, taller) =>
    {
        var by = 1 + (taller / 50.0);
        Recorded Tall(double lead, double follow)
        {
            var recorded = new Recorded();
            DanceReader.Read(page.Replace("Tempo:", FormattableString.Invariant($"Stature: lead {lead:0.000}, follow {follow:0.000}\nTempo:")), null, recorded);
            return recorded;
        }

        // The first answer knows of steps and holds only. Round each other they go one way or another: that search finds a way, not the least.
        (bool Solved, double Price) First(Recorded recorded) => recorded.Solved is [var (_, found), ..] ? (found.Solved, found.Objective) : (true, 0);
        var (here, there) = (First(Tall(1.700, 1.600)), First(Tall(1.700 * by, 1.600 * by)));
        if (!here.Solved) return;
        Assert.True(there.Solved);
        Assert.True(there.Price <= (here.Price * by) + 1e-6, $"{there.Price} against {here.Price} times {by}");
    }, iter: Pages);

    private static void Same(DanceMotion here, DanceMotion there, Func<Spot, Spot> moved)
    {
        foreach (var role in (Role[])[Role.Lead, Role.Follow])
        {
            var (a, b) = (here.Of(role)!.Stances, there.Of(role)!.Stances);
            Assert.Equal(a.Count, b.Count);
            for (var i = 0; i < a.Count; i++) Assert.True((moved(a[i].Middle) - b[i].Middle).Length < 1e-9, $"{role} {a[i].At}: {moved(a[i].Middle)} against {b[i].Middle}");
        }
    }
}
