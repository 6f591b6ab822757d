using Surefoot.Dance.Basics;

namespace Surefoot.Transcribe;

/// <summary>
/// Somebody else's sheet read into a page. What was understood, what was assumed and what was not understood stay
/// apart: every line of the sheet is still here, with what became of it.
/// </summary>
/// <param name="Page">The page, in Surefoot's own form. What was not understood stands in it as notes.</param>
/// <param name="Lines">The sheet line by line, in order; none is left out.</param>
/// <param name="Doubts">What the writer has to look at, most important first; empty when nothing was assumed.</param>
public sealed record Transcript(string Page, ValueList<LineRead> Lines, ValueList<Doubt> Doubts)
{
    /// <summary>For every line of the page the line of the sheet it came from, from 1; 0 where it came from several or from none.</summary>
    public ValueList<int> From { get; init; }

    /// <summary>Where words were taken as the hall, or somebody who corrected the sheet, had told; in the order of the sheet.</summary>
    public ValueList<WordUsed> Words { get; init; }

    /// <summary>The share of phrases that speak of steps and were understood, from 0 to 1; 1 where there are none.</summary>
    public double Understood
    {
        get
        {
            var (all, read) = (0, 0);
            foreach (var line in Lines)
            {
                all += line.Phrases;
                read += line.PhrasesRead;
            }

            return all == 0 ? 1 : (double)read / all;
        }
    }
}

/// <summary>One line of the sheet and what became of it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Text">As it stood, every character.</param>
/// <param name="Became">The words of the page it led to, in order; empty where it is kept as a note or says nothing.</param>
/// <param name="Confidence">How sure the reading is, from 0 (not understood) to 1 (written as Surefoot writes it).</param>
/// <param name="Assumed">What was taken where the line left something out.</param>
/// <param name="NotUnderstood">Words that nobody could make sense of.</param>
/// <param name="Phrases">Phrases of the line that speak of steps.</param>
/// <param name="PhrasesRead">Those of them that were understood.</param>
public sealed record LineRead(
    int Number, string Text, LineKind Kind, ValueList<string> Became, double Confidence, ValueList<string> Assumed, ValueList<string> NotUnderstood, int Phrases, int PhrasesRead)
{
    /// <summary>What of the line can be said in other words: its phrases that speak of steps, and what was taken for none, in order.</summary>
    public ValueList<PhraseSaid> Said { get; init; }
}

/// <summary>A few words of a sheet, and what they were read as.</summary>
/// <param name="Words">As they stand there, with one kind of blank.</param>
/// <param name="Place">Where that is.</param>
/// <param name="Reads">In a page's words; empty where they were taken for no step or not understood.</param>
/// <param name="Understood">False where some of it was not understood.</param>
/// <param name="Elsewhere">How many more places of the sheet say the same, and would be read as this one is corrected.</param>
public sealed record PhraseSaid(string Words, SheetPlace Place, string Reads, bool Understood, int Elsewhere)
{
    /// <summary>Whether what is told of these words for whole sheets holds here too; else it has to be told of this place.</summary>
    public bool IsFound { get; init; } = true;

    /// <summary>True for the one word of the phrase before it that nobody understood.</summary>
    public bool OneWord { get; init; }

    /// <summary>True for a whole line that has more than one phrase.</summary>
    public bool WholeLine { get; init; }
}

/// <summary>What a line of a sheet is.</summary>
public enum LineKind
{
    Blank,
    Title,
    Fact,
    Heading,
    Steps,

    /// <summary>Kept as a note: it speaks of no step.</summary>
    Remark,
}

/// <summary>Something about the reading that the writer has to judge.</summary>
/// <param name="Line">The line of the sheet, from 1, or 0 where it is about the whole dance.</param>
/// <param name="Says">One sentence for a dancer.</param>
public sealed record Doubt(DoubtKind Kind, int Line, string Says)
{
    /// <summary>The words of the sheet it is about, as they stand there; null where it is about more.</summary>
    public string? Phrase { get; init; }
}

/// <summary>Kinds of doubts, the gravest first.</summary>
public enum DoubtKind
{
    /// <summary>Words that nobody could make sense of.</summary>
    NotUnderstood,

    /// <summary>The reading cannot be danced, or does not add up.</summary>
    DoesNotWork,

    /// <summary>The sheet says one thing of the dance, its steps give another.</summary>
    Disagrees,

    /// <summary>Another reading is as good.</summary>
    TwoReadings,

    /// <summary>Something was left out, and something usual was taken.</summary>
    Assumed,
}
