using System.Globalization;
using System.Text;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>Cuts words into captions as they are usually exported: 3 to 8 words, no marks, in four forms.</summary>
internal static class Cutting
{
    public static string Captions(IReadOnlyList<SpokenWord> words, int form, Chance random)
    {
        var cues = new List<List<SpokenWord>>();
        for (var i = 0; i < words.Count;)
        {
            var most = random.Next(3, 9);
            var cue = new List<SpokenWord> { words[i++] };
            while (cue.Count < most && i < words.Count && words[i].From - cue[^1].To < 1.2) cue.Add(words[i++]);
            cues.Add(cue);
        }

        return (form % 4) switch
        {
            0 => Plain(cues, hold: false),
            1 => Rolling(cues),
            2 => Numbered(cues),
            _ => Plain(cues, hold: true),
        };
    }

    private static string Text(IEnumerable<SpokenWord> cue) => string.Join(' ', cue.Select(w => w.Text));

    // Each cue by itself, until its last word or until the next one.
    private static string Plain(List<List<SpokenWord>> cues, bool hold)
    {
        var file = new StringBuilder("WEBVTT\n\n");
        for (var i = 0; i < cues.Count; i++)
        {
            var to = hold && i + 1 < cues.Count ? cues[i + 1][0].From : cues[i][^1].To;
            if (hold && i % 17 == 5) file.Append("NOTE checked\n\n");
            file.Append(CultureInfo.InvariantCulture, $"{Time(cues[i][0].From)} --> {Time(Math.Max(to, cues[i][0].From + 0.1))}{(hold ? " align:start position:0%" : "")}\n{(hold && i % 13 == 3 ? "[Music] " : "")}{Text(cues[i])}\n\n");
        }

        return file.ToString();
    }

    // The line before stays on top while the new one is spoken, word by word with its own times; then both hold for an instant.
    private static string Rolling(List<List<SpokenWord>> cues)
    {
        var file = new StringBuilder("WEBVTT\nKind: captions\nLanguage: en\n\n");
        for (var i = 0; i < cues.Count; i++)
        {
            var (from, to) = (cues[i][0].From, i + 1 < cues.Count ? cues[i + 1][0].From : cues[i][^1].To + 1);
            var above = i == 0 ? " " : Text(cues[i - 1]);
            var timed = new StringBuilder(cues[i][0].Text);
            foreach (var word in cues[i].Skip(1)) timed.Append(CultureInfo.InvariantCulture, $"<{Time(word.From)}><c> {word.Text}</c>");
            file.Append(CultureInfo.InvariantCulture, $"{Time(from)} --> {Time(to - 0.01)} align:start position:0%\n{above}\n{timed}\n\n");
            file.Append(CultureInfo.InvariantCulture, $"{Time(to - 0.01)} --> {Time(to)} align:start position:0%\n{Text(cues[i])}\n \n\n");
        }

        return file.ToString();
    }

    // SubRip, each caption staying over the beginning of the next.
    private static string Numbered(List<List<SpokenWord>> cues)
    {
        var file = new StringBuilder();
        for (var i = 0; i < cues.Count; i++)
        {
            var (from, to) = (Time(cues[i][0].From).Replace('.', ','), Time(cues[i][^1].To + 1.6).Replace('.', ','));
            file.Append(CultureInfo.InvariantCulture, $"{i + 1}\r\n{from} --> {to}\r\n{Text(cues[i])}\r\n\r\n");
        }

        return file.ToString();
    }

    private static string Time(double seconds)
    {
        var thousandths = (long)Math.Round(seconds * 1000);
        return string.Create(CultureInfo.InvariantCulture, $"{thousandths / 3600000:00}:{thousandths / 60000 % 60:00}:{thousandths / 1000 % 60:00}.{thousandths % 1000:000}");
    }
}
