using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Film.Hearing;

/// <summary>Finds steps in running speech: a figure or an action, and what is said of its feet, ways and turns.</summary>
internal sealed class MoveEar
{
    /// <summary>Seconds after which left and right no longer belong to the step before.</summary>
    private const double Apart = 2.0;

    private readonly DanceWords _dance;
    private readonly IReadOnlyList<Spoken> _words;
    private readonly Token[] _tokens;
    private readonly SpokenRules _rules = SpokenRules.Shipped;

    private readonly bool _feetFirst;

    /// <param name="feetFirst">A foot between two steps belongs to the one after it: "left rock, right recover".</param>
    public MoveEar(DanceWords dance, IReadOnlyList<Spoken> words, bool feetFirst)
    {
        _feetFirst = feetFirst;
        _dance = dance;
        _words = words;
        _tokens = new Token[words.Count];
        for (var i = 0; i < words.Count; i++) _tokens[i] = new(TokenKind.Word, i, 1, dance.Book.Lexicon.WordOf(words[i].Word), 0, false, true);
    }

    private readonly record struct Head(string? Figure, ActionKind Kind, Direction? Way, bool Bare, int Length);

    /// <summary>The senses of the longest name at a place, a figure that the dance has not given way to shorter names.</summary>
    public (IReadOnlyList<Sense> Senses, int Length) SensesAt(int at)
    {
        var length = _dance.Book.Lexicon.Longest(_tokens.AsSpan(), at, out var senses);
        var (best, longest) = (senses, length);
        for (var shorter = length; shorter > 1 && !Fits(senses);)
        {
            shorter = _dance.Book.Lexicon.Longest(_tokens.AsSpan(0, at + shorter - 1), at, out senses);
            if (shorter > 0 && Fits(senses)) return (senses, shorter);
        }

        // "Charleston, step forward": the step is the next one, where the page does not call it a charleston step.
        if (longest > 1 && at + longest < _words.Count && Figure(best) is { } named && !_dance.Writes(string.Join(' ', Enumerable.Range(at, longest).Select(i => _words[i].Word)))
            && _dance.Book.Lexicon.Longest(_tokens.AsSpan(0, at + longest - 1), at, out senses) == longest - 1 && Figure(senses) == named
            && _dance.Book.Lexicon.Longest(_tokens.AsSpan(0, at + longest), at + longest - 1, out var then) > 0 && Of(then, SenseKind.Verb) is not null
            && _dance.Book.Lexicon.Longest(_tokens.AsSpan(0, at + longest + 1), at + longest, out then) > 0 && Of(then, SenseKind.Way) is not null)
        {
            return (senses, longest - 1);
        }

        return (best, longest);

        // "Together with your left" is a step, whatever "together with" joins elsewhere.
        bool Fits(List<Sense> all) => (all.Count == 0 || !all.TrueForAll(s => s.Kind == SenseKind.Filler)) && !all.Exists(s => s.Kind == SenseKind.Figure) || all.Exists(s => s.Kind == SenseKind.Figure && Known(_dance.Book.Figure(s.Value).Name));
    }

