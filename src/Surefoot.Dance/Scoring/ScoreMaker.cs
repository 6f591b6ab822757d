using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Scoring.Laying;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring;

/// <summary>Makes the score of a page: a pure function of its tree and the book of figures.</summary>
public static class ScoreMaker
{
    public static DanceScore Make(Page page, FigureBook book)
    {
        var facts = new FactsMaker(page, book).Make(FirstFoot(page, book));
        var faults = new List<LayingFault>();
        var plans = new List<PartPlan>(page.Parts.Count);
        for (var i = 0; i < page.Parts.Count; i++) plans.Add(new(page.Parts[i], i, facts.Roles));
        LayParts(page, book, plans, faults, facts);
        foreach (var figure in page.Figures)
        {
            if (FigureDancer.ContainsItself(figure)) faults.Add(new(LayingFaultKind.FigureInItself, 0, Count.First, Count.First, null, Beats.Zero, Beats.Zero, figure.Span, null, figure.Name));
        }

        var order = OrderReader.Read(page, plans, facts.Floor, faults);
        var sections = new List<Section>();
        var at = Count.First;
        foreach (var (part, mirrored) in order.Parts)
        {
            sections.Add(new(part, at, mirrored));
            at += Beats.Of(plans[part].Length);
        }

        var counts = at - Count.First;
        var roles = new List<RoleScore>();
        var lead = default(Dancer);
        foreach (var role in facts.Roles)
        {
            var dancer = NewDancer(role, facts.Start(role), facts, book, lead);
            var danced = new HashSet<int>();
            for (var s = 0; s < sections.Count; s++)
            {
                DancePart(dancer, plans[sections[s].Part], sections[s], s, again: !danced.Add(sections[s].Part));
            }

            roles.Add(Finished(dancer, role, facts.Start(role), at));
            lead ??= dancer;
        }

        var extras = Extras(page, book, plans, facts, roles, order.Events);
        return new(
            page.Title,
            facts,
            counts,
            plans.Select(Part).ToValueList(),
            sections.ToValueList(),
            roles.ToValueList(),
            extras,
            order.Events.ToValueList(),
            plans.SelectMany(p => p.Claims).ToValueList(),
            plans.SelectMany(p => p.Hands).ToValueList(),
            page.Notes.Select(n => new ScoreNote(n.Text, null, -1, null, n.Span)).Concat(plans.SelectMany(p => p.Notes)).ToValueList(),
            faults.ToValueList())
        {
            Calls = page.Calls.Select(c => PartLayer.Called(c, -1, 0)).Concat(plans.SelectMany(p => p.Calls)).ToValueList(),
        };
    }

    private static void LayParts(Page page, FigureBook book, List<PartPlan> plans, List<LayingFault> faults, DanceFacts facts)
    {
        var layer = new PartLayer(page, book, plans, faults, facts.Starts[0].Free);
        var total = 0;
        bool? running = null;
        foreach (var plan in plans)
        {
            if (plan.Node.Kind == PartKind.Part && FirstCount(plan.Node) is { } first && total > 0)
            {
                var countsOn = first == total + 1 || (first > 1 && running == true);
                if (countsOn) plan.Offset = total;
                if (running is { } before && before != countsOn)
                {
                    faults.Add(new(LayingFaultKind.CountsMixed, plan.Index, Count.First, Count.First, null, Beats.Of(total), Beats.Of(first), FirstCountSpan(plan.Node)));
                }

                running ??= countsOn;
            }

            layer.Lay(plan);
            if (plan.Node.Kind == PartKind.Part) total += plan.Length;
        }
    }

    private static int? FirstCount(PartNode node)
    {
        foreach (var line in node.Lines)
        {
            switch (line)
            {
                case CountLine { Group.Lengths.Count: 0 } counted:
                    return counted.Group.FirstWhole;
                case RepeatLine { Group: { } group }:
                    return group.FirstWhole;
            }
        }

        return null;
    }

    private static TextSpan FirstCountSpan(PartNode node)
    {
        foreach (var line in node.Lines)
        {
            if (line is CountLine counted) return counted.Group.Span;
            if (line is RepeatLine { Group: { } group }) return group.Span;
        }

        return node.Span;
    }

    private static Dancer NewDancer(Role role, RoleStart start, DanceFacts facts, FigureBook book, Dancer? lead) =>
        role == Role.Follow && facts.FeetRelation == FeetRelation.Opposite && lead is not null
            ? new(role, start, book) { TurnsAsOne = Holds.Named(facts.Hold)?.Kind == "closed", LeadFacing = at => FacingBefore(lead.Steps, facts.Start(Role.Lead).Facing, at) }
            : new(role, start, book);

