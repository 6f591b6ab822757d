using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Turns of phrase for what would mend a place that cannot be reached.</summary>
internal static class RepairWords
{
    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

    /// <summary>"In two steps forward the follow needs 1.2 m and has at most 0.8 m.", or how far each goes where that cannot be said.</summary>
    public static string Figures(DanceCase dance, OutOfPlace place)
    {
        if (place.Shortfall is not { } shortfall) return PlaceWords.Travel(dance, place);
        var who = Say.Who(shortfall.Role);
        var (direction, steps) = (Way(shortfall.Direction), shortfall.Steps == 1 ? "step" : "steps");
        var (needed, limit) = Lengths(dance.Measures, shortfall);
        if (!shortfall.TooFar) return $"In {Number(shortfall.Steps)} {steps} {direction} {who} needs {needed} and has at most {limit}.";
        var allowed = shortfall.Needed < -0.005 ? $"would have to come {needed} the other way"
            : shortfall.Needed < 0.05 ? "may not move at all"
            : $"may come only {needed}";
        return $"{Capital(Number(shortfall.Steps))} {steps} {direction} {(shortfall.Steps == 1 ? "takes" : "take")} {who} at least {limit}, but to stay with {Say.Who(Partner(shortfall.Role))} {who} {allowed}.";
    }

    /// <summary>What would mend it, as one sentence.</summary>
    public static string Sentence(DanceCase dance, OutOfPlace place)
    {
        if (place.Repairs.Count == 0)
        {
            return place.Kind is OutOfPlaceKind.Hold or OutOfPlaceKind.Reach
                ? "No single small change mends it: one dancer's steps turned round, on the spot or as the partner dances them, shuffles, and letting go of the hands for a while were all tried."
                : "No change of one of the last lines alone mends it: its steps turned round or on the spot were tried.";
        }

        var mixed = place.Repairs[0].Whole != place.Repairs[^1].Whole;
        var ideas = string.Join(", or ", place.Repairs.Select(r => Idea(dance, r) + (mixed && !r.Whole ? " and change what comes after as well" : "")));
        var rest = mixed || place.Repairs[0].Whole ? "" : " That mends these counts; what comes after them has to change as well.";
        return $"What would mend it: {ideas}.{rest}";
    }

    /// <summary>"let the lead step on the spot on counts 1 to 4".</summary>
    public static string Idea(DanceCase dance, Repair repair)
    {
        var who = Say.Who(repair.Role);
        var counts = PlaceWords.Counts(dance, repair.From, repair.To);
        return repair.Kind switch
        {
            RepairKind.OwnLength => $"let {who} take steps of a fitting length {counts} instead of the length named",
            RepairKind.OtherWay => $"let {who} step {(repair.Forward ? "forward instead of back" : "back instead of forward")} {counts}",
            RepairKind.OnTheSpot => $"let {who} step on the spot {counts}",
            RepairKind.Shuffles => $"give {who} {(repair.To - repair.From > Beats.One ? "two shuffles" : "a shuffle")} {(repair.Forward ? "forward" : "back")} {counts}",
            RepairKind.AsThePartner => $"let {who} dance the same steps as {Say.Who(Partner(repair.Role!.Value))} {counts}",
            _ => $"let go of the hands {PlaceWords.Counts(dance, repair.From, repair.From)} and take them again {PlaceWords.Counts(dance, repair.To, repair.To)}",
        };
    }

    private static string Way(Direction direction) => direction switch
    {
        Direction.Side => "to the side",
        Direction.Across => "crossing in front",
        Direction.Behind => "crossing behind",
        Direction.DiagonalForward or Direction.ForwardAcross => "diagonally forward",
        Direction.DiagonalBack => "diagonally back",
        _ => direction.Word(),
    };

    private static Role Partner(Role role) => role == Role.Lead ? Role.Follow : Role.Lead;

    private static string Number(int number) => number < Numbers.Length ? Numbers[number] : number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    // With a second digit where one would make both figures the same.
    private static (string Needed, string Limit) Lengths(Measures measures, Shortfall shortfall)
    {
        var (needed, limit) = (Math.Abs(shortfall.Needed), shortfall.Limit);
        var digits = Math.Round(needed, 1) == Math.Round(limit, 1) ? 2 : 1;
        return (measures.Length(Math.Round(needed, digits)), measures.Length(Math.Round(limit, digits)));
    }
}
