using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>
/// The rows of the couple's program that keep her where a moment has her, seen from him. Slack, at a high
/// price, shows where no lengths will do.
/// </summary>
/// <param name="strict">True to leave the slack out: a smaller program, which has no solution where no lengths will do.</param>
internal sealed class RegionRows(LinearProgram program, RowSum row, CoupleSetting setting, DancerColumns lead, DancerColumns follow, bool strict)
{
    /// <summary>
    /// Price a metre, at each moment, of being away from the hold's middle by more than <see cref="Easy"/>. A little above the
    /// second and below the third price of a step's length, so that a couple comes home over the next few steps and none is bent far for it.
    /// </summary>
    private const double AwayPrice = 2.2;

    /// <summary>Metres from a hold's middle that nobody minds, for 1.70 m, as a share of the give.</summary>
    private const double Easy = 1.0 / 3;

    /// <summary>Price a metre of being where no lengths lead. Far above all others together.</summary>
    private const double SlackPrice = 10_000;

    /// <summary>Price a metre of crossing to the other side of him while somebody turns, and how far on her side she keeps, in metres for 1.70 m.</summary>
    private const double SidePrice = 3, OnHerSide = 0.20;

    /// <summary>Price a metre of being behind the hold's place when two are round who turned about as one.</summary>
    private const double BehindPrice = 4;

    /// <summary>How far ahead of a wrap's middle she is better, in metres for 1.70 m. Working value.</summary>
    private const double WrapAhead = 0.08;

    /// <summary>
    /// Price a metre of beginning elsewhere than in the middle of the hold. Next to nothing: it decides where she
    /// stands among places that cost nothing else.
    /// </summary>
    private const double BeginPrice = 0.01;

    /// <summary>The circle of reach is taken as eight sides whose corners lie on it: the cosine of a sixteenth of a turn.</summary>
    private const double Inscribed = 0.92387953251128674;

    private readonly List<int> _slacks = [];

    /// <summary>The columns that say how far they are out of place.</summary>
    public IReadOnlyList<int> Slacks => _slacks;

    /// <summary>True when being somewhere at a moment costs nothing in this program.</summary>
    /// <param name="scale">The couple's mean stature against 1.70 m.</param>
    public static bool Costless(Region where, Spot seen, double scale)
    {
        if (!where.Wide) return Math.Abs(seen.X - where.Centre.X - AheadOf(where, scale)) <= where.Give * Easy && Math.Abs(seen.Y - where.Centre.Y) <= where.Give * Easy;
        if (double.IsPositiveInfinity(where.Give)) return true;
        if (seen.Length > where.Give * Inscribed) return false;
        var side = new Facing(SideOf(where.Centre));
        return where.Centre.Length <= OnHerSide * scale || (seen.X * side.Cosine) + (seen.Y * side.Sine) >= OnHerSide * scale;
    }

    /// <summary>She is in a region at a moment.</summary>
    public void Keep(int m, Region where)
    {
        var centre = setting.Frame.Of(where.Centre);
        if (!where.Wide)
        {
            Near(m, 0, centre.X, where.Give, AheadOf(where, setting.Scale));
            Near(m, 2, centre.Y, where.Give, 0);
            if (ComesInto(m) is not null) NotBehind(m, centre.X - (setting.Limits.HoldGive * setting.Scale / 2));
            return;
        }

        if (double.IsPositiveInfinity(where.Give)) return;
        if (ComesInto(m) is { } next) NotBehind(m, setting.Frame.Of(next.Centre).X - (setting.Limits.HoldGive * setting.Scale / 2));
        for (var side = 0; side < 8; side++) Within(m, side, where.Give * Inscribed);
        if (centre.Length > OnHerSide * setting.Scale) OnSide(m, SideOf(centre));
    }

