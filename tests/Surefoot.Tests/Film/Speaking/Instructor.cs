using System.Globalization;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>
/// Talks through a dance as instructors do before a camera: greets, walks through the parts in order for both roles,
/// counts a part slowly, turns another side to the camera, dances it at tempo, and says good-bye. Some of it is wrong on
/// purpose, and what is wrong is written down. The same seed says the same.
/// </summary>
internal sealed partial class Instructor
{
    private readonly Chance _random;
    private readonly DanceScore _score;
    private readonly Mouth _mouth;
    private readonly List<Planted> _planted = [];
    private readonly List<TrueChapter> _chapters = [];
    private readonly Dictionary<(int Part, int Phrase), Mistake> _plan = [];
    private readonly bool _terse;
    private int _misnamed = -1;

    private Instructor(DanceScore score, int seed)
    {
        _random = new(seed);
        _score = score;
        _mouth = new(_random);
        _terse = _random.Next(4) == 0;
    }

    public static SpokenFilm Film(Reading reading, int seed)
    {
        var one = new Instructor(reading.Score, seed);
        one.Plan();
        one.Speak();
        var heard = Recogniser.Hears(one._mouth.Words, one._random);
        return new(reading.Score.Title, seed, one._mouth.Words, one._planted, one._chapters, Cutting.Captions(heard, seed, one._random));
    }

    private T One<T>(IReadOnlyList<T> of) => of[_random.Next(of.Count)];

    private bool Sometimes(int percent) => _random.Next(100) < percent;

    private IEnumerable<int> PartsOnce => _score.Sections.Select(s => s.Part).Distinct();

    // One to four mistakes, in phrases that can hold them.
    private void Plan()
    {
        var open = PartsOnce.SelectMany(part => Phrases(part).Select((p, i) => (part, i, p))).Where(x => x.p.Kind == PhraseKind.Steps && !x.p.Text.StartsWith("starting", StringComparison.OrdinalIgnoreCase)).ToList();
        var wanted = _random.Next(1, 5);
        for (var tries = 0; tries < 60 && _plan.Count < wanted && open.Count > 0; tries++)
        {
            var (part, index, phrase) = One(open);
            // Two mistakes beside each other would be one muddle, not two differences.
            if (_plan.Keys.Any(k => k.Part == part && Math.Abs(k.Phrase - index) < 4)) continue;
            var kind = (Mistake)_random.Next(5);
            if (Fits(kind, phrase)) _plan[(part, index)] = kind;
        }

        var keys = PartsOnce.ToList();
        if (keys.Count > 1 && Sometimes(35)) _misnamed = One(keys);
    }

    private static bool Fits(Mistake kind, Phrase phrase) => kind switch
    {
        Mistake.OneTooMany => phrase.Text.Split(' ')[0] is var head && !head.StartsWith("Recover", StringComparison.OrdinalIgnoreCase) && !head.StartsWith("Hold", StringComparison.OrdinalIgnoreCase),
        Mistake.OtherFoot => phrase.Text != SpokenPhrase.OtherFeet(phrase.Text),
        Mistake.OtherWay => SpokenPhrase.OtherWay(phrase.Text) is not null,
        Mistake.OtherTurn => SpokenPhrase.OtherTurn(phrase.Text) is not null,
        // "Rock forward, shuffle back": everybody hears the recover that is not said.
        Mistake.Missing => !phrase.Text.StartsWith("recover", StringComparison.OrdinalIgnoreCase) && !phrase.RockWithRecover,
        _ => false,
    };

    private void Speak()
    {
        _mouth.Say(string.Format(CultureInfo.InvariantCulture, One(Chatter.Openings), _score.Title.Replace('-', ' ').ToLowerInvariant()));
        _mouth.Pause(0.5, 1.5);
        if (Sometimes(60)) Aside(One(Chatter.Sides));
        foreach (var part in PartsOnce.ToList())
        {
            Part(part);
            if (Sometimes(35)) CountSlowly(part);
            _mouth.Pause(0.8, 2);
        }

        if (Sometimes(50))
        {
            Aside(One(Chatter.Sides));
            Part(One(PartsOnce.ToList()), again: true);
            _mouth.Pause(0.8, 2);
        }

        for (var run = Sometimes(85) ? _random.Next(1, 3) : 0; run > 0; run--)
        {
            if (Sometimes(30)) Aside(One(Chatter.Sides));
            AtTempo();
            _mouth.Pause(1, 3);
        }

        _mouth.Say(string.Format(CultureInfo.InvariantCulture, One(Chatter.Closings), _score.Title.Replace('-', ' ').ToLowerInvariant()));
    }

    private void Aside(string words)
    {
        _mouth.Say(words);
        _mouth.Pause(0.4, 1.2);
    }
}
