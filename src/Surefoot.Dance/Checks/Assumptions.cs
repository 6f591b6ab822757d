using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>Tells what was taken where the page left something out.</summary>
public sealed class Assumptions : ICheck
{
    public string Name => "assumed";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        // What was taken in words that were not understood is no help to anybody.
        var unclear = Moves.All(dance.Page).Where(m => m.Move.Unclear).Select(m => m.Move.Span).ToHashSet();
        if (StartFoot(dance) is { } start && !unclear.Contains(start.Span)) yield return start;
        if (PartsAsTheyStand(dance) is { } order) yield return order;
        if (Feet(dance, unclear) is { } feet) yield return feet;
        var told = new HashSet<(TextSpan, Assumed)>();
        foreach (var role in dance.Score.Roles)
        {
            foreach (var step in role.Steps)
            {
                if (step.Repeated || step.Assumed == Assumed.Nothing || unclear.Contains(step.Source)) continue;
                foreach (var one in Each(step.Assumed))
                {
                    if (!told.Add((step.Source, one)) || Tell(dance, role, step, one) is not { } problem) continue;
                    yield return problem;
                }
            }
        }
    }

    private static IEnumerable<Assumed> Each(Assumed all)
    {
        for (var bit = 1; bit <= (int)Assumed.WeightNotNamed; bit <<= 1)
        {
            if (((int)all & bit) != 0) yield return (Assumed)bit;
        }
    }

    private Problem? Tell(DanceCase dance, RoleScore role, ScoreStep step, Assumed what)
    {
        var words = dance.Words(step.Source);
        var (part, count) = dance.Place(step.At);
        var total = role.Steps.Where(s => s.Source == step.Source && s.Section == step.Section && !s.Repeated).Sum(s => s.Turn.Eighths);
        (string Message, string Reason, string? Insert)? told = what switch
        {
            Assumed.DirectionNotNamed when step.Figure is not null => (
                $"\"{words}\" names no way to go; it is danced {WayOf(role, step)}.",
                $"The {step.Figure} can go several ways, and this is the usual one.", WayOf(role, step)),
            Assumed.DirectionNotNamed => (
                $"\"{words}\" names no way to go; it is danced {step.Direction.Word()}.",
                step.Kind == ActionKind.Rock ? "A rock goes forward after a movement back, otherwise as the last rock went."
                    : step.Direction == Direction.Forward ? "A step that a pivot, a scuff or a lock follows goes forward."
                    : "A step without a direction stays where it is.",
                step.Direction.Word()),
            Assumed.TurnSpread => (
                $"How the turn of \"{words}\" is spread is not said; it is taken {Spread(dance, role, step)}.",
                "Say on which count it is taken where another is meant.", null),
            Assumed.TurnSideNotNamed => (
                $"\"{words}\" does not say which way round; it is danced to the {(total > 0 ? "left" : "right")}.",
                "A turn goes to the side of the foot that begins, a pivot away from the foot in front.", total > 0 ? "left" : "right"),
            Assumed.TurnAmountNotNamed => (
                $"\"{words}\" does not say how far; it is danced as {new Turn(total)}.",
                "Half a turn is the usual one.", null),
            Assumed.StepsNotNamed => (
                $"\"{words}\" takes several counts; it is danced as steps on the spot.",
                "A turn over several counts is walked, a little with every step.", null),
            Assumed.WordWithoutEffect => (
                $"\"{words}\" names a way that the {step.Figure} does not have; it is danced {WayOf(role, step)}, as usual.",
                "Write the steps out if another way is meant.", null),
            Assumed.TurnAsPivot => (
                $"\"{words}\" after a step forward is danced as a pivot: the weight goes to the foot now in front.",
                "Say \"weight stays\" with the turn if it does.", null),
            Assumed.WeightNotNamed => (
                $"\"{words}\" does not say where the weight ends; it stays {Say.Weight(step.Weight)}.",
                "Say it with the turn, for example \"weight on L\".", null),
            _ => null,
        };
        if (told is not { } said) return null;
        var fix = said.Insert is { } insert ? Insert(dance, step, insert) : default;
        return new(Name, Severity.Hint, step.Source, part, count, role.Role is Role.Dancer ? role.Role : RoleOf(dance, step, role.Role), said.Message, said.Reason, default, fix);
    }

    // A way is put right after the words it belongs to, where reading it changes nothing.
    private static ValueList<Fix> Insert(DanceCase dance, ScoreStep step, string word)
    {
        if (word == "in place" && step.Figure is not null) return default;
        var words = dance.Words(step.Source);
        return [new($"Say it: {words} {word}", Sureness.Likely, [new(new(step.Source.End, 0), " " + word)])];
    }

    private static Role? RoleOf(DanceCase dance, ScoreStep step, Role role) =>
        dance.Score.Roles.Count > 1 && dance.Score.Roles.All(r => r.Steps.Any(s => s.Source == step.Source)) ? null : role;

    private static string WayOf(RoleScore role, ScoreStep step)
    {
        foreach (var one in role.Steps)
        {
            if (one.Source == step.Source && one.At >= step.At && one.Direction is not (Direction.Together or Direction.InPlace)) return one.Direction.Word();
        }

        return step.Direction.Word();
    }

    private static string Spread(DanceCase dance, RoleScore role, ScoreStep step) =>
        string.Join(", ", role.Steps.Where(s => s.Source == step.Source && s.Section == step.Section && !s.Turn.IsNone && !s.Repeated)
            .Select(s => $"{s.Turn} on {dance.Place(s.At).Count}"));

    private Problem? StartFoot(DanceCase dance)
    {
        if (dance.Score.Facts.StartFootSaid || dance.Score.Roles.Count == 0 || dance.Score.Roles[0].Steps.Count == 0) return null;
        var role = dance.Score.Roles[0];
        var step = role.Steps[0];
        var (part, count) = dance.Place(step.At);
        return new(
            Name, Severity.Hint, step.Source, part, count, role.Role == Role.Dancer ? role.Role : null,
            $"The page does not say which foot begins; the {(role.Start.Free ?? Foot.Left).Word()} foot was taken.",
            "Say it in the head, for example \"Feet: right free\", or with the first step.");
    }

    // "A, B, D, C" without an order line: perhaps so meant, perhaps written down as they came to mind.
    private Problem? PartsAsTheyStand(DanceCase dance)
    {
        if (dance.Page.Header("order") is not null) return null;
        var parts = dance.Page.Parts.Where(p => p.Kind == PartKind.Part && p.Key is [>= 'A' and <= 'Z' or >= 'a' and <= 'z'] && p.Lines.Exists(l => l is CountLine or RepeatLine)).ToList();
        var late = Enumerable.Range(1, Math.Max(0, parts.Count - 1)).FirstOrDefault(i => LetterOf(parts[i]) < LetterOf(parts[i - 1]));
        if (late == 0 || parts.Select(LetterOf).Distinct().Count() < parts.Count) return null;
        return new(
            Name, Severity.Hint, parts[late].Span, parts[late].Label, null, null,
            $"The parts are danced as they stand: {string.Join(", ", parts.Select(LetterOf))}.",
            "Their letters would have them in another order. An order line in the head says which is meant, for example "
                + $"\"Order: {string.Join(' ', parts.Select(LetterOf).Order())}\".");
    }

    private static char LetterOf(PartNode part) => char.ToUpperInvariant(part.Key[0]);

    /// <summary>One report for all lines that name no foot: their cause is one habit.</summary>
    private Problem? Feet(DanceCase dance, HashSet<TextSpan> unclear)
    {
        var inOrder = dance.Score.Roles.Select(InOrder).ToArray();
        var places = new List<(TextSpan Span, string Count, Foot Foot)>();
        foreach (var (move, segment, _) in Moves.All(dance.Page))
        {
            if (!ReferenceEquals(Moves.In(segment).FirstOrDefault(), move)) continue;
            var starts = StartOf(inOrder, segment);
            if (starts is not { } found || found.Named || unclear.Contains(found.Step.Source)) continue;
            places.Add((found.Step.Source, dance.Place(found.Step.At).Count, found.Step.Foot.Single()!.Value));
        }

        if (places.Count == 0) return null;
        // Behind an error the free foot may be the wrong one; it is not told, and not written into the page, before that is mended.
        if (dance.InDoubt)
        {
            return new(
                Name, Severity.Hint, places[0].Span, PartOf(dance, places[0].Span), places[0].Count, null,
                places.Count == 1 ? "The line names no foot; the free foot begins." : $"No foot is named in {places.Count} places; the free foot begins.",
                "Which one that is can be told once everything on the page is understood and nothing is wrong.",
                places.Skip(1).Select(p => new RelatedSpan(p.Span, "the free foot begins")).ToValueList());
        }

        var edits = places.Select(p => new TextEdit(new(p.Span.End, 0), EndsInAWay(dance.Words(p.Span)) ? " starting " + p.Foot.Letter() : " " + p.Foot.Letter())).ToValueList();
        var part = PartOf(dance, places[0].Span);
        var list = string.Join(", ", places.GroupBy(p => $"{p.Foot.Letter()} on {p.Count}").Take(6).Select(g => g.Count() > 1 ? $"{g.Key} ({g.Count()} times)" : g.Key));
        return new(
            Name, Severity.Hint, places[0].Span, part, places[0].Count, null,
            places.Count == 1
                ? $"The line names no foot; the {places[0].Foot.Word()} foot is free and begins."
                : $"No foot is named in {places.Count} places; the free foot begins.",
            (places.Count == 1 ? "" : $"That is {list}{(places.Count > 6 ? " …" : "")}. ")
                + "Feet take turns, so the free foot follows from what was danced before; naming it lets the page be checked against itself.",
            places.Skip(1).Select(p => new RelatedSpan(p.Span, $"the {p.Foot.Word()} foot begins")).ToValueList(),
            [new(places.Count == 1 ? "Name the foot" : "Name the feet", Sureness.Likely, edits)]);
    }

    // "Full turn right L" would say two things at once.
    private static bool EndsInAWay(string words) => words.EndsWith(" left", StringComparison.OrdinalIgnoreCase) || words.EndsWith(" right", StringComparison.OrdinalIgnoreCase);

    // A role's steps as their words stand on the page.
    private static (int[] Starts, ScoreStep[] Steps) InOrder(RoleScore role)
    {
        var steps = role.Steps.Where(s => !s.Repeated).ToArray();
        var starts = Array.ConvertAll(steps, s => s.Source.Start);
        Array.Sort(starts, steps);
        return (starts, steps);
    }

    // The first step that a role's words give, and whether the words name any foot at all.
    private static (ScoreStep Step, bool Named)? StartOf((int[] Starts, ScoreStep[] Steps)[] inOrder, Text.Segment segment)
    {
        foreach (var (starts, steps) in inOrder)
        {
            ScoreStep? first = null;
            var at = Array.BinarySearch(starts, segment.Span.Start);
            at = at < 0 ? ~at : at;
            while (at > 0 && starts[at - 1] == segment.Span.Start) at--;
            for (; at < starts.Length && starts[at] < segment.Span.End; at++)
            {
                var step = steps[at];
                if (step.FootNamed) return (step, true);
                if (step.Foot.Single() is null || step.Kind.Rule() is WeightRule.Stays) continue;
                if (first is null || step.At < first.At) first = step;
            }

            if (first is not null) return (first, false);
        }

        return null;
    }

    private static string? PartOf(DanceCase dance, TextSpan span)
    {
        foreach (var part in dance.Page.Parts)
        {
            if (part.Lines.Any(l => l.Span.Start <= span.Start && l.Span.End >= span.End)) return part.Label;
        }

        return null;
    }
}
