using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>Walking a part through: its name, its phrases one after the other, and what one says in between.</summary>
internal sealed partial class Instructor
{
    private enum PhraseKind
    {
        Steps,
        Hands,
        Repeat,
    }

    /// <param name="RockWithRecover">The next phrase is the recover that belongs to it.</param>
    private sealed record Phrase(string Text, Role? Role, PhraseKind Kind, Count At, bool RockWithRecover = false);

    private List<Phrase> Phrases(int part)
    {
        var all = new List<Phrase>();
        foreach (var row in _score.Parts[part].Rows.OrderBy(r => r.From))
        {
            foreach (var words in row.Words)
            {
                if (row.Kind == RowKind.Repeat)
                {
                    all.Add(new(words.Text, words.Role, PhraseKind.Repeat, row.From));
                    continue;
                }

                var cut = SpokenPhrase.Cut(words.Text);
                for (var i = 0; i < cut.Count; i++)
                {
                    var rock = i + 1 < cut.Count && cut[i].Contains("rock", StringComparison.OrdinalIgnoreCase) && cut[i + 1].StartsWith("recover", StringComparison.OrdinalIgnoreCase);
                    // "Walk forward L, R": the feet alone belong to what stands before.
                    var joined = cut[i];
                    while (i + 1 < cut.Count && cut[i + 1].Split(' ').All(t => t is "L" or "R" or "left" or "right" or "and")) joined += " " + cut[++i];
                    all.Add(new(joined, words.Role, SpokenPhrase.IsHands(joined) ? PhraseKind.Hands : PhraseKind.Steps, row.From, rock));
                }
            }
        }

        return all;
    }

    private void Part(int part, bool again = false)
    {
        var label = _score.Parts[part].Label.ToLowerInvariant();
        var phrases = Phrases(part).Select((p, i) => (Phrase: p, Index: i)).ToList();
        var byRole = phrases.Exists(p => p.Phrase.Role is not null);
        var blocks = byRole && (Sometimes(50) || phrases.Where(p => p.Phrase.Role == Role.Follow).Select(p => p.Index).DefaultIfEmpty().Min() > phrases.Where(p => p.Phrase.Role == Role.Lead).Select(p => p.Index).DefaultIfEmpty().Max());
        Role? first = blocks ? Role.Lead : null;
        _chapters.Add(new(_score.Parts[part].Key, first, _mouth.Now));
        Announce(part, label, again);
        if (blocks) Aside(One(["for the leads first", "gentlemen", "men you do this", "leads"]));
        Rows(part, phrases, first, again);
        if (!blocks) return;
        _mouth.Pause(0.6, 1.5);
        _chapters.Add(new(_score.Parts[part].Key, Role.Follow, _mouth.Now));
        Aside(One(["now for the ladies the same part", "and the follows from the top of that part", "ladies here is yours", "okay ladies your part"]));
        Rows(part, phrases, Role.Follow, again);
    }

    private void Announce(int part, string label, bool again)
    {
        var spoken = SpokenLabel(part);
        if (!again && _misnamed == part)
        {
            var other = PartsOnce.First(p => p != part && (p > part || part == PartsOnce.Last()));
            _planted.Add(new(Mistake.OtherPart, _mouth.Now, SpokenLabel(other)));
            _mouth.Say("okay");
            _mouth.Say(SpokenLabel(other), meant: true);
        }
        else if (Sometimes(15) && PartsOnce.Count() > 1)
        {
            var other = PartsOnce.First(p => p != part);
            _mouth.Say($"{One(["okay", "so", "now", "next is"])} {SpokenLabel(other)} {One(Chatter.Corrections)} {spoken}");
        }
        else if (again)
        {
            _mouth.Say($"{One(["and once more", "let us look at", "so here is"])} {spoken} {One(["again", "once more", ""])}");
        }
        else if (Sometimes(90))
        {
            _mouth.Say($"{One(["okay", "so", "now", "next is", "right so", "and then", "so we start with", "let us do"])} {spoken}");
            if (_score.Parts[part].Name.Length > 0 && Sometimes(30)) _mouth.Say("that is " + _score.Parts[part].Name.Replace(",", "", StringComparison.Ordinal).ToLowerInvariant());
        }

        _mouth.Pause(0.3, 1);
    }

