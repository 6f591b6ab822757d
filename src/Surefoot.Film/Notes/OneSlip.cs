namespace Surefoot.Film.Notes;

/// <summary>One slip of the tongue, or of the ear, that shows at several places is told once: counts left out for one dancer and for the other, a step that is heard several times more.</summary>
internal static class OneSlip
{
    /// <summary>Seconds within which a step that is said once more, and once more again, is one slip. Working value.</summary>
    private const double AtOnce = 3;

    /// <summary>Seconds from one dancer's counts to the same counts of the other, where both are walked one after the other. Working value.</summary>
    private const double OtherDancer = 12;

    /// <summary>Seconds between a step left out and the one right beside it that is said otherwise. Working value.</summary>
    private const double Beside = 1;

    /// <returns>In the order of the film.</returns>
    public static IEnumerable<Difference> ToldOnce(IEnumerable<Difference> found)
    {
        var told = new List<Difference>();
        foreach (var one in found.OrderBy(f => f.At))
        {
            if (told.Exists(before => Same(before, one))) continue;
            told.Add(one);
        }

        return told.Where(one => !told.Exists(heard => Explained(one, heard)));
    }

    // A step left out right beside one that is said otherwise: the words were laid a place too far, and one slip explains
    // both. What was heard stays, what was only not heard goes.
    private static bool Explained(Difference missing, Difference heard) => missing.Kind == DifferenceKind.Missing && heard.Kind is DifferenceKind.OtherFoot or DifferenceKind.OtherWay or DifferenceKind.OtherTurn
        && missing.Part == heard.Part && Math.Abs(heard.At.Seconds - missing.At.Seconds) <= Beside;

    private static bool Same(Difference before, Difference one)
    {
        if (before.Kind != one.Kind || before.Part != one.Part || before.Counts != one.Counts) return false;
        var apart = one.At.Seconds - before.At.Seconds;
        return one.Kind switch
        {
            DifferenceKind.OneTooMany => apart <= AtOnce,
            DifferenceKind.Missing => before.Role is not null && one.Role is not null && before.Role != one.Role && apart <= OtherDancer,
            _ => false,
        };
    }
}
