namespace Surefoot.Draw.Sheet.Plan;

/// <summary>Something on the sheet that Surefoot worked out and the author did not write.</summary>
/// <param name="Mark">One of the marks below, in front of the words in every form of the sheet.</param>
internal readonly record struct OurLine(string Mark, string Words)
{
    /// <summary>What the hands have to do; the hold from there on. Marks that every typeface has and that do not lean on colour.</summary>
    public const string Hands = "+", Hold = "→";

    public override string ToString() => $"{Mark} {Words}";

    /// <summary>The line at the foot that says what the marks mean; empty where there are none.</summary>
    public static string Key(IEnumerable<PartPlan> parts)
    {
        var (hands, hold) = (false, false);
        foreach (var line in parts.SelectMany(p => p.Rows).SelectMany(r => r.Ours))
        {
            hands |= line.Mark == Hands;
            hold |= line.Mark == Hold;
        }

        const string Whose = "worked out by Surefoot, not written by the author";
        return (hands, hold) switch
        {
            (true, true) => $"{Hands} what the hands have to do, {Hold} the hold from there on: {Whose}.",
            (true, false) => $"{Hands} what the hands have to do: {Whose}.",
            (false, true) => $"{Hold} the hold from there on: {Whose}.",
            _ => "",
        };
    }
}
