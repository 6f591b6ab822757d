using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;

namespace Surefoot.Transcribe.Layout;

/// <summary>What a sheet says of the whole dance, wherever it stands.</summary>
internal sealed record SheetFacts
{
    public bool Couple { get; init; }

    public bool Circle { get; init; }

    public int? Walls { get; init; }

    public string? Meter { get; init; }

    public string? Tempo { get; init; }

    public string? Hold { get; init; }

    public string? Facing { get; init; }

    /// <summary>True when <see cref="Facing"/> is only what is usual in the hold.</summary>
    public bool FacingTaken { get; init; }

    public string? Level { get; init; }

    public bool? SameFeet { get; init; }

    /// <summary>True where the sheet says of the whole dance that partners use opposite feet.</summary>
    public bool OtherFeetSaid { get; init; }

    public Foot? LeadFree { get; init; }

    public int? Counts { get; init; }

    /// <summary>Which parts follow each other, where the sheet says so: "A A B B C C".</summary>
    public string? Order { get; init; }

    /// <summary>How many bars the sheet says there are.</summary>
    public int? Bars { get; init; }

    /// <summary>Steps of the whole dance as the sheet says it, or 0.</summary>
    public int StepsInAll { get; init; }

    public int BeatsInBar => Meter is { } meter && int.TryParse(meter.Split('/')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var beats) ? beats : 4;
}

/// <summary>Finds the facts of a dance in the words of a sheet.</summary>
internal static class FactFinder
{
    private const RegexOptions Plain = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    private static readonly (string Says, string Hold)[] Holds =
    [
        (@"\b(?:sweetheart|cape|side[- ]by[- ]side right|vars\w+|vars)\b", "sweetheart"),
        (@"\bskat(?:er|ers|er's|ing)\b", "skaters"),
        (@"\bshadow\b|\btandem\b", "shadow"),
        (@"\bcross(?:ed)?[- ](?:two[- ])?hand(?:s|ed)?(?: hold| position)?\b", "crossed hands"),
        (@"\bpromenade (?:hold|position)\b|\bsemi-?closed\b", "promenade"),
        (@"\bas for the (?:one-step|two-step|waltz|fox-?trot)\b|\b(?:closed|ballroom|waltz|social|face to face|western|regular|ordinary|usual|normal|standard)[- ](?:dance )?(?:hold|position)\b|\bballroom\b|\bhand at (?:partner's|her) waist\b|\bhand at the follower's\b|\bin closed\b|\b(?:usual )?closed one\b", "closed"),
        (@"\b(?:both|two|double)[- ]hands?(?:[- ]hold| held| joined)?\b|\bface to face\b|\bbutterfly\b", "two hands"),
        (@"\b(?:open|inside hands?(?: joined)?|v)[- ]?(?:position|hold)?\b(?= (?:position|hold)| joined|:|,|$)|\bopen position\b|\b(?:inside|inner|near(?:er|est)?) hands?\b|\bhis right hand (?:is )?(?:holding|holds|takes|taking) (?:her|the lady's) left\b|\bV position\b|\b(?:her|lady's) left hand in (?:his|the gentleman's|gentleman's|the man's) right\b|\bpresents? his right hand\b|\bhis right (?:hand )?(?:and|in|with) her left\b", "open"),
    ];

    // "Gents L, ladies R", "the man's left, the lady's right", "Man left foot, lady right", "the gentleman begins with the left, the lady with the right".
    private static readonly Regex HisAndHers = new(
        @"(?<!\b(?:hand|arm)[^.;]{0,20})\b(?:man|men|boys?|gents?|gentlem[ae]n|leaders?|leads?|M)(?:'s|s')?(?: (?:begins?|starts?|commences?|uses?))?(?: (?:with|on|from))?(?: (?:his|the|their))? (?<his>left|right|L|R)\b(?! (?:hand|arm|shoulder|side|hip))(?: (?:foot|feet))?,?(?: and| while| but)?(?: the)? (?:lady|ladies|woman|women|girls?|followers?|follows?|W)(?:'s|s')?(?: (?:begins?|starts?|commences?|uses?))?(?: (?:with|on|from))?(?: (?:her|the|their))? (?<hers>left|right|L|R)\b(?! (?:hand|arm|shoulder|side|hip))(?=[\s.,;)]|$)(?! (?:L|R|forward|back|side|to|across|behind))", Plain);

