using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Checks;

/// <summary>What the head says of hold, facing, feet, meter, tempo and the like, and nobody can go by.</summary>
public sealed class HeaderUnread : ICheck
{
    private static readonly string[] Feet = ["same", "opposite", "left free", "right free"];

    public string Name => "header-unread";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var unread in dance.Score.Facts.Unread)
        {
            var typed = dance.Words(unread.Span).Trim();
            var (message, reason) = Tell(unread.Key, dance.Score.Facts);
            ValueList<Fix> fixes = NearWords.Nearest(typed, Known(unread.Key, dance), 3) is { } meant ? [new($"Did you mean: {meant}", Sureness.Likely, [new(unread.Span, meant)])] : default;
            yield return new(Name, Severity.Warning, unread.Span, null, null, null, $"\"{typed}\" {message}", reason, default, fixes, PageEnd.Word(unread.Span, typed));
        }

        foreach (var (words, span) in MeantSo.Unread(dance.Page))
        {
            ValueList<Fix> fixes = NearWords.Nearest(words, MeantSo.Words, 3) is { } near ? [new($"Did you mean: {near}", Sureness.Likely, [new(span, near)])] : default;
            yield return new(
                Name, Severity.Warning, span, null, null, null, $"\"{words}\" is no warning that can be meant so; it is passed over.",
                $"That can be said of {string.Join(", ", MeantSo.Words.SkipLast(1))} and {MeantSo.Words.Last()}; what is wrong has to be mended.", default, fixes, PageEnd.Word(span, words));
        }
    }

    // What it is not, what is gone by instead, and what could stand there.
    private static (string Message, string Reason) Tell(string key, DanceFacts facts) => key switch
    {
        "hold" => ("is no hold that Surefoot knows; the two are taken to begin without hands.", "Holds are closed, two hands, one hand, handshake, crossed hands, promenade, open, sweetheart, skaters, shadow, wrap and hammerlock; most may be the other way round (\"left open\")."),
        "facing" when facts.Floor == Floor.Track => ("is nowhere to face that Surefoot knows; it is passed over.", "To face there are the line of dance, against the line of dance, the inside, the outside, or each other; for one of the two, \"lead outside, follow inside\"."),
        "facing" => ("is nowhere to face that Surefoot knows; it is passed over.", "To face there are the walls: 12:00, 3:00, 6:00 and 9:00."),
        "feet" => ("says nothing of the feet that Surefoot knows; it is passed over.", "Say which foot begins, and for couples whether both use the same: \"same, left free\" or \"opposite, lead left free\"."),
        "meter" => ($"is no meter; the dance is counted in {facts.Meter}.", "A meter is two numbers, beats in a bar and what a beat is: 4/4, 3/4, 2/4, 6/8."),
        "tempo" => ("is no tempo; the dance has none.", "A tempo is counts a minute: \"112\", or from the slowest to the fastest, \"104-116\"."),
        "walls" => ("is no number of walls; it is passed over.", "Say how many walls the dance has: 1, 2 or 4."),
        "stature" => ("says no height that Surefoot understands; a usual one is taken.", "Heights are in metres, for each dancer: \"lead 1.85, follow 1.58\"."),
        _ => ($"is no phrase of music; {facts.Phrase.Counts} counts are taken.", "A phrase is a number of counts (\"32\"), or \"any\" where the dance does not go by phrases."),
    };

    private static IEnumerable<string> Known(string key, DanceCase dance)
    {
        var floor = dance.Score.Facts.Floor == Floor.Track ? "track" : "walls";
        return key switch
        {
            "feet" => Feet,
            "hold" => Spellings(r => r.Kind == "hold"),
            "facing" => Spellings(r => r.Kind == "relation" || (r.Kind == "facing" && r.Key.EndsWith(floor, StringComparison.Ordinal))),
            _ => [],
        };

        // Dated words and those for one wording alone are marked; they are understood, and not offered.
        IEnumerable<string> Spellings(Func<WordRow, bool> of) => dance.Book.Rows.Where(of).SelectMany(r => r.Spellings).Where(s => char.IsLetterOrDigit(s[0]));
    }
}
