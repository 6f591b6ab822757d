using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Checks;

/// <summary>A word in the head that is not known: kept and shown, nothing is lost.</summary>
public sealed class HeaderUnknown : ICheck
{
    public string Name => "header-unknown";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var header in dance.Page.Headers)
        {
            if (header.Known) continue;
            var near = NearWords.Nearest(header.Key, dance.Book.Rows.Where(r => r.Kind == "header").SelectMany(r => r.Spellings.Take(1)), 2);
            ValueList<Fix> fixes = near is null ? default : [new($"Did you mean: {Title(near)}", Sureness.Likely, [new(header.KeySpan, Title(near))])];
            yield return new(
                Name, Severity.Hint, header.KeySpan, null, null, null,
                $"\"{header.Key}\" is not a word of the head that Surefoot knows; the line is kept and printed as it stands.",
                "The words it knows are listed by: surefoot words.",
                default,
                fixes,
                PageEnd.Word(header.KeySpan, header.Key));
        }
    }

    private static string Title(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
