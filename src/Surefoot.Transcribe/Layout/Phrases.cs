using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Cuts a sentence into phrases, each one thing to do, and finds slows, quicks and labels in them.</summary>
internal static class Phrases
{
    private const string Begins =
        @"(?:(?:you|we|they)\s+(?:then\s+|both\s+|all\s+|now\s+|just\s+)?)?(?:the\s+|your\s+|then\s+|again\s+|finally\s+|now\s+)?(?:left|right|L|R|LF|RF|step|steps|stamp|put|place|set|come|go|polka|waltz|strut|skate|glide|push|press|lean|roll|spin|twirl|bump|flick|hook|lock|lift|dig|rise|sink|bend|snap|click|slap|rk|rec|tch|pvt|piv|stmp|shuf|wk|beh|sd|fwd|bk|bwd|tog|xs|cl|hld|clp|stepping|walk|rock|recover|replace|touch|tap|point|kick|hop|brush|scuff|stomp|stamp|hold|pause|close|cross|bring|slide|draw|drag|turn|pivot|pivoting|turning|swing|lift|hitch|heel|toe|clap|side|forward|back|behind|jump|leap|run|sway|shuffle|chass\w*|triple|cha|coaster|sailor|vine|grapevine|jazz|half|quarter|full|weight|another|two|three|four|[2-8](?=\s+(?:walks|steps|shuffles|hops|step-hops|polkas|stomps|claps)\b)|a\s+\w+\s+step|face|march|swivel|return|end|finish|take|join|release|raise|drop)(?:s|es|ed|ped|ned)?\b";

