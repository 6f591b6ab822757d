namespace Surefoot.Draw.Words;

/// <summary>Whole numbers as a sentence has them: small ones spelled, larger ones in figures.</summary>
internal static class Numbers
{
    private static readonly string[] Small =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    private static readonly string[] Orders =
        ["", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    public static string Spelled(int number) => number >= 0 && number < Small.Length ? Small[number] : $"{number}";

    public static string Ordinal(int number)
    {
        if (number > 0 && number < Orders.Length) return Orders[number];
        var ending = (number % 100 is >= 11 and <= 13 ? 0 : number % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" };
        return $"{number}{ending}";
    }

    /// <summary>"one count", "40 counts": counts stay in figures from ten up, because dancers read them so.</summary>
    public static string Counts(int number) => number == 1 ? "one count" : $"{number} counts";
}
