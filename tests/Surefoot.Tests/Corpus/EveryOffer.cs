using Surefoot.Dance;
using Surefoot.Dance.Problems;
using Surefoot.Solver;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Corpus;

/// <summary>Whoever takes what a problem offers is rid of that problem: one key press that helps, in every example of every check.</summary>
public class EveryOffer
{
    private static readonly ProvenSolver Proven = new();

    public static TheoryData<string> Checks => [.. Root.Pages("corpus/checks").Select(p => Path.GetFileName(Path.GetDirectoryName(p)!)).Distinct().Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Checks))]
    public void Taken_it_does_away_with_its_problem(string check)
    {
        foreach (var page in Root.Pages($"corpus/checks/{check}"))
        {
            var text = File.ReadAllText(page);
            var before = DanceReader.Read(text, null, Proven).Problems;
            foreach (var problem in before)
            {
                foreach (var offer in problem.Fixes)
                {
                    var after = TextEdits.Apply(text, offer.Edits);
                    Assert.NotEqual(text, after);
                    Assert.True(
                        Of(DanceReader.Read(after, null, Proven).Problems, problem) < Of(before, problem),
                        $"{page}: \"{offer.Title}\" leaves \"{problem.Message}\"\n{after}");
                }
            }
        }
    }

    [Theory]
    [InlineData("count-mismatch/shuffle-on-one-count", "Write 7&8")]
    public void This_is_offered(string example, string title)
    {
        var text = File.ReadAllText(Root.At($"corpus/checks/{example}.dance"));
        Assert.Contains(
            DanceReader.Read(text, null, Proven).Problems.SelectMany(p => p.Fixes),
            f => f.Title.Contains(title, StringComparison.Ordinal) || f.Edits.Any(e => e.Text.Contains(title, StringComparison.Ordinal)));
    }

    private static int Of(IEnumerable<Problem> all, Problem one) => all.Count(p => (p.Name, p.Count, p.Message) == (one.Name, one.Count, one.Message));
}
