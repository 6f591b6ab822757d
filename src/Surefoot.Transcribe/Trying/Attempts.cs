using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Trying;

/// <summary>
/// Reads a sheet several times where it does not come out at once. Each time a few words are taken for what they do not sound
/// like; what makes the dance come out better by more than it costs is kept.
/// </summary>
internal sealed class Attempts(Func<Meant, Attempt> read, PhraseWords words)
{
    // Readings of one sheet. Working value: more make the writer wait, and hardly find more.
    private const int Most = 60;

    // What comes out as well as this needs no other reading.
    private const double GoodEnough = 2;

    // By how much a reading has to come out better than what it costs.
    private const double Better = 0.4;

    // What the sheet says of itself may not be read away: then nothing would speak against a reading any longer.
    private const double SaidNoMore = 1000;

    private int? _counts;

    public Attempt Best()
    {
        var best = Read(Meant.AsTheySound);
        if (best.Cost <= GoodEnough) return best;
        _counts = best.Facts.Counts;
        var meant = Meant.AsTheySound;
        // What comes out better may show what else is meant otherwise.
        for (var left = Most; left > 0 && best.Cost > GoodEnough;)
        {
            words.Meant = meant;
            var tries = WhatToTry.In(best, words).Where(t => meant[t.Words[0]] is null).OrderBy(t => t.Cost).Take(left).ToList();
            left -= tries.Count;
            var gains = tries.Select(one => (Try: one, Gain: best.Cost - Read(meant.With(one)).Cost - one.Cost)).Where(g => g.Gain > Better).OrderByDescending(g => g.Gain).ToList();
            if (gains.Count == 0) break;
            foreach (var (one, _) in gains)
            {
                var next = Read(meant.With(one));
                left--;
                if (best.Cost - next.Cost - one.Cost <= Better) continue;
                (best, meant) = (next, meant.With(one));
            }
        }

        words.Meant = meant;
        return best;
    }

    private Attempt Read(Meant meant)
    {
        words.Meant = meant;
        var one = read(meant);
        if (_counts is { } said && one.Facts.Counts != said) one.Cost += SaidNoMore;
        return one;
    }
}