    /// <summary>She begins in the middle of the first hold, or where in it she is better, if nothing else is asked.</summary>
    public void Begin()
    {
        var where = setting.Moments[0].Where;
        var centre = setting.Frame.Of(where.Centre);
        for (var (side, at) = (0, centre.X + (where.Wide ? 0 : AheadOf(where, setting.Scale))); side <= 2; (side, at) = (side + 2, centre.Y))
        {
            Towards(0, side);
            for (var sign = 1; sign >= -1; sign -= 2) row.Add(program.AddPriced(0, double.PositiveInfinity, BeginPrice), sign);
            row.Into(at, at);
        }
    }

    /// <summary>At the end the lead is not further in or out than he may be; the way round the room is free.</summary>
    public void Lane(double give)
    {
        // In the mirror the middle of the room is on the other side.
        lead.Along(lead.Last, setting.Frame.Across(new(2 * setting.Frame.Side)), 1);
        Slack(1);
        Slack(-1);
        row.Into(-give, give);
    }

    // The eighth of the circle, seen by the lead, in which a place lies.
    private static int SideOf(Spot place)
    {
        var best = 0;
        var furthest = double.NegativeInfinity;
        for (var side = 0; side < 8; side++)
        {
            var facing = new Facing(side);
            var reach = (place.X * facing.Cosine) + (place.Y * facing.Sine);
            if (reach <= furthest + 1e-9) continue;
            (best, furthest) = (side, reach);
        }

        return best;
    }

    // Within easy reach of the middle for nothing, within the give for a little, further only as slack.
    private void Near(int m, int side, double centre, double give, double better)
    {
        Towards(m, side);
        for (var sign = 1; sign >= -1; sign -= 2)
        {
            row.Add(program.AddPriced(0, (give * (1 - Easy)) + (sign * better), AwayPrice), sign);
            Slack(sign);
        }

        row.Into(centre + better - (give * Easy), centre + better + (give * Easy));
    }

    // In a wrap she is better a little ahead of its middle: his arm lies round her back.
    private static double AheadOf(Region where, double scale) => Holds.Named(where.Hold)?.Kind == "wrap" ? WrapAhead * scale : 0;

    private void Within(int m, int side, double reach)
    {
        Towards(m, side);
        Slack(-1);
        row.Into(double.NegativeInfinity, reach);
    }

    // The hold that two who turn about as one stand in at once when they are round, or null.
    private Region? ComesInto(int m)
    {
        if (m == 0) return null;
        var (before, now) = (setting.Moments[m - 1], setting.Moments[m]);
        var after = now.Where.Wide && m + 1 < setting.Moments.Count ? setting.Moments[m + 1] : now;
        var asOne = now.Lead != before.Lead && now.Apart == before.Apart && now.Joined == before.Joined && now.Joined == after.Joined;
        return asOne && !after.Where.Wide && after.Lead == now.Lead && after.Follow == now.Follow && Holds.Named(after.Where.Hold)?.FollowTurn.Eighths == 0 ? after.Where : null;
    }

    // Round already she is not far behind where the hold has her, where she can: his arm has to lie behind her. This proves nothing.
    private void NotBehind(int m, double ahead)
    {
        Towards(m, 0);
        row.Add(program.AddPriced(0, double.PositiveInfinity, BehindPrice), 1);
        row.Into(ahead, double.PositiveInfinity);
    }

    // She keeps to her side of him where she can; this proves nothing.
    private void OnSide(int m, int side)
    {
        Towards(m, side);
        row.Add(program.AddPriced(0, double.PositiveInfinity, SidePrice), 1);
        row.Into(OnHerSide * setting.Scale, double.PositiveInfinity);
    }

    // Her middle − his, in a direction some eighths to the lead's left.
    private void Towards(int m, int side)
    {
        var moment = setting.Moments[m];
        var direction = new Facing(setting.Frame.Of(moment.Lead).Eighths + side);
        var way = new Spot(direction.Cosine, direction.Sine);
        follow.Along(moment.FollowStance, way, 1);
        lead.Along(moment.LeadStance, way, -1);
    }

    private void Slack(double sign)
    {
        if (strict) return;
        var slack = program.AddPriced(0, double.PositiveInfinity, SlackPrice);
        _slacks.Add(slack);
        row.Add(slack, sign);
    }
}
