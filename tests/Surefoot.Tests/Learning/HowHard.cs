using Surefoot.Dance;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Learning;

/// <summary>What makes a dance easy or hard, counted by hand on small dances.</summary>
public class HowHard
{
    private const string Head = "A page\nKind: line, 1 wall\nFeet: left free\nPhrase: any\n";

    public static TheoryData<string> Dances => DemoNotebook.Dances;

    private static DanceScore Read(string page) => DanceReader.Read(page).Score;

    [Fact]
    public void Walks_and_touches_are_for_anybody()
    {
        var hard = Difficulty.Of(Read(Head + "Tempo: 100\n1-4  Walk forward L, R, L, touch R together\n5-8  Walk back R, L, R, touch L together\n"))!;
        Assert.Equal(Level.AbsoluteBeginner, hard.Suggested);
        Assert.Contains("every step on a whole count", hard.Reasons.Select(r => r.Says));
        Assert.Contains("no turns", hard.Reasons.Select(r => r.Says));
        // Six steps in eight counts at 100 a minute.
        Assert.Contains("75 steps a minute at 100 counts", hard.Reasons.Select(r => r.Says));
    }

    [Fact]
    public void Turns_half_counts_and_changes_of_hands_are_counted()
    {
        var hard = Difficulty.Of(Read("Two\nKind: partner, circle\nHold: sweetheart\nFeet: same, left free\nPhrase: any\n\n1-2  Step forward L, pivot ½ right\n3&4  Shuffle forward L R L\n5-6  Lead: walk forward R, L. Follow: full turn right R, L under right hands, release left hands\n7a8  Shuffle forward R L R, take left hands\n"))!;
        var (lead, follow) = (hard.Roles[0], hard.Roles[1]);
        Assert.Equal((0, 1, 0), (lead.QuarterTurns, lead.HalfTurns, lead.FullTurns));
        Assert.Equal((1, 1), (follow.HalfTurns, follow.FullTurns));
        Assert.Equal((2, 1), (lead.HalfCounts, lead.QuarterCounts));
        Assert.Equal(2, hard.HandChanges);
        Assert.Equal(8, hard.Counts);
    }

    [Fact]
    public void More_of_everything_is_never_easier()
    {
        var plain = Difficulty.Of(Read(Head + "Tempo: 96\n1-4  Walk forward L, R, L, touch R\n5-8  Walk back R, L, R, touch L\n"))!;
        var busy = Difficulty.Of(Read(Head + "Tempo: 150\n1&2  Shuffle forward L R L\n3&4  Shuffle ½ turn left R L R\n5-6  Full turn left L, R\n7e&a8  Run forward L, R, L, R, L\n"))!;
        Assert.True(busy.Suggested > plain.Suggested);
        Assert.Equal(busy.Reasons.OrderByDescending(r => r.Level).Select(r => r.Level), busy.Reasons.Select(r => r.Level));
    }

    // The levels are what the notebook's writers thought when they wrote them: our own judgement, written down before this was.
    [Theory]
    [MemberData(nameof(Dances))]
    public void The_demo_notebooks_levels_are_met_to_within_one(string dance)
    {
        var score = DemoNotebook.Read(dance).Score;
        Assert.InRange((int)Difficulty.Of(score)!.Suggested - (int)Levels.Read(score.Facts.Level)!, -1, 1);
    }

    [Fact]
    public void A_level_never_comes_without_its_reasons()
    {
        var score = DemoNotebook.Read(Path.Combine("circle", "five-barns.dance")).Score;
        var hard = Difficulty.Of(score)!;
        Assert.True(hard.Reasons.Count >= 5);
        Assert.StartsWith("By the steps it is an improver dance, as the page says.", LearningWords.Suggested(hard, score.Facts.Level), StringComparison.Ordinal);
        Assert.Null(Difficulty.Of(Read("Empty\nKind: line\n")));
    }
}
