using System.Globalization;

namespace Surefoot.Lessons.Text;

/// <summary>Reads the lines of a term's lists: closed days, slots, dances to teach and dances that are known.</summary>
internal sealed class TermLines(DateOnly from, DateOnly until, TermProblems problems)
{
    /// <summary>Least minutes of a lesson: warm-up, a bite and a song. Working value.</summary>
    private const int Shortest = 20;

    /// <summary>Most minutes of a lesson; what is longer is a workshop, and a slip of the pen more often. Working value.</summary>
    private const int Longest = 240;

    public IEnumerable<Days> Closed(Piece line)
    {
        foreach (var piece in line.Split(','))
        {
            var ends = piece.SplitAt("to");
            if (ends.Count == 1) ends = piece.SplitAt("until");
            if (ends.Count > 2)
            {
                Unread(piece, "Closed days are written as in: 16 February, 30 March to 6 April");
                continue;
            }

            if (Day(ends[0], from) is not { } first) continue;
            var last = ends.Count == 2 ? Day(ends[1], first) : first;
            if (last is not { } end) continue;
            if (end < first) problems.Error("dates-turned", piece.Span, $"The closed days end on {DayWords.Full(end)}, before they begin.", "Write the earlier day first.");
            else if (first > until || end < from) problems.Warning("date-outside", piece.Span, $"{DayWords.Full(first)} is not in the term, so nothing changes by its being closed.", $"The term goes from {DayWords.Full(from)} to {DayWords.Full(until)}.");
            else yield return new(first, end);
        }
    }

    public Slot? Slot(Piece line)
    {
        var pieces = line.Split(',');
        if (pieces.Count == 0 || When(pieces[0]) is not var (day, at))
        {
            if (pieces.Count > 0 && WithCommas(pieces[0].Words) is { } meant)
            {
                problems.Error("slot-unread", line.Span, $"Commas are missing in \"{pieces[0].Words}\".", $"They part what is said of an evening, as in: {string.Join(", ", pieces.Skip(1).Select(p => p.Words).Prepend(meant))}");
                return null;
            }

            problems.Error("slot-unread", line.Span, $"\"{(pieces.Count > 0 ? pieces[0].Words : line.Words)}\" is no time of the week.", "A line begins with the day and the time, as in: Tuesday 19:00, 45 minutes, beginners, line dances");
            return null;
        }

        int? minutes = null, most = null;
        DanceClass? who = null;
        DanceKinds? kinds = null;
        foreach (var piece in pieces.Skip(1))
        {
            if (Minutes(piece.Words) is { } long_) minutes = long_;
            else if (MostNew(piece.Words) is { } counts) most = counts;
            else if (DanceClass.Read(piece.Words) is { } read) who = read;
            else if (DanceKindWords.Read(piece.Words) is { } said) kinds = (kinds ?? DanceKinds.None) | said;
            else problems.Error("slot-word", piece.Span, $"\"{piece.Words}\" says nothing Surefoot knows of an evening.", "It can say how long (45 minutes), for whom (beginners, improvers, everybody), what (line dances, couples), and at most how many new counts (at most 24 new counts).");
        }

        if (minutes is not (>= Shortest and <= Longest))
        {
            problems.Error("slot-minutes", line.Span, minutes is null ? "This evening does not say how long it is." : $"An evening of {minutes} minutes cannot be planned.", $"Write its length, from {Shortest} to {Longest} minutes, as in: Tuesday 19:00, 45 minutes");
            return null;
        }

        if (at.ToTimeSpan().TotalMinutes + minutes > 24 * 60)
        {
            problems.Error("slot-minutes", line.Span, "This evening would go on after midnight.", "Write a shorter length or an earlier time.");
            return null;
        }

        return new(day, at, minutes.Value, who ?? DanceClass.Everybody, kinds ?? DanceKinds.Both, most, line.Span);
    }

    /// <summary>The same with commas, where it begins with a day and a time and all the rest can be said of an evening; null otherwise.</summary>
    private static string? WithCommas(string words)
    {
        var all = words.Split([' ', '\t', '\u00A0'], StringSplitOptions.RemoveEmptyEntries);
        for (var head = Math.Min(4, all.Length - 1); head >= 2; head--)
        {
            var when = string.Join(' ', all.Take(head));
            if (When(new(when, default)) is null || Parted([.. all.Skip(head)]) is not { } rest) continue;
            return string.Join(", ", rest.Prepend(when));
        }

        return null;
    }

    /// <summary>Words cut into things that can be said of an evening, the longest first; null where something is left.</summary>
    private static List<string>? Parted(string[] words)
    {
        if (words.Length == 0) return [];
        for (var length = words.Length; length > 0; length--)
        {
            var piece = string.Join(' ', words.Take(length));
            var says = Minutes(piece) is not null || MostNew(piece) is not null || DanceClass.Read(piece) is not null || DanceKindWords.Read(piece) is not null;
            if (says && Parted(words[length..]) is { } rest) return [piece, .. rest];
        }

        return null;
    }

