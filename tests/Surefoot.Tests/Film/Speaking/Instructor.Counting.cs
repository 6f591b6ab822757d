using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>Counting and calling in time: one part slowly, or the whole dance at tempo.</summary>
internal sealed partial class Instructor
{
    private int InBar => _score.Facts.Meter.Beats == 3 ? 6 : 8;

    private double Tempo => ((_score.Facts.TempoFrom ?? 110) + (_score.Facts.TempoTo ?? 110)) / 2.0;

    private void CountIn(double beat)
    {
        var numbers = InBar == 6 ? new[] { "four", "five", "six" } : Sometimes(50) ? ["five", "six", "seven", "eight"] : ["five", "six", "five", "six", "seven", "eight"];
        var at = _mouth.Now;
        for (var i = 0; i < numbers.Length; i++)
        {
            // "five … six … five six seven eight": the first two take two counts each.
            _mouth.SayAt(at, numbers[i], beat);
            at += numbers.Length == 6 && i < 2 ? beat * 2 : beat;
        }

        _mouth.Until(at);
    }

    private void CountSlowly(int part)
    {
        _mouth.Say(One(["let us count that", "with counts", "now slowly with counts", "and count it"]));
        _mouth.Pause(0.3, 0.8);
        var beat = 60 / Tempo / (0.55 + (0.25 * _random.NextDouble()));
        CountIn(beat);
        var section = Enumerable.Range(0, _score.Sections.Count).First(i => _score.Sections[i].Part == part);
        Section(section, _mouth.Now, beat, calls: false, counts: true);
    }

    private void AtTempo()
    {
        _mouth.Say(One(Chatter.RunStarts));
        _mouth.Pause(0.5, 1.5);
        _chapters.Add(new(null, null, _mouth.Now));
        var beat = 60 / Tempo / (0.9 + (0.15 * _random.NextDouble()));
        CountIn(beat);
        var style = _random.Next(3);
        var start = _mouth.Now;
        for (var i = 0; i < _score.Sections.Count; i++)
        {
            Section(i, start + ((_score.Sections[i].Start - Count.First).ToDouble() * beat), beat, calls: style != 0, counts: style != 1);
        }
    }

    /// <summary>One dancing of a part in time, with its counts, its calls, or sometimes the one and sometimes the other.</summary>
    private void Section(int section, double start, double beat, bool calls, bool counts)
    {
        var part = _score.Parts[_score.Sections[section].Part];
        var role = _score.Roles[0];
        var half = role.Steps.Where(s => s.Section == section && !s.At.Value.IsWhole && s.At.Value.Denominator == 2).Select(s => (s.At - _score.Sections[section].Start).Floor).ToHashSet();
        for (var count = 0; count < part.Length.Ceiling;)
        {
            var row = part.Rows.FirstOrDefault(r => r.Kind != RowKind.Repeat && (r.From - Count.First).ToDouble() == count);
            if (calls && row is not null && (!counts || Sometimes(50)) && row.Words.FirstOrDefault(w => w.Role is null or Role.Lead or Role.Dancer) is { } words)
            {
                var call = string.Join(' ', SpokenPhrase.Cut(words.Text).Where(p => !SpokenPhrase.IsHands(p)).Select(p => Short(p)));
                var takes = row.Length.Ceiling;
                if (call.Length > 0) _mouth.SayAt(start + (count * beat), call, takes * beat);
                count += takes;
                continue;
            }

            if (counts || Sometimes(30))
            {
                _mouth.SayAt(start + (count * beat), Number((count % InBar) + 1), beat * 0.6);
                if (half.Contains(count) && Sometimes(85)) _mouth.SayAt(start + ((count + 0.5) * beat), "and", beat * 0.4);
            }

            count++;
        }

        _mouth.Until(start + (part.Length.ToDouble() * beat));
    }

    private string Short(string phrase)
    {
        var said = SpokenPhrase.Said(phrase, _random, false).Split(' ');
        return string.Join(' ', said.Take(3));
    }
}
