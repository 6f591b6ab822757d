using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Alignment;

/// <summary>In what words and page do not agree.</summary>
[Flags]
internal enum Clash
{
    None = 0,
    Feet = 1,
    Way = 2,
    TurnAmount = 4,
    TurnSide = 8,
}

/// <summary>How well what was said is what the page asks for.</summary>
internal static class Fit
{
    // Scores are sums of working values, tuned on half of the made-up films and measured on the other half (docs/film.md).
    private const double SameFigure = 3;
    private const double Family = 2.2;
    private const double SameAction = 2.5;
    private const double KinAction = 1.8;
    private const double OtherStep = 0.8;
    private const double Agrees = 0.5;
    private const double Disagrees = -1;

    private static readonly Direction[] Strict = [Direction.Forward, Direction.Back, Direction.Side, Direction.Across, Direction.Behind];

    /// <summary>Larger is better; null where they have nothing in common.</summary>
    /// <param name="speaking">For whom it is said to be, where that is said.</param>
    public static double? Of(HeardMove said, Ask ask, Role? speaking = null)
    {
        if (Base(said, ask) is not { } score) return null;
        said = SideOfTurn(said, ask);
        var clash = Clashes(said, ask);
        // Words that both share are the lead's, and so are the feet that most people say with them.
        var written = ask.Shared && speaking != Role.Follow ? Clashes(said, ask, asWritten: true) : clash;
        if (said.Sides.Count > 0) score += clash.HasFlag(Clash.Feet) ? Disagrees : written.HasFlag(Clash.Feet) ? Disagrees * 0.6 : Begins(said, ask) ? Agrees : 0;
        if (said.Way is { } way && !said.Bare) score += clash.HasFlag(Clash.Way) ? Disagrees : Goes(ask, way) ? Agrees : ask.Figure is null ? Disagrees : -Agrees;
        if (said.Turn is not null && ask.Turned == 0) score += Disagrees * 0.7;
        if (said.Turn is not null && ask.Turned != 0) score += clash.HasFlag(Clash.TurnAmount) || clash.HasFlag(Clash.TurnSide) ? Disagrees : Agrees;
        return score;
    }

    /// <summary>One action said of a figure's steps: "side, behind, side" of a vine.</summary>
    public static double? OfStep(HeardMove said, ScoreStep step)
    {
        if (said.Figure is not null) return null;
        if (said.Bare) return said.Way == step.Direction && step.Kind == ActionKind.Step ? 0.9 : null;
        if (said.Kind != step.Kind) return null;
        if (said.Kind == ActionKind.Step && said.Way is null && said.Sides.Count == 0) return null;
        return said.Kind == ActionKind.Step && said.Way is { } way && way != step.Direction ? null : 1.1;
    }

    /// <summary>In what a step that is meant to be this one differs from it.</summary>
    /// <param name="asWritten">Compare with the page's words alone, which are the lead's, and not with the follow's own feet.</param>
    public static Clash Clashes(HeardMove said, Ask ask, bool asWritten = false)
    {
        said = SideOfTurn(said, ask);
        var clash = Clash.None;
        if (said.Sides.Count > 0 && OtherFeet(said.Sides, asWritten && ask.PageSides.Count > 0 ? ask with { Steps = [ask.Step with { Foot = FootUse.None }] } : ask)) clash |= Clash.Feet;
        if (said.Way is { } way && (OtherWay(way, said, ask) || (asWritten && ask.PageWays.Count > 0 && way is Direction.Forward or Direction.Back && !said.Bare && !ask.PageWays.Contains(way)))) clash |= Clash.Way;
        if (said.Turn is { } turn && ask.Turned != 0 && turn != ask.Turned) clash |= Clash.TurnAmount;
        if (said.TurnSide is { } side && ask.TurnSide is { } really && side != (ask.PageTurn ?? really) && (said.Turn is not null || ask.Figure is null)
            && ((ask.PageTurn is not null && ask.Step.Kind is ActionKind.Pivot or ActionKind.Turn && ask.Figure is null) || !Alternatives(ask).Any(feet => Within([side, .. said.Sides], feet)))) clash |= Clash.TurnSide;
        return clash;
    }

    // "Triple half turn, right, left right left": the first is the way round, where the figure's name has the amount in it.
    private static HeardMove SideOfTurn(HeardMove said, Ask ask) => said is { Figure: not null, Turn: null, TurnSide: null, Sides.Count: > 0 } && ask.PageTurn == said.Sides[0]
        ? said with { TurnSide = said.Sides[0], Sides = said.Sides.Skip(1).ToValueList() }
        : said;

