using System.Text.RegularExpressions;
using DiffPlex;
using DiffPlex.Chunkers;

namespace Surefoot.Library.Differing;

/// <summary>Two texts line by line. Lines that differ only in how far their words stand apart are alike.</summary>
internal static partial class TextDifference
{
    public static List<TextLine> Between(string before, string after)
    {
        var difference = Differ.Instance.CreateDiffs(Spaces().Replace(before, " "), Spaces().Replace(after, " "), ignoreWhiteSpace: true, ignoreCase: false, LineChunker.Instance);
        var (old, now) = (LineChunker.Instance.Chunk(before), LineChunker.Instance.Chunk(after));
        var lines = new List<TextLine>();
        var (a, b) = (0, 0);
        foreach (var block in difference.DiffBlocks)
        {
            Stay(block.DeleteStartA);
            for (; a < block.DeleteStartA + block.DeleteCountA; a++) lines.Add(new(LineFate.Went, a + 1, 0, old[a]));
            for (; b < block.InsertStartB + block.InsertCountB; b++) lines.Add(new(LineFate.Came, 0, b + 1, now[b]));
        }

        Stay(old.Count);
        return lines;

        void Stay(int until)
        {
            for (; a < until; a++, b++) lines.Add(new(LineFate.Stayed, a + 1, b + 1, now[b]));
        }
    }

    [GeneratedRegex("[ \\t]+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();
}
