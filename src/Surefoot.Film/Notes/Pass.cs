using Surefoot.Dance.Basics;
using Surefoot.Film.Alignment;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>Going once through a part, or some of it, without stopping for another.</summary>
internal sealed class Pass(int stage, int course, double from)
{
    public int Stage { get; } = stage;

    public int Course { get; } = course;

    /// <summary>Seconds; where it is announced, if it is.</summary>
    public double From { get; set; } = from;

    public double To { get; set; } = from;

    /// <summary>It was counted in: "five six seven eight".</summary>
    public double? CountedIn { get; set; }

    /// <summary>It was announced by name.</summary>
    public bool Named { get; set; }

    /// <summary>It goes on from the pass before without a word between.</summary>
    public bool GoesOn { get; set; }

    /// <summary>Said to be for one of the two.</summary>
    public Role? Role { get; set; }

    /// <summary>It comes after counting in or "from the top": steps are called in time.</summary>
    public bool InTime { get; set; }

    /// <summary>The whole dance was announced, and counted in: "from the top", "five six seven eight".</summary>
    public bool Whole { get; set; }

    /// <summary>It was broken off to begin again.</summary>
    public bool BrokenOff { get; set; }

    /// <summary>Both roles were told their own steps in turn.</summary>
    public bool InTurn { get; set; }

    public FilmSide Side { get; set; }

    public List<Placed> Items { get; } = [];

    public IEnumerable<Placed> Matched => Items.Where(i => i.How is Placing.Ask or Placing.Step or Placing.Count);

    public int MatchedCount => Matched.Count();

    /// <summary>Mostly counts, hardly any steps by name.</summary>
    public bool Counts => Items.Count(i => i.How == Placing.Count) > Items.Count(i => i.How is Placing.Ask or Placing.Step);
}