    // One foot of several that is named is the first.
    private static bool Begins(HeardMove said, Ask ask) => said.Sides.Count != 1 || Alternatives(ask).Any(feet => feet[0] == said.Sides[0]) || !Alternatives(ask).Any();

    private static double? Base(HeardMove said, Ask ask)
    {
        if (said.Figure is { } figure)
        {
            if (ask.Figure is null) return null;
            if (figure == ask.Figure) return SameFigure;
            var family = SpokenRules.Shipped.Family;
            return family.TryGetValue(figure, out var a) && family.TryGetValue(ask.Figure, out var b) && a == b ? Family : null;
        }

        if (ask.Figure is not null)
        {
            if (said.Bare) return said.Way is { } going && ask.PageWays.Contains(going) ? 0.5 : null;
            return said.Kind is ActionKind.Turn or ActionKind.Pivot && said.Turn is { } amount && amount == ask.Turned ? 1.5 : null;
        }

        var step = ask.Step;
        if (said.Bare) return said.Way == step.Direction ? step.Kind == ActionKind.Step ? 1.5 : 0.6 : null;
        // "Step" alone is hardly a word.
        if (said.Kind == ActionKind.Step && said.Way is null && said.Sides.Count == 0 && said.Turn is null) return step.Kind == ActionKind.Step ? OtherStep : null;
        if (said.Kind == step.Kind) return SameAction;
        if (Kin(said.Kind) is > 0 and var kin && kin == Kin(step.Kind)) return KinAction;
        return said.Kind.Rule() == WeightRule.Takes && step.Kind.Rule() == WeightRule.Takes ? OtherStep : null;
    }

    // Actions that are said for each other.
    private static int Kin(ActionKind kind) => kind switch
    {
        ActionKind.Turn or ActionKind.Pivot => 1,
        ActionKind.Touch or ActionKind.Tap or ActionKind.Point or ActionKind.Toe => 2,
        ActionKind.Scuff or ActionKind.Brush => 3,
        ActionKind.Kick or ActionKind.Flick => 4,
        ActionKind.Hook or ActionKind.Hitch => 5,
        _ => 0,
    };

    public static bool Goes(Ask ask, Direction way) => ask.PageWays.Contains(way) || ask.Steps.Any(s => s.Direction == way);

    private static IEnumerable<ValueList<Foot>> Alternatives(Ask ask)
    {
        if (ask.PageSides.Count > 0) yield return ask.PageSides;
        if (ask.Feet.Count > 0) yield return ask.Feet;
    }

    private static bool OtherFeet(ValueList<Foot> said, Ask ask)
    {
        if (ask.Step.Kind is ActionKind.Pivot or ActionKind.Turn && ask.Figure is null) return false;
        var all = Alternatives(ask).ToList();
        if (all.Count == 0) return false;
        // One of several may be any of them: the others were not heard, or not said.
        if (said.Count == 1)
        {
            if (ask.PageSides.Count == 1) return ask.PageSides[0] != said[0] && !(ask.Feet.Count > 0 && ask.Feet[0] == said[0]);
            return ask.PageSides.Count == 0 && ask.Feet.Count > 0 && ask.Feet[0] != said[0];
        }

        // As many as are written are all of them; fewer may be any of them in order.
        if (ask.PageSides.Count == said.Count || (ask.Feet.Count == said.Count && ask.Steps.Count == said.Count)) all.RemoveAll(feet => feet.Count != said.Count);
        return !all.Exists(feet => Within(said, feet)) && all.Exists(feet => Within(said, feet.Select(f => f.Other()).ToValueList()));
    }

    private static bool OtherWay(Direction way, HeardMove said, Ask ask)
    {
        // A figure goes where the page says, whatever its single steps do.
        if (ask.Figure is not null && ask.PageWays.Count > 0 && way is (Direction.Forward or Direction.Back)) return !ask.PageWays.Contains(way);
        if (Goes(ask, way)) return false;
        if (ask.Figure is null) return !said.Bare && Strict.Contains(way) && Strict.Contains(ask.Step.Direction);
        return way is Direction.Forward && Goes(ask, Direction.Back) || way is Direction.Back && Goes(ask, Direction.Forward);
    }

    // In the same order, some left out.
    private static bool Within(ValueList<Foot> few, ValueList<Foot> all)
    {
        var found = 0;
        foreach (var foot in all)
        {
            if (found < few.Count && few[found] == foot) found++;
        }

        return found == few.Count;
    }
}
