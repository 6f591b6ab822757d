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
            var near = dance.Book.Rows.Where(r => r.Kind == "header").SelectMany(r => r.Spellings.Take(1))
                .Select(s => (Word: s, Distance: NearWords.Distance(header.Key.ToLowerInvariant(), s, 2)))
                .Where(n => n.Distance <= Math.Min(2, header.Key.Length / 3)).OrderBy(n => n.Distance).Take(1).ToList();
            var fixes = near.Select(n => new Fix($"Did you mean: {Title(n.Word)}", Sureness.Likely, [new(header.KeySpan, Title(n.Word))])).ToValueList();
            yield return new(
                Name, Severity.Hint, header.KeySpan, null, null, null,
                $"\"{header.Key}\" is not a word of the head that Surefoot knows; the line is kept and printed as it stands.",
                "The words it knows are listed by: surefoot words.",
                default,
                fixes);
        }
    }

    private static string Title(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
