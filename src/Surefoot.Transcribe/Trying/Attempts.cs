using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Trying;

/// <summary>
/// Reads a sheet several times where it does not come out at once. Each time a few words are taken for what they do not sound
/// like; what makes the dance come out better by more than it costs is kept.
/// </summary>
internal sealed class Attempts(Func<Meant, Attempt> read, PhraseWords words)
{
    // Readings of one sheet. Working value: more make the writer wait, and hardly find more.
    private const int Most = 40;

    // What comes out as well as this needs no other reading.
    private const double GoodEnough = 2;

    // By how much a reading has to come out better than what it costs.
    private const double Better = 0.4;

    public Attempt Best()
    {
        var best = Read(Meant.AsTheySound);
        if (best.Cost <= GoodEnough) return best;
        var meant = Meant.AsTheySound;
        var tries = WhatToTry.In(best, words).OrderBy(t => t.Cost).Take(Most).ToList();
        var gains = new List<(Try Try, double Gain)>();
        foreach (var one in tries)
        {
            var gain = best.Cost - Read(meant.With(one)).Cost - one.Cost;
            if (gain > Better) gains.Add((one, gain));
        }

        foreach (var (one, _) in gains.OrderByDescending(g => g.Gain))
        {
            var next = Read(meant.With(one));
            if (best.Cost - next.Cost - one.Cost <= Better) continue;
            if (Environment.GetEnvironmentVariable("TR") is not null) Console.WriteLine($"TR {one.As} [{one.Words[0]}] {best.Cost:F1} -> {next.Cost:F1} cost {one.Cost:F1} counts {best.Parts.Sum(p=>p.Lines.Max(l=>l.Counts.To))} -> {next.Parts.Sum(p=>p.Lines.Max(l=>l.Counts.To))}");
            (best, meant) = (next, meant.With(one));
        }

        words.Meant = meant;
        return best;
    }

    private Attempt Read(Meant meant)
    {
        words.Meant = meant;
        return read(meant);
    }
}
