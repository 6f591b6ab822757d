using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>Every check, in the order in which problems at the same place are told.</summary>
public static class AllChecks
{
    public static IReadOnlyList<ICheck> List { get; } =
    [
        new WordUnknown(), new BracketOpen(), new LinesJoined(), new CountMismatch(), new CountGap(), new CountOverlap(), new CountsMixed(), new PartLength(),
        new RepeatUnknown(), new OrderUnknown(), new CallNowhere(), new CallLong(), new FigureInItself(), new WeightSameFoot(), new WeightLost(), new FeetOrder(),
        new WeightClaimed(), new FacingClaimed(), new FeetTogetherClaimed(), new LoopWeight(), new LoopFacing(), new WallCount(), new HoldPlace(), new HoldClaimed(), new LoopPlace(), new LoopHold(), new HandsApart(),
        new ArmReach(), new ArmWind(), new ArmOverhead(), new ArmLow(), new HandsTwisted(), new BumpPartner(), new BumpFeet(), new BumpCouple(),
        new RestartWeight(), new TagLength(), new TurnFast(), new StepLong(), new FootFast(), new Drift(), new TravelBack(),
        new LineUnread(), new HeaderUnknown(), new HeaderValue(), new HeaderUnread(), new FigureReplaced(), new Phrase(), new Assumptions(),
    ];

    /// <summary>All problems of a page, in the order of the page.</summary>
    public static ValueList<Problem> Run(DanceCase dance)
    {
        var judged = dance with { InDoubt = Doubtful(dance) };
        var whole = !PageEnd.IsShort(dance);
        var found = new List<Problem>();
        foreach (var check in List)
        {
            if (check is not IWholeDanceCheck) found.AddRange(check.Find(judged));
            else if (whole) found.AddRange(check.Find(judged).Select(p => p with { Unfinished = PageEnd.SoFar(dance.Page, p.Message) }));
        }

        var meant = MeantSo.Said(dance.Page);
        found.RemoveAll(p => p.Severity == Severity.Warning && meant.Contains(p.Name));
        return found.Select((p, i) => (p: MeantSo.Offered(p, dance.Page), i)).OrderBy(x => x.p.Span.Start).ThenByDescending(x => x.p.Severity).ThenBy(x => x.i).Select(x => x.p).ToValueList();
    }

    private static bool Unclear(CountLine line) => line.Segments.Exists(s => s.Pieces.Exists(p => p is UnknownPiece or OpenBracketPiece));

    private static bool Doubtful(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults)
        {
            if (fault.Kind is not LayingFaultKind.CountsMixed) return true;
        }

        foreach (var role in dance.Score.Roles.Concat(dance.Score.Extras.SelectMany(e => e.Roles)))
        {
            foreach (var step in role.Steps)
            {
                if (step.Conflict != Conflict.None) return true;
            }
        }

        return dance.Page.Parts.SelectMany(p => p.Lines).OfType<CountLine>().Any(Unclear)
            || dance.Page.Figures.SelectMany(f => f.Versions).SelectMany(v => v.Lines).Any(Unclear);
    }
}
