using System.Net;
using System.Text;

namespace Surefoot.Film.Captions;

/// <summary>The words of one line of a caption: marks taken off, times inside the line kept.</summary>
internal static class CueText
{
    /// <summary>A word, and from when it stands where the line itself says so.</summary>
    public readonly record struct Piece(string Word, double? At);

    public static List<Piece> Words(string line)
    {
        var pieces = new List<Piece>();
        double? at = null;
        var text = new StringBuilder();
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            var close = c switch { '<' => '>', '[' => ']', '{' => '}', '♪' => '♪', _ => '\0' };
            var end = close == '\0' ? -1 : line.IndexOf(close, i + 1);
            if (end < 0)
            {
                text.Append(c is '♪' ? ' ' : c);
                continue;
            }

            // "<00:00:01.142>" is a time; other marks are looks, and "[Music]" is what nobody said.
            if (c == '<')
            {
                if (CueTimes.Time(line[(i + 1)..end], CaptionForm.WebVtt).Time is { } time)
                {
                    Flush();
                    at = time.Seconds;
                }
            }
            else
            {
                text.Append(' ');
            }

            i = end;
        }

        Flush();
        return pieces;

        void Flush()
        {
            foreach (var word in WebUtility.HtmlDecode(text.ToString()).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            {
                if (!word.Any(char.IsLetterOrDigit) && word != "&") continue;
                pieces.Add(new(word, at));
                at = null;
            }

            text.Clear();
        }
    }

    public static string Plain(string line) => string.Join(' ', Words(line).Select(w => w.Word));
}
