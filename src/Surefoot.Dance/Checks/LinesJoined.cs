using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>Two lines of counts stand on one line. They are danced as two, so splitting them changes nothing.</summary>
public sealed class LinesJoined : ICheck
{
    public string Name => "lines-joined";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var part in dance.Page.Parts)
        {
            foreach (var line in part.Lines.OfType<CountLine>())
            {
                if (line.JoinedAfter is not { } end) continue;
                var counts = dance.Words(line.Group.Span);
                yield return new(
                    Name, Severity.Warning, line.Group.Span, part.Label, line.Group.First.Name, null,
                    $"Two lines of counts stand on one line; begin {counts} on a new line.",
                    "Each line has its counts on the left and its steps on the right. They are danced as two lines here.",
                    default,
                    [new($"Begin {counts} on a new line", Sureness.Sure, [new(TextSpan.Between(end, line.Span.Start), "\n")])]);
            }
        }
    }
}