    /// <summary>A step that begins at a place, with the place after it; null where none does.</summary>
    public (HeardMove Move, int Next)? At(int at)
    {
        var i = at;
        var sides = new List<Foot>();
        int? turn = null;
        Foot? turnSide = null;
        // "Left foot rock", "quarter turn": what is said first.
        while (i < _words.Count && i - at < 4 && HeadAt(i) is null)
        {
            var (senses, length) = SensesAt(i);
            if (SideOf(senses) is { } side)
            {
                if (turn is not null && turnSide is null) turnSide = side;
                else sides.Add(side);
            }
            else if (Of(senses, SenseKind.Amount) is { } amount) turn = amount.Value;
            else if (i == at || !(Of(senses, SenseKind.FootNoun) is not null || _rules.Fillers.Contains(_words[i].Word))) return null;
            i += Math.Max(1, length);
            if (i < _words.Count && _words[i].From - _words[i - 1].To > 1) return null;
        }

        if (i >= _words.Count || HeadAt(i) is not { } head) return null;
        // A bare way takes nothing that was said before it.
        if (head.Bare && i > at) return null;
        var next = i + head.Length;
        var way = head.Way;
        var seen = next;
        // What was said before it.
        var (before, turnBefore, wayAfterFeet) = (sides.Count, turn is not null, false);
        while (seen < _words.Count && _words[seen].From - _words[seen - 1].To < Apart && (_rules.CueAt(_words, seen) is null || FootAfterAll(seen, head, sides)))
        {
            var (senses, length) = SensesAt(seen);
            var word = _words[seen].Word;
            if (SideOf(senses) is { } side && !Swallowed(seen))
            {
                var after = seen + Math.Max(1, length);
                while (after < _words.Count && Of(SensesAt(after).Senses, SenseKind.FootNoun) is not null) after++;
                // "Pivot half, forward left": what goes forward is another step, and the foot is its.
                // "Quarter, with your right": that is a foot, and no way round.
                var turns = turnSide is null && !(turn is not null && head.Figure is not null && OnAFoot(seen)) && (head is { Figure: null, Kind: ActionKind.Turn or ActionKind.Pivot } ? way == head.Way : turn is not null);
                // "Left rock forward, right recover": it belongs to what comes.
                // "Left right left, on the right": that begins the next step, or is what is left of it.
                if (!turns && sides.Count > before && seen - next >= 2) break;
                if (!turns && _feetFirst && (head.Figure is null || OnAFoot(seen)) && after < _words.Count && HeadAt(after) is { Bare: false }) break;
                if (turns) turnSide = side;
                else sides.Add(side);
                next = seen = after;
            }
            else if (Of(senses, SenseKind.Way) is { } heading && Of(senses, SenseKind.Verb) is null && Of(senses, SenseKind.HandVerb) is null)
            {
                // "Jazz box, together": that closes it, and is written by itself.
                if (way is not null || head.Bare || (head.Figure is not null && (Direction)heading.Value == Direction.Together)) break;
                (way, wayAfterFeet) = ((Direction)heading.Value, sides.Count > before);
                next = seen += length;
            }
            else if (Of(senses, SenseKind.Amount) is { } amount && turn is null)
            {
                var after = seen + length;
                var turning = after < _words.Count && HeadAt(after) is { Kind: ActionKind.Turn or ActionKind.Pivot } noun && !(head.Figure is null && noun.Kind == head.Kind);
                if (turning && head.Figure is null && head.Kind is not (ActionKind.Turn or ActionKind.Pivot)) break;
                turn = amount.Value;
                next = seen = turning ? after + 1 : after;
            }
            else if (Of(senses, SenseKind.Rotation) is { } round)
            {
                turnSide = (Foot)round.Value;
                next = seen += length;
            }
            else if (_rules.Fillers.Contains(word) || (_rules.Hesitations.Contains(word) && word is not ("and" or "then" or "now" or "so" or "okay")) || Of(senses, SenseKind.FootNoun) is not null || Of(senses, SenseKind.Starting) is not null || Of(senses, SenseKind.Small) is not null || Of(senses, SenseKind.Large) is not null)
            {
                seen += 1;
                if (seen - next > 3) break;
            }
            else if (word == "and" && seen + 1 < _words.Count && head.Figure is not null && SideOf(SensesAt(seen + 1).Senses) is not null && sides.Count > 0)
            {
                seen += 1;
            }
            else
            {
                break;
            }
        }

        var loose = head.Bare || (head.Length == 1 && _rules.Loose.Contains(_words[i].Word) && head.Figure is null);
        // Feet on both sides of a step: the ones after it are its own.
        // So they are after "with your", which ends what somebody said before.
        var ended = at > 1 && (_words[at - 2].Word, _words[at - 1].Word) is ("on", "the") or ("with", "your");
        var stray = !_feetFirst && before > 0 && (sides.Count > before || ended) ? before : 0;
        return (new(head.Figure, head.Kind, way, sides.Skip(stray).ToValueList(), turn, turnSide, head.Bare, loose) { Stray = sides.Take(stray).ToValueList(), FeetBefore = before > 0 && sides.Count == before && stray == 0, TurnBefore = turnBefore, WayAfterFeet = wayAfterFeet }, next);
    }

    /// <summary>"Starting right" by itself, with the place after it.</summary>
    public (Foot? Side, int Next)? StartingAt(int at)
    {
        if (Of(SensesAt(at).Senses, SenseKind.Starting) is null) return null;
        for (var i = at + 1; i < Math.Min(_words.Count, at + 4); i++)
        {
            if (SideOf(SensesAt(i).Senses) is { } side) return (side, i + 1);
            if (!_rules.Fillers.Contains(_words[i].Word)) break;
        }

        return null;
    }

    /// <summary>Left or right by itself, with the place after it.</summary>
    public (Foot Side, int Next)? SideAt(int at)
    {
        var (senses, length) = SensesAt(at);
        return SideOf(senses) is { } side ? (side, at + length) : null;
    }

