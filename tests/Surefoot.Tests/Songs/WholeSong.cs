using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Songs;

/// <summary>Repeats stay structure in the score and are unrolled when somebody asks.</summary>
public class WholeSong
{
    private const string Page = """
        Lamp in the Window
        Kind: line, 4 walls
        Feet: right free
        Order: A, Tag after 2nd wall facing 6:00, Restart in 4th wall after 4
        Phrase: any

        Part A  (8 counts)
        1-4  Rocking chair forward R
        5-8  Jazz box R ¼ right, together

        Tag  (2 counts)
        1-2  Stomp up R, stomp up R
        """;

    [Fact]
    public void Walls_tags_and_restarts_follow_each_other_without_a_gap()
    {
        var score = DanceReader.Read(Page).Score;
        var song = Unrolled.Of(score, Role.Dancer, 5).ToList();
        // 8 + 8 + tag 2 + 8 + 4 of the fourth wall + 8
        Assert.Equal(38, song.Count);
        Assert.Equal(Enumerable.Range(1, 38).Select(n => Count.At(n)), song.Select(s => s.At));
        Assert.Equal(2, song.Count(s => s.InTag));
        Assert.Equal([17, 18], song.Where(s => s.InTag).Select(s => s.At.Whole));
    }

    [Fact]
    public void Each_wall_starts_where_the_one_before_it_ended()
    {
        var score = DanceReader.Read(Page).Score;
        var first = Unrolled.Of(score, Role.Dancer, 5).Where(s => !s.InTag).GroupBy(s => s.Wall).Select(w => w.First().Step.Facing.Name(Floor.Walls));
        // A quarter right each, but nothing in the four counts of the wall that is broken off.
        Assert.Equal(["12:00", "3:00", "6:00", "9:00", "9:00"], first);
    }

    [Fact]
    public void A_dance_has_at_least_one_wall() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Unrolled.Of(DanceReader.Read(Page).Score, Role.Dancer, 0));
}
