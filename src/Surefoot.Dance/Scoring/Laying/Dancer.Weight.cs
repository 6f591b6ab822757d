using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <content>Which foot acts and where the weight is afterwards.</content>
internal sealed partial class Dancer
{
    private void Act(
        ActionKind kind, Direction way, Foot? named, Turn turn, Count at, TextSpan source, StepSize size, Assumed assumed, Weight? endsOn,
        bool? footNamed = null, Conflict conflict = Conflict.None)
    {
        var says = footNamed ?? named is not null;
        var weightBefore = Weight;
        Foot? acting = null;
        switch (kind.Rule())
        {
            case WeightRule.Takes:
                acting = FreeFoot(named, says, ref conflict);
                Weight = acting.Value.Weight();
                break;
            case WeightRule.Returns:
                acting = Returning(named, says, ref conflict);
                Weight = acting.Value.Weight();
                break;
            case WeightRule.FreeFootActs:
                acting = FreeFoot(named, says, ref conflict);
                Weight = acting.Value.Other().Weight();
                break;
            case WeightRule.Evens:
                Weight = Weight.Both;
                break;
            case WeightRule.Leans:
                acting = named ?? Weight.Free() ?? Foot.Left;
                Weight = acting.Value.Weight();
                break;
            default:
                if (kind == ActionKind.Hop)
                {
                    if (Weight == Weight.Both && named is null) conflict = Raise(Conflict.WeightEven);
                    acting = Weight.Free()?.Other() ?? named ?? Foot.Left;
                    if (named is { } hopped && Weight.Free() == hopped) conflict = Raise(Conflict.HopOnFreeFoot);
                    Weight = acting.Value.Weight();
                }
                else if (kind == ActionKind.Pivot && _stepForwardJustBefore && Weight.Free() is { } other)
                {
                    Weight = other.Weight();
                }

                break;
        }

        if (endsOn is { } told) Weight = told;
        else if (_figure is not null && kind is ActionKind.Turn && _move.Figure is { FreeAfter: "as told" }) assumed |= Assumed.WeightNotNamed;
        Facing += turn;
        var use = kind switch
        {
            ActionKind.Jump => FootUse.Both,
            ActionKind.Turn or ActionKind.Pivot => weightBefore switch { Weight.Left => FootUse.Left, Weight.Right => FootUse.Right, _ => FootUse.Both },
            _ => acting?.Use() ?? FootUse.None,
        };
        Steps.Add(new(at + Offset, use, kind, way, turn, Facing, Weight, Section, source, _figure, size, assumed, conflict)
        {
            FootNamed = says,
            Repeated = _laid.Repeated,
            RepeatedBy = _laid.RepeatedBy,
        });
        Remember(kind, way, acting);
    }

    private void Remember(ActionKind kind, Direction way, Foot? acting)
    {
        if (kind == ActionKind.Rock || kind.Rule() == WeightRule.Leans)
        {
            _rocked = acting;
            if (kind == ActionKind.Rock) _lastRock = way;
        }
        else if (kind.Rule() is not WeightRule.Stays)
        {
            _rocked = null;
        }

        if (kind.Rule() == WeightRule.Takes && kind != ActionKind.Rock && way is not (Direction.InPlace or Direction.Together)) _lastTravel = way;
        _stepForwardJustBefore = kind is ActionKind.Step or ActionKind.Rock or ActionKind.Stomp && way is Direction.Forward or Direction.DiagonalForward or Direction.ForwardAcross or Direction.Across;
    }

    private Foot FreeFoot(Foot? named, bool says, ref Conflict conflict)
    {
        var free = Weight.Free();
        if (named is { } foot)
        {
            if (free is { } only && only != foot) conflict = Raise(Conflict.FootCarriesWeight);
            else if (says) Settled();
            return foot;
        }

        if (free is null)
        {
            conflict = Raise(Conflict.WeightEven);
            return Foot.Left;
        }

        return free.Value;
    }

    private Foot Returning(Foot? named, bool says, ref Conflict conflict)
    {
        if (_rocked is { } rocked)
        {
            if (named == rocked) conflict = Raise(Conflict.FootCarriesWeight);
            else if (named is not null && says) Settled();
            return named ?? rocked.Other();
        }

        conflict = Raise(Conflict.NothingToRecover);
        return named ?? Weight.Free() ?? Foot.Left;
    }

    // One cause, one report: what clashes after a clash is taken as the page says it, once the line is another.
    private Conflict Raise(Conflict conflict)
    {
        if (_doubt)
        {
            if (_doubtLine != _laid.Line.Start) _doubt = false;
            return Conflict.None;
        }

        Doubt(_laid.Line.Start);
        return conflict;
    }

    private void Settled()
    {
        if (_doubt && _doubtLine != _laid.Line.Start) _doubt = false;
    }
}
