using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <content>What a sheet says of the whole dance: its name, and facts before the first step.</content>
internal sealed partial class PlanReader
{
    // "From: ...", "Subject: ...", "Hi Marge,": a letter.
    private static readonly Regex Letter = new(@"^(?:from|to|cc|subject|sent|re)\s*:|^(?:hi|hello|dear|hey)\b[^.:;]{0,30}[,!]$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Called = new(@"\b(?:we call it|(?:it's|it is|is) called|the (?:dance|name of it|name) is(?: called)?)\s+""?(?<name>(?-i:[A-Z][\w']*)(?:\s+(?:(?-i:[A-Z])[\w']*|of|the|and|in|on))*)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Foxtrot, closed position", "Texas two-step: two quick steps and two slow steps", "Mayim".
    private void TitleOf(SheetLine line, string plain)
    {
        if (RoleWords.Opens(plain, 0, out _, out _, out var marked) && marked)
        {
            _plan.Title = "A dance without a name";
            Steps(line, plain);
            return;
        }

        if (IsA.Match(plain) is { Success: true } named)
        {
            // "The Ketteridge Strut is a line dance ...": what follows may already dance.
            _plan.Title = named.Groups["name"].Value.Trim();
            var first = Regex.Match(plain, @"\.\s+(?=\S)");
            _plan.Facts.Add(line with { Plain = first.Success ? plain[..first.Index] : plain });
            Is(line, LineKind.Title);
            if (first.Success && plain.Length - first.Index > 60) Steps(line, plain[(first.Index + first.Length)..]);
            else if (first.Success) _plan.Facts.Add(line with { Plain = plain[(first.Index + first.Length)..] });
            if (_plan.Kinds[line.Number] == LineKind.Remark) Is(line, LineKind.Title);
            return;
        }

        // "[card 31]  HUCKLEBERRY MIXER": where it is filed.
        plain = Filed.Replace(Spaced.Replace(plain, m => m.Value.Replace("   ", "_").Replace(" ", "", StringComparison.Ordinal).Replace("_", " ", StringComparison.Ordinal)), "");
        var end = Regex.Match(plain, @"\s*(?:[,:;(.]|\s-+\s|\s{3,})") is { Success: true, Index: > 2 } cut ? cut.Index : plain.Length;
        // A line of steps is no title.
        if (end == plain.Length && plain.Length > 70)
        {
            _plan.Title = "A dance without a name";
            Steps(line, plain);
            return;
        }

        _plan.Title = plain[..end].Trim();
        Is(line, LineKind.Title);
        var rest = plain[end..].Trim(' ', ',', ':', ';', '.', '-', '(', ')');
        if (rest.Length == 0) return;
        if (RoleWords.IsHeading(rest, out var only) && only is not null)
        {
            _plan.Only = only;
            return;
        }

        _plan.Facts.Add(line with { Plain = rest });
    }

    private static readonly Regex Filed = new(@"^\[[^\]]*\]\s*(?=\S)", RegexOptions.CultureInvariant);

    // "M I L L   P O N D": letters set apart.
    private static readonly Regex Spaced = new(@"^(?:\p{Lu} ){2,}\p{Lu}(?:   (?:\p{Lu} )+\p{Lu})*$", RegexOptions.CultureInvariant);

    private static readonly Regex IsA = new(@"^(?:The\s+)?(?<name>(?:[\p{Lu}\d][\w'-]*\s+|(?:of|the|and|in|on|for|at)\s+){1,6}?(?:(?!is\b|was\b)\p{Ll}{2,12}\s+)?)(?:is|was)\s+(?:a|an|one|the|danced)\b", RegexOptions.CultureInvariant);

    // "Line dance, 4 walls, beginner", "Couples in closed position, man facing LOD": before the first step, and hardly a foot in it.
    private static bool IsFact(string plain) =>
        FactWords.Count(plain) is var facts and > 0 && !PartHead.IsMatch(plain) && (CountLabel.AtStart(plain, 0, out _) is null || LengthOf.IsMatch(plain))
        && NamesFoot.Count(plain.ToLowerInvariant()) is var all && (Moves.IsMatch(plain) ? all : Feet(plain)) is var feet && (feet < 2 || (facts > 1 && plain.Length < 170 && (feet < 4 || Defines.IsMatch(plain))))
        && !RoleWords.IsHeading(plain, out _) && !(RoleWords.Opens(plain, 0, out _, out _, out var marked) && marked);

    // Feet that do something: neither those they begin with, nor hands and sides.
    private static int Feet(string plain) => NamesFoot.Count(NoSteps.Replace(plain, " ").ToLowerInvariant());

    // A sentence that begins with something to do.
    private static readonly Regex Moves = new(@"[.;:]\s+(?:then |now )?(?:(?:the |each )?(?:man|lady|woman|gent\w*|leader|follower|couples?|dancers?|partners?|both|everyone|everybody|all|you|we|they|he|she) )?(?:walk|step|rock|shuffle|vine|grapevine|kick|touch|point|heels?|toes?|march|run|polka|waltz|side|forward|back|triple|stomp|go|take|cross|close)(?:s|es)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NoSteps = new(
        @"\b(?:man|men|gents?|gentlem[ae]n|leaders?|lad(?:y|ies)|wom[ae]n|followers?|M|W)(?:'s|s')?(?: (?:on|with|from|starts?(?: on| with)?|begins?(?: on| with)?))?(?: (?:the|his|her|their))? (?:left|right|L|R)\b(?: foot| side)?|\b(?:left|right|L|R) (?:hands?|sides?|arms?|shoulders?)\b|\b(?:wt\.?|weight)(?: is)? on (?:the |your )?(?:left|right|L|R)\b|\b(?:left|right|L|R)(?: foot)? (?:is )?(?:ready|free)\b|^right,\s|\bstart(?:s|ing)? (?:on|with) (?:the |your )?(?:left|right|outside|inside|L|R)\b(?: foot| feet)?",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex FactWords = new(
        @"^music\b|\bamalgamation\b|\btiming\b|\bno (?:tags?|restarts?)\b|\b\d restarts?\b|\b(?:L|R|left|right)(?: ft\.?| foot)? (?:leads?|starts?|first)\b(?=\s*(?:$|[,;.]))|\b\d (?:beats|counts|steps) (?:to |in |per )?(?:a |the |each |every )?(?:bar|measure)\b|\bcut time\b|\bkey (?:of )?[A-G]\b|\b(?:wt|weight)\s+(?:is\s+)?on\s+(?:the\s+)?(?:L|R|left|right)\b.{0,20}\bstart|\b(?:wt|weight)\s+(?:is\s+)?on\s+(?:the\s+|your\s+)?(?:left|right|L|R)\b.{0,40}\b(?:ready|free)\b|\b(?:RF|LF|[MWLGR])\s*=\s*\w+|\b(?:line\s+dance|circle\s+dance|sequence\s+dance|couples?(?:\s+dance)?|partners?(?:\s+dance)?|round\s+dance|contra|walls?|\dw|beginner|improver|intermediate|advanced|position|hold|bpm|\d/\d|(?:1[2-9]|[2-9]\d)[- ](?:counts?|cts?))\b|^\W*(?:line|circle|partner|couple)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "RF = right foot".
    private static readonly Regex Defines = new(@"\b(?:RF|LF|[RL])\s*=\s*(?:right|left)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "M = man   L = lady".
    private static readonly Regex DefinesRoles = new(@"^M\s*=\s*(?:the )?(?:man|men|gent)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Men start left foot, ladies right foot."
    private static readonly Regex FeetOfBoth = new(@"^(?:the )?(?:man|men|gents?|gentlem[ae]n|leaders?)\b(?: (?:start|begin|commence)s?)?(?: (?:on|with))?(?: (?:the|his|their))? (?:left|right|L|R)(?: foot| ft\.?)?,? (?:and )?(?:the )?(?:lad(?:y|ies)|wom[ae]n|followers?)(?: (?:start|begin|commence)s?)?(?: (?:on|with))?(?: (?:the|her|their))? (?:left|right|L|R)(?: foot| ft\.?)?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "48 count partner dance".
    private static readonly Regex LengthOf = new(@"^\d{2,3}[- ](?:counts?|cts?)\.?(?:\s+\p{L}|\s*[/|,;])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "32 cts, shuffle tempo. Big circle of couples ...".
    private static readonly Regex LengthFirst = new(@"^\d{2,3}[- ](?:counts?|cts?|beats)\b\.?(?:\s*(?:[,;/|]|$)|\s{2,})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "32 beats. Everybody left foot.": a sentence of its own before what is said of all.
    private static readonly Regex LengthAlone = new(@"^\d{2,3}[- ](?:counts?|cts?|beats)\.\s", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OnlyOne = new(@"\b(?:(?<lead>gentleman|man|gent|leader)|(?<follow>lady|woman|follower))'s (?:part|steps?) (?:only|alone)\b|\bonly the (?:(?<lead>gentleman|man|gent|leader)|(?<follow>lady|woman|follower))'s\b(?! (?:left |right )?(?:hand|arm|foot)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Fact = new(
        @"^(?:source|kind|facts|style|text-status|complete|choreograph\w*(?:\s+by)?|by|music|song|tempo|bpm|meter|metre|time(?:\s+signature)?|level|difficulty|walls?|counts?|count|formation|position|hold|start(?:ing)?(?:\s+(?:position|foot|facing))?|footwork|intro(?:duction)?|rhythm|dance|type|description|note|notes|hint|tip|remarks?|also|aka|written|date|hands|progression|variation|teaching points?|extension)\b[^:]{0,24}:",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
