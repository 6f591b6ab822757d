using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>A bracket that is never closed.</summary>
public sealed class BracketOpen : ICheck
{
    public string Name => "bracket-open";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var part in dance.Page.Parts)
        {
            foreach (var line in part.Lines.OfType<CountLine>())
            {
                foreach (var piece in line.Segments.SelectMany(s => s.Pieces).OfType<OpenBracketPiece>())
                {
                    var close = dance.Words(piece.Span) == "[" ? "]" : dance.Words(piece.Span) == "{" ? "}" : ")";
                    yield return new(
                        Name, Severity.Warning, piece.Span, part.Label, line.Group.First.Name, null,
                        "This bracket is never closed; everything after it was read as a remark.",
                        "What stands in brackets is a stated fact or a note, and no step.",
                        default,
                        [new("Close it at the end of the line", Sureness.Likely, [new(new(line.Span.End, 0), close)])]);
                }
            }
        }
    }
}
