using DiffPlex;
using DiffPlex.Chunkers;

namespace Surefoot.Cli.Printing;

/// <summary>Shows a page's lines before and after.</summary>
internal static class DifferencePrinter
{
    // Lines shown around each change, to find the place again.
    private const int Around = 1;

    /// <param name="done">What was done to it: "mended", "tidied".</param>
    public static void Print(string path, string done, string before, string after, TextWriter to, Skin skin)
    {
        to.WriteLine(skin.Title($"{path}, as it was (-) and as it is {done} (+):"));
        var difference = Differ.Instance.CreateDiffs(before, after, ignoreWhiteSpace: false, ignoreCase: false, LineChunker.Instance);
        var shown = 0;
        for (var b = 0; b < difference.DiffBlocks.Count; b++)
        {
            var block = difference.DiffBlocks[b];
            var from = Math.Max(shown, block.DeleteStartA - Around);
            if (from > shown || b == 0) to.WriteLine(skin.Faint($"  line {block.DeleteStartA + 1}"));
            Kept(from, block.DeleteStartA);
            for (var i = 0; i < block.DeleteCountA; i++) to.WriteLine(skin.Gone("  - " + Cells.Harmless(difference.PiecesOld[block.DeleteStartA + i])));
            for (var i = 0; i < block.InsertCountB; i++) to.WriteLine(skin.Come("  + " + Cells.Harmless(difference.PiecesNew[block.InsertStartB + i])));
            shown = block.DeleteStartA + block.DeleteCountA;
            var until = Math.Min(shown + Around, b + 1 < difference.DiffBlocks.Count ? difference.DiffBlocks[b + 1].DeleteStartA : difference.PiecesOld.Count);
            Kept(shown, until);
            shown = until;
        }

        void Kept(int from, int until)
        {
            for (var i = from; i < until; i++) to.WriteLine(("    " + Cells.Harmless(difference.PiecesOld[i])).TrimEnd());
        }
    }
}
