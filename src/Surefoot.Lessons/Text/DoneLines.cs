using System.Globalization;

namespace Surefoot.Lessons.Text;

/// <summary>Reads the lines under "Reached" and "Told": a lesson, and the dances in it.</summary>
internal sealed class DoneLines(DateOnly from, TermProblems problems)
{
    private const string Example = "A line is written as in: 19 January 19:00: Tin Roof bites 1-2 went well, Old Mill again went 4";

    /// <summary>Between when a lesson is and when it was to be as people were told first: "19:30 instead of 19:00".</summary>
    internal const string InsteadOf = "instead of";

    /// <summary>What is told of a lesson that falls away, with its class behind it.</summary>
    internal const string NoLesson = "no lesson ";

    /// <summary>How it went, in words for SM-2's six marks.</summary>
    private static readonly string[] Marks = ["not at all", "badly", "shaky", "with help", "well", "perfectly"];

    /// <summary>A mark in words, from 0 to 5.</summary>
    public static string Mark(int quality) => Marks[Math.Clamp(quality, 0, 5)];

    public ReachedLesson? Reached(Piece line)
    {
        if (Split(line) is not var (day, at, rest)) return null;
        var dances = new List<ReachedDance>();
        foreach (var piece in rest.Split(','))
        {
            if (piece.Words.Equals("nothing", StringComparison.OrdinalIgnoreCase)) continue;
            var (said, quality) = Went(piece);
            if (quality is not { } mark) continue;
            if (Dance(said) is var (name, bites)) dances.Add(new(name.Words, bites, mark, name.Span, piece.Span));
        }

        return new(day, at, dances.ToValueList(), line.Span);
    }

    public ToldLesson? Told(Piece line)
    {
        if (Split(line, out var first) is not var (day, at, rest)) return null;
        var dances = new List<ToldDance>();
        DanceClass? without = null;
        foreach (var piece in rest.Split(','))
        {
            if (piece.Words.Equals("nothing", StringComparison.OrdinalIgnoreCase)) continue;
            if (piece.Words.StartsWith(NoLesson, StringComparison.OrdinalIgnoreCase)) without = DanceClass.Read(piece.Words[NoLesson.Length..]);
            else if (Dance(piece) is var (name, bites)) dances.Add(new(name.Words, bites, name.Span, piece.Span));
        }

        return new(day, at, dances.ToValueList(), line.Span) { ToldFirst = first, FallsAwayFor = without };
    }

    private (DateOnly Day, TimeOnly? At, Piece Dances)? Split(Piece line) => Split(line, out _);

    // The colon that parts lesson and dances has a blank behind it; that of "19:00" has none.
    private (DateOnly Day, TimeOnly? At, Piece Dances)? Split(Piece line, out DateTime? first)
    {
        first = null;
        var colon = line.Words.IndexOf(": ", StringComparison.Ordinal);
        if (colon < 0)
        {
            problems.Error("reached-unread", line.Span, $"\"{line.Words}\" does not say in which lesson something was reached.", Example);
            return null;
        }

        var when = line.Until(colon);
        if (when.SplitAt(InsteadOf) is [var now, var then])
        {
            when = now;
            if (Moment(then) is not var (told, hour)) return null;
            first = told.ToDateTime(hour ?? default);
        }

        return Moment(when) is var (day, at) ? (day, at, line.From(colon + 1)) : null;
    }

    private (DateOnly Day, TimeOnly? At)? Moment(Piece when)
    {
        var blank = when.Words.LastIndexOf(' ');
        var at = blank > 0 ? Times.Read(when.Words[(blank + 1)..]) : null;
        var date = at is null ? when : when.Until(blank);
        if (DateReader.Of(date.Words, from) is { } read) return (read.Day, at);
        problems.Error("date-unread", date.Span, $"\"{date.Words}\" is no day Surefoot can read.", Example);
        return null;
    }

    private (Piece Said, int? Quality) Went(Piece piece)
    {
        var at = piece.Words.LastIndexOf(" went ", StringComparison.OrdinalIgnoreCase);
        if (at < 0) return (piece, 4);
        var mark = piece.From(at + 6);
        var quality = Array.FindIndex(Marks, m => m.Equals(mark.Words, StringComparison.OrdinalIgnoreCase));
        if (quality < 0 && mark.Words is [>= '0' and <= '5' and var digit]) quality = digit - '0';
        if (quality >= 0) return (piece.Until(at), quality);
        problems.Error("reached-mark", mark.IsEmpty ? piece.Span : mark.Span, $"\"{mark.Words}\" does not say how it went.", $"Write a number from 0 to 5, or one of: {string.Join(", ", Marks)}.");
        return (piece, null);
    }

    private (Piece Name, ValueList<int> Bites)? Dance(Piece piece)
    {
        if (piece.Words.EndsWith(" again", StringComparison.OrdinalIgnoreCase)) return (piece.Until(piece.Words.Length - 6), []);
        var at = Math.Max(piece.Words.LastIndexOf(" bites ", StringComparison.OrdinalIgnoreCase), piece.Words.LastIndexOf(" bite ", StringComparison.OrdinalIgnoreCase));
        var numbers = at < 0 ? default : piece.From(piece.Words.IndexOf(' ', at + 1));
        if (at > 0 && Numbers(numbers.Words) is { } bites) return (piece.Until(at), bites);
        problems.Error("reached-bites", at > 0 ? numbers.Span : piece.Span, $"\"{piece.Words}\" says neither which bites were taught nor that the dance was danced again.", Example);
        return null;
    }

    private static ValueList<int>? Numbers(string words)
    {
        var all = new List<int>();
        foreach (var item in words.Split(['+', '&', ' '], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (item.Equals("and", StringComparison.OrdinalIgnoreCase)) continue;
            var ends = item.Split(['-', '–']);
            if (ends.Length > 2 || Whole(ends[0]) is not { } first || Whole(ends[^1]) is not { } last || last < first) return null;
            for (var bite = first; bite <= last; bite++) all.Add(bite);
        }

        return all.Count == 0 ? null : all.Distinct().Order().ToValueList();
    }

    private static int? Whole(string word) => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 999 ? number : null;
}
