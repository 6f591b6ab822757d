using System.Text;
using Surefoot.Draw;

namespace Surefoot.Lessons.Sheets;

/// <summary>A lesson's sheet as plain text of 78 columns.</summary>
public static class LessonText
{
    private const int Width = 78, Clock = 7, Side = 29, Middle = 11;

    public static string Write(IReadOnlyList<LessonSheet> sheets)
    {
        var text = new StringBuilder();
        foreach (var sheet in sheets)
        {
            if (text.Length > 0) text.Append('\n');
            text.Append(sheet.Title).Append('\n').Append(new string('=', Math.Min(Width, sheet.Title.Length))).Append('\n');
            Paragraph(text, sheet.Opening, 0, 0);
            foreach (var station in sheet.Stations) Station(text, station);
            text.Append('\n');
            Paragraph(text, sheet.Care, 0, 0);
        }

        return text.ToString();
    }

    private static void Station(StringBuilder text, Station station)
    {
        text.Append('\n');
        Paragraph(text, $"{station.Clock}  {station.Heading} ({station.Minutes} min)", 0, Clock);
        foreach (var says in station.Says) Paragraph(text, says, Clock, Clock);
        foreach (var row in station.Rows) Row(text, row);
        foreach (var advice in station.Advice) Paragraph(text, $"{advice.Word}: {string.Join("; ", advice.Items)}", Clock, Clock + 2);
    }

    private static void Row(StringBuilder text, StretchRow row)
    {
        if (row.Both is { } both)
        {
            var words = Wrapped(row.IsNote ? $"({both})" : both, Width - Clock - Middle - 1);
            for (var i = 0; i < words.Count; i++) text.Append(' ', Clock).Append((i == 0 ? row.Counts : "").PadLeft(Middle - 2)).Append("   ").Append(words[i]).Append('\n');
            return;
        }

        var (lead, follow) = (Wrapped(row.Lead, Side), Wrapped(row.Follow, Side));
        for (var i = 0; i < Math.Max(lead.Count, follow.Count); i++)
        {
            var middle = i == 0 ? row.Counts : "";
            var left = (Middle - middle.Length) / 2;
            var line = new string(' ', Clock) + (i < lead.Count ? lead[i] : "").PadLeft(Side) + new string(' ', Math.Max(1, left)) + middle + new string(' ', Math.Max(1, Middle - middle.Length - left)) + (i < follow.Count ? follow[i] : "");
            text.Append(line.TrimEnd()).Append('\n');
        }
    }

    private static void Paragraph(StringBuilder text, string words, int indent, int hanging)
    {
        var first = true;
        foreach (var line in Wrapped(words, Width - hanging))
        {
            text.Append(' ', first ? indent : hanging).Append(line).Append('\n');
            first = false;
        }
    }

    private static List<string> Wrapped(string text, int width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            if (line.Length > 0 || word.Length == 0) line.Append(' ');
            line.Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }
}
