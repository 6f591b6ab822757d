using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Checks;

/// <summary>Turns of phrase that several checks share.</summary>
internal static class Say
{
    /// <summary>"The lead's", "The follow's", "Their" for both, "The" for a line dancer.</summary>
    public static string Whose(Role? role) => role switch
    {
        Role.Lead => "The lead's",
        Role.Follow => "The follow's",
        Role.Dancer => "The dancer's",
        _ => "Both dancers'",
    };

    /// <summary>"the lead", "the follow", "both dancers", "the dancer".</summary>
    public static string Who(Role? role) => role switch
    {
        Role.Lead => "the lead",
        Role.Follow => "the follow",
        Role.Dancer => "the dancer",
        _ => "both dancers",
    };

    public static string Who(Role? role, bool start)
    {
        var who = Who(role);
        return start ? char.ToUpperInvariant(who[0]) + who[1..] : who;
    }

    /// <summary>"is" or "are", to go with <see cref="Who(Role?)"/>.</summary>
    public static string Is(Role? role) => role is null ? "are" : "is";

    public static string Verb(Role? role, string singular, string plural) => role is null ? plural : singular;

    public static string Weight(Weight weight) => weight switch
    {
        Basics.Weight.Left => "on the left foot",
        Basics.Weight.Right => "on the right foot",
        _ => "on both feet",
    };

    /// <summary>What one time through the dance is called: a wall, or a repeat in a circle.</summary>
    public static string Repeat(DanceCase dance) => dance.Score.Facts.Floor == Floor.Walls ? "wall" : "repeat";

    public static string Counts(int counts) => counts == 1 ? "1 count" : $"{counts} counts";

    public static string Counts(Beats counts, Measures measures) => counts == Beats.One ? "1 count" : counts.IsWhole ? $"{counts} counts" : $"{measures.Number(counts.ToDouble(), "0.##")} counts";

    /// <summary>"1 to 2" for a stretch that ends before its last moment.</summary>
    public static string Stretch(Count from, Count to)
    {
        var last = to - Beats.One;
        return last <= from ? from.Name : $"{from.Name}-{last.Name}";
    }

    /// <summary>The other foot in the same style: "L" for "R", "right" for "left", "LF" for "RF".</summary>
    public static string OtherFoot(string word) => word switch
    {
        "L" => "R",
        "R" => "L",
        "l" => "r",
        "r" => "l",
        _ => Swap(word),
    };

    private static string Swap(string word)
    {
        var left = word.IndexOf("left", StringComparison.OrdinalIgnoreCase);
        if (left >= 0) return word[..left] + Cased(word.AsSpan(left, 4), "right") + word[(left + 4)..];
        var right = word.IndexOf("right", StringComparison.OrdinalIgnoreCase);
        if (right >= 0) return word[..right] + Cased(word.AsSpan(right, 5), "left") + word[(right + 5)..];
        return word.Length > 0 && word[0] is 'L' or 'l' ? (word[0] == 'L' ? 'R' : 'r') + word[1..]
            : word.Length > 0 && word[0] is 'R' or 'r' ? (word[0] == 'R' ? 'L' : 'l') + word[1..]
            : word;
    }

    private static string Cased(ReadOnlySpan<char> like, string word) =>
        char.IsUpper(like[^1]) ? word.ToUpperInvariant() : char.IsUpper(like[0]) ? char.ToUpperInvariant(word[0]) + word[1..] : word;
}
