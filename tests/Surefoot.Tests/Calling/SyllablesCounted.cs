using Surefoot.Dance.Insight.Calls;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Calling;

/// <summary>
/// Syllables against the CMU Pronouncing Dictionary: every word of ours that it has. The dictionary's counts lie in
/// syllables.tsv beside this file, taken from the npm package cmu-pronouncing-dictionary 3.0.0.
/// </summary>
public class SyllablesCounted
{
    private static List<(string Word, int[] Published)> Dictionary { get; } =
        [.. File.ReadLines(Root.At("tests", "Surefoot.Tests", "Calling", "syllables.tsv")).Where(l => !l.StartsWith('#')).Select(l => l.Split('\t')).Select(p => (p[0], p[1].Split('/').Select(int.Parse).ToArray()))];

    [Fact]
    public void Ninety_eight_of_a_hundred_words_are_as_the_dictionary_has_them()
    {
        Assert.True(Dictionary.Count > 1400);
        var wrong = Dictionary.Where(w => !w.Published.Contains(Syllables.In(w.Word))).Select(w => $"{w.Word} {Syllables.In(w.Word)}").ToList();
        Assert.True(wrong.Count * 50 <= Dictionary.Count, string.Join(", ", wrong));
    }

    [Fact]
    public void No_word_is_more_than_one_syllable_off() =>
        Assert.All(Dictionary, w => Assert.True(w.Published.Any(p => Math.Abs(p - Syllables.In(w.Word)) <= 1), $"{w.Word} {Syllables.In(w.Word)}"));

    // From the same dictionary: coaster 2, grapevine 2, shuffle 2, diagonal 4, lady 2, stomped 1, every 2 or 3.
    [Theory]
    [InlineData("coaster", 2)]
    [InlineData("grapevine", 2)]
    [InlineData("shuffle forward", 4)]
    [InlineData("diagonal", 4)]
    [InlineData("lady's turn", 3)]
    [InlineData("stomped", 1)]
    [InlineData("kick ball change", 3)]
    [InlineData("cha-cha", 2)]
    [InlineData("½ turn", 2)]
    [InlineData("", 0)]
    public void Words_dancers_use_are_counted(string words, int syllables) => Assert.Equal(syllables, Syllables.In(words));
}
