using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;

namespace Surefoot.Transcribe.Choosing;

/// <summary>A phrase to be danced, with its counts where it has them to itself.</summary>
/// <param name="Told">Somebody told what it means, so it has one reading.</param>
internal sealed record WalkPhrase(string Text, CountLabel? Counts, bool Told = false)
{
    /// <summary>Other ways to understand it than those of its words.</summary>
    public IReadOnlyList<Alternative> Besides { get; init; } = [];
}

/// <summary>The reading of a whole dance for one dancer.</summary>
/// <param name="Free">The foot that is free at the start.</param>
/// <param name="Chosen">One a phrase.</param>
/// <param name="Cost">Of all: what was changed against the words, and where feet still clash.</param>
/// <param name="Clashes">For each phrase, the steps whose foot is not free.</param>
/// <param name="Second">The cost of the best reading that chooses otherwise; infinite where there is none.</param>
internal sealed record WalkChoice(Foot Free, IReadOnlyList<Alternative> Chosen, double Cost, IReadOnlyList<int> Clashes, double Second);

/// <summary>
/// Looks for the reading of the whole dance in which the feet come out: of all ways to understand each phrase, those
/// which together need the fewest changes and leave the fewest steps on a foot that carries the weight. Dancers do
/// the same when a sheet is unclear. A walk through the phrases with the free foot as its state, the cheapest two
/// ways to each kept (Viterbi 1967).
/// </summary>
internal sealed class Walk(FootTrial trial)
{
    /// <summary>A step on a foot that carries the weight costs more than any one change of words.</summary>
    private const double Clash = 8;

    /// <summary>A repeat that ends with the wrong foot free for its start. Many sheets do, so it only decides between equals.</summary>
    private const double NoLoop = 1.5;

    /// <summary>The same for a dance without partners: those are danced over and over, figures for couples often stand alone.</summary>
    private const double NoLoopAlone = 2.5;

    /// <summary>Of "side, close, side, close" the last close is the one without weight: between equals what comes later is changed. Common practice, no source.</summary>
    private const double Early = 0.2;

    /// <summary>Between equals the lead begins on the left and the follow on the right, and in dances without partners everybody on the right. Common practice, no source.</summary>
    private const double Unusual = 0.05;

    /// <summary>A cost up to this comes from the repeat's end alone: nothing in the words was changed.</summary>
    public const double Unforced = NoLoopAlone + Unusual;

    private sealed record Path(double Cost, Path? Before, Alternative? Taken, int Clashes, Foot Start);

    /// <param name="start">The free foot the sheet names, if it does.</param>
    /// <param name="usual">The foot that begins where nothing says another.</param>
    /// <param name="alone">True for a dance without partners.</param>
    public WalkChoice Of(IReadOnlyList<WalkPhrase> phrases, Foot? start, Foot usual, bool alone)
    {
        var states = new List<Path>[2];
        foreach (var foot in (Foot[])[Foot.Left, Foot.Right]) states[(int)foot] = [new(start is { } named ? named != foot ? Clash : 0 : foot != usual ? Unusual : 0, null, null, 0, foot)];
        for (var i = 0; i < phrases.Count; i++)
        {
            var phrase = phrases[i];
            var next = new List<Path>[] { [], [] };
            foreach (var alternative in phrase.Told ? [new(phrase.Text, 0, null)] : Alternatives.Of(phrase.Text).Concat(phrase.Besides))
            {
                foreach (var foot in (Foot[])[Foot.Left, Foot.Right])
                {
                    var danced = trial.Dance(alternative.Text, foot, phrase.Counts);
                    var cost = alternative.Cost + (danced.Clashes * Clash) + (alternative.Cost > 0 ? Early * (phrases.Count - i) / phrases.Count : 0);
                    foreach (var path in states[(int)foot]) next[(int)(danced.Free ?? foot)].Add(new(path.Cost + cost, path, alternative, danced.Clashes, path.Start));
                }
            }

            foreach (var foot in (Foot[])[Foot.Left, Foot.Right]) states[(int)foot] = [.. next[(int)foot].OrderBy(p => p.Cost).Take(3)];
        }

        var ends = new List<(double Cost, Path Path)>();
        foreach (var foot in (Foot[])[Foot.Left, Foot.Right]) ends.AddRange(states[(int)foot].Select(p => (p.Cost + (p.Start == foot ? 0 : alone ? NoLoopAlone : NoLoop), p)));
        ends.Sort((a, b) => a.Cost.CompareTo(b.Cost));
        var best = ends[0].Path;
        var (chosen, clashes) = Back(best);
        var second = double.PositiveInfinity;
        foreach (var (cost, path) in ends.Skip(1))
        {
            if (path.Start == best.Start && Back(path).Chosen.Select(c => c.Text).SequenceEqual(chosen.Select(c => c.Text))) continue;
            second = cost;
            break;
        }

        return new(best.Start, chosen, ends[0].Cost, clashes, second);
    }

    private static (List<Alternative> Chosen, List<int> Clashes) Back(Path path)
    {
        var (chosen, clashes) = (new List<Alternative>(), new List<int>());
        for (var p = path; p.Taken is not null; p = p.Before!)
        {
            chosen.Add(p.Taken);
            clashes.Add(p.Clashes);
        }

        chosen.Reverse();
        clashes.Reverse();
        return (chosen, clashes);
    }
}
