using System.Text;
using CsCheck;

namespace Surefoot.Tests.Properties;

/// <summary>Pages made at random from words that instructors use: some danceable, many not.</summary>
internal static class RandomPages
{
    // A line of the pool fills the counts in front of it; {a} and {b} are a foot and the other foot.
    private static readonly (string Counts, string Words)[] Lines =
    [
        ("1-2", "Rock forward {a}, recover {b}"),
        ("1-2", "Rock back {a}, recover"),
        ("1-2", "Walk {a}, {b}"),
        ("1-2", "Step forward {a}, pivot ½ {right}"),
        ("1-2", "Step forward {a}, pivot ¼ {left}"),
        ("1-2", "Touch {a} together, hold"),
        ("1-2", "Step {a} to the side, together"),
        ("1&2", "Shuffle forward {a} {b} {a}"),
        ("1&2", "Shuffle back"),
        ("1&2", "Triple in place, ½ {left}"),
        ("1&2", "Coaster step {a}"),
        ("1&2", "Sailor step {a} ¼ {left}"),
        ("1&2", "Kick ball change {a}"),
        ("1-2", "Stomp {a}, clap"),
        ("1-2", "Heel {a} forward, hook {a}"),
        ("1-2", "Cross {a} over {b}, unwind ½ {right}"),
        ("1-2", "Sway {a}, {b}"),
        ("1-2", "Hop, hop"),
        ("1-2", "Jump apart, jump together"),
        ("1-2", "Turn ¼ {right}, step {a} forward"),
        ("1-2", "Full turn {right}"),
        ("&1-2", "Ball change {a}, step forward {b}"),
    ];

    private static readonly (string Counts, string Words)[] Fours =
    [
        ("1-4", "Vine {aw}, touch {b}"),
        ("1-4", "Vine {aw}, scuff"),
        ("1-4", "Rolling vine {aw}, touch"),
        ("1-4", "Jazz box {a} ¼ {right}"),
        ("1-4", "Rocking chair {a}"),
        ("1-4", "Monterey ½ {aw}"),
        ("1-4", "Walk back {a}, {b}, {a}, touch {b}"),
        ("1-4", "Charleston {a}"),
    ];

    /// <summary>Blocks of an eight each, as (counts from 1 to 8, words) lines.</summary>
    public static Gen<string[]> Eight { get; } =
        Gen.Select(Gen.Int[0, Lines.Length - 1].Array[4], Gen.Int[0, Fours.Length - 1].Array[2], Gen.Bool.Array[2], Gen.Bool.Array[4])
            .Select((twos, fours, halves, left) => Compose(twos, fours, halves, left));

    public static Gen<string> LineDance { get; } =
        Eight.Array[1, 4].Select(eights => "A random dance\nKind: line\nFeet: left free\n\n" + Parts(eights));

    /// <summary>For couples, with roles' words now and then different.</summary>
    public static Gen<string> CircleDance { get; } = Gen.Select(Eight.Array[1, 3], Gen.Bool, Gen.Bool.Array[3])
        .Select((eights, opposite, split) =>
        {
            var page = new StringBuilder("A random circle\nKind: partner, circle\nHold: " + (opposite ? "two hands" : "sweetheart") + "\nFacing: line of dance\nFeet: " + (opposite ? "opposite" : "same") + ", left free\nTempo: 100-120\n\n");
            for (var i = 0; i < eights.Length; i++)
            {
                page.Append("Part ").Append((char)('A' + i)).Append("  (8 counts)\n");
                foreach (var line in eights[i])
                {
                    var gap = line.IndexOf("  ", StringComparison.Ordinal);
                    page.Append(split[i] ? $"{line[..gap]}  Lead: {line[gap..].Trim()}. Follow: {line[gap..].Trim()}" : line).Append('\n');
                }

                page.Append('\n');
            }

            return page.ToString();
        });

    /// <summary>Any page at all.</summary>
    public static Gen<string> Any { get; } = Gen.OneOf(LineDance, CircleDance);

    public static string Parts(string[][] eights)
    {
        var page = new StringBuilder();
        for (var i = 0; i < eights.Length; i++) page.Append("Part ").Append((char)('A' + i)).Append("  (8 counts)\n").AppendJoin('\n', eights[i]).Append("\n\n");
        return page.ToString();
    }

    private static string[] Compose(int[] twos, int[] fours, bool[] halves, bool[] left)
    {
        var lines = new List<string>();
        for (var half = 0; half < 2; half++)
        {
            if (halves[half])
            {
                lines.Add(Filled(Fours[fours[half]], (half * 4) + 1, left[half]));
                continue;
            }

            lines.Add(Filled(Lines[twos[half * 2]], (half * 4) + 1, left[half]));
            lines.Add(Filled(Lines[twos[(half * 2) + 1]], (half * 4) + 3, left[half + 2]));
        }

        return [.. lines];
    }

    private static string Filled((string Counts, string Words) line, int from, bool left)
    {
        var counts = new StringBuilder();
        foreach (var c in line.Counts) counts.Append(char.IsAsciiDigit(c) ? (from + c - '1').ToString() : c.ToString());
        var words = line.Words.Replace("{a}", left ? "L" : "R").Replace("{b}", left ? "R" : "L").Replace("{aw}", left ? "left" : "right")
            .Replace("{left}", left ? "left" : "right").Replace("{right}", left ? "right" : "left");
        return counts + "  " + words;
    }
}