    private static Facing FacingBefore(List<ScoreStep> steps, Facing start, Count at)
    {
        var low = 0;
        var high = steps.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (steps[middle].At < at) low = middle + 1;
            else high = middle;
        }

        return low == 0 ? start : steps[low - 1].Facing;
    }

    private static void DancePart(Dancer dancer, PartPlan plan, Section section, int index, bool again)
    {
        dancer.Section = index;
        dancer.Offset = section.Start - Count.First;
        foreach (var move in plan.Moves[(int)dancer.Role].OrderBy(m => m.Times.Count > 0 ? m.Times[0] : Count.First))
        {
            dancer.Dance(again || section.Mirrored ? move with { Mirrored = move.Mirrored ^ section.Mirrored, Repeated = move.Repeated || again } : move);
        }
    }

    private static RoleScore Finished(Dancer dancer, Role role, RoleStart start, Count end)
    {
        var steps = dancer.Steps;
        for (var i = 0; i < steps.Count; i++)
        {
            var until = i + 1 < steps.Count ? steps[i + 1].At : end;
            // Steps half a count apart are the short ones of a triple, whatever they are called.
            var quick = steps[i].ChangesWeight
                && ((i + 1 < steps.Count && steps[i + 1].At - steps[i].At <= Beats.Half) || (i > 0 && steps[i].At - steps[i - 1].At <= Beats.Half));
            (steps[i].Lasts, steps[i].InTriple) = (until - steps[i].At, quick);
        }

        return new(role, start, steps.ToValueList(), new(role, dancer.Facing, dancer.Weight));
    }

    private static ValueList<ExtraScore> Extras(
        Page page, FigureBook book, List<PartPlan> plans, DanceFacts facts, List<RoleScore> roles, List<PassEvent> events)
    {
        var extras = new List<ExtraScore>();
        foreach (var plan in plans)
        {
            if (plan.Node.Kind == PartKind.Part) continue;
            var calls = events.Where(e => e.Kind == PassEventKind.Tag && e.Part == plan.Index).Select(e => (int?)e.Wall).ToList();
            if (calls.Count == 0) calls.Add(null);
            foreach (var wall in calls)
            {
                var danced = new List<RoleScore>();
                Dancer? lead = null;
                foreach (var role in facts.Roles)
                {
                    var start = plan.Node.Kind == PartKind.Intro ? facts.Start(role) : AfterWalls(roles.First(r => r.Role == role), wall ?? 1);
                    var dancer = NewDancer(role, start, facts, book, lead);
                    DancePart(dancer, plan, new(plan.Index, Count.First, false), plan.Index, again: false);
                    danced.Add(Finished(dancer, role, start, Count.First + Beats.Of(plan.Length)));
                    lead ??= dancer;
                }

                extras.Add(new(plan.Index, wall, danced.ToValueList()));
            }
        }

        return extras.ToValueList();
    }

    /// <summary>How a role stands after so many whole repeats.</summary>
    public static RoleStart AfterWalls(RoleScore role, int walls)
    {
        var turned = (role.End.Facing - role.Start.Facing).Eighths * walls;
        return new(role.Role, role.Start.Facing + new Turn(turned), role.End.Weight);
    }

    private static PartScore Part(PartPlan plan) => new(
        plan.Node.Kind,
        plan.Node.Key,
        plan.Node.Name,
        plan.Node.Label,
        Beats.Of(plan.Length),
        plan.Offset,
        plan.Node.Span,
        plan.Rows.ToValueList(),
        plan.Repeats.ToValueList());

    // The foot the dance starts on, from the first words that name one.
    private static Foot? FirstFoot(Page page, FigureBook book)
    {
        foreach (var part in page.Parts)
        {
            if (part.Kind != PartKind.Part) continue;
            foreach (var line in part.Lines.OfType<CountLine>())
            {
                foreach (var segment in line.Segments)
                {
                    if ((segment.Role ?? line.Block) == Role.Follow) continue;
                    foreach (var piece in segment.Pieces)
                    {
                        if (piece is not MovePiece { Move: var move }) continue;
                        if (move.Figure is { } figure && FigurePlan.Make(figure, move, Role.Dancer, null, book) is { StartNamed: true } plan) return plan.Start;
                        if (move.Feet.Count > 0 && !move.SideOpen && move.Verb.Rule() is not WeightRule.Stays && move.Verb != ActionKind.Recover) return move.Feet[0].Foot;
                        if (move.Figure is not null || move.Verb.Rule() is WeightRule.Takes) return null;
                    }
                }
            }
        }

        return null;
    }
}
