using System.Globalization;

namespace Surefoot.Lessons.Text;

/// <summary>Reads times of the day: "19:00", "19.00", "7pm", "7:30 pm".</summary>
internal static class Times
{
    public static TimeOnly? Read(string words)
    {
        var said = words.Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant().Replace('.', ':');
        if (said.EndsWith(":m:", StringComparison.Ordinal)) said = said[..^3] + "m";
        var afternoon = said.EndsWith("pm", StringComparison.Ordinal);
        var twelve = afternoon || said.EndsWith("am", StringComparison.Ordinal);
        var parts = (twelve ? said[..^2] : said).Split(':');
        if (parts.Length is 0 or > 2 || (parts.Length == 1 && !twelve)) return null;
        if (Whole(parts[0]) is not { } hour || (parts.Length == 2 ? Whole(parts[1]) : 0) is not { } minute || minute > 59) return null;
        if (parts.Length == 2 && parts[1].Length != 2) return null;
        if (twelve)
        {
            if (hour is 0 or > 12) return null;
            hour = (hour % 12) + (afternoon ? 12 : 0);
        }

        return hour <= 23 ? new TimeOnly(hour, minute) : null;
    }

    private static int? Whole(string word) => word.Length is 1 or 2 && int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
