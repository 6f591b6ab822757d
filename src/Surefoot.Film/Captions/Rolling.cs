using Surefoot.Dance.Basics;

namespace Surefoot.Film.Captions;

/// <summary>
/// Captions that are made while somebody speaks roll: the line before stays on top of the new one, or the line grows
/// word by word. Whoever counts "one two three four" twice is not meant: only a file in which most captions roll is taken so.
/// </summary>
internal static class Rolling
{
    /// <summary>Share of captions that have to begin with what was there already. Working value.</summary>
    private const double Most = 0.5;

    /// <summary>For each caption its lines that are new, with how many words at the line's start were there already.</summary>
    public static List<(Cue Cue, List<(string Line, int Skip)> Lines)> Unrolled(ValueList<Cue> cues)
    {
        var texts = cues.Select(c => c.Text.Select(CueText.Plain).Where(t => t.Length > 0).ToList()).ToList();
        var (rolls, grows) = (0, 0);
        for (var i = 1; i < texts.Count; i++)
        {
            if (texts[i].Count == 0 || texts[i - 1].Count == 0) continue;
            if (texts[i][0] == texts[i - 1][^1] && Near(cues[i - 1], cues[i]) && (texts[i].Count > 1 || Held(cues[i]))) rolls++;
            else if (texts[i][^1].StartsWith(texts[i - 1][^1] + " ", StringComparison.Ordinal) && Near(cues[i - 1], cues[i])) grows++;
        }

        var rolling = rolls + grows > Most * Math.Max(1, cues.Count - 1);
        var all = new List<(Cue, List<(string, int)>)>();
        var before = new List<string>();
        for (var i = 0; i < cues.Count; i++)
        {
            var lines = new List<(string, int)>();
            var now = cues[i].Text.Where(t => CueText.Plain(t).Length > 0).ToList();
            var there = rolling && i > 0 && Near(cues[i - 1], cues[i]) ? before : [];
            foreach (var line in now)
            {
                var plain = CueText.Plain(line);
                if (there.Contains(plain) && (now.Count > 1 || Held(cues[i]))) continue;
                var grown = there.Where(t => plain.StartsWith(t + " ", StringComparison.Ordinal)).MaxBy(t => t.Length);
                lines.Add((line, grown is null ? 0 : grown.Split(' ').Length));
            }

            all.Add((cues[i], lines));
            before = now.ConvertAll(CueText.Plain);
        }

        return all;
    }

    // It only holds for an instant what was spoken before.
    private static bool Held(Cue cue) => cue.To.Thousandths - cue.From.Thousandths < 100;

    private static bool Near(Cue a, Cue b) => b.From.Thousandths - a.To.Thousandths < 200;
}
