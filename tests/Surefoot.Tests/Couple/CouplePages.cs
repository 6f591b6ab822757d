using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Solver;

namespace Surefoot.Tests.Couple;

/// <summary>Small pages for couples, read with the solver.</summary>
internal static class CouplePages
{
    public static GlopSolver Glop { get; } = new();

    public static Reading Read(string page) => DanceReader.Read(page, null, Glop);

    public static string Page(string hold, string feet, string steps, string facing = "line of dance") =>
        $"A small page\nKind: partner, circle\nHold: {hold}\nFacing: {facing}\nFeet: {feet}\nPhrase: any\n\n{steps}\n";

    /// <summary>Where the follow is seen from the lead at a moment, in the lead's own frame.</summary>
    public static Spot Seen(CoupleSolution couple, Moment moment)
    {
        var way = couple.Motion.Of(Role.Follow)!.Stances[moment.FollowStance].Middle - couple.Motion.Of(Role.Lead)!.Stances[moment.LeadStance].Middle;
        return Spot.Origin.Moved(new(-moment.Lead.Eighths), way.X, way.Y);
    }
}
