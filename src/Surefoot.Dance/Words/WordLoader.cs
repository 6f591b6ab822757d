using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Words;

/// <summary>Puts a row of the words file into the lexicon: this is where keys meet what the code knows.</summary>
internal static class WordLoader
{
    private static readonly string[] HandVerbs = ["raise", "lower", "release", "take", "keep", "under", "over", "into"];

    /// <param name="single">Whether to add the spellings of one word or the longer ones.</param>
    public static void Add(WordRow row, Lexicon lexicon, bool single)
    {
        // These stand at the start of a line or after a colon only, where the line itself looks for them.
        if (row.Kind is "header" or "sense" or "call" or "nocall" or "openingcall") return;
        var sense = SenseOf(row) ?? throw new FormatException($"The words file has a row that the program does not know: {row.Kind} {row.Key}");
        foreach (var spelling in row.Spellings.Concat(row.Dated))
        {
            if (spelling.AsSpan().IndexOfAny(' ', '-') < 0 == single) lexicon.Add(spelling, sense);
        }
    }

    private static Sense? SenseOf(WordRow row) => row.Kind switch
    {
        "verb" => Verb(row.Key),
        "way" => Ways(row.Key) is { } way ? new(SenseKind.Way, (int)way, -1) : null,
        "side" => new(SenseKind.Side, row.Key == "left" ? 0 : 1, -1),
        "foot" => new(SenseKind.Foot, row.Key switch { "left" => 0, "right" => 1, _ => 2 }, -1),
        "footnoun" => Plain(SenseKind.FootNoun),
        "rotation" => new(SenseKind.Rotation, row.Key == "left" ? 0 : 1, -1),
        "amount" => new(SenseKind.Amount, int.Parse(row.Key), -1),
        "part" => new(SenseKind.Part, Array.IndexOf(["heel", "toe", "hip", "knee", "ball"], row.Key), -1),
        "slow" => Plain(SenseKind.Slow),
        "quick" => Plain(SenseKind.Quick),
        "times" => new(SenseKind.Times, int.Parse(row.Key), -1),
        "number" => new(SenseKind.Number, int.Parse(row.Key), -1),
        "multiply" => Plain(SenseKind.Multiply),
        "and" => Plain(SenseKind.And),
        "then" => Plain(SenseKind.Then),
        "small" => Plain(SenseKind.Small),
        "large" => Plain(SenseKind.Large),
        "starting" => Plain(SenseKind.Starting),
        "mirrored" => Plain(SenseKind.Mirrored),
        "repeat" => Plain(SenseKind.Repeat),
        "but" => Plain(SenseKind.But),
        "with" => Plain(SenseKind.With),
        "role" => new(SenseKind.Role, row.Key switch { "lead" => 0, "follow" => 1, _ => 2 }, -1),
        "face" => Plain(SenseKind.Face),
        "facing" => new(SenseKind.Facing, row.Key[0] - '0', (int)(row.Key.EndsWith("track", StringComparison.Ordinal) ? Floor.Track : Floor.Walls)),
        "relation" => new(SenseKind.Relation, (int)(row.Key switch { "each" => Relation.FacingEachOther, "same" => Relation.SameWay, _ => Relation.BackToBack }), -1),
        "oclock" => Plain(SenseKind.OClock),
        "wallword" => Plain(SenseKind.WallWord),
        "weight" => Plain(SenseKind.Weight),
        "even" => Plain(SenseKind.Even),
        "free" => Plain(SenseKind.Free),
        "noweight" => Plain(SenseKind.NoWeight),
        "feet" => Plain(SenseKind.Feet),
        "counts" => Plain(SenseKind.Counts),
        "handverb" => new(SenseKind.HandVerb, Array.IndexOf(HandVerbs, row.Key), -1),
        "handnoun" => Plain(SenseKind.HandNoun),
        "head" => Plain(SenseKind.Head),
        "pair" => new(SenseKind.Pair, (int)(row.Key switch { "both" => HandPair.Both, "inside" => HandPair.Inside, "outside" => HandPair.Outside, _ => HandPair.Unsaid }), -1),
        "hold" => HoldNumber(row.Key) is var number and >= 0 ? new(SenseKind.Hold, number, -1) : null,
        "filler" => Plain(SenseKind.Filler),
        "style" => Plain(SenseKind.Style),
        _ => null,
    };

    private static Sense Plain(SenseKind kind) => new(kind, 0, -1);

    private static Sense? Verb(string key)
    {
        foreach (var kind in Enum.GetValues<ActionKind>().OrderByDescending(k => k.Word().Length))
        {
            var word = kind.Word();
            if (key == word) return new(SenseKind.Verb, (int)kind, -1);
            if (key.StartsWith(word + " ", StringComparison.Ordinal) && Ways(key[(word.Length + 1)..]) is { } way) return new(SenseKind.Verb, (int)kind, (int)way);
        }

        return null;
    }

    private static Direction? Ways(string key)
    {
        foreach (var way in Enum.GetValues<Direction>())
        {
            if (way.Word() == key) return way;
        }

        return null;
    }

    private static int HoldNumber(string key)
    {
        for (var i = 0; i < Holds.All.Count; i++)
        {
            if (Holds.All[i].Name == key) return i;
        }

        return -1;
    }
}