    // "The gentleman commences with the left foot."
    // "His left foot and her right begin."
    private static readonly Regex OfThem = new(@"\b(?:he|man|gent\w*|lead\w*|fellas|fellows|men) (?:has|have) (?:his|the|their) (?<his>left|right)(?: foot)? (?:ready|free),?(?: and)? (?:she|(?:the )?(?:lady|woman)|ladies|women)(?: has| have)? (?:her|the|their) (?<hers>left|right)\b|\bhis (?<his>left|right)(?: foot)? and her (?<hers>left|right)(?: foot)? (?:begin|start|lead)", Plain);

    private static readonly Regex Begins = new(@"\b(?:man|gent|gentleman|leader|he)\s+(?:commences?|begins?|starts?)\s+(?:with|on)\s+(?:his|the)\s+(?<his>left|right)\b", Plain);

    // "Wt on L", "you are all standing on your left foot": the other one is free.
    private static readonly Regex StandsOn = new(@"\b(?:wt\.?|weight)(?: is|'s| starts| begins)?(?: on)? (?:the |your |his )?(?<foot>left|right|L|R)\b(?! to)|\bstanding on (?:the |your )?(?<foot>left|right|L|R)(?: foot)?\b|\b(?<foot>LF|RF) (?:wt|weight)\b", Plain);

    // "Sweetheart, both on the left".
    private static readonly Regex BothOn = new(@"\bboth (?:are |start(?:ing)? |begin(?:ning)? )?(?:on|with|from) (?:the |their )?(?<foot>left|right|L|R)\b(?! (?:hand|side|arm))|\b(?:everyone|everybody|both|all),? (?:start(?:s|ing)? )?(?:(?:on|with) )?(?:the )?(?<foot>left|right) foot(?: first)?(?=\s*(?:$|[.,;!]))|\bstart (?<foot>left|right) foot,? both\b", Plain);

    private static readonly Regex SaysFacing = new(@"\bfac(?:e|es|ing)\b|\blook(?:s|ing)?\b|\bback to the\b|\bside by side\b", Plain);

    private static readonly Regex Inwards = new(@"\b(?:forward|walk|steps?)\b[^.;\n]{0,20}\b(?:to|towards?|into) (?:the )?(?:centre|center|middle|ctr)\b", Plain);

    private static readonly Regex Circles = new(@"\bcircle\b|\b(?:to|towards?|twd|face|facing) (?:the )?(?:middle|centre|center|ctr)\b|\bline of dance\b|\bLOD\b|\bcounter-?clockwise\b|\baround the (?:room|floor|hall)\b|\bprogress", Plain);

    private static readonly Regex OtherFeet = new(@"(?<!\b(?:meas\w*|bars?|counts?)\b[^\n]{0,40})\bopp(?:osite|\.)? (?:foot(?:work)?|ftwk|feet)\b|\boutside foot\b|\binside foot\b|\bML\s?/\s?WR\b|\b(?:her|his) other (?:foot|feet|one)\b|\b(?:lady|woman|follow|partner)'?s? (?:\w+ ){0,4}the other (?:foot|feet)\b|\b(?:lad(?:y|ies)|wom[ae]n|follow\w*)(?:'s|s')?(?: (?:part|steps?|footwork|feet))?(?: is| are| does| dances?| uses?)? (?:the )?(?:opp\.?|opposite|reverse|counterpart|mirror\w*)(?![\w ]*(?:hand|side|wall))", Plain);

