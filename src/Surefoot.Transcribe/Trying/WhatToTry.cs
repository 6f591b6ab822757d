using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Wording;
using Surefoot.Transcribe.Writing;

namespace Surefoot.Transcribe.Trying;

/// <summary>Finds the words of a reading that may be meant otherwise: steps that may be talk, and talk that may be steps.</summary>
internal static class WhatToTry
{
    // Working values, tried on the corpus.
    private const double Vague = 0.6, Sure = 2, Unread = 0.5, AsStep = 0.8, AsCount = 1.2, AsAgain = 0.8, AsName = 1.5;

    private static readonly Regex NamesFoot = new(@"\b(?:L|R|LF|RF|left|right)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // What hands do, where somebody looks and how long it takes is no step, however little is understood of it.
    private static readonly Regex NoSteps = new(@"\b(?:hands?|arms?|elbows?|hold|position|partners?|look\w*|fac(?:e|es|ing)|beats?|counts?|bars?|measures?|weight|lean|music|song|lady|man|women|men|ladies|gents?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Another way to do it, or when something else is done.
    private static readonly Regex Offers = new(@"^(?:(?:and|but|now|then) )*(?:if|or|unless|until|till|because|which|when|some|beginners|optional\w*|let go|drop|release|take (?:\w+ )?hands?|keep)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Words of a step that nobody understands; more are talk.
    private const int LongestStep = 8;

    private static readonly Regex SomeSteps = new($@"\b(?:{NumberWords.Spelled}|\d)\b(?: \w+){{0,2}} (?:steps?|walks|shuffles|hops|step-hops)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // A foot of a list.
    private static readonly Regex OnlyFoot = new(@"^(?:and )?(?:the |his |her |your )?(?:L|R|LF|RF|left|right)(?: foot)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SaysAgain = new(@"^(?:(?:and|then|now|you|we|they|everyone|he|she|do|does|dance|all|both)\b[, ]*)*(?:(?:exactly |just )?the (?:very |exact |whole )?(?:same|lot)|same|repeat\w*|likewise|once more|again|all (?:of )?(?:that|this|it))\b(?!.*\b(?:off (?:you|we) go|begin|from the (?:top|start|beginning)|as long as|until)\b)|^(?!.*\b(?:off|begin|start|top)\b)(?:\S+\s+){0,5}(?:again|once more|a second time|twice more)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static List<Try> In(Attempt read, PhraseWords words)
    {
        var tries = new List<Try>();
        var told = read.Parts.SelectMany(p => p.Lines).Where(l => l.AgainOf is null).SelectMany(l => l.Phrases, (l, p) => (Line: l, Phrase: p));
        foreach (var (line, phrase) in told.Where(t => t.Phrase.Words.Length > 0).DistinctBy(t => t.Phrase.Words))
        {
            if (phrase.Told) continue;
            if (phrase.Text.Length > 0)
            {
                // What fills the counts that stand beside it is what they count.
                if (line.Labelled && line.Own <= Beats.Of(line.Counts.Length)) continue;
                if (Says(phrase.Words, words) is var says and < Sure) tries.Add(new([phrase.Words], TriedAs.NoStep, Vague + says));
            }
            else if (words.Read(phrase.Words).Moves.Count > 0) tries.Add(new([phrase.Words], TriedAs.Step, AsStep));
            else if (!NoSteps.IsMatch(phrase.Words) && phrase.Words.Split(' ').Length <= LongestStep) tries.Add(new([phrase.Words], TriedAs.OneCount, AsCount));
        }

        foreach (var line in read.Parts.SelectMany(p => p.Lines).Where(l => l.AgainOf is null)) tries.AddRange(Names(line, words));
        foreach (var passed in read.Plan.Passed)
        {
            if (SaysAgain.IsMatch(passed.Plain)) tries.Add(new([passed.Plain], TriedAs.Again, AsAgain));
            var carried = 0;
            var phrases = Phrases.Of(new(null, false, null, passed.Plain), passed, ref carried).ConvertAll(p => p.Text);
            var steps = phrases.FindAll(p => words.Read(p).Moves.Any(m => m.HeadSaid || m.Figure is not null || m.Feet.Count > 0));
            if (steps.Count == 0 || Offers.IsMatch(passed.Plain)) continue;
            if (steps.Max(p => Says(p, words)) is >= Sure) tries.Add(new([passed.Plain, .. steps], TriedAs.Step, AsStep));
        }

        return tries;
    }

    // "Vine to the right - side, behind, side, touch": a name, and the steps it stands for.
    private static IEnumerable<Try> Names(DraftLine line, PhraseWords words)
    {
        var phrases = line.Phrases.FindAll(p => p.Text.Length > 0 && p.Words.Length > 0);
        for (var k = 1; k < phrases.Count; k++)
        {
            var at = line.From.Plain.IndexOf(phrases[k].Said, StringComparison.OrdinalIgnoreCase);
            // The name is as long as what it stands for.
            if (Length(phrases.Take(k), words) is var name && (name <= Beats.One || name != Length(phrases.Skip(k), words) || phrases.Take(k).Sum(p => NamesFoot.Count(p.Words)) > k)) continue;
            if (at > 0 && Explains.IsMatch(line.From.Plain[..at])) yield return new([.. phrases.Take(k).Select(p => p.Words)], TriedAs.NoStep, AsName);
        }
    }

    private static Beats Length(IEnumerable<DraftPhrase> phrases, PhraseWords words) => phrases.Aggregate(Beats.Zero, (sum, p) => sum + words.Read(p.Words).Length);

    private static readonly Regex Explains = new(@"(?:\s[-=]+|:|=|\()\s*$", RegexOptions.CultureInvariant);

    // How much words say of a step: what is done, with which foot, and which way; less where some of it is not understood.
    private static double Says(string phrase, PhraseWords words)
    {
        var read = words.Read(phrase);
        if (OnlyFoot.IsMatch(phrase)) return Sure;
        var says = 0.0;
        if (read.Moves.Any(m => m.Figure is not null || m.HeadSaid)) says++;
        says += Math.Min(2, NamesFoot.Count(phrase));
        if (read.Moves.Any(m => m.Way is not null || m.Towards is not null)) says++;
        if (SomeSteps.IsMatch(phrase)) says++;
        // One word that is a step and nothing else: "close", "clap", "hold".
        if (says == 1 && read.Unknown.Count == 0 && phrase.Split(' ').Length <= 2 && read.Moves.Any(m => m.HeadSaid)) says++;
        return says - (read.Unknown.Count * Unread);
    }
}
