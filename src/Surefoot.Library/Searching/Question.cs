using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Figures;
using Surefoot.Library.Keeping;

namespace Surefoot.Library.Searching;

/// <summary>One thing danced that is asked for: "her turn".</summary>
/// <param name="Who">'l', 'f', 'b' or, when nobody is named, a blank.</param>
internal sealed record Phrase(char Who, IReadOnlyList<string> Words);

/// <summary>A number between two, both included.</summary>
internal readonly record struct Between(double From, double To);

/// <summary>What somebody remembers of a dance, taken apart.</summary>
internal sealed partial class Question
{
    // Counts a minute that "about 112" reaches on either side, and that "112 bpm" does: people count along for
    // half a minute and are off by two or three. Working values.
    private const double AboutTempo = 8;
    private const double JustTempo = 3;

    // "about 40 counts" may be a whole eight off.
    private const double AboutCounts = 8;

    // Words looked for; each costs a comparison with every word of the library. Nobody remembers more of a dance.
    private const int MostWords = 24;

    // Words that are in every dance and say nothing of one.
    private static readonly HashSet<string> Empty =
        ["a", "an", "the", "of", "with", "and", "to", "in", "by", "from", "on", "for", "is", "it", "that", "one", "where", "some", "something", "like", "called", "dance", "dances", "danced", "called", "at", "starts", "or"];

    // Words that say which dances are meant; they are looked for in names and facts, not in steps and notes.
    private static readonly HashSet<string> Kinds =
        ["line", "circle", "partner", "partners", "couple", "couples", "solo", "newcomer", "beginner", "improver", "intermediate", "advanced"];

    private static readonly Lazy<Dictionary<string, char>> TheRoles = new(() =>
    {
        var roles = new Dictionary<string, char>(StringComparer.Ordinal);
        foreach (var row in FigureBook.Shipped.Rows)
        {
            if (row.Kind != "role" || row.Key is not ("lead" or "follow" or "both")) continue;
            foreach (var spelling in row.Spellings) roles.TryAdd(Folding.Key(spelling), row.Key[0]);
        }

        // "Couple" asks for a couple's dance, not for what both do.
        foreach (var kind in (string[])["couple", "couples", "all", "each"]) roles.Remove(kind);
        return roles;
    });

    /// <summary>Words to be found anywhere.</summary>
    public List<string> Words { get; } = [];

    /// <summary>What is danced, one after the other; empty when nobody asked for an order or a role.</summary>
    public List<Phrase> Phrases { get; } = [];

    public List<Between> Counts { get; } = [];

    public List<Between> Tempos { get; } = [];

    public List<(int Beats, int Unit)> Meters { get; } = [];

    public List<int> Walls { get; } = [];

    public bool AsksNothing => Words.Count == 0 && Counts.Count == 0 && Tempos.Count == 0 && Meters.Count == 0 && Walls.Count == 0;

    public static bool IsKind(string word) => Kinds.Contains(word);

    public static Question Read(string typed)
    {
        var question = new Question();
        var text = Folding.Key(typed);
        text = TempoWords().Replace(text, m => question.Tempo(m));
        text = CountWords().Replace(text, m => question.Count(m));
        text = MeterWords().Replace(text, m => question.Meter(m));
        text = WallWords().Replace(text, m => question.Wall(m));
        var stretches = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (stretches.Length > MostWords) stretches = stretches[..MostWords];
        var inOrder = Array.IndexOf(stretches, "then") >= 0;
        var words = new List<string>();
        var who = ' ';
        foreach (var word in stretches.Append("then"))
        {
            if (word == "then")
            {
                if (words.Count > 0 && (inOrder || who != ' ')) question.Phrases.Add(new(who, [.. words]));
                (who, words) = (' ', []);
            }
            else if (TheRoles.Value.TryGetValue(word, out var role))
            {
                who = role;
            }
            else if (!Empty.Contains(word))
            {
                words.Add(word);
                if (!question.Words.Contains(word)) question.Words.Add(word);
            }
        }

        // A name may be made of nothing but such words.
        if (question.AsksNothing && question.Phrases.Count == 0) question.Words.AddRange(stretches.Distinct(StringComparer.Ordinal));
        return question;
    }

    private string Tempo(Match match)
    {
        var from = Number(match.Groups["from"]);
        var to = match.Groups["to"].Success ? Number(match.Groups["to"]) : from;
        var reach = match.Groups["about"].Success && match.Groups["about"].Value != "tempo" ? AboutTempo : match.Groups["to"].Success ? 0 : JustTempo;
        Tempos.Add(new(Math.Min(from, to) - reach, Math.Max(from, to) + reach));
        return " ";
    }

    private string Count(Match match)
    {
        var counts = Number(match.Groups["counts"]);
        var reach = match.Groups["about"].Success ? AboutCounts : 0;
        Counts.Add(new(counts - reach, counts + reach));
        return " ";
    }

    private string Meter(Match match)
    {
        Meters.Add(((int)Number(match.Groups["beats"]), (int)Number(match.Groups["unit"])));
        return " ";
    }

    private string Wall(Match match)
    {
        Walls.Add(match.Groups["walls"].Value switch { "one" => 1, "two" => 2, "four" => 4, var digits => int.Parse(digits, CultureInfo.InvariantCulture) });
        return " ";
    }

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\b(?:(?<about>about|around|circa|roughly|tempo) )?(?<from>\d{2,3})(?: (?:to )?(?<to>\d{2,3}))? (?:bpm|beats|counts)(?: (?:a|per) minute)\b|\b(?:(?<about>about|around|circa|roughly|tempo) )?(?<from>\d{2,3})(?: (?:to )?(?<to>\d{2,3}))? bpm\b|\b(?:(?<about>tempo) )(?<from>\d{2,3})(?: (?:to )?(?<to>\d{2,3}))?\b", RegexOptions.CultureInvariant, 200)]
    private static partial Regex TempoWords();

    [GeneratedRegex(@"\b(?:(?<about>about|around|circa|roughly) )?(?<counts>\d{1,3}) counts?\b", RegexOptions.CultureInvariant, 200)]
    private static partial Regex CountWords();

    // "3/4" is a meter and "3/4 turn" is not.
    [GeneratedRegex(@"(?<!\S)(?<beats>[2-9]|12)/(?<unit>4|8)(?!\S| turn| left| right)", RegexOptions.CultureInvariant, 200)]
    private static partial Regex MeterWords();

    [GeneratedRegex(@"\b(?<walls>[124]|one|two|four) walls?\b", RegexOptions.CultureInvariant, 200)]
    private static partial Regex WallWords();
}