    /// <param name="whole">All the words of the sheet that are not the collector's.</param>
    /// <param name="head">Those before the first step, and single lines of facts.</param>
    public static SheetFacts In(string whole, string head)
    {
        var couple = RoleWords.Any(whole) && !Regex.IsMatch(head, @"\b(?:no|without(?: a)?) partners?\b|\b(?:nobody|no one) needs a partner\b|\b(?:do not|don't) need a partner\b|\bsolo\b(?! turn)", Plain);
        var meter = Regex.Match(whole, @"(?<!\bturn[^.\n]{0,30})(?<!\bgrade )\b(?<m>[2346]/4|6/8|7/8|12/8)\b(?!\)? ?(?:turn|to (?:face|the|your)|left|right|[LR]\b))", Plain);
        var tempo = Regex.Match(whole, @"\b(?<t>\d{2,3}(?:\s?-\s?\d{2,3})?)\s*(?:bpm|beats (?:per|a) minute)\b", Plain);
        var walls = Regex.Match(whole, @"\b(?<w>[124]|one|two|four|single)(?:[- ]wall(?:s|ers?)?|\s?/?\s?w)\b|\bwalls?:?\s*(?<w>[124])\b", Plain);
        var counts = Regex.Match(head, @"\bcounts?\s*:\s*(?<c>\d{2,3})\b", Plain) is { Success: true } listed ? listed
            : Regex.Match(head, @"(?<![=:]\s?)\b(?<c>[4-9]|\d{2,3})[- ](?:counts?|cts?|beats)\b(?! (?:each\b|a |per |to the |in\b|intro|wait|before))", Plain);
        var steps = Regex.Match(whole, @"\b(?:complete|whole|entire)\b[^.]{0,30}\b(?<c>\d{1,2}|four|six|eight|ten|twelve|sixteen|twenty|thirty-two) (?:steps|counts|beats)\b", Plain);
        var level = Regex.Match(head, @"\b(?:absolute beginner|beginner|improver|intermediate|advanced)\b", Plain);
        string? hold = null;
        var at = int.MaxValue;
        foreach (var (says, name) in Holds)
        {
            if (Regex.Match(whole, says, Plain) is { Success: true } found && found.Index < at) (hold, at) = (name, found.Index);
        }

        // What the head says holds at the start; what is said later may be where they end.
        var facing = FacingOf(couple && SaysFacing.IsMatch(head) ? head : whole, couple, hold);
        var same = couple && facing == "inside" && Regex.IsMatch(whole, @"\bto (?:the )?(?:centre|center|middle)\b", Plain) && !Regex.IsMatch(whole, @"\b(?:opposite|mirror\w*|counterpart|ML|WR|outside f(?:oo)?t)\b(?<!\b(?:meas\w*|bars?|counts?)\b[^\n]{0,40}\bopposite)", Plain);
        // Walls have no line of dance.
        if (!couple && facing is "RLOD" && !Circles.IsMatch(whole)) facing = null;
        return new()
        {
            Couple = couple,
            Circle = Circles.IsMatch(whole),
            Walls = walls.Success ? walls.Groups["w"].Value.ToLowerInvariant() switch { "1" or "one" or "single" => 1, "2" or "two" => 2, _ => 4 } : null,
            Meter = meter.Success ? meter.Groups["m"].Value : Regex.Match(whole, @"\b(?<n>two|three|four|[234]) (?:beats|counts|steps) (?:(?:to|in|per) )?(?:the |a |each |every )?(?:bar|measure)\b", Plain) is { Success: true } beats ? $"{NumberWords.Read(beats.Groups["n"].Value)}/4" : Regex.IsMatch(whole, @"(?<!\b(?:position|hold) of the )\b(?:waltz|(?:polka-? ?)?mazurka)(?!\w)(?! (?:hold|position)\b)", Plain) ? "3/4" : null,
            Tempo = tempo.Success ? tempo.Groups["t"].Value.Replace(" ", "") : null,
            Hold = couple ? hold : null,
            Facing = facing,
            FacingTaken = couple && !Regex.IsMatch(whole, @"\bfac(?:e|es|ing)\b|\blooking\b|\bback to the\b", Plain),
            Level = level.Success ? level.Value.ToLowerInvariant() : null,
            SameFeet = (HisAndHers.Match(whole) is { Success: true } found2 ? found2 : OfThem.Match(whole)) is { Success: true } each ? char.ToUpperInvariant(each.Groups["his"].Value[0]) == char.ToUpperInvariant(each.Groups["hers"].Value[0])
                : same || BothOn.IsMatch(head) || Regex.IsMatch(whole, @"(?<!\b(?:upon|on|with|of|from) the )\bsame foot\b|\bsame (?:footwork|feet)\b|\b(?:both|everyone|everybody|all)\b[^.;\n]{0,24}\bsame foot\b|\b(?:footwork|ftwk|feet|steps) (?:is|are) (?:all )?(?:the )?same\b|\bboth (?:start|begin)\w* (?:with (?:the )?)?(?:left|right)\b|\b(?:everybody|everyone|all)\b[^.;\n]{0,24}\b(?:start|begin)s? (?:on|with) the (?:left|right)\b|\beverybody the same foot\b", Plain) ? true
                : OtherFeet.IsMatch(whole) ? false : null,
            OtherFeetSaid = OtherFeet.IsMatch(whole),
            LeadFree = StandsOn.Match(head) is { Success: true } stands ? (stands.Groups["foot"].Value[0] is 'l' or 'L' ? Foot.Right : Foot.Left)
                : BothOn.Match(head) is { Success: true } both ? (both.Groups["foot"].Value[0] is 'l' or 'L' ? Foot.Left : Foot.Right)
                : Begins.Match(whole) is { Success: true } begins ? (begins.Groups["his"].Value[0] is 'l' or 'L' ? Foot.Left : Foot.Right)
                : (HisAndHers.Match(whole) is { Success: true } found1 ? found1 : OfThem.Match(whole)) is { Success: true } own ? (own.Groups["his"].Value[0] is 'l' or 'L' ? Foot.Left : Foot.Right)
                : Regex.Match(whole, @"\b(?:ML\s?/\s?WR|man's left|start(?:ing|s|ed)? (?:foot )?(?:with |on )?(?:the |his |your )?(?<l>left|LF\b|L(?= f))|(?:left|L) (?:foot|ft\.?) (?:free|leads?|first|to start)|left free|weight on (?:the )?right to start)\b", Plain) is { Success: true } ? Foot.Left
                : Regex.IsMatch(whole, @"\b(?:begin|start|began|started)s? (?:with|on) (?:the |your )?(?:right foot|RF)\b|\bright foot (?:moves|goes|steps|leads) first\b|\b(?:right|R) (?:foot|ft\.?) (?:leads?|first|to start)\b", Plain) || Regex.IsMatch(head, @"\bstart(?:ing)? (?:foot )?(?:with )?(?:the )?right\b|\b(?:right|R) (?:foot |ft\.? )?free\b", Plain) ? Foot.Right : null,
            Order = Regex.Match(whole, @"\b(?:danced|dance|order|sequence)(?: is|:| in the order)? (?<o>(?-i:[A-H])(?:[ ,]+(?-i:[A-H]))+)\b", Plain) is { Success: true } order ? Regex.Replace(order.Groups["o"].Value, @"[ ,]+", " ", RegexOptions.CultureInvariant) : null,
            Bars = Regex.Match(whole, @"\b(?<n>\d{1,3})[- ](?:bars|measures|meas)\b", Plain) is { Success: true } bars ? int.Parse(bars.Groups["n"].Value, CultureInfo.InvariantCulture) : null,
            StepsInAll = steps.Success ? NumberWords.Read(steps.Groups["c"].Value) : 0,
            Counts = counts.Success ? int.Parse(counts.Groups["c"].Value, CultureInfo.InvariantCulture) : null,
        };
    }

