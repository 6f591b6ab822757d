using CsCheck;
using SimMetrics.Net.API;
using SimMetrics.Net.Metric;
using SimMetrics.Net.Utilities;
using Surefoot.Likeness;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Likeness;

/// <summary>
/// The alignment on plain letters, compared with the Smith-Waterman-Gotoh of SimMetrics.Net, and with a search that
/// tries every alignment where leaps, which that library does not have, are allowed.
/// </summary>
public class AgainstALibrary
{
    // The library's own scale: 5 for a letter that fits, 3 for one of its groups of like sounds, -3 for others; a gap 5 and 1 for each letter more.
    private static readonly SubCostRange5ToMinus3 Substitutions = new();

    private static readonly Gen<string> Word = Gen.String[Gen.Char["ABCLQ"], 1, 14];

    private static sbyte[] Points(string a, string b) =>
        [.. from x in Enumerable.Range(0, a.Length) from y in Enumerable.Range(0, b.Length) select (sbyte)Substitutions.GetCost(a, x, b, y)];

    private static int Best(string a, string b, Gaps gaps)
    {
        var work = Array.Empty<(int, int)>();
        return Passages.Best(Points(a, b), a.Length, b.Length, gaps, ref work);
    }

    [Fact]
    public void One_passage_has_as_many_points_as_the_library_gives_it() => Gen.Select(Word, Word).Each((a, b) =>
    {
        AbstractStringMetric library = new SmithWatermanGotoh(new AffineGapRange5To0Multiplier1(), Substitutions);
        var gaps = new Gaps(Open: 5, More: 1, Leap: null, Round: false);
        Assert.Equal(library.GetUnnormalisedSimilarity(a, b), Best(a, b, gaps), 6);
    }, iter: 2000);

    [Fact]
    public void What_stands_for_what_is_worth_the_points_that_are_told() => Gen.Select(Word, Word, Gen.Bool).Select((a, b, leaps) => (a, b, leaps)).Each(all =>
    {
        var (a, b, leaps) = all;
        var gaps = new Gaps(5, 1, leaps ? 7 : null, Round: leaps);
        var points = Points(a, b);
        var (told, pairs) = PassagesTraced.Best(points, a.Length, b.Length, gaps);
        Assert.Equal(Best(a, b, gaps), told);
        var worth = 0;
        for (var i = 0; i < pairs.Count; i++)
        {
            worth += points[(pairs[i].Row * b.Length) + pairs[i].Column];
            if (i > 0) worth -= Between(pairs[i - 1], pairs[i], b.Length, gaps);
        }

        Assert.Equal(told, worth);
    }, iter: 2000);

    [Fact]
    public void Leaps_and_rounds_are_found_as_by_trying_everything() => Gen.Select(Gen.String[Gen.Char["ABC"], 1, 5], Gen.String[Gen.Char["ABC"], 1, 5]).Each((a, b) =>
    {
        var gaps = new Gaps(5, 1, 6, Round: true);
        Assert.Equal(Everything(Points(a, b), a.Length, b.Length, gaps), Best(a, b, gaps));
    }, iter: 300);

    // The least that lies between two pairs, one after the other in the first row.
    private static int Between(Paired before, Paired now, int columns, Gaps gaps)
    {
        var (rows, ahead) = (now.Row - before.Row - 1, now.Column - before.Column - 1);
        var least = gaps.Leap ?? int.MaxValue;
        // On to the end, and from the beginning.
        if (gaps.Round && now.Column == 0) least = Math.Min(least, Gap(rows) + Gap(columns - 1 - before.Column));
        if (ahead >= 0) least = Math.Min(least, Gap(rows) + Gap(ahead));
        return least;

        int Gap(int length) => length == 0 ? 0 : gaps.Open + (gaps.More * (length - 1));
    }

    // Every choice of a column, or none, for every row.
    private static int Everything(sbyte[] points, int rows, int columns, Gaps gaps)
    {
        var best = 0;
        Go(0, null, 0);
        return best;

        void Go(int row, Paired? last, int worth)
        {
            best = Math.Max(best, worth);
            for (var i = row; i < rows; i++)
            {
                for (var j = 0; j < columns; j++)
                {
                    var pair = new Paired(i, j);
                    Go(i + 1, pair, worth + points[(i * columns) + j] - (last is { } before ? Between(before, pair, columns, gaps) : 0));
                }
            }
        }
    }
}