    /// <summary>The place after what is said of hands, of looking and of weight; null where none of it begins here.</summary>
    public int? Aside(int at)
    {
        var (senses, length) = SensesAt(at);
        if (length == 0) return null;
        if (Of(senses, SenseKind.Hold) is not null && length > 1) return at + length;
        if (Of(senses, SenseKind.HandVerb) is not null) return Until(at, SenseKind.HandNoun, 5) ?? Until(at, SenseKind.Hold, 3) ?? Until(at, SenseKind.Head, 3);
        if (Of(senses, SenseKind.Face) is not null) return Until(at, SenseKind.Facing, 4) ?? Until(at, SenseKind.Relation, 4) ?? Until(at, SenseKind.OClock, 3) ?? at + length;
        if (Of(senses, SenseKind.Weight) is not null) return Until(at, SenseKind.Side, 5) ?? Until(at, SenseKind.Feet, 5) ?? at + length;
        if ((SideOf(senses) is not null || Of(senses, SenseKind.Pair) is not null) && Until(at, SenseKind.HandNoun, 2) is { } hands) return hands;
        return SideOf(senses) is not null ? Until(at, SenseKind.Free, 4) : null;
    }

    private bool Swallowed(int at) => Until(at, SenseKind.HandNoun, 2) is not null || Until(at, SenseKind.Free, 4) is not null;

    private int? Until(int at, SenseKind kind, int within)
    {
        for (var i = at; i < Math.Min(_words.Count, at + within); i++)
        {
            // Names are looked up word by word here: "left hands" must not hide in a longer name.
            if (_dance.Book.Lexicon.Longest(_tokens.AsSpan(0, i + 1), i, out var senses) > 0 && Of(senses, kind) is not null) return i + 1;
            if (i > at && HeadAt(i) is { Bare: false }) return null;
        }

        return null;
    }

    // "With your" right, "on the" right.
    private bool OnAFoot(int side) => side > 1 && (_words[side - 2].Word, _words[side - 1].Word) is ("with", "your") or ("on", "the");

    // "On the right, so" and "left right left right, then": it only looks like "right so".
    private bool FootAfterAll(int at, Head head, List<Foot> sides) => _words[at].Word == "right" && _rules.CueAt(_words, at) is { Cue: Cue.Talk, Length: 2 }
        && (_words[at - 1].Word is "the" or "your" || (head.Figure is not null && sides.Count == 2 && sides[0] == Foot.Right && sides[1] == Foot.Left));

    private static int? Figure(IReadOnlyList<Sense> senses) => Of(senses, SenseKind.Figure)?.Value;

    private bool Known(string figure) => _dance.Figures.Contains(figure) || (_rules.Family.TryGetValue(figure, out var family) && _dance.Figures.Any(f => _rules.Family.TryGetValue(f, out var other) && other == family));

    private Head? HeadAt(int at)
    {
        var (senses, length) = SensesAt(at);
        if ((length == 0 || senses.All(s => s.Kind is SenseKind.Filler or SenseKind.Style)) && _dance.PartlyAt(_words, at) is { } partly && (length == 0 || partly.Length > 1)) return new(partly.Figure, ActionKind.Step, null, false, partly.Length);
        if (length == 0) return null;
        foreach (var sense in senses)
        {
            if (sense.Kind == SenseKind.Figure) return new(_dance.Book.Figure(sense.Value).Name, ActionKind.Step, null, false, length);
        }

        if (Of(senses, SenseKind.Verb) is { } verb) return new(null, (ActionKind)verb.Value, verb.Second >= 0 ? (Direction)verb.Second : null, false, length);
        if (Of(senses, SenseKind.Part) is { Value: 0 or 1 } part) return new(null, part.Value == 0 ? ActionKind.Heel : ActionKind.Toe, null, false, length);
        if (Of(senses, SenseKind.Way) is { } way) return new(null, ActionKind.Step, (Direction)way.Value, true, length);
        return null;
    }

    private static Foot? SideOf(IReadOnlyList<Sense> senses) =>
        Of(senses, SenseKind.Side) is { } side ? (Foot)side.Value : Of(senses, SenseKind.Foot) is { Value: < 2 } foot ? (Foot)foot.Value : null;

    private static Sense? Of(IReadOnlyList<Sense> senses, SenseKind kind)
    {
        foreach (var sense in senses)
        {
            if (sense.Kind == kind) return sense;
        }

        return null;
    }
}