    private static string? FacingOf(string whole, bool couple, string? hold)
    {
        if (!couple)
        {
            // Where they look first is where they begin.
            return Regex.Match(whole, @"\b(?:facing|face|looking)(?: to| in| towards?)? (?:the )?(?:(?<in>centre|center|middle|ctr)|(?<rlod>left$|left\b(?=[.,;])|RLOD|reverse line of dance|cw|clockwise)|(?<lod>right$|right\b(?=[.,;])|line of dance|LOD|ccw|counter-?clockwise|anti-?clockwise))\b", Plain) is not { Success: true } first ? null
                : first.Groups["in"].Success ? "inside" : first.Groups["rlod"].Success ? "RLOD" : "line of dance";
        }

        if (Regex.IsMatch(whole, @"\b(?:man|men|gents?|gentlem[ae]n|leaders?)(?:'s|s')?,?\s+(?:backs?|with (?:his|their) backs?)(?: is| are| with)? (?:to|towards) (?:the )?(?:centre|center|middle|inside)|\bman(?:,)? (?:facing )?out\b|\bman faces? out\b|\bman with back to (?:the )?(?:centre|center)|\bman's back to the (?:middle|centre|center)|\bhe (?:stands|is) with his back to the (?:middle|centre|center)|\b(?:man|men|gents?|gentlem[ae]n|leaders?|M)\b[^.;\n]{0,24}\bbacks? (?:to|towards?) (?:the )?(?:centre|center|ctr|middle|inside)\b", Plain)) return "lead outside, follow inside";
        if (Regex.IsMatch(whole, @"\b(?:man|men|gents?|gentlem[ae]n|leader|lead)(?: is|,)? (?:facing|faces?|looking|looks) (?:to )?(?:the )?(?:wall|outside|out)\b", Plain)) return "lead outside, follow inside";
        if (Regex.IsMatch(whole, @"\b(?:man|men|gents?|gentlem[ae]n|leader|lead)(?: is|,)? (?:facing|faces?|looking|looks) (?:to )?(?:the )?(?:centre|center|middle|inside|in(?! the| closed| \w+ (?:hold|position)))\b", Plain)) return "lead inside, follow outside";
        if (Regex.IsMatch(whole, @"\b(?:facing|looking) in the direction of the dance\b.{0,40}\b(?:back|backing)\b", Plain)) return "lead LOD, follow RLOD";
        if (Regex.IsMatch(whole, @"\b(?:man|lead\w*|gent)\b,?\s+(?:\w+\s+){0,2}?fac(?:es|ing)\s+(?:the\s+)?(?:line of dance|LOD)\b.{0,30}\bfac(?:es|ing)\s+(?:the\s+)?(?:reverse|RLOD|against|him|man)", Plain)) return "lead LOD, follow RLOD";
        if (Regex.IsMatch(whole, @"\b(?:couples?|everybody|everyone|ring|circle)\b[^.;\n]{0,30}\bfac(?:e|ing) (?:the )?(?:ctr|centre|center|middle)\b", Plain)) return "inside";
        if (Regex.IsMatch(whole, @"\b(?:big |one |large )?(?:circle|ring)\b[^.;]{0,60}\ball (?:hands )?joined\b|\b(?:big |one |large )?(?:circle|ring)\b[^.;]{0,60}\ball hands joined\b", Plain)) return "inside";
        if (Regex.IsMatch(whole, @"\b(?:both )?(?:facing|looking|look|both face)\b[^.;]{0,24}\b(?:LOD|line of d(?:ance|irection)|direction of the dance|anti-?clockwise|counter-?clockwise)\b", Plain)) return "line of dance";
        // Couples of a ring whose first steps go to its middle look there.
        if (hold is null or "open" && Inwards.IsMatch(whole) && !Regex.IsMatch(whole, @"\b(?:LOD|line of (?:dance|direction)|(?:anti|counter)-?clockwise|CCW)\b", Plain)) return "inside";
        return hold switch
        {
            "closed" or "two hands" or "crossed hands" => "lead LOD, follow RLOD",
            _ => "line of dance",
        };
    }
}
