using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <content>Sentences that speak of the dance and give no step of it.</content>
internal sealed partial class PlanReader
{
    private static readonly Regex Opposite = new(
        @"\b(?:opposite\s+(?:of|to)\s+(?:your\s+)?(?:partner|man|the\s+man|lead\w*|him)|mirror\s+(?:of\s+)?(?:the\s+)?(?:man|lead\w*|gent\w*|partner)|(?:natural|uses?|does|with|on)\s+(?:the\s+)?(?:opposite|contrary)\s*(?:foot(?:work)?|feet)?|in\s+reverse|(?:steps|footwork|feet)\s+(?:is|are)\s+(?:all\s+)?opposite|opp\.?\s+(?:ftwk|footwork|ft|feet)|whatever\s+he\s+does\s[^.;]{0,24}she\s+does\s+with\s+the\s+other|reverse\s+of\s+(?:the\s+)?(?:man|gent\w*|lead\w*)|does\s+(?:throughout\s+)?the\s+(?:reverse|opposite|mirror\w*)|opposite\s+footwork|counterpart|same\s+(?:with|on)\s+(?:the\s+)?(?:other|opposite)\s+(?:foot|feet))\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Sentences that speak about the dance, offer something else or explain, and give no step of it.
    private static readonly Regex Talk = new(
        @"^\W*(?:that(?:'?s| makes| is| gives| means)|other (?:starts|ways|versions?)|variations?|what (?:matters|counts)|they can|(?:it|this|there|these|those|such) (?:is|are|can|may|was|were|goes|dance)|in a (?:tight|small|big)|for (?:emphasis|style|fun|beginners)|the usual|each number|note that|remember|tip|hint|as a mixer|or(?:,)? |after the |after that you|if |optional|you (?:can|may|should|will|are (?:now )?(?:looking|facing))|say hello|try to|make sure|be sure|keep|do not|don't|like the|the (?:complete|whole|entire) [^.]{0,30}?(?:is|has|takes|lasts)|the (?:complete|whole|slows?|quicks?|steps?|rhythm|left foot moves|right foot only|dance) (?:is|are|has|have|moves|only|takes?|begins?|starts?))\b|\b(?:slow|quick)s?\s+(?:is|are)\b|\b(?:may|might|could)\b|^(?:the )?(?:first|second|third|other) (?:half|time|version)\b|^no \w+|^some (?:of|people|dancers|couples|finish|do|halls|groups|clubs|like|prefer)\b|\bmeans\b|\boff (?:you|we) go\b|\b(?:he|she|your partner) (?:turns|leads|takes|brings|guides) (?:you|her|him)\b|\b(?:he|she|your partner) (?:moves|comes|goes) towards? your\b|^steps? (?:are |is )?(?:given|described|written)\b|^counts? (?:are |is |stand |go )?(?:given |written |said )?(?:in|after|before|at the end)\b(?!.*\b(?:left|right)\b)|\b(?:M|man|W|lady) (?:is )?described\b|^(?:the|your) (?:hips?|knees?|shoulders?|arms?|heads?|eyes|rhythm|timing)\b|\bat \([a-h]\)|^now (?:for )?the \w+ (?:that|which|where|again)\b|^(?:the )?(?:first|second|third|fourth|fifth|sixth|last|next) (?:figure|part|section|movement)\b(?!.*\b(?:left|right)\b)|\bfree at the end\b|\b(?:when|while) (?:his|he|your partner|the (?:gent|gentleman|man|lady|woman) (?:goes|steps|moves|retires|advances))\b|\bdirections in reverse\b|^(?:begin|start)(?:s|ning|ing)? (?:with|on) (?:the |your )?(?:left|right|L|R)(?: foot)?\W*$|\blet the\b(?! weight| (?:left|right) (?:one|foot))|\b(?:two|three|four|six) steps to (?:the|a|each) bar\b|^find a\b|^(?:is|are) now\b|^(?:open |closed |large |big )?(?:circle|ring|chain) (?:of|led|is)\b|\bstraight through\b|^the (?:left|right) foot is (?:now )?free\b|^NB\b|^(?:wide|other|small|travell?ing) version\b|^everything (?:is )?the same\b|^straight on\b|^now the \w+, which (?:are|is)\b|^shorten (?:your|the)\b|^(?:m|w|man|lady) one place\b|^(?:the )?[\w' ]{3,28} \(\d{1,2} (?:beats?|counts?|cts|bars?|measures?)\)$|^(?:his |the man's )?(?:left|right)(?: foot)? and (?:her|the lady's) (?:left|right)(?: foot)? (?:begin|start|lead)|^the next \w+ (?:counts? )?(?:are|is) (?:all )?(?:for|on|done|danced)\b|\b(?:advances?|retires?) (?:as|when|while) the (?:gent\w*|lady|man|other)\b|\b(?:of the music|to the music|the song)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Repeat", with nothing after it that could be meant: begin again.
    private static readonly Regex Begins = new(@"^\W*(?:and |then )*(?:repeat|rpt|begin again|start (?:over|again))\W*$|^\W*repeat,? (?:facing|to|on) (?:the |a )?(?:new|next|other) \w+|^\W*rpt\.?\s+\d{1,2}[.:]\d\d|^\W*(?:the )?(?:whole )?(?:dance|sequence|pattern|figure) (?:then |now )?(?:repeats?|is repeated) from\b|^\W*(?:to be )?(?:repeat|repeated|danced) (?:at pleasure|ad lib\w*)|^\W*recommence\b|^\W*again (?:from|to|on) (?:the )?(?:new|next|\d{1,2}[:.]\d\d|top|start|beginning)\b|^\W*(?:start|begin)\s+(?:over|again|from the)\b|,\s*(?:start over|begin again)\W*$|^\W*repeat,?\s+(?:(?:to|until|till) (?:the )?end|from (?:the )?(?:step 1\b|step one|number 1\b|1\b|first|beg\b|beginning|start|top)|travel\w*|moving|around|until|the (?:whole )?(?:dance|pattern|sequence)|as (?:often|many))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SaysFoot = new(@"\b(?:left|right|outside|inside) f(?:oo|ee)t\b|(?<!'s )\b(?-i:[LR])\b|\b(?:steps?|walk|run|march|shuffle|triple|polka|vine|grapevine|rock|kick|touch|tap|point|heel|toe|stomp|stamp|slide|close|cross|hop)(?:s|es|ing)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex TurnsOnly = new(@"^(?:on the last(?: step| count| one)?,? |and |then )*(?:turn|fac|end|finish)\w*\b(?!.*\bsteps?\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Stands = new(@"\b(?:facing|looking|held|joined|side by side|hands?|in (?:a|one|two|the) (?:\w+ )?(?:ring|circle|lines?|rows?)|round the (?:room|hall|floor))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Everyone faces the same way to begin, and the right foot moves first."
    private static readonly Regex MovesFirst = new(@"\b(?:left|right) foot (?:moves|goes|steps|leads|starts|begins)(?: first)?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Instead = new(@"^\W*(?:other|some other|alternative) (?:starts|ways|versions?|endings?)\b|^\W*(?:variations?|alternatives?|alternatively|instead)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Named = new(@"^The \p{Lu}\w*(?: \p{Lu}\w*)?$", RegexOptions.CultureInvariant);
}
