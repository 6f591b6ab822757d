using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>A part laid on its counts, for each role, with what was found on the way.</summary>
internal sealed class PartPlan(PartNode node, int index, ValueList<Role> roles)
{
    public PartNode Node { get; } = node;

    public int Index { get; } = index;

    public int Offset { get; set; }

    public ValueList<Role> Roles { get; } = roles;

    public List<LaidMove>[] Moves { get; } = [[], [], []];

    /// <summary>Which whole counts a role has, and the line that gave them.</summary>
    public SortedDictionary<int, TextSpan>[] Covered { get; } = [[], [], []];

    public HashSet<Count>[] Slots { get; } = [[], [], []];

    public List<PartRow> Rows { get; } = [];

    public List<RepeatedStretch> Repeats { get; } = [];

    public List<ScoreClaim> Claims { get; } = [];

    public List<ScoreHands> Hands { get; } = [];

    public List<ScoreNote> Notes { get; } = [];

    public List<ScoreCall> Calls { get; } = [];

    public int Length
    {
        get
        {
            var length = 0;
            foreach (var role in Roles)
            {
                foreach (var count in Covered[(int)role].Keys) length = Math.Max(length, count);
            }

            return length;
        }
    }
}
