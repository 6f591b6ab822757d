using System.Globalization;

namespace Surefoot.Film.Captions;

/// <summary>The line of a caption that says from when to when it stands.</summary>
internal static class CueTimes
{
    public const string Arrow = "-->";

    public readonly record struct Read(FilmTime From, FilmTime To, string? Trouble);

    /// <summary>The times, or null where the line has none that can be made out.</summary>
    public static Read? Of(string line, CaptionForm form)
    {
        var arrow = line.IndexOf(Arrow, StringComparison.Ordinal);
        if (arrow < 0) return null;
        var left = line[..arrow];
        var rest = line[(arrow + Arrow.Length)..];
        var right = rest.TrimStart(' ', '\t');
        var end = right.AsSpan().IndexOfAny(' ', '\t');
        var settings = end < 0 ? "" : right[end..].Trim();
        if (end >= 0) right = right[..end];
        var (from, fault) = Time(left.Trim(), form);
        var (to, other) = Time(right.TrimEnd(), form);
        if (from is null || to is null) return null;
        var trouble = fault ?? other;
        if (form == CaptionForm.WebVtt && (left.Length == 0 || left[^1] is not (' ' or '\t') || rest.Length == 0 || rest[0] is not (' ' or '\t'))) trouble ??= "The arrow needs a blank on both sides.";
        if (form == CaptionForm.WebVtt && settings.Length > 0 && settings.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries).Any(s => s.IndexOf(':', StringComparison.Ordinal) is <= 0 || s.EndsWith(':')))
        {
            trouble ??= $"\"{settings}\" after the times is no setting of a caption.";
        }

        return new(from.Value, to.Value, trouble);
    }

    /// <summary>"01:02.345", "00:01:02,345" and what people make of it.</summary>
    public static (FilmTime? Time, string? Trouble) Time(string text, CaptionForm form)
    {
        var point = text.AsSpan().IndexOfAny('.', ',');
        var (whole, part) = point < 0 ? (text, "") : (text[..point], text[(point + 1)..]);
        var pieces = whole.Split(':');
        if (pieces.Length is < 2 or > 3 || pieces.Any(p => p.Length is 0 or > 6 || !p.All(char.IsAsciiDigit)) || part.Length > 9 || !part.All(char.IsAsciiDigit)) return (null, null);
        var numbers = pieces.Select(p => long.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        var thousandths = long.Parse((part + "000")[..3], CultureInfo.InvariantCulture);
        var seconds = numbers.Aggregate(0L, (sum, n) => (sum * 60) + n);
        var strict = form == CaptionForm.WebVtt
            ? point >= 0 && text[point] == '.' && part.Length == 3 && pieces[^1].Length == 2 && pieces[^2].Length == 2 && (pieces.Length == 2 || pieces[0].Length >= 2)
            : point >= 0 && text[point] == ',' && part.Length == 3 && pieces.Length == 3 && pieces.All(p => p.Length == 2);
        var trouble = numbers[^1] > 59 || (pieces.Length == 3 && numbers[1] > 59) || (pieces.Length == 2 && numbers[0] > 59) ? $"\"{text}\" counts more than 59 minutes or seconds."
            : strict ? null
            : form == CaptionForm.WebVtt ? $"\"{text}\" is not written as times in WebVTT are, 00:01:02.345." : $"\"{text}\" is not written as times in SRT are, 00:01:02,345.";
        return (new FilmTime((seconds * 1000) + thousandths), trouble);
    }
}
