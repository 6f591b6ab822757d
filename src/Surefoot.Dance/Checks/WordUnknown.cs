using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Checks;

/// <summary>A word in the step text is not known.</summary>
public sealed class WordUnknown : ICheck
{
    public string Name => "word-unknown";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var (piece, part, count, role) in Unknown(dance.Page))
        {
            var near = NearWords.Of(piece.Word, dance.Book).ConvertAll(n => n with { Word = Cased(n.Word, piece.Word) });
            var fixes = near.Select((n, i) => new Fix($"Did you mean: {n.Word}", i == 0 && n.Distance == 1 && near.Count(o => o.Distance == 1) == 1 && piece.Word.Length >= 5 ? Sureness.Sure : n.BySense ? Sureness.Idea : Sureness.Likely,
                [new(piece.Span, n.Word)])).ToValueList();
            // A letter by itself beside a step is a foot that was mistyped; which one only the writer knows.
            var letter = piece.Word.Length == 1 && near.Count == 0;
            if (letter) fixes = [Foot(piece, "L"), Foot(piece, "R")];
            yield return new(
                Name, Severity.Error, piece.Span, part, count, role,
                $"\"{piece.Word}\" is not a word that Surefoot knows.",
                letter ? "A foot is L or R; if the letter is a remark, put it in brackets."
                    : near.Count == 1 ? $"The nearest word is: {near[0].Word}."
                    : near.Count > 0 ? $"The nearest words are: {string.Join(", ", near.Select(n => n.Word))}."
                    : "If it is the hall's own figure, describe it once with \"Figure: " + piece.Word.ToLowerInvariant() + "\"; if it is a remark, put it in brackets or on a line that starts with >.",
                default,
                fixes,
                PageEnd.Word(piece.Span, piece.Word));
        }
    }

    private static Fix Foot(UnknownPiece piece, string foot) => new($"Did you mean: {foot}", Sureness.Idea, [new(piece.Span, foot)]);

    // "SHUFLE" becomes "SHUFFLE", "Shufle" becomes "Shuffle".
    private static string Cased(string word, string like) =>
        like.Length > 1 && like.All(c => !char.IsLower(c)) ? word.ToUpperInvariant()
        : char.IsUpper(like[0]) ? char.ToUpperInvariant(word[0]) + word[1..]
        : word;

    private static IEnumerable<(UnknownPiece Piece, string? Part, string? Count, Role? Role)> Unknown(Page page)
    {
        foreach (var part in page.Parts)
        {
            foreach (var piece in part.HeadingPieces.OfType<UnknownPiece>()) yield return (piece, part.Label, null, null);
            foreach (var node in part.Lines)
            {
                if (node is RepeatLine repeat)
                {
                    foreach (var piece in repeat.Pieces.OfType<UnknownPiece>()) yield return (piece, part.Label, repeat.Group?.First.Name, null);
                }

                if (node is not CountLine line) continue;
                foreach (var segment in line.Segments)
                {
                    foreach (var piece in segment.Pieces.OfType<UnknownPiece>()) yield return (piece, part.Label, line.Group.First.Name, segment.Role ?? line.Block);
                }
            }
        }

        foreach (var figure in page.Figures)
        {
            foreach (var line in figure.Versions.SelectMany(v => v.Lines))
            {
                foreach (var segment in line.Segments)
                {
                    foreach (var piece in segment.Pieces.OfType<UnknownPiece>()) yield return (piece, "Figure: " + figure.Name, line.Group.First.Name, segment.Role);
                }
            }
        }
    }
}
