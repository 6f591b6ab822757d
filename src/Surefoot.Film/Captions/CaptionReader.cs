using Surefoot.Dance.Basics;
using Surefoot.Dance.Text;

namespace Surefoot.Film.Captions;

/// <summary>
/// Reads WebVTT (W3C) and SRT (as Matroska's codec specification describes it), with the mistakes that programs and
/// people make. Everything in which a file departs from its form is told; a file without troubles is a valid one.
/// </summary>
public static class CaptionReader
{
    private const string Magic = "WEBVTT";

    /// <summary>Most troubles that are told one by one; after that it is the same again.</summary>
    private const int MostTroubles = 200;

    public static CaptionFile Read(string text)
    {
        var source = new SourceText(text.TrimStart('\uFEFF').Replace('\0', '\uFFFD'));
        var lines = new string[source.LineCount];
        for (var i = 0; i < lines.Length; i++) lines[i] = source.Words(source.Line(i));
        return new Reader(lines, IsWebVtt(lines) ? CaptionForm.WebVtt : CaptionForm.Srt).Whole();
    }

    private static bool IsWebVtt(string[] lines) => lines[0].TrimStart().StartsWith(Magic, StringComparison.OrdinalIgnoreCase)
        // Without its first line: SRT has commas in its times, and hours.
        || (lines.FirstOrDefault(l => l.Contains(CueTimes.Arrow, StringComparison.Ordinal)) is { } first && !first.Contains(',', StringComparison.Ordinal));

    private sealed class Reader(string[] lines, CaptionForm form)
    {
        private readonly List<Cue> _cues = [];
        private readonly List<CaptionTrouble> _troubles = [];
        private readonly HashSet<string> _names = new(StringComparer.Ordinal);
        private int _at;

        public CaptionFile Whole()
        {
            if (form == CaptionForm.WebVtt) Head();
            while (_at < lines.Length)
            {
                if (lines[_at].Length == 0) _at++;
                else Block();
            }

            if (_cues.Count == 0) Tell(1, "There is no caption with times in this file.");
            if (form == CaptionForm.WebVtt && Unordered() is { } late) Tell(late, "This caption begins before the one above it. They are taken in the order of their times.");
            return new(form, _cues.OrderBy(c => c.From).ToValueList(), _troubles.Take(MostTroubles).ToValueList());
        }

        private void Tell(int line, string says, bool lost = false) => _troubles.Add(new(line, says, lost));

        private int? Unordered()
        {
            for (var i = 1; i < _cues.Count; i++)
            {
                if (_cues[i].From < _cues[i - 1].From) return _cues[i].Line;
            }

            return null;
        }

        private void Head()
        {
            var first = lines[0];
            if (!first.StartsWith(Magic, StringComparison.Ordinal) || (first.Length > Magic.Length && first[Magic.Length] is not (' ' or '\t')))
            {
                Tell(1, "A WebVTT file begins with the word WEBVTT on a line of its own.");
                if (!first.TrimStart().StartsWith(Magic, StringComparison.OrdinalIgnoreCase)) return;
            }

            _at = 1;
            // What stands under the first word, until an empty line, is about the file ("Kind: captions").
            while (_at < lines.Length && lines[_at].Length > 0 && !lines[_at].Contains(CueTimes.Arrow, StringComparison.Ordinal)) _at++;
            if (_at < lines.Length && lines[_at].Length > 0) Tell(_at + 1, "An empty line is missing above the first caption.");
        }

        private void Block()
        {
            var first = _at;
            if (form == CaptionForm.WebVtt && Kept(lines[_at]))
            {
                while (_at < lines.Length && lines[_at].Length > 0)
                {
                    if (lines[_at].Contains(CueTimes.Arrow, StringComparison.Ordinal)) Tell(_at + 1, "A remark cannot hold an arrow \"-->\"; this is taken as part of the remark.", lost: true);
                    _at++;
                }

                return;
            }

            string? name = null;
            if (!lines[_at].Contains(CueTimes.Arrow, StringComparison.Ordinal))
            {
                if (_at + 1 >= lines.Length || !lines[_at + 1].Contains(CueTimes.Arrow, StringComparison.Ordinal))
                {
                    Astray();
                    return;
                }

                name = lines[_at++].Trim();
            }

            if (CueTimes.Of(lines[_at], form) is not { } times)
            {
                Tell(_at + 1, $"\"{Shown(lines[_at])}\" has no times that can be read, so the caption under it is left out.", lost: true);
                _at++;
                while (_at < lines.Length && lines[_at].Length > 0 && !lines[_at].Contains(CueTimes.Arrow, StringComparison.Ordinal)) _at++;
                return;
            }

            Cue(name, times, first);
        }

        private static bool Kept(string line) => line is "NOTE" or "STYLE" or "REGION"
            || line.StartsWith("NOTE ", StringComparison.Ordinal) || line.StartsWith("NOTE\t", StringComparison.Ordinal)
            || line.TrimEnd() is "STYLE" or "REGION";

        // Text where times were looked for.
        private void Astray()
        {
            Tell(_at + 1, $"\"{Shown(lines[_at])}\" stands under no times, so nobody knows when it was said.", lost: true);
            while (_at < lines.Length && lines[_at].Length > 0 && (_at + 1 >= lines.Length || !lines[_at + 1].Contains(CueTimes.Arrow, StringComparison.Ordinal))) _at++;
        }

        private void Cue(string? name, CueTimes.Read times, int first)
        {
            var line = ++_at;
            if (times.Trouble is { } trouble) Tell(line, trouble);
            if (form == CaptionForm.Srt && (name is null || name.Length == 0 || !name.All(char.IsAsciiDigit))) Tell(first + 1, "The caption has no number of its own.");
            if (form == CaptionForm.WebVtt && name is not null && !_names.Add(name)) Tell(first + 1, $"Another caption is called \"{Shown(name)}\" already.");
            var said = new List<string>();
            while (_at < lines.Length && lines[_at].Length > 0)
            {
                if (lines[_at].Contains(CueTimes.Arrow, StringComparison.Ordinal))
                {
                    Tell(_at + 1, "An empty line is missing above this caption.");
                    // What looks like its number or name was read into the caption before.
                    if (form == CaptionForm.Srt && said.Count > 0 && said[^1].Trim() is { Length: > 0 } number && number.All(char.IsAsciiDigit))
                    {
                        said.RemoveAt(said.Count - 1);
                        _at--;
                    }

                    break;
                }

                said.Add(lines[_at++]);
            }

            var to = times.To;
            if (to <= times.From)
            {
                Tell(line, "The caption ends before it begins; it is taken to end when the next one comes.");
                to = new(times.From.Thousandths + 1);
            }

            _cues.Add(new(times.From, to, name, said.ToValueList(), line));
        }

        private static string Shown(string text) => text.Length <= 40 ? text : text[..39] + "…";
    }
}
