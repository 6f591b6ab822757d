namespace Surefoot.Dance.Couple;

/// <summary>
/// Prices that differ a little from unknown to unknown, so that one way of dancing is the cheapest and not
/// several. Which of several a solver finds depends on chance: the order of rows, its version, its machine.
/// </summary>
internal static class TieBreak
{
    /// <summary>By how much prices differ at most, as a share. Too little to bend a step that would not be bent otherwise.</summary>
    private const double Most = 1e-3;

    public static int AddPriced(this LinearProgram program, double lower, double upper, double price) =>
        program.AddColumn(lower, upper, price * (1 + (Most * Scattered((uint)program.Columns))));

    // From 0 to 1, without a pattern, so that no two sums of a few prices come out alike; the multiplier is Knuth's for scattering keys.
    private static double Scattered(uint number)
    {
        for (var round = 0; round < 3; round++)
        {
            number = unchecked((number + 1) * 2654435761);
            number ^= number >> 15;
        }

        return number / (double)uint.MaxValue;
    }
}
