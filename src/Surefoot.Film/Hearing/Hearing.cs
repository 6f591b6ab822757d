using Surefoot.Dance.Basics;
using Surefoot.Film.Captions;

namespace Surefoot.Film.Hearing;

/// <summary>What was said, thing by thing: steps, counts, parts, for whom, from where, again, and talk.</summary>
internal sealed class SpeechReader
{
    private readonly SpokenRules _rules = SpokenRules.Shipped;
    private readonly List<Spoken> _words;
    private readonly DanceWords _dance;
    private readonly MoveEar _moves;
    private readonly PartEar _parts;
    private readonly List<Heard> _heard = [];

    private SpeechReader(List<Spoken> words, DanceWords dance, bool feetFirst)
    {
        _words = words;
        _dance = dance;
        _moves = new(dance, words, feetFirst);
        _parts = new(dance);
    }

    /// <param name="feetFirst">Whether a foot is said before its step.</param>
    public static List<Heard> Read(IReadOnlyList<HeardWord> words, DanceWords dance, bool feetFirst)
    {
        var reader = new SpeechReader(Ear.Understood(words, dance), dance, feetFirst);
        for (var i = 0; i < reader._words.Count;) i = reader.Next(i);
        return PutRight.In(reader._heard);
    }

    private int Next(int at)
    {
        if (_parts.At(_words, at) is { } part) return Add(HeardKind.Part, at, part.Next, h => h with { Parts = part.Parts, ByName = part.ByName });
        if (PartTakenBack(at) is { } again) return again;
        if (_parts.Unnamed(_words, at)) return Add(HeardKind.Part, at, at + 1, h => h);
        if (_dance.TitleAt(_words, at) is { } title) return Add(HeardKind.Talk, at, title, h => h);
        if (_rules.CueAt(_words, at) is { } cue && !StepAlso(at, cue.Length)) return Cued(cue.Cue, at, at + cue.Length);
        if (CountInAt(at) is { } counted) return counted;
        if (_moves.Aside(at) is { } aside) return Add(HeardKind.Talk, at, aside, h => h);
        if (NumberAt(at) is { } number) return number;
        if (_moves.At(at) is { } step) return Add(HeardKind.Step, at, step.Next, h => h with { Move = step.Move });
        if (_moves.StartingAt(at) is { } starting)
        {
            // "Paddle turn left, now, starting right."
            if (starting.Side is { } foot && _heard.Count > 0 && _heard[^1] is { Kind: HeardKind.Step, Move: { Sides.Count: 0 } begun } turned && _words[at].From - turned.To < 1.5)
            {
                _heard[^1] = turned with { To = _words[starting.Next - 1].To, Move = begun with { Sides = [foot] } };
                return starting.Next;
            }

            return Add(HeardKind.Talk, at, starting.Next, h => h);
        }

        if (_moves.SideAt(at) is { } side)
        {
            // Left and right after a moment still belong to the step.
            if (!EndsWithAmount(_heard) && _heard.FindLastIndex(h => h.Kind != HeardKind.Talk || h.Words > 2) is var last and >= 0 && _heard[last] is { Kind: HeardKind.Step, Move: { } move } before && _words[at].From - before.To < 1.5
                && (move.Sides.Count == 0 || last == _heard.Count - 1 || _heard[^1].Words < 2))
            {
                _heard[last] = before with { To = _words[side.Next - 1].To, Move = move with { Sides = [.. move.Sides, side.Side] } };
                return side.Next;
            }

            return Add(HeardKind.Talk, at, side.Next, h => h);
        }

        if (_rules.Hesitations.Contains(_words[at].Word)) return at + 1;
        return Add(HeardKind.Talk, at, at + 1, h => h);
    }

    // "Step forward, them half left": the left is which way round a turn goes whose name was not heard.
    private static bool EndsWithAmount(List<Heard> heard) => heard.Count > 0 && heard[^1] is { Kind: HeardKind.Talk } talk && talk.Said.Split(' ')[^1] is "half" or "quarter" or "quarters";

    // "Section one, wait, three", "part a, sorry, b": a part was named, and is taken back at once.
    private int? PartTakenBack(int at)
    {
        if (_heard.Count > 0 && _heard[^1] is { Kind: HeardKind.Part, ByName: false } && _words[at].Word is "wait" or "sorry" or "mean" && !(_rules.CueAt(_words, at) is { Cue: Cue.Correct })) return Add(HeardKind.Talk, at, at + 1, h => h with { Said = PutRight.Mark });
        if (_heard.Count > 1 && _heard[^1].Said == PutRight.Mark && _heard[^2].Kind == HeardKind.Part && _parts.KeyAt(_words, at) is { } key) return Add(HeardKind.Part, at, key.Next, h => h with { Parts = key.Parts });
        return null;
    }

    // "All right" and "twice" may begin a longer name that the dance has.
    private bool StepAlso(int at, int length) => _moves.SensesAt(at) is { Length: var l, Senses: var senses } && l > length && senses.Any(s => s.Kind == Dance.Words.SenseKind.Figure);

