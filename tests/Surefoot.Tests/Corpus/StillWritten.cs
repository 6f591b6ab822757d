using Surefoot.Dance;
using Surefoot.Dance.Problems;
using Surefoot.Solver;

namespace Surefoot.Tests.Corpus;

/// <summary>What is wrong only once the writer is done says where more would be written, and how it reads until then. The bar is her cursor.</summary>
public class StillWritten
{
    private const string Head = "Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\n";

    private const string Couple = "Half Gate\nKind: partner, circle\nHold: two hands\nPhrase: any\nFeet: opposite, lead left free\n\n";

    [Theory]
    [InlineData(Head + "1-2 Step side R, tou|", "word-unknown", Writing.Typed, "\"tou\" is still being written.")]
    [InlineData(Head + "1-4 Step side R, touch together L|", "count-mismatch", Writing.Typed, "1-4: 2 of 4 counts so far.")]
    [InlineData(Head + "1&2 Step side R, together L|", "count-mismatch", Writing.Typed, "1&2: 2 of 3 steps so far.")]
    [InlineData(Head + "Step|", "line-unread", Writing.Typed, "This line has no counts in front.")]
    [InlineData(Head + "Part A (8 counts)\n1-2 Step side R, touch together L\n|", "part-length", Writing.Stated, "Part A: 2 of 8 counts so far.")]
    [InlineData(Head + "1-3 Walk forward R, L, R|", "loop-weight", Writing.Open, "So far the dance cannot begin again: the dancer ends on the right foot, and count 1 needs the weight on the left foot.")]
    [InlineData(Head + "1-2 Step forward R, pivot ½ left\n|", "wall-count", Writing.Open, "So far the page says 1 wall, and the steps give 2 walls.")]
    [InlineData("Half Gate\nKind: par|\n\n1-2 Walk forward R, L\n", "header-value", Writing.Typed, "\"par\" is still being written.")]
    [InlineData("Half Gate\nKind: |\n\n1-2 Walk forward R, L\n", "header-value", Writing.Typed, "The kind of dance is still to write.")]
    [InlineData("Half Gate\nTemp|: 100\n\n1-2 Walk forward R, L\n", "header-unknown", Writing.Typed, "\"Temp\" is still being written.")]
    [InlineData(Couple + "1-2 Lead: rock back L, recover R|", "count-gap", Writing.Open, "The follow has nothing to do yet on counts 1-2.")]
    public void While_the_cursor_stands_where_it_would_go_on(string written, string name, Writing during, string says)
    {
        var (problem, cursor) = Read(written, name);
        var unfinished = problem.Unfinished!;
        Assert.Equal((during, says), (unfinished.While, unfinished.Says));
        Assert.InRange(cursor, unfinished.Where.Start, unfinished.Where.End);
    }

    [Theory]
    // Another place than the end of the word, of the line, of the dance.
    [InlineData(Head + "1-2 Step side R, tou |", "word-unknown")]
    [InlineData(Head + "1-|4 Step side R, touch together L", "count-mismatch")]
    [InlineData(Head + "1-3 Walk forward R|, L, R", "loop-weight")]
    [InlineData(Head + "1-2 Step forward R, |pivot ½ left\n", "wall-count")]
    public void Elsewhere_it_is_wrong(string written, string name)
    {
        var (problem, cursor) = Read(written, name);
        var where = problem.Unfinished!.Where;
        Assert.True(cursor < where.Start || cursor > where.End);
    }

    [Theory]
    // More steps than counts do not become fewer by writing on, nor does a partner come to counts that lie behind.
    [InlineData(Head + "1-2 Walk forward R, L, R, L", "count-mismatch")]
    [InlineData(Couple + "1-2 Lead: rock back L, recover R\n3-4 Lead: walk forward L, R. Follow: walk back R, L\n", "count-gap")]
    [InlineData(Head + "Part A (8 counts)\n1-2 Step side R, touch together L\n\nPart B\n1-2 Step side L, touch together R\n", "part-length")]
    public void What_writing_on_does_not_mend_is_wrong_at_once(string written, string name) => Assert.Null(Read(written, name).Problem.Unfinished);

    private static (Problem Problem, int Cursor) Read(string written, string name) =>
        (DanceReader.Read(written.Replace("|", ""), null, new ProvenSolver()).Problems.First(p => p.Name == name), written.IndexOf('|', StringComparison.Ordinal));
}
