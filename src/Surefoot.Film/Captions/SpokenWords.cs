namespace Surefoot.Film.Captions;

/// <summary>All words of a film in order, each with its time: as the file says it, else spread over its caption.</summary>
public static class SpokenWords
{
    /// <summary>Nobody draws one word out longer than this, in seconds; a caption that stays longer only stays.</summary>
    private const double LongestWord = 1.0;

    public static List<HeardWord> Of(CaptionFile file)
    {
        var words = new List<HeardWord>();
        var cues = Rolling.Unrolled(file.Cues).FindAll(c => c.Lines.Count > 0);
        for (var i = 0; i < cues.Count; i++)
        {
            var (cue, lines) = cues[i];
            var from = cue.From.Seconds;
            var to = cue.To.Seconds;
            // A caption that stays over the beginning of the next has been spoken by then.
            if (i + 1 < cues.Count && cues[i + 1].Cue.From > cue.From) to = Math.Min(to, cues[i + 1].Cue.From.Seconds);
            var pieces = new List<CueText.Piece>();
            foreach (var (line, skip) in lines) pieces.AddRange(CueText.Words(line).Skip(skip));
            Spread(pieces, from, to, cue.Line, words);
        }

        return words;
    }

    private static void Spread(List<CueText.Piece> pieces, double from, double to, int line, List<HeardWord> words)
    {
        for (var i = 0; i < pieces.Count;)
        {
            // Words up to the next time that the line itself gives.
            var until = i + 1;
            while (until < pieces.Count && pieces[until].At is null) until++;
            var start = Math.Max(from, pieces[i].At ?? from);
            var end = until < pieces.Count ? Math.Max(start, pieces[until].At!.Value) : Math.Max(start, to);
            var letters = 0;
            for (var k = i; k < until; k++) letters += Weight(pieces[k]);
            var room = Math.Min(end - start, LongestWord * (until - i));
            var at = start;
            for (; i < until; i++)
            {
                var takes = room * Weight(pieces[i]) / letters;
                words.Add(new(pieces[i].Word, at, at + takes, line));
                at += takes;
            }

            from = Math.Max(from, end);
        }
    }

    // Longer words take longer, short ones not nearly nothing.
    private static int Weight(CueText.Piece piece) => 2 + piece.Word.Length;
}
