using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>What stands before a colon: the name of what is then said step by step, or something to do by itself.</summary>
internal static class PhraseHead
{
    // "Polka step with the outside foot: step, together, step" is said well enough by its name.
    private static readonly Regex Bare = new(@"^(?:step|together|close|ball|change|cha|quick|slow|and|[\s,&-])+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Vine to the right: step right, cross left behind, ...": the name of what is then said step by step.
    public static string Without(string text) => ColonFor(text) is var said && TurnOfFeet.IsMatch(said) ? TurnOfFeet.Replace(said, OfFeet) : Said(said);

    private static string OfFeet(Match found)
    {
        var way = found.Groups["way"].Value;
        var feet = Foot.Matches(found.Groups["feet"].Value).Select(f => char.ToUpperInvariant(f.Value[0])).ToList();
        var beats = Beat.Matches(found.Groups["feet"].Value);
        // With a slow or quick to each, a whole turn is made as it is as a rule: a quarter, a half, a quarter.
        return beats.Count == feet.Count
            ? string.Join(", ", feet.Select((f, i) => $"step {f} turning {(i == 1 ? "½" : "¼")} {way} {beats[i].Value}"))
            : $"full turn {way} {string.Join(' ', feet)}";
    }

    private static readonly Regex Beat = new(@"\((?:S|Q|slow|quick)\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Full turn to the right: right, left, right": the turn is made with them.
    private static readonly Regex TurnOfFeet = new(@"^(?:(?:make |do )?(?:a |one ))?(?<how>full|whole|complete) turn (?:to (?:the |your )?)?(?<way>left|right)(?: under [\w' ]+)?:\s+(?<feet>(?:(?:left|right|L|R|LF|RF)(?: \((?:S|Q|slow|quick)\))?,? ){2}(?:left|right|L|R|LF|RF)(?: \((?:S|Q|slow|quick)\))?)(?=\s*$|[.,;])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Jazz box - right across, step back on the left, ...", "Feet out, out, in, in - right foot out, ...": a stroke for the colon.
    private static string ColonFor(string text)
    {
        if (Stroke.Match(text) is not { Success: true } stroke || Foot.IsMatch(ToASide.Replace(stroke.Groups["head"].Value, ""))) return text;
        var pieces = stroke.Groups["rest"].Value.Split(',');
        if (pieces.Length < 2 || !Foot.IsMatch(pieces[0]) || pieces.Count(p => Foot.IsMatch(p) && p.Trim().Contains(' ', StringComparison.Ordinal)) * 2 < pieces.Length) return text;
        return $"{stroke.Groups["head"].Value.Replace(",", "", StringComparison.Ordinal)}: {stroke.Groups["rest"].Value}";
    }

    private static readonly Regex Stroke = new(@"^(?<head>[\p{L}\d/ ,'!]{3,60}?)\s+-\s+(?<rest>[^:]+)$", RegexOptions.CultureInvariant);

    private static readonly Regex ToASide = new(@"\bto (?:the |your )?(?:left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Said(string text) => Triples.IsMatch(text)
        ? Triples.Replace(text, "${n} ${what}${way} starting ${foot}")
        : Each.Match(text) is { Success: true } each
        ? string.Join(", ", Foot.Matches(each.Groups["feet"].Value).Select(f => $"{each.Groups["what"].Value}{each.Groups["way"].Value} {f.Value}")) + each.Groups["more"].Value
        : Sideways.Match(text) is { Success: true } aside
        ? $"step side, close, step side{text[(aside.Index + aside.Length)..]}"
        : ManyWays.Match(text) is { Success: true } ways
        ? $"walk {ways.Groups["way"].Value} {ways.Groups["rest"].Value}"
        : Goes.Match(text) is { Success: true } goes
        ? $"{goes.Groups["head"].Value} {goes.Groups["rest"].Value}"
        : Head.Match(text) is { Success: true } looks && Turns.IsMatch(looks.Groups["head"].Value)
        ? $"{AndFigure.Replace(looks.Groups["head"].Value, "")}, {looks.Groups["rest"].Value}"
        : Head.Match(text) is { Success: true } many && ManyOf.IsMatch(many.Groups["head"].Value) && !Feet.IsMatch(many.Groups["rest"].Value)
        ? $"{many.Groups["head"].Value}, {many.Groups["rest"].Value}"
        : Head.Match(text) is { Success: true } head && !Phrases.SaysHowLong(head.Groups["head"].Value) && !Phrases.NamesHold(text)
            ? Bare.IsMatch(head.Groups["rest"].Value) ? head.Groups["head"].Value : TheTurn(head) : text;

    // "Four heel touches: right, left, right, left", "Toe struts forward: R, L": one with each foot.
    private static readonly Regex Each = new(
        $@"^(?:do |then )?(?:(?:a set of )?(?:{NumberWords.Spelled}|\d) )?(?<what>(?:heel|toe|hip|knee|side|slow|quick|big|small)?[ -]?(?:touch|tap|dig|strut|point|kick|stomp|stamp|sway|bump|hop|step-hop|step hop|shuffle|triple|polka|scuff|brush|hitch|lift|twinkle))(?:e?s)?(?<way> (?:forward|back|backwards?|to the side|in place|on the spot|in front))?\s*[:,]\s+(?<feet>(?:left|right|L|R)\b(?:(?:\s*,\s*|\s+|\s*-\s*|\s+and\s+|,?\s+then\s+)(?:left|right|L|R)\b(?![- ](?:foot|heel|toe)\b))+)(?<more>\s*(?:$|[,(;].*$))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Two shuffles on the spot, left-right-left and right-left-right": the feet of each.
    private static readonly Regex Triples = new(
        @"\b(?<n>two|2) (?:more )?(?<what>shuffles|triples|triple steps|polka steps|cha-chas)\b(?<way>[^,:;]*)[,:] (?<foot>left|right)-(?:left|right)-(?:left|right)(?:,? and|,) (?:left|right)-(?:left|right)-(?:left|right)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Foot = new(@"\b(?:left|right|L|R|LF|RF)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "4 step-hops: once round, away from your partner": how they are danced, and not what.
    private static readonly Regex ManyOf = new($@"^(?:{NumberWords.Spelled}|\d) (?:more )?(?:step-?hops?|step hops?|walks?|walking steps|steps|shuffles|triples|polkas?(?: steps)?|waltz(?: steps|es)?|schottische steps|hops|runs|running steps)(?: [\w ]{{0,24}})?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Feet = new(@"\b(?:(?:left|right|L|R)\b\W+(?:and |then )?(?:left|right|L|R)\b|steps?|close|together|behind|forward|fwd|side)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Jazz box 1/4 R: R over L, L back w/ the 1/4, ...": which way it turns is said in the name.
    private static string TheTurn(Match head) => Amount.Match(head.Groups["head"].Value) is { Success: true } turn
        ? OfThe.Replace(head.Groups["rest"].Value, found => found.Groups["amount"].Value.Equals(turn.Groups["amount"].Value, StringComparison.OrdinalIgnoreCase) ? $" turning {turn.Value}" : found.Value)
        : head.Groups["rest"].Value;

    private static readonly Regex Amount = new(@"\b(?<amount>1/4|1/2|3/4|quarter|half|full)(?: turn)? (?:to the )?(?:left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OfThe = new(@"\s+(?:w/|with|making|doing|on) the (?<amount>1/4|1/2|3/4|quarter|half|full)(?: turn)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Sideways away from each other: step, close, step, touch".
    private static readonly Regex Sideways = new(@"^(?:(?:and )?(?:off|away) (?:you|we) go |moving |going |travell?ing )?sideways\b[^:;.]*:\s+step,\s+(?:close|together),\s+step\b(?=,)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Forward three and kick: L R L and kick R": what is then said foot by foot.
    private static readonly Regex ManyWays = new(@"^(?:walk |go |step )?(?<way>forwards?|back|in|out) (?:two|three|four|[2-4])(?:\s*(?:,|&|and|\+)\s*(?:a )?\w+)?:\s+(?<rest>(?:left|right|L|R)\b(?:[\s,-]+(?:left|right|L|R)\b)+.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Walk forward: right, left, right, and tap ...": the feet go on with what they do.
    private static readonly Regex Goes = new(@"^(?<head>(?:walk|step|run|strut|march|shuffle|stroll|go(?:es)?)(?:s|ing)?(?: (?:forward|back|backward|backwards|in|out|on the spot|in place))*)(?: once more| again)?:\s+(?<rest>(?:left|right|L|R)\b(?:\s*,\s*(?:left|right|L|R)\b)+.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Face centre and grapevine: right to the side, ...": the name of what is then said step by step.
    private static readonly Regex AndFigure = new(@"\s+and (?:a |the )?(?:grape)?(?:vine|weave|yemenite|box)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Turn to face right: left forward, ..." says something to do before the colon.
    private static readonly Regex Turns = new(@"\b(?:turn(?:ing)?|pivot(?:ing)?) (?:to )?fac|^fac(?:e|ing)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Head = new(@"^(?<head>[\p{L}\d/½¼¾ '-]{3,120}):\s+(?<rest>[^:]+,[^:]+)$", RegexOptions.CultureInvariant);
}