    private string SpokenLabel(int part)
    {
        var key = _score.Parts[part].Key;
        if (!int.TryParse(key, out var number) || number > 8) return _score.Parts[part].Label.StartsWith('[') ? OfNumber(PartsOnce.ToList().IndexOf(part) + 1) : "part " + key.ToLowerInvariant();
        return OfNumber(number);
        string OfNumber(int n) => Sometimes(50) ? "section " + Number(n) : $"the {new[] { "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth" }[n - 1]} section";
    }

    private void Rows(int part, List<(Phrase Phrase, int Index)> phrases, Role? only, bool again)
    {
        Role? speaking = only;
        var roles = phrases.Exists(p => p.Phrase.Role is not null);
        for (var i = 0; i < phrases.Count; i++)
        {
            var (phrase, index) = phrases[i];
            if (only is not null && phrase.Role is { } mine && mine != only) continue;
            if (only is null && roles && phrase.Role != speaking)
            {
                _mouth.Say(phrase.Role switch
                {
                    Role.Lead => One(["the lead does a", "men", "leads", "he goes"]),
                    Role.Follow => One(["and the lady does", "ladies", "while the follow goes", "she does a"]),
                    _ => One(["and both", "then everybody", "together now"]),
                });
                speaking = phrase.Role;
            }

            if (phrase.Kind == PhraseKind.Repeat)
            {
                Repeat(phrase, phrases, only);
                continue;
            }

            // Hands are mentioned now and then.
            if (phrase.Kind == PhraseKind.Hands && Sometimes(50)) continue;
            var mistake = !again && only != Role.Follow && _plan.TryGetValue((part, index), out var planned) ? planned : (Mistake?)null;
            if (!again && only == Role.Follow && phrase.Role == Role.Follow && _plan.TryGetValue((part, index), out planned)) mistake = planned;
            SayPhrase(phrase, mistake);
            var rowEnds = i + 1 == phrases.Count || phrases[i + 1].Phrase.At != phrase.At;
            _mouth.Pause(0.05, rowEnds ? 0.9 : 0.35);
            if (rowEnds && Sometimes(12)) Aside(One(Chatter.Asides));
        }
    }

    private void Repeat(Phrase phrase, List<(Phrase Phrase, int Index)> phrases, Role? only)
    {
        var mirrored = phrase.Text.Contains("starting", StringComparison.Ordinal);
        if (mirrored || phrase.Text.Contains("but", StringComparison.Ordinal) || Sometimes(60))
        {
            _mouth.Say(mirrored ? "and repeat all that on the other foot" : One(["and repeat that", "do that again", "same again", "we do that twice"]));
            _mouth.Pause(0.3, 1);
            return;
        }

        _mouth.Say(One(["again", "and again", "repeat"]));
        foreach (var (one, _) in phrases.Where(p => p.Phrase.At < phrase.At && p.Phrase.Kind == PhraseKind.Steps && (only is null || p.Phrase.Role is null || p.Phrase.Role == only)))
        {
            if (only is null && one.Role is not null) continue;
            SayPhrase(one, null);
            _mouth.Pause(0.05, 0.4);
        }
    }

    private void SayPhrase(Phrase phrase, Mistake? mistake)
    {
        if (Sometimes(8)) _mouth.Say(One(Chatter.Hesitations));
        if (mistake is { } kind)
        {
            var wrong = kind switch
            {
                Mistake.OtherFoot => SpokenPhrase.OtherFeet(phrase.Text),
                Mistake.OtherWay => SpokenPhrase.OtherWay(phrase.Text)!,
                Mistake.OtherTurn => SpokenPhrase.OtherTurn(phrase.Text)!,
                _ => phrase.Text,
            };
            var said = SpokenPhrase.Said(wrong, _random, kind == Mistake.OtherFoot);
            _planted.Add(new(kind, _mouth.Now, said));
            if (kind == Mistake.Missing) return;
            _mouth.Say(said, meant: true);
            if (kind == Mistake.OneTooMany)
            {
                if (Sometimes(40)) _mouth.Say("and");
                _mouth.Say(SpokenPhrase.Said(phrase.Text, _random, false), meant: true);
            }

            return;
        }

        // Said wrong and put right in the same breath is no difference.
        if (Sometimes(2) && SpokenPhrase.OtherWay(phrase.Text) is { } slip) _mouth.Say($"{SpokenPhrase.Said(slip, _random, false)} {One(Chatter.Corrections)}");
        _mouth.Say(SpokenPhrase.Said(phrase.Text, _random, false));
    }

    internal static string Number(int n) => new[] { "", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve" }[n];
}