    private static readonly Regex Cuts = new(
        $@"\s*(?:;|,\s*(?:and\s+then|then|and|while|as)?(?=\s)|\.\s+|\s+-\s+|\s*\bfollowed\s+by\b|\s+(?:and\s+)?then\b|\s+and(?=\s+{Begins})|\s*&(?=\s+{Begins})|\s+while(?=\s)|\s*\+\s*|\s*/\s*(?=[A-Za-z]{{3}})|\s+(?=or\s))\s*",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex List = new(@"^(?:L|R|left|right|LF|RF)(?:\s+(?:foot|ft))?(?:\s+first)?$|^(?:(?:left|right|L|R)[\s-]+)+(?:left|right|L|R)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AtEnd = new(@"\s*\([^()]*\)$", RegexOptions.CultureInvariant);

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

    private static readonly Regex FootFirst = new(@"^(?:with )?(?:the )?(?<foot>left|right|L|R|LF|RF|outside|inside)(?: foot| ft\.?)? first$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Named(string foot) => foot.EndsWith("side", StringComparison.OrdinalIgnoreCase) ? foot.ToLowerInvariant() + " foot" : foot[..1].ToUpperInvariant();

    private static readonly Regex Preface = new(@"^in (?:\w+ ){0,2}(?:position|hold)\s*:?\s*|^(?<hands>(?:both|R|L|right|left) hands?)\s*:\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Quoted = new("\"[^\"]*\"", RegexOptions.CultureInvariant);

    private static readonly Regex NoAmount = new(@"^(?:still )?turning (?:a little |a bit |slightly )?(?:to the |to your )?(?:left|right)$|^turning on\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Aside = new(
        @"^(?:or|after|before|so|let|(?:lead|letting|leading|bringing|taking|sending) (?:her|him)|her into|if|which|because|until|as|like|you|but|where|when|that|its|only|not|also|weight on it|clap(?:s|ping)? (?:at|on|your|hands)|turning on|(?:beginning|starting|commencing|continuing|completing) (?:to turn|the (?:half|whole|turn))|feet together$|(?:the )?(?:m|w|man|lady|gent|woman|lead|follow) (?:with (?:his |her )?back|on the|facing|now on)|(?:still |body |the body )?turn(?:s|ing) (?:a little |a bit |slightly |gently )?(?:to the |to your )?(?:left|right)$)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Words that offer something else or explain, and are no step of their own.</summary>
    public static bool SpeaksAside(string phrase) => Aside.IsMatch(phrase);

    /// <summary>"Two slows", "first quick": how long what follows is.</summary>
    public static bool SaysHowLong(string head) => Carried.IsMatch(head);

    /// <summary>"In closed position: ...": how they stand, and no name of what follows.</summary>
    public static bool NamesHold(string sentence) => Preface.IsMatch(sentence);

    private static readonly Regex Slow = new(@"\(\s*(?:slow|s|qq|q,? ?q)\s*\)|\b(?:slowly|slow)\b(?!\s*(?:is|steps|,?\s*quick))|\s+S$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Quick = new(@"\(\s*quick(?:[\s,]+quick)*\s*\)|\(\s*q\s*\)|\b(?:quickly|quick)\b(?!\s*(?:is|steps|,?\s*(?:quick|slow)))|\s+Q$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Carried = new(@"^\W*(?:(?:the\s+)?(?:(?<nth>first|second|third|fourth|last|next)|(?<many>two|three|four|\d))\s+)?(?<kind>slow|quick)s?\s*(?:steps?)?\s*[:,.-]?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <param name="carried">Beats that an earlier "two slows" gives to the phrases after it; kept up for the next sentence.</param>
    public static List<Phrase> Of(Sentence sentence, SheetLine line, ref int carried)
    {
        var phrases = new List<Phrase>();
        var starting = "";
        CountLabel? until = null;
        CountLabel? announced = null;
        bool? after = null;
        foreach (var piece in Pieces(Wording.SheetRules.Whole(Preface.Replace(Quoted.Replace(PhraseHead.Without(sentence.Text), " "), "", 1))))
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
            if (Often.Match(whole) is { Success: true } often && phrases.Count > 0 && OnceMore(phrases, NumberWords.Read(often.Groups["n"].Value) is var n and > 0 ? n : 2)) continue;
            text = OfHands.Replace(text, "", 1);
            if (phrases.Count > 0 && PivotTwice.Match(whole) is { Success: true } pair && Steps.IsMatch(phrases[^1].Text))
            {
                // "Step left, pivot half right x2": both are danced so often.
                phrases.Add(new(pair.Groups["what"].Value.Trim(), line, null, carried) { Said = whole });
                phrases.AddRange(phrases.GetRange(phrases.Count - 2, 2));
                continue;
            }

            var beats = carried;
            if (Letter.Match(text) is { Success: true } letter) (beats, text) = (letter.Groups["slow"].Success ? 2 : 1, text[letter.Length..]);
            if (Slow.IsMatch(text)) (beats, text) = (2, Slow.Replace(text, " "));
            else if (Quick.IsMatch(text)) (beats, text) = (1, Quick.Replace(text, " "));
            var label = CountLabel.Inside(text, out var at, out var length);
            if (label is null && CountLabel.Before(text, out length) is { } said) (label, at) = (said, 0);
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

            if (phrases.Count > 0 && beats > 0 && beats != phrases[^1].Beats && (phrases[^1].Beats > 0 || beats == 2) && label is null && phrases[^1].Label is null && List.IsMatch(text) && GoesTo.Match(phrases[^1].Text) is { Success: true } going)
            {
                // "Goes forward left, right (quick, quick), left (slow)": the same step from another foot, and longer.
                phrases.Add(new($"{going.Groups["what"].Value}{text}", line, null, beats) { Said = whole });
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
        TurnsOfTheRhythm.In(phrases);
        return phrases;
    }

    // Steps somewhere, or a foot by itself.
    private static readonly Regex GoesTo = new(@"^(?<what>(?:(?:goes|go|walks?|steps?|runs?|walking|going|stepping)\b[^,]*?)?)(?:left|right|L|R|LF|RF)(?: foot)?(?:,? (?:left|right|L|R|LF|RF)(?: foot)?)*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex PivotTwice = new(@"^(?<what>(?:pivot|turn|close|together|touch|hop|kick|scuff|tap)\b.*?)\s*\(?(?:x ?2|2 ?x|twice)\)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Steps = new(@"^steps?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Inside hands stay joined: three walks forward ...".
    private static readonly Regex OfHands = new(@"^\s*(?:(?:and|with|keeping) )*(?:the |both |your )?(?:inside|outside|both|left|right|near(?:er|est)?|joined|same)? ?hands?\b[^:,;]{0,40}:\s+(?=\S)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Q L to side, Q R together, S L to side": the slow or quick before each step.
    private static readonly Regex Letter = new(@"^(?:(?<slow>S)|Q)[.:]?\s+(?=[\p{L}\d¼½])", RegexOptions.CultureInvariant);

    // "Step forward right and pivot half left, twice".
    private static readonly Regex Often = new($@"^(?:and )?(?:do (?:that|this|it) )?(?:twice|(?<n>{NumberWords.Spelled}|[2-8]) times|x ?(?<n>[2-8])|(?<n>[2-8]) ?x)(?: in all| altogether)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // More phrases than these are not all meant; the last two are.
    private const int MostMeant = 4;

    // What stands before it in the sentence is danced so often; false where it has counts of its own.
    private static bool OnceMore(List<Phrase> phrases, int times)
    {
        if (phrases.Exists(p => p.Label is not null)) return false;
        var meant = phrases.Count <= MostMeant ? phrases.ToList() : phrases.GetRange(phrases.Count - 2, 2);
        for (var i = 1; i < times; i++) phrases.AddRange(meant);
        return true;
    }

    private static readonly Regex TwoBeats = new(@"^(?:and )?(?:remaining|lasting|holding(?: it)?|held|which (?:takes|lasts)|taking)(?: again| also| for| there)* (?:two|2) (?:beats|counts)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex InPlace = new(@"^(?<foot>L|R|left|right)(?: foot)? (?:in place|on the spot)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SeveralFeet = new(@"^(?!steps?\b)[a-z]+ (?:L|R|left|right)(?:, (?:L|R|left|right))+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Tempo = new(@"^(?:slow|quick)(?:ly)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

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
