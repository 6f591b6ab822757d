using System.Numerics;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Outside;

/// <summary>Counting against System.Numerics and against common practice.</summary>
public class Arithmetic
{
    [Fact]
    public void Phrases_meet_after_the_least_common_multiple() => Gen.Select(Gen.Int[1, 256], Gen.Int[1, 128]).Each((dance, phrase) =>
    {
        var divisor = BigInteger.GreatestCommonDivisor(dance, phrase);
        Assert.Equal(phrase / divisor, PhraseMeeting.After(dance, phrase));
    }, iter: 2000);

    // Common practice, no source: 80 counts against phrases of 32 meet after 160 counts, two repeats.
    [Fact]
    public void Eighty_counts_meet_phrases_of_32_after_two_repeats() => Assert.Equal(2, PhraseMeeting.After(80, 32));

    [Fact]
    public void Fractions_of_a_count_add_up_exactly() => Gen.Select(Gen.Int[-99, 99], Gen.Int[1, 12], Gen.Int[-99, 99], Gen.Int[1, 12]).Each((a, b, c, d) =>
    {
        var sum = Beats.Of(a, b) + Beats.Of(c, d);
        var (above, below) = ((BigInteger)(a * d) + (c * b), (BigInteger)b * d);
        Assert.Equal(above * sum.Denominator, below * sum.Numerator);
        Assert.Equal(BigInteger.One, BigInteger.GreatestCommonDivisor(sum.Numerator, sum.Denominator));
        Assert.Equal((a * d).CompareTo(c * b), Beats.Of(a, b).CompareTo(Beats.Of(c, d)));
    }, iter: 2000);
}
