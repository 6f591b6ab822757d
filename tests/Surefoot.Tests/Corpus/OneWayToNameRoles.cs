using System.Text.RegularExpressions;
using Surefoot.Dance;
using Surefoot.Solver;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Corpus;

/// <summary>A hall calls its roles as it likes: that only works where sentences name them in one way, "the lead" and "the follow".</summary>
public partial class OneWayToNameRoles
{
    private static readonly ProvenSolver Proven = new();

    [Fact]
    public void No_sentence_of_a_check_names_a_role_otherwise()
    {
        var said = Root.Pages("corpus").Concat(Root.Pages("demo"))
            .SelectMany(page => DanceReader.Read(File.ReadAllText(page), null, Proven).Problems)
            .SelectMany(p => (string[])[p.Message, p.Reason, .. p.Related.Select(r => r.Says), .. p.Fixes.Select(f => f.Title)])
            .Distinct()
            .ToList();
        Assert.Contains(said, s => s.Contains("the lead", StringComparison.Ordinal));
        Assert.Equal("", string.Join("\n", said.Where(s => Otherwise().IsMatch(Quoted().Replace(s, "")))));
    }

    [GeneratedRegex("\"[^\"]*\"", RegexOptions.CultureInvariant)]
    private static partial Regex Quoted();

    // "Leads" and "follows" are what one does.
    [GeneratedRegex(@"(?<!\b(?:the|one) )\b(?:lead|follow)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Otherwise();
}
