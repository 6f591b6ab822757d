using System.Globalization;
using Surefoot.Cli.Commands;
using Surefoot.Dance.Scoring;
using Surefoot.Likeness;

namespace Surefoot.Cli.Printing;

/// <summary>What dances have in common, in sentences and in columns.</summary>
internal static class LikenessPrinter
{
    public static void Compare(Screen screen, DanceScore first, DanceScore second)
    {
        var verdict = Verdict.Of(first, second);
        var compared = verdict.Compared;
        screen.Out.WriteLine(screen.Skin.Title($"{Title(first)} and {Title(second)}"));
        screen.Say(verdict.Says);
        if (compared.FirstLength == 0 || compared.SecondLength == 0) return;
        screen.Say($"{compared.AlikeInFirst} of the first dance's {Prose.Number(compared.FirstLength, "count")} and {compared.AlikeInSecond} of the second's {compared.SecondLength} are alike.");
        screen.Out.WriteLine();
        var rows = new List<string[]> { new[] { "", "first", "", "second", "" } };
        rows.AddRange(LaidOut.Of(first, second, compared).Select(r => new[]
        {
            r.Fate switch { Fate.Alike => "=", Fate.Near => "~", _ => "" }, r.First ?? "-", r.First is null ? "" : Danced(r, r.FirstWords), r.Second ?? "-", r.Second is null ? "" : Danced(r, r.SecondWords),
        }));
        StepTable.Print([.. rows.Select(r => Array.ConvertAll(r, c => Cells.Harmless(c)))], 0, screen);
    }

    /// <summary>One dance of a list of those that are like another.</summary>
    public static void Line(Screen screen, LikeFound found) => screen.Say(
        $"{((int)Math.Round(found.Verdict.Compared.Share * 100)).ToString(CultureInfo.InvariantCulture),3} %  {Title(found.Title)}  ({Cells.Harmless(found.Where)}). {found.Verdict.Says}", hanging: 7);

    private static string Danced(LaidRow row, string words) =>
        row.Fate == Fate.Alike ? "alike" : row.Counts > 1 ? $"{row.Counts} counts of its own" : words;

    private static string Title(DanceScore score) => Title(score.Title);

    private static string Title(string title) => title.Length > 0 ? Cells.Harmless(title) : "a dance without a title";
}
