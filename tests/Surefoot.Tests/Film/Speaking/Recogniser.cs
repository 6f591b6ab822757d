namespace Surefoot.Tests.Film.Speaking;

/// <summary>A speech recogniser with its usual mistakes: words that sound alike, words swallowed, words made up.</summary>
internal static class Recogniser
{
    private const double Swallows = 0.025;
    private const double Mishears = 0.12;
    private const double MakesUp = 0.01;

    /// <summary>What is said, and what is written for it. From how the words sound; common practice, no source.</summary>
    private static readonly Dictionary<string, string[]> Alike = new(StringComparer.Ordinal)
    {
        ["one"] = ["won"],
        ["two"] = ["to", "too"],
        ["four"] = ["for"],
        ["six"] = ["sicks"],
        ["eight"] = ["ate"],
        ["right"] = ["write", "rite"],
        ["left"] = ["lift", "laughed"],
        ["forward"] = ["foreword", "four word"],
        ["back"] = ["bag"],
        ["vine"] = ["fine", "wine"],
        ["cha"] = ["char"],
        ["rock"] = ["rook", "rocks"],
        ["weight"] = ["wait"],
        ["step"] = ["steps", "stepped"],
        ["sailor"] = ["sailer"],
        ["coaster"] = ["toaster"],
        ["shuffle"] = ["shovel", "shuffled"],
        ["triple"] = ["tripled", "trouble"],
        ["pivot"] = ["private"],
        ["heel"] = ["heal", "hill"],
        ["toe"] = ["tow"],
        ["touch"] = ["touched"],
        ["chassé"] = ["sashay", "chase a"],
        ["recover"] = ["recovered"],
        ["part"] = ["pot", "par"],
        ["b"] = ["be", "bee"],
        ["c"] = ["see", "sea"],
        ["d"] = ["dee"],
        ["a"] = ["hey"],
        ["scuff"] = ["cuff"],
        ["stomp"] = ["stump"],
        ["hook"] = ["book"],
        ["brush"] = ["brushed"],
        ["walk"] = ["work", "walked"],
        ["box"] = ["books"],
        ["lock"] = ["log"],
        ["mambo"] = ["member"],
        ["polka"] = ["poker"],
        ["sway"] = ["swayed"],
        ["hinge"] = ["hint"],
        ["side"] = ["sight"],
        ["ladies"] = ["lady's"],
        ["waltz"] = ["walls"],
        ["half"] = ["have"],
        ["quarter"] = ["quarters"],
        ["basic"] = ["basics"],
        ["cross"] = ["across"],
        ["kick"] = ["kicked"],
        ["dorothy"] = ["dorothea"],
    };

    public static List<SpokenWord> Hears(IReadOnlyList<SpokenWord> words, Chance random)
    {
        var heard = new List<SpokenWord>();
        foreach (var word in words)
        {
            var chance = random.NextDouble();
            if (!word.Meant && chance < Swallows) continue;
            if (!word.Meant && chance < Swallows + MakesUp)
            {
                heard.Add(word with { Text = new[] { "the", "that", "just", "them" }[random.Next(4)] });
                continue;
            }

            if (chance > 1 - Mishears && Alike.TryGetValue(word.Text, out var others)) heard.AddRange(Split(word, others[random.Next(others.Length)]));
            else heard.Add(word);
        }

        return heard;
    }

    private static IEnumerable<SpokenWord> Split(SpokenWord word, string text)
    {
        var pieces = text.Split(' ');
        var each = (word.To - word.From) / pieces.Length;
        for (var i = 0; i < pieces.Length; i++) yield return word with { Text = pieces[i], From = word.From + (each * i), To = word.From + (each * (i + 1)) };
    }
}
