namespace Surefoot.Dance.Couple;

/// <summary>
/// One program that grows while it is being solved: whoever holds it adds rows and lets rows go, and asks again.
/// The cheapest values are those of the program as it then stands; what was found before only saves work.
/// </summary>
public interface ILinearRun : IDisposable
{
    LinearSolution Solve();
}
