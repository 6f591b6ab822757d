using DiffPlex;
using DiffPlex.Chunkers;

namespace Surefoot.Library.Differing;

/// <summary>Two texts line by line.</summary>
internal static class TextDifference
{
    public static List<TextLine> Between(string before, string after)
    {
        var difference = Differ.Instance.CreateDiffs(before, after, ignoreWhiteSpace: false, ignoreCase: false, LineChunker.Instance);
        var lines = new List<TextLine>();
        var (a, b) = (0, 0);
        foreach (var block in difference.DiffBlocks)
        {
            Stay(block.DeleteStartA);
            for (; a < block.DeleteStartA + block.DeleteCountA; a++) lines.Add(new(LineFate.Went, a + 1, 0, difference.PiecesOld[a]));
            for (; b < block.InsertStartB + block.InsertCountB; b++) lines.Add(new(LineFate.Came, 0, b + 1, difference.PiecesNew[b]));
        }

        Stay(difference.PiecesOld.Count);
        return lines;

        void Stay(int until)
        {
            for (; a < until; a++, b++) lines.Add(new(LineFate.Stayed, a + 1, b + 1, difference.PiecesOld[a]));
        }
    }
}
