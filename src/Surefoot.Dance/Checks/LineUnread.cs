using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>A line among the steps that has no counts.</summary>
public sealed class LineUnread : ICheck
{
    public string Name => "line-unread";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var line in dance.Page.Lines.OfType<StrayLine>())
        {
            if (line.Pieces.Count == 0) continue;
            var part = dance.Page.Parts.Find(p => p.Lines.Contains(line));
            yield return new(
                Name, Severity.Warning, line.Span, part?.Label, null, null,
                "This line has no counts in front and was kept as a note.",
                "Steps begin with their counts, as in \"1-2  Rock forward L, recover R\"; remarks begin with >.",
                default,
                [new("Make it a note", Sureness.Idea, [new(new(line.Span.Start, 0), "> ")])],
                PageEnd.LineEnd(dance.Page, line.Span.End, "This line has no counts in front."));
        }
    }
}
