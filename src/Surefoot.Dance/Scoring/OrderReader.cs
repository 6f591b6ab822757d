using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring.Laying;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring;

/// <summary>
/// Reads "Order: A A B C, Tag after 3rd wall facing 6:00, Restart in 5th wall after 16". Without an order
/// line the parts follow each other as written.
/// </summary>
internal static class OrderReader
{
    /// <param name="Parts">Index of each part danced in one repeat, and whether mirrored.</param>
    public sealed record Result(List<(int Part, bool Mirrored)> Parts, List<PassEvent> Events);

    public static Result Read(Page page, List<PartPlan> plans, Floor floor, List<LayingFault> faults)
    {
        var parts = new List<(int, bool)>();
        var events = new List<PassEvent>();
        var header = page.Header("order");
        if (header is not null)
        {
            var at = header.ValueSpan.Start;
            foreach (var piece in header.Value.Split(',', ';'))
            {
                ReadPiece(piece, at);
                at += piece.Length + 1;
            }
        }

        if (parts.Count == 0)
        {
            for (var i = 0; i < plans.Count; i++)
            {
                if (plans[i].Node.Kind == PartKind.Part) parts.Add((i, false));
            }
        }

        return new(parts, events);

        void ReadPiece(string piece, int at)
        {
            var words = WordsOf(piece);
            if (words.Count == 0) return;
            var first = words[0].Text;
            var restart = first.StartsWith("restart", StringComparison.OrdinalIgnoreCase);
            var tag = Array.Exists(["tag", "bridge"], t => first.Equals(t, StringComparison.OrdinalIgnoreCase));
            var stated = words.Count > 1 && int.TryParse(first, out var length) && words[1].Text.StartsWith("count", StringComparison.OrdinalIgnoreCase) ? length : (int?)null;
            if (stated is not null)
            {
                words = words[2..];
                tag = words.Count > 0;
            }

            var span = new TextSpan(at + (piece.Length - piece.TrimStart().Length), piece.Trim().Length);
            if (restart || (tag && words.Exists(w => w.Text is "after" or "wall" or "in" or "at")))
            {
                ReadEvent(words, at, restart, stated, span);
                return;
            }

            for (var i = 0; i < words.Count; i++)
            {
                var (text, start) = words[i];
                if (text is "then" or "and" or "part" or "starting" or "with" or "repeat" or "all") continue;
                if (text is "mirrored" or "right" or "left" && parts.Count > 0)
                {
                    parts[^1] = (parts[^1].Item1, MirroredBy(text));
                    continue;
                }

                // "2A", "A2", "A x2": a part danced twice.
                var key = text;
                var times = 1;
                if (key.Length == 2 && char.IsAsciiDigit(key[0]) && char.IsLetter(key[1])) (times, key) = (key[0] - '0', key[1..]);
                if (i + 1 < words.Count && words[i + 1].Text.Length > 1 && words[i + 1].Text[0] is 'x' && int.TryParse(words[i + 1].Text[1..], out var by))
                {
                    times = Math.Clamp(by, 1, 64);
                    i++;
                }

                var index = plans.FindIndex(p => string.Equals(p.Node.Key, key, StringComparison.OrdinalIgnoreCase));
                if (index < 0 && key.Length > 1 && key.All(char.IsLetter) && key.All(c => plans.Exists(p => string.Equals(p.Node.Key, c.ToString(), StringComparison.OrdinalIgnoreCase))))
                {
                    // "AABC" written in one.
                    foreach (var c in key) parts.Add((plans.FindIndex(p => string.Equals(p.Node.Key, c.ToString(), StringComparison.OrdinalIgnoreCase)), false));
                    continue;
                }

                if (index < 0)
                {
                    faults.Add(new(LayingFaultKind.OrderOfNothing, 0, Count.First, Count.First, null, Beats.Zero, Beats.Zero, new(at + start, text.Length), null, text));
                    continue;
                }

                for (var n = 0; n < times && parts.Count < 256; n++) parts.Add((index, false));
            }
        }

        void ReadEvent(List<(string Text, int Start)> words, int at, bool restart, int? stated, TextSpan span)
        {
            int? wall = null;
            var after = 0;
            Facing? facing = null;
            var key = restart ? "" : words[0].Text;
            if (!restart && words.Count > 1 && words[1].Text.Length <= 2 && char.IsLetterOrDigit(words[1].Text[0]) && words[1].Text is not ("in" or "at")) key += " " + words[1].Text;
            for (var i = 0; i < words.Count; i++)
            {
                var text = words[i].Text;
                if (text is "wall" or "repeat" && NumberAt(i - 1) is { } before && wall is null) wall = before;
                else if (text is "wall" or "repeat" && NumberAt(i + 1) is { } then && wall is null) wall = then;
                else if (text == "after" && restart && NumberAt(i + 1) is { } counts && !(i + 2 < words.Count && words[i + 2].Text == "wall" && wall is null)) after = counts;
                else if (text.Contains(':', StringComparison.Ordinal) && ClockAt(text) is { } clock) facing = clock;
                else if (text is "lod") facing = Facing.Front;
                else if (text is "rlod") facing = new(4);
                else if (NumberAt(i) is { } n && i + 1 < words.Count && words[i + 1].Text.StartsWith("count", StringComparison.Ordinal) && !restart) stated = n;
                else if (restart && text.StartsWith("count", StringComparison.Ordinal) && NumberAt(i + 1) is { } upTo) after = upTo;
                else if (NumberAt(i) is { } m && i + 1 < words.Count && words[i + 1].Text.StartsWith("count", StringComparison.Ordinal) && restart) after = m;
            }

            var part = restart ? -1 : plans.FindIndex(p => string.Equals(p.Node.Key, key, StringComparison.OrdinalIgnoreCase));
            if (!restart && part < 0) part = plans.FindIndex(p => p.Node.Kind is PartKind.Tag or PartKind.Bridge);
            if (!restart && part < 0) faults.Add(new(LayingFaultKind.OrderOfNothing, 0, Count.First, Count.First, null, Beats.Zero, Beats.Zero, new(at + words[0].Start, words[0].Text.Length), null, "Tag"));
            events.Add(new(restart ? PassEventKind.Restart : PassEventKind.Tag, wall ?? 1, after, part, facing, stated, span));

            int? NumberAt(int i)
            {
                if (i < 0 || i >= words.Count) return null;
                var digits = new string(words[i].Text.TakeWhile(char.IsAsciiDigit).ToArray());
                if (digits.Length == 0 || digits.Length > 4 || words[i].Text.Contains(':', StringComparison.Ordinal))
                {
                    var ordinal = Array.IndexOf(["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"], words[i].Text);
                    return ordinal >= 0 ? ordinal + 1 : null;
                }

                return int.Parse(digits);
            }
        }

        bool MirroredBy(string word)
        {
            if (word == "mirrored") return true;
            var plan = plans[parts[^1].Item1];
            foreach (var move in plan.Moves[(int)plan.Roles[0]])
            {
                if (move.Move.Feet.Count > 0) return move.Move.Feet[0].Foot != (word == "left" ? Foot.Left : Foot.Right);
            }

            return true;
        }
    }

    private static Facing? ClockAt(string text) => text switch
    {
        "12:00" => new(0),
        "1:30" => new(7),
        "3:00" => new(6),
        "4:30" => new(5),
        "6:00" => new(4),
        "7:30" => new(3),
        "9:00" => new(2),
        "10:30" => new(1),
        _ => null,
    };

    private static List<(string Text, int Start)> WordsOf(string text)
    {
        var words = new List<(string, int)>();
        for (var i = 0; i < text.Length;)
        {
            if (!char.IsLetterOrDigit(text[i]))
            {
                i++;
                continue;
            }

            var start = i;
            while (i < text.Length && (char.IsLetterOrDigit(text[i]) || (text[i] == ':' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1])))) i++;
            words.Add((text[start..i].ToLowerInvariant(), start));
        }

        return words;
    }
}
