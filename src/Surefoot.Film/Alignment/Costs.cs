namespace Surefoot.Film.Alignment;

/// <summary>What ways of going on cost or bring, in the units of <see cref="Fit"/>. All are working values, set on half of the made-up films (docs/film.md).</summary>
internal static class Costs
{
    /// <summary>What is left out costs; a recover after its rock is heard without being said.</summary>
    public const double LeaveOut = 2.2;
    public const double LeaveOutShort = 1.4;
    public const double LeaveOutAgain = 0.6;
    public const int MostLeftOut = 4;

    /// <summary>Leaving out the end of a part, or the beginning of the next, without a word.</summary>
    public const double AcrossParts = 1.2;
    public const double WholePart = 2.5;
    public const double JumpToStage = 6;
    public const double JumpToEight = 7;
    public const double JumpAnywhere = 8.5;
    public const double OtherDancer = 2.5;
    /// <summary>For each thing that the other dancer, who is turned to, has to begin before where the first one is.</summary>
    public const double BackInTurn = 0.15;

    /// <summary>The lead's words stand first in a row, so it is the follow who catches up; the lead has been told what lies behind.</summary>
    public const double LeadBackInTurn = 0.3;

    /// <summary>Whoever is turned to has steps of their own, not those that both share.</summary>
    public const double SharedInTurn = 0.4;
    public const double PartInTurn = 0.4;
    /// <summary>A part that is named is hardly ever its second dancing.</summary>
    public const double DancedAgain = 1.2;

    /// <summary>Whoever is turned to after an eight that is danced twice is shown the eight, and not its second time.</summary>
    public const double OtherDancesAgain = 1;

    /// <summary>To any part, where one was named and its letter was not heard. Working value.</summary>
    public const double UnknownPart = 2;

    public const double NotTurning = 2;

    /// <summary>A part is named before the one that was begun is over: its end was left out.</summary>
    public const double LeavingEarly = 1;
    public const double Misnaming = 2.5;
    public const double MisnamingNext = 1;

    /// <summary>Moments at the end of a part that are left out lightly.</summary>
    public const int NearlyOver = 4;

    /// <summary>A step or figure said once more than it is written, where a word that fits nowhere would cost more.</summary>
    public const double OnceMore = 0.2;

    /// <summary>The same right after a step: less than to leave out a figure for one more of its kind. Working value.</summary>
    public const double SaidTwice = 1.9;

    /// <summary>Words between two steps that are no more than a few words about the first: "under right hands".</summary>
    public const int ShortTalk = 3;
    public const double Wrap = 1.5;
}
