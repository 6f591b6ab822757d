using System.Text;
using Surefoot.Dance.Basics;

namespace Surefoot.Film.Captions;

/// <summary>A stretch of a film with its words: a caption, or a chapter.</summary>
public sealed record TimedText(FilmTime From, FilmTime To, string Text);

/// <summary>Writes WebVTT as the standard has it (W3C, WebVTT: The Web Video Text Tracks Format).</summary>
public static class VttWriter
{
    /// <summary>A caption file: captions in the order of their beginnings; they may overlap.</summary>
    /// <exception cref="ArgumentException">A caption ends before it begins.</exception>
    public static string Captions(IEnumerable<TimedText> captions)
    {
        var file = new StringBuilder("WEBVTT\n");
        foreach (var one in captions.OrderBy(c => c.From).ThenByDescending(c => c.To))
        {
            if (one.To <= one.From) throw new ArgumentException($"A caption at {one.From} ends before it begins.", nameof(captions));
            file.Append('\n').Append(one.From).Append(" --> ").Append(one.To).Append('\n').Append(Payload(one.Text)).Append('\n');
        }

        return file.ToString();
    }

    /// <summary>A chapter file: of any two chapters one lies in the other, or they do not touch each other's time.</summary>
    /// <exception cref="ArgumentException">Two chapters overlap, or one ends before it begins.</exception>
    public static string Chapters(IReadOnlyList<TimedText> chapters)
    {
        if (Nesting.Fault(chapters) is { } fault) throw new ArgumentException($"The chapters at {fault.A.From} and {fault.B.From} overlap.", nameof(chapters));
        // A chapter's name is one line.
        return Captions(chapters.Select(c => c with { Text = c.Text.ReplaceLineEndings(" ") }));
    }

    private static string Payload(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var safe = string.Join('\n', lines).Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
        return safe.Length == 0 ? "&nbsp;" : safe;
    }
}

/// <summary>The rule of chapter files: nested, never overlapping.</summary>
public static class Nesting
{
    /// <summary>Two that overlap without one lying in the other, or null where there are none.</summary>
    public static (TimedText A, TimedText B)? Fault(IReadOnlyList<TimedText> chapters)
    {
        var open = new Stack<TimedText>();
        foreach (var one in chapters.OrderBy(c => c.From).ThenByDescending(c => c.To))
        {
            while (open.Count > 0 && open.Peek().To <= one.From) open.Pop();
            if (open.Count > 0 && one.To > open.Peek().To) return (open.Peek(), one);
            open.Push(one);
        }

        return null;
    }
}
