using Surefoot.Transcribe;

namespace Surefoot.Cli.Printing;

/// <summary>Shows how a sheet was read: line by line, and what the writer has to look at.</summary>
internal static class TranscriptPrinter
{
    public static void Beside(Screen screen, Transcript read)
    {
        foreach (var line in read.Lines)
        {
            screen.Out.WriteLine($"{line.Number,4}  {Cells.Harmless(line.Text)}");
            foreach (var became in line.Became) screen.Out.WriteLine($"      -> {Cells.Harmless(became)}");
            var says = line.Kind switch
            {
                LineKind.Title => "the title",
                LineKind.Fact => "read for facts of the dance, and kept as a note",
                LineKind.Heading => "a heading",
                LineKind.Remark => "kept as a note",
                LineKind.Steps => $"{(int)Math.Round(line.Confidence * 100)} of 100 sure",
                _ => null,
            };
            if (says is not null) screen.Out.WriteLine($"      ({says})");
            foreach (var word in read.Words.Where(w => w.Line == line.Number).Select(w => w.Says).Distinct(StringComparer.Ordinal)) screen.Out.WriteLine($"      (assumed: {Cells.Harmless(word)})");
        }
    }

    public static void Doubts(Screen screen, string file, Transcript read)
    {
        foreach (var used in read.Words.GroupBy(w => w.Word)) screen.Err.WriteLine($"{file}: assumed: {Cells.Harmless(used.First().Says)} ({(used.Select(w => w.Line).Distinct().ToList() is [var only] ? $"line {only}" : $"lines {string.Join(", ", used.Select(w => w.Line).Distinct())}")}).");
        if (read.Doubts.Count == 0)
        {
            screen.Err.WriteLine($"{file}: everything was understood, and the feet come out.");
            return;
        }

        screen.Err.WriteLine($"{file}: {Prose.Number(read.Doubts.Count, "thing")} to look at.");
        foreach (var doubt in read.Doubts)
        {
            var at = doubt.Line > 0 ? $"line {doubt.Line}: " : "";
            screen.Err.WriteLine($"  {at}{Cells.Harmless(doubt.Says)}");
        }
    }
}
