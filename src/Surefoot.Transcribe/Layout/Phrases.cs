using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Cuts a sentence into phrases, each one thing to do, and finds slows, quicks and labels in them.</summary>
internal static class Phrases
{
    private const string Begins =
        @"(?:the\s+|your\s+|then\s+|again\s+)?(?:left|right|L|R|LF|RF|step|steps|stepping|walk|rock|recover|replace|touch|tap|point|kick|hop|brush|scuff|stomp|stamp|hold|pause|close|cross|bring|slide|draw|drag|turn|pivot|pivoting|turning|swing|lift|hitch|heel|toe|clap|side|forward|back|behind|jump|leap|run|sway|shuffle|chass\w*|triple|cha|coaster|sailor|vine|grapevine|jazz|half|quarter|full|weight|another|two|three|four|a\s+\w+\s+step|face|march|swivel|return|end|finish|take|join|release|raise|drop)(?:s|es)?\b";

    private static readonly Regex Cuts = new(
        $@"\s*(?:;|,\s*(?:and\s+then|then|and|while|as)?(?=\s)|\.\s+|\s+-\s+|\s*\bfollowed\s+by\b|\s+(?:and\s+)?then\b|\s+and(?=\s+{Begins})|\s*&(?=\s+{Begins})|\s+while(?=\s)|\s*\+\s*|\s*/\s*(?=[A-Za-z]{{3}})|\s+(?=or\s))\s*",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex List = new(@"^(?:L|R|left|right|LF|RF)(?:\s+(?:foot|ft))?(?:\s+first)?$|^(?:(?:left|right|L|R)[\s-]+)+(?:left|right|L|R)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AtEnd = new(@"\s*\([^()]*\)$", RegexOptions.CultureInvariant);

    // "Polka step with the outside foot: step, together, step" is said well enough by its name.
    private static readonly Regex Bare = new(@"^(?:step|together|close|ball|change|cha|quick|slow|and|[\s,&-])+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Adds = new(
        @"^(?:travel(?:l)?ing|moving|going|progressing|turning|in place|on the spot|to (?:the|his|her|your) (?:left|right|side)|clockwise|counter-?clockwise)(?:\s+(?!(?:foot|left|right|L|R)\b)\S+){0,5}$|^(?:(?:slightly|a little|a bit)\s+)?(?:forwards?|backwards?|back)(?:\s+again)?$|^forwards? and to the (?:left|right)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NamesFoot = new(@"\b(?:left|right|L|R|LF|RF)\b", RegexOptions.CultureInvariant);

    private static readonly Regex ToTheSide = new(@"\bto the (?:left|right)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OnlyCount = new(@"^(?:counts?|cts?\.?|beats?)?\s*(?<n>\d(?:\s?[-&]\s?\d)?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Numbered = new($"^(?:{NumberWords.Spelled})$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Through = new(@"^(?:pause|hold|wait)s? (?:through|until|till|to) (?<when>(?:beat|count) \w+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Waits = new($@"^(?:and )?(?:hold|pause|wait)s?(?: on)? (?<n>{NumberWords.Spelled}|\d)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "From the left foot, three steps back": with which foot the next begins.
    private static readonly Regex StartsNext = new(@"^(?:starting |beginning |leading )?(?:from|with|on) (?:the )?(?<foot>left|right|L|R|(?:out|in)side foot)(?: foot)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Step, close, step, hop with left foot first": with which foot all of them begin.
    private static readonly Regex StartsAll = new(@"\s*(?:,|\b(?:starting|beginning))?\s*\bwith (?:the )?(?<foot>left|right|L|R)(?: foot)? first$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex FootFirst = new(@"^(?:with )?(?:the )?(?<foot>left|right|L|R|LF|RF|outside|inside)(?: foot)? first$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Named(string foot) => foot.EndsWith("side", StringComparison.OrdinalIgnoreCase) ? foot.ToLowerInvariant() + " foot" : foot[..1].ToUpperInvariant();

    private static readonly Regex Preface = new(@"^in (?:\w+ ){0,2}(?:position|hold)\s*:?\s*|^(?<hands>(?:both|R|L|right|left) hands?)\s*:\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Quoted = new("\"[^\"]*\"", RegexOptions.CultureInvariant);

    private static readonly Regex NoAmount = new(@"^(?:still )?turning (?:a little |a bit |slightly )?(?:to the |to your )?(?:left|right)$|^turning on\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Aside = new(
        @"^(?:or|after|before|so|let|lead (?:her|him)|her into|if|which|because|until|as|like|you|but|where|when|that|its|only|not|also|weight on it|clap(?:s|ping)? (?:at|on|your|hands)|turning on|(?:beginning|starting|commencing|continuing|completing) (?:to turn|the (?:half|whole|turn))|feet together$|(?:the )?(?:m|w|man|lady|gent|woman|lead|follow) (?:with (?:his |her )?back|on the|facing|now on)|(?:still |body |the body )?turn(?:s|ing) (?:a little |a bit |slightly |gently )?(?:to the |to your )?(?:left|right)$)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Words that offer something else or explain, and are no step of their own.</summary>
    public static bool SpeaksAside(string phrase) => Aside.IsMatch(phrase);

    private static readonly Regex Slow = new(@"\(\s*(?:slow|s)\s*\)|\b(?:slowly|slow)\b(?!\s*(?:is|steps|,?\s*quick))|\s+S$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Quick = new(@"\(\s*(?:quick|q)\s*\)|\b(?:quickly|quick)\b(?!\s*(?:is|steps|,?\s*(?:quick|slow)))|\s+Q$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Carried = new(@"^\W*(?:(?:the\s+)?(?:(?<nth>first|second|third|fourth|last|next)|(?<many>two|three|four|\d))\s+)?(?<kind>slow|quick)s?\s*(?:steps?)?\s*[:,.-]?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <param name="carried">Beats that an earlier "two slows" gives to the phrases after it; kept up for the next sentence.</param>
    public static List<Phrase> Of(Sentence sentence, SheetLine line, ref int carried)
    {
        var phrases = new List<Phrase>();
        var starting = "";
        CountLabel? until = null;
        CountLabel? announced = null;
        bool? after = null;
        foreach (var piece in Pieces(Wording.SheetRules.Whole(Preface.Replace(Quoted.Replace(WithoutHead(sentence.Text), " "), "", 1))))
        {
            var text = piece.TrimStart();
            var whole = text.Trim(' ', ',', ';', '.', ':');
            if (Tempo.Match(whole) is { Success: true } tempo && (after ??= phrases.Count > 0 && carried == 0) && phrases.Count > 0 && phrases[^1].Beats == 0)
            {
                // "Left foot forward, slow, right to the side, quick": said after each step.
                phrases[^1] = phrases[^1] with { Beats = tempo.Value[0] is 's' or 'S' ? 2 : 1, Said = $"{phrases[^1].Said}, {whole}" };
                continue;
            }

            if (Lead(ref text, ref carried)) continue;
            var beats = carried;
            if (Slow.IsMatch(text)) (beats, text) = (2, Slow.Replace(text, " "));
            else if (Quick.IsMatch(text)) (beats, text) = (1, Quick.Replace(text, " "));
            var label = CountLabel.Inside(text, out var at, out var length);
            if (label is not null) text = text.Remove(at, length);
            text = Regex.Replace(text, @"\s+", " ").Trim(' ', ',', ';', '.', ':', '-');
            if (text.Length == 0 && label is null) continue;
            if (text.Length == 0 && phrases.Count > 0 && at == 0 && piece.TrimStart().StartsWith("on", StringComparison.OrdinalIgnoreCase))
            {
                // "And, on count four, kick": of what comes next.
                announced = label;
                continue;
            }

            if (announced is not null && text.Length > 0) (label, announced) = (label ?? announced, null);
            if (phrases.Count > 0 && FootFirst.Match(text) is { Success: true } lead && !phrases.Exists(p => NamesFoot.IsMatch(ToTheSide.Replace(p.Text, ""))))
            {
                // "Step, step, step, hop, outside foot first": the foot of the first of them.
                phrases[0] = phrases[0].With($"{phrases[0].Text} {Named(lead.Groups["foot"].Value)}", phrases[0].Said);
                continue;
            }

            if (phrases.Count > 0 && List.IsMatch(AtEnd.Replace(text, "")) && (label is null || phrases[^1].Label is null) && (phrases[^1].Label is null || List.IsMatch(phrases[^1].Text)))
            {
                // "Run forward R, L, R": the feet go on with what they are the feet of.
                var foot = Regex.Replace(AtEnd.Replace(text, ""), @"\s+(?:foot|ft|first)\b", "", RegexOptions.CultureInvariant);
                phrases[^1] = phrases[^1].With($"{phrases[^1].Text}{(NamesFoot.IsMatch(phrases[^1].Text) ? "," : "")} {foot}", whole) with { Label = phrases[^1].Label ?? label };
                continue;
            }

            if (label is null && phrases.Count > 0 && phrases[^1] is { Label: null, Beats: 0 } && TwoBeats.IsMatch(text))
            {
                // "Remaining two beats", said of the step before.
                phrases[^1] = phrases[^1] with { Beats = 2, Said = $"{phrases[^1].Said}, {whole}" };
                continue;
            }

            if (label is null && phrases.Count > 0 && phrases[^1].Label is null && InPlace.Match(text) is { Success: true } place && SeveralFeet.IsMatch(phrases[^1].Text))
            {
                // "Sway R, L, R, L in place".
                phrases[^1] = phrases[^1].With($"{phrases[^1].Text}, {place.Groups["foot"].Value}", whole);
                continue;
            }

            if (phrases.Count > 0 && Adds.IsMatch(text) && !NoAmount.IsMatch(text) && phrases[^1].Label is null)
            {
                // "Shuffle, travelling back": how the one before is danced.
                phrases[^1] = phrases[^1].With($"{phrases[^1].Text} {text}", whole) with { Label = label };
                continue;
            }

            if (label is null && phrases.Count > 0 && phrases[^1].Label is null && Numbered.IsMatch(text) && sentence.Text.EndsWith(text, StringComparison.OrdinalIgnoreCase))
            {
                // "Left foot forward, one": when, said after it.
                phrases[^1] = phrases[^1] with { Label = CountLabel.Of(NumberWords.Read(text), 1) };
                continue;
            }

            if (label is null && phrases.Count > 0 && phrases[^1].Label is null && OnlyCount.Match(text) is { Success: true } only)
            {
                // "Bring the right foot up to the left, count 2": when, said after it.
                phrases[^1] = phrases[^1] with { Label = CountLabel.Inside($"({only.Groups["n"].Value})", out _, out _) };
                continue;
            }

            if (until is not null && label is null) label = until;
            until = Through.Match(text) is { Success: true } through && CountLabel.Inside("on " + through.Groups["when"].Value, out _, out _) is { } then && !text.Equals(sentence.Text, StringComparison.OrdinalIgnoreCase) ? then : null;
            // "Pause through beat six, then close": on beat six it closes.
            if (until is not null) continue;
            if (label is null && phrases.Count > 0 && phrases[^1].Label is { } last && Waits.Match(text) is { Success: true } waits && NumberWords.Read(waits.Groups["n"].Value) == last.To + 1)
            {
                // "Forward on 1, touch on 2, hold 3": the number is the count that is waited.
                phrases.Add(new("hold", line, CountLabel.Of(last.To + 1, 1), beats) { Said = whole });
                continue;
            }

            if (StartsNext.Match(text) is { Success: true } next && label is null)
            {
                // "Walk back three steps, beginning with the left": said afterwards.
                if (phrases.Count > 0 && !NamesFoot.IsMatch(ToTheSide.Replace(phrases[^1].Text, "")) && text.Contains("ing ", StringComparison.Ordinal)) phrases[^1] = phrases[^1].With($"{phrases[^1].Text} starting {next.Groups["foot"].Value}", whole);
                else starting = " starting " + next.Groups["foot"].Value;
                continue;
            }

            phrases.Add(new(text + starting, line, label, beats) { Said = whole });
            starting = "";
        }

        if (phrases.Count > 0 && StartsAll.Match(phrases[^1].Text) is { Success: true } all && (phrases.Count == 1 || !NamesFoot.IsMatch(phrases[0].Text)))
        {
            phrases[^1] = phrases[^1] with { Text = phrases[^1].Text[..all.Index] };
            phrases[0] = phrases[0] with { Text = $"{phrases[0].Text} {Named(all.Groups["foot"].Value)}" };
        }

        FeetOfAList.In(phrases);
        return phrases;
    }

    private static readonly Regex TwoBeats = new(@"^(?:and )?(?:remaining|lasting|holding(?: it)?|held|which (?:takes|lasts)|taking)(?: again| also| for| there)* (?:two|2) (?:beats|counts)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex InPlace = new(@"^(?<foot>L|R|left|right)(?: foot)? (?:in place|on the spot)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SeveralFeet = new(@"^(?!steps?\b)[a-z]+ (?:L|R|left|right)(?:, (?:L|R|left|right))+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Tempo = new(@"^(?:slow|quick)(?:ly)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Vine to the right: step right, cross left behind, ...": the name of what is then said step by step.
    private static string WithoutHead(string text) => Sideways.Match(text) is { Success: true } aside
        ? $"step side, close, step side{text[(aside.Index + aside.Length)..]}"
        : ManyWays.Match(text) is { Success: true } many
        ? $"walk {many.Groups["way"].Value} {many.Groups["rest"].Value}"
        : Goes.Match(text) is { Success: true } goes
        ? $"{goes.Groups["head"].Value} {goes.Groups["rest"].Value}"
        : Head.Match(text) is { Success: true } looks && Turns.IsMatch(looks.Groups["head"].Value)
        ? $"{AndFigure.Replace(looks.Groups["head"].Value, "")}, {looks.Groups["rest"].Value}"
        : Head.Match(text) is { Success: true } head && !Carried.IsMatch(head.Groups["head"].Value) && !Preface.IsMatch(text)
            ? Bare.IsMatch(head.Groups["rest"].Value) ? head.Groups["head"].Value : TheTurn(head) : text;

    // "Jazz box 1/4 R: R over L, L back w/ the 1/4, ...": which way it turns is said in the name.
    private static string TheTurn(Match head) => Amount.Match(head.Groups["head"].Value) is { Success: true } turn
        ? OfThe.Replace(head.Groups["rest"].Value, found => found.Groups["amount"].Value.Equals(turn.Groups["amount"].Value, StringComparison.OrdinalIgnoreCase) ? $" turning {turn.Value}" : found.Value)
        : head.Groups["rest"].Value;

    private static readonly Regex Amount = new(@"\b(?<amount>1/4|1/2|3/4|quarter|half|full)(?: turn)? (?:to the )?(?:left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OfThe = new(@"\s+(?:w/|with|making|doing|on) the (?<amount>1/4|1/2|3/4|quarter|half|full)(?: turn)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Sideways away from each other: step, close, step, touch".
    private static readonly Regex Sideways = new(@"^(?:moving |going |travell?ing )?sideways\b[^:;,.]*:\s+step,\s+(?:close|together),\s+step\b(?=,)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Forward three and kick: L R L and kick R": what is then said foot by foot.
    private static readonly Regex ManyWays = new(@"^(?:walk |go |step )?(?<way>forwards?|back|in|out) (?:two|three|four|[2-4])(?:\s*(?:,|&|and|\+)\s*(?:a )?\w+)?:\s+(?<rest>(?:left|right|L|R)\b(?:[\s,-]+(?:left|right|L|R)\b)+.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Walk forward: right, left, right, and tap ...": the feet go on with what they do.
    private static readonly Regex Goes = new(@"^(?<head>(?:walk|step|run|strut|march|shuffle|stroll)(?:s|ing)?(?: (?:forward|back|backward|backwards|in|out|on the spot|in place))*):\s+(?<rest>(?:left|right|L|R)\b(?:\s*,\s*(?:left|right|L|R)\b)+.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Face centre and grapevine: right to the side, ...": the name of what is then said step by step.
    private static readonly Regex AndFigure = new(@"\s+and (?:a |the )?(?:grape)?(?:vine|weave|yemenite|box)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Turn to face right: left forward, ..." says something to do before the colon.
    private static readonly Regex Turns = new(@"\b(?:turn(?:ing)?|pivot(?:ing)?) (?:to )?fac|^fac(?:e|ing)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Head = new(@"^(?<head>[\p{L}\d/½¼¾ '-]{3,120}):\s+(?<rest>[^:]+,[^:]+)$", RegexOptions.CultureInvariant);

    // "Two slows, left foot forward, ..." and "First quick: ..." say how long what follows is.
    private static bool Lead(ref string text, ref int carried)
    {
        var colon = text.IndexOf(':');
        var head = colon > 0 ? text[..colon] : text;
        var match = Carried.Match(head);
        if (!match.Success) return false;
        carried = match.Groups["kind"].Value.StartsWith("s", StringComparison.OrdinalIgnoreCase) ? 2 : 1;
        if (colon <= 0) return true;
        text = text[(colon + 1)..];
        return text.Trim().Length == 0;
    }

    private static IEnumerable<string> Pieces(string text)
    {
        var from = 0;
        foreach (Match cut in Cuts.Matches(text))
        {
            if (Sentences.InBrackets(text, cut.Index)) continue;
            if (cut.Index > from) yield return text[from..cut.Index];
            from = cut.Index + cut.Length;
        }

        if (from < text.Length) yield return text[from..];
    }
}
