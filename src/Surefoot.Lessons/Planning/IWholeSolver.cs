namespace Surefoot.Lessons.Planning;

/// <summary>Finds whole numbers that keep every row and cost little. The same program gives the same answer on every run.</summary>
public interface IWholeSolver
{
    /// <param name="work">Work after which the best answer so far is taken, in the solver's own count, about a second each; counted work is the same on every machine.</param>
    WholeSolution Solve(WholeProgram program, double work);
}

public enum Outcome
{
    /// <summary>Nothing costs less.</summary>
    Best,

    /// <summary>Keeps every row; something may cost less.</summary>
    Good,

    /// <summary>Nothing keeps every row.</summary>
    Impossible,

    /// <summary>Given up before anything was found.</summary>
    Unknown,
}

/// <param name="Values">One for each column; empty where there is no answer.</param>
public sealed record WholeSolution(Outcome Outcome, ValueList<int> Values)
{
    public bool Found => Outcome is Outcome.Best or Outcome.Good;
}