    public DanceWish? Wish(Piece line)
    {
        var pieces = line.Split(',');
        if (pieces.Count == 0) return null;
        DanceClass? who = null;
        DateOnly? by = null;
        var after = new List<Named>();
        foreach (var piece in pieces.Skip(1))
        {
            if (piece.After("after") is { IsEmpty: false } names) after.AddRange(names.SplitAt("and").Select(n => new Named(n.Words, n.Span)));
            else if (piece.After("by") is { } last) by = Wished(last) ?? by;
            else if (piece.After("before") is { } next) by = Wished(next) is { } day ? day.AddDays(-1) : by;
            else if (DanceClass.Read(piece.Words) is { } read) who = read;
            else if (after.Count > 0) after.Add(new(piece.Words, piece.Span));
            else problems.Error("dance-word", piece.Span, $"\"{piece.Words}\" says nothing Surefoot knows of a dance to teach.", "It can say for whom (for beginners), by when (by 2 March, or before 2 March), and what comes before it (after Tin Roof).");
        }

        return new(pieces[0].Words, who, by, after.ToValueList(), pieces[0].Span, line.Span);
    }

    public KnownDance? Known(Piece line)
    {
        var pieces = line.Split(',');
        if (pieces.Count == 0) return null;
        DanceClass? who = null;
        DateOnly? danced = null;
        foreach (var piece in pieces.Skip(1))
        {
            if (piece.After("danced") is { } when)
            {
                danced = Day(when, from, before: true) ?? danced;
                if (danced < from) continue;
                problems.Warning("date-outside", piece.Span, "A dance that is known was danced before the term.", $"The term begins on {DayWords.Full(from)}; what is danced in it stands under the heading Reached.");
                danced = null;
            }
            else if (DanceClass.Read(piece.Words) is { } read) who = read;
            else problems.Error("known-word", piece.Span, $"\"{piece.Words}\" says nothing Surefoot knows of a dance that is known.", "It can say who knows it (beginners) and when it was danced last (danced 8 December).");
        }

        return new(pieces[0].Words, who, danced, pieces[0].Span, line.Span);
    }

    private DateOnly? Wished(Piece piece)
    {
        if (Day(piece, from) is not { } day) return null;
        if (day >= from && day <= until) return day;
        problems.Warning("date-outside", piece.Span, $"{DayWords.Full(day)} is not in the term.", $"The term goes from {DayWords.Full(from)} to {DayWords.Full(until)}; the dance is planned for its end.");
        return until;
    }

    private DateOnly? Day(Piece piece, DateOnly near, bool before = false)
    {
        if (DateReader.Of(piece.Words, near, before) is not { } read)
        {
            Unread(piece, "A day is written as in: 2 March, or 2 March 2027");
            return null;
        }

        if (read.Contradicts) problems.Warning("date-weekday", piece.Span, $"{DayWords.Full(read.Day)} is a {read.Day.DayOfWeek}.", "The day of the month was taken; is the weekday or the number wrong?");
        return read.Day;
    }

    private void Unread(Piece piece, string how) => problems.Error("date-unread", piece.Span, piece.IsEmpty ? "A day is missing here." : $"\"{piece.Words}\" is no day Surefoot can read.", how);

    private static (DayOfWeek Day, TimeOnly At)? When(Piece piece)
    {
        var words = piece.Words.Split([' ', '\t', '\u00A0'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < 2 || DateReader.Weekday(words[0]) is not { } day) return null;
        var rest = string.Concat(words.Skip(words[1].Equals("at", StringComparison.OrdinalIgnoreCase) ? 2 : 1));
        return Times.Read(rest) is { } at ? (day, at) : null;
    }

    private static int? Minutes(string words)
    {
        var parts = words.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts is [var number, "minutes" or "minute" or "min" or "mins"] && Whole(number) is { } minutes) return minutes;
        if (parts is [var only] && only.EndsWith("min", StringComparison.Ordinal) && Whole(only[..^3]) is { } joined) return joined;
        return parts switch
        {
            ["an" or "one" or "1", "hour"] => 60,
            ["half", "an", "hour"] => 30,
            ["an", "hour", "and", "a", "half"] => 90,
            [var hours, "hours"] when Whole(hours) is { } whole and < 10 => whole * 60,
            _ => null,
        };
    }

    private static int? MostNew(string words)
    {
        var parts = words.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        if (parts is ["at", "most", ..]) parts.RemoveRange(0, 2);
        return parts is [_, "new"] or [_, "new", "counts" or "count"] && Whole(parts[0]) is { } counts and < 1000 ? counts : null;
    }

    private static int? Whole(string word) => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < 100_000 ? number : null;
}
