using System.Text.RegularExpressions;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Solver;

namespace Surefoot.Tests.Couple;

/// <summary>Small pages for couples, read with the solver.</summary>
internal static class CouplePages
{
    public static ProvenSolver Proven { get; } = new();

    public static Reading Read(string page) => DanceReader.Read(page, null, Proven);

    public static string Page(string hold, string feet, string steps, string facing = "line of dance") =>
        $"A small page\nKind: partner, circle\nHold: {hold}\nFacing: {facing}\nFeet: {feet}\nPhrase: any\n\n{steps}\n";

    /// <summary>Where the follow is seen from the lead at a moment, in the lead's own frame.</summary>
    public static Spot Seen(CoupleSolution couple, Moment moment)
    {
        var way = couple.Motion.Of(Role.Follow)!.Stances[moment.FollowStance].Middle - couple.Motion.Of(Role.Lead)!.Stances[moment.LeadStance].Middle;
        return Spot.Origin.Moved(new(-moment.Lead.Eighths), way.X, way.Y);
    }

    /// <summary>The page danced to the other side: feet, turns, places in the room and holds seen in a mirror.</summary>
    public static string Mirrored(string page) => Sides().Replace(page, m => m.Value switch
    {
        "L" => "R",
        "R" => "L",
        "left" => "right",
        "right" => "left",
        "inside" => "outside",
        "outside" => "inside",
        // The hands between partners are the inner ones in a mirror too.
        "inside hands" or "outside hands" => m.Value,
        var hold => Holds.Mirror(Holds.Named(hold)!).Name,
    });

    private static Regex Sides() => new($@"\b({string.Join('|', Holds.All.Select(h => h.Name).OrderByDescending(n => n.Length))}|inside hands|outside hands|L|R|left|right|inside|outside)\b", RegexOptions.CultureInvariant);

    /// <summary>True when one score is the other in a mirror; some words have no mirror image.</summary>
    public static bool AreMirrored(DanceScore here, DanceScore there)
    {
        for (var r = 0; r < here.Roles.Count; r++)
        {
            if (here.Roles[r].Steps.Count != there.Roles[r].Steps.Count) return false;
            for (var i = 0; i < here.Roles[r].Steps.Count; i++)
            {
                var (a, b) = (here.Roles[r].Steps[i], there.Roles[r].Steps[i]);
                if (a.Conflict != Conflict.None || a.Foot != b.Foot.Mirrored() || a.Weight != b.Weight.Mirrored() || a.Turn != b.Turn.Mirrored || a.Direction != b.Direction) return false;
            }
        }

        return true;
    }
}