    private int Cued(Cue cue, int at, int next) => cue switch
    {
        Cue.Correct => Add(HeardKind.Talk, at, next, h => h with { Said = PutRight.Mark }),
        Cue.FromBack => Add(HeardKind.Side, at, next, h => h with { Side = FilmSide.Back }),
        Cue.FromFront => Add(HeardKind.Side, at, next, h => h with { Side = FilmSide.Front }),
        Cue.FromSide => Add(HeardKind.Side, at, next, h => h with { Side = FilmSide.Side }),
        Cue.FromAbove => Add(HeardKind.Side, at, next, h => h with { Side = FilmSide.Above }),
        Cue.Lead => _dance.Score.Facts.ForCouples ? Add(HeardKind.Role, at, next, h => h with { Role = Role.Lead }) : Add(HeardKind.Talk, at, next, h => h),
        Cue.Follow => _dance.Score.Facts.ForCouples ? Add(HeardKind.Role, at, next, h => h with { Role = Role.Follow }) : Add(HeardKind.Talk, at, next, h => h),
        Cue.Both => _dance.Score.Facts.ForCouples ? Add(HeardKind.Role, at, next, h => h) : Add(HeardKind.Talk, at, next, h => h),
        Cue.Again or Cue.AgainOther => Add(HeardKind.Again, at, next, h => h),
        Cue.Top => Add(HeardKind.Top, at, next, h => h),
        Cue.Tally => Add(HeardKind.Tally, at, next, h => h),
        Cue.Restart => Add(HeardKind.Restart, at, next, h => h),
        _ => Add(HeardKind.Talk, at, next, h => h),
    };

    private int? NumberAt(int at)
    {
        var word = _words[at].Word;
        var (senses, length) = _moves.SensesAt(at);
        var pace = senses.Any(s => s.Kind == Dance.Words.SenseKind.Quick) ? 0 : senses.Any(s => s.Kind == Dance.Words.SenseKind.Slow) ? -1 : (int?)null;
        if ((pace ?? Ear.NumberOf(word)) is not { } number || length > 1) return null;
        // "A quick run-through" has no rhythm.
        if (number <= 0 && !Paced(at - 1) && !Paced(at + 1)) return null;
        if (number > 0 && at > 0 && _rules.NoCountBefore.Contains(_words[at - 1].Word) && _words[at].From - _words[at - 1].To < 0.5) return null;
        if (number > 0 && at + 1 < _words.Count && _rules.NoCountAfter.Contains(_words[at + 1].Word) && _words[at + 1].From - _words[at].To < 0.5) return null;
        var and = at + 1 < _words.Count && _words[at + 1].Word == "and";
        return Add(HeardKind.Number, at, at + (and ? 2 : 1), h => h with { Number = number, AndAfter = and, To = _words[at].To });
    }

    private bool Paced(int at) => at >= 0 && at < _words.Count && _moves.SensesAt(at).Senses.Any(s => s.Kind is Dance.Words.SenseKind.Quick or Dance.Words.SenseKind.Slow);

    /// <summary>Numbers up to the last of the bar that do not go on from a count or a step.</summary>
    private int? CountInAt(int at)
    {
        var last = _dance.CountsTo;
        var first = last - 3;
        if (_dance.ThreeInABar) first = 4;
        if (Ear.NumberOf(_words[at].Word) is not { } begun || begun < first || begun > first + 1) return null;
        if (_heard.Count > 0 && _heard[^1] is { Kind: HeardKind.Step or HeardKind.Number } before && _words[at].From - before.To < 1.2) return null;
        var times = new List<double>();
        var (i, expected) = (at, begun);
        for (var astray = 0; i < _words.Count && (times.Count == 0 || _words[i].From - times[^1] < 3); i++)
        {
            if (Ear.NumberOf(_words[i].Word) is not { } n)
            {
                // One word made up by the recogniser in between.
                if (++astray > 1 || expected > last || i + 1 >= _words.Count || Ear.NumberOf(_words[i + 1].Word) is null) break;
                continue;
            }

            // The last number ends it, also where more than one before it was not heard.
            if ((n != expected && n != first && n != expected + 1 && !(n == last && times.Count > 1)) || n < first || n > last) break;
            times.Add(_words[i].From);
            expected = n + 1;
            if (n != last) continue;
            i++;
            break;
        }

        if (times.Count < (_dance.ThreeInABar ? 2 : 3) || expected < last) return null;
        var gaps = times.Zip(times.Skip(1), (a, b) => b - a).TakeLast(3).Order().ToList();
        return Add(HeardKind.CountIn, at, i, h => h with { Beat = gaps[gaps.Count / 2] });
    }

    private int Add(HeardKind kind, int at, int next, Func<Heard, Heard> more)
    {
        var said = string.Join(' ', _words.Skip(at).Take(next - at).Select(w => w.Word));
        var heard = more(new(kind, _words[at].From, _words[next - 1].To, next - at, _words[at].Line, said));
        // Talk that goes on is one piece of talk.
        if (kind == HeardKind.Talk && heard.Said != PutRight.Mark && _heard.Count > 0 && _heard[^1] is { Kind: HeardKind.Talk } before && before.Said != PutRight.Mark && heard.From - before.To < 1)
        {
            _heard[^1] = before with { To = heard.To, Words = before.Words + heard.Words, Said = before.Said + " " + heard.Said };
        }
        else
        {
            _heard.Add(heard);
        }

        return next;
    }
}
