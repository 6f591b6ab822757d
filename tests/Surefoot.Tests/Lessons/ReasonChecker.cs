using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Lessons.Planning;

namespace Surefoot.Tests.Lessons;

/// <summary>Checks that the reason given for a collision follows from the figures it names.</summary>
internal static partial class ReasonChecker
{
    public static void Check(TermPlan plan, Collision collision)
    {
        var why = collision.Why;
        Assert.NotEmpty(why);
        if (TooMany().Match(why) is { Success: true } counts) Assert.True(Number(counts, 1) > Number(counts, 2), why);
        else if (TooLong().Match(why) is { Success: true } minutes) Assert.True(Number(minutes, 1) > Number(minutes, 2), why);
        else if (ByItself().Match(why) is { Success: true } alone) Assert.True(Number(alone, 1) > (alone.Groups[2].Value == "is one" ? 1 : Number(alone, 3)), why);
        else if (WouldDo().Match(why) is { Success: true } sums)
        {
            Assert.True(Number(sums, 1) <= Number(sums, 2) && Number(sums, 3) <= Number(sums, 4), why);
        }
        else Assert.Matches("there is no lesson |One comes after the other, in later lessons: |By the review rule each is due in one of two lessons|takes more lessons than are left", why);

        // A day it names is one of the term's, and a lesson it counts is one there is.
        foreach (Match days in Until().Matches(why)) Assert.True(DateOnly.ParseExact(days.Groups[1].Value, "d MMMM yyyy", CultureInfo.InvariantCulture) <= plan.Case.Term.Until);
        foreach (Match lessons in There().Matches(why))
        {
            var until = DateOnly.ParseExact(lessons.Groups[1].Value, "d MMMM yyyy", CultureInfo.InvariantCulture);
            Assert.True(int.Parse(lessons.Groups[2].Value, CultureInfo.InvariantCulture) <= plan.Lessons.Count(l => l.Lesson.Day <= until), why);
        }
    }

    private static double Number(Match match, int group)
    {
        var text = match.Groups[group].Value;
        return text.EndsWith('½') ? double.Parse($"0{text[..^1]}", CultureInfo.InvariantCulture) + 0.5 : double.Parse(text, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex("ha(?:s|ve) ([0-9]*½?) new counts to learn.*with room for ([0-9]+) new counts")]
    private static partial Regex TooMany();

    [GeneratedRegex("takes? at least ([0-9]+) minutes.*, with ([0-9]+) minutes after warming up")]
    private static partial Regex TooLong();

    [GeneratedRegex("by itself takes at least ([0-9]+) lessons.*there (is one|are ([0-9]+)) lesson")]
    private static partial Regex ByItself();

    [GeneratedRegex(@"\(([0-9]*½?) of ([0-9]+) new counts, ([0-9]+) of ([0-9]+) minutes\)")]
    private static partial Regex WouldDo();

    [GeneratedRegex("until ([0-9]+ [A-Z][a-z]+ [0-9]{4})")]
    private static partial Regex Until();

    [GeneratedRegex("until ([0-9]+ [A-Z][a-z]+ [0-9]{4}) there are ([0-9]+) lessons")]
    private static partial Regex There();
}
