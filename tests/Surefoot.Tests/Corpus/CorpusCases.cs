using Surefoot.Dance;
using Surefoot.Dance.Checks;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Words;
using Surefoot.Solver;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Corpus;

/// <summary>
/// Small pages with what is expected of them beside: problems in NAME.expected, steps in NAME.steps, calls in NAME.calls. A case
/// that comes out differently leaves what was seen in NAME.expected.seen or NAME.steps.seen;
/// "./test --accept" takes it over once somebody has looked at it. Pages in "couple" are read with the couple
/// solved, all others each dancer alone.
/// </summary>
public class CorpusCases
{
    private static readonly ProvenSolver Proven = new();

    public static TheoryData<string> Problems => Beside(".expected");

    public static TheoryData<string> Steps => Beside(".steps");

    public static TheoryData<string> Calls => Beside(".calls");

    public static TheoryData<string> Names => [.. AllChecks.List.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Problems))]
    public void Finds_the_problems_expected(string page)
    {
        var reading = DanceReader.Read(File.ReadAllText(Root.At(page)), null, page.StartsWith(Path.Combine("corpus", "couple"), StringComparison.Ordinal) ? Proven : null);
        Compare(Path.ChangeExtension(page, ".expected"), Listing.Problems(reading.Page.Source, reading.Problems));
    }

    [Theory]
    [MemberData(nameof(Steps))]
    public void Dances_the_steps_expected(string page) =>
        Compare(Path.ChangeExtension(page, ".steps"), Listing.Steps(DanceReader.Read(File.ReadAllText(Root.At(page))).Score));

    [Theory]
    [MemberData(nameof(Calls))]
    public void Calls_what_is_expected(string page)
    {
        var reading = DanceReader.Read(File.ReadAllText(Root.At(page)));
        Compare(Path.ChangeExtension(page, ".calls"), CallListing.Of(reading.Calls, reading.Score));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_problem_has_a_page_that_shows_it_and_one_nearly_the_same_that_has_none(string name)
    {
        var pages = Root.Pages("corpus", NeedsTheCouple(name) ? "couple" : "checks", name).ToList();
        var expected = pages.Select(p => File.ReadAllText(Path.ChangeExtension(p, ".expected"))).ToList();
        Assert.Contains(expected, text => text.Contains($" {name} ", StringComparison.Ordinal));
        Assert.Contains(expected, text => text.Length == 0);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_problem_is_explained_by_a_page_that_shows_it_and_the_same_page_mended(string name)
    {
        var text = ShippedText.Read($"problems/{name}.md");
        Assert.StartsWith($"# {name}\nseverity: ", text);
        var pages = text.Split("```dance\n").Skip(1).Select(p => p[..p.IndexOf("\n```", StringComparison.Ordinal)]).ToList();
        Assert.Equal(2, pages.Count);
        var solver = NeedsTheCouple(name) ? Proven : null;
        var shown = DanceReader.Read(pages[0], null, solver).Problems;
        Assert.NotEmpty(shown);
        Assert.All(shown, problem => Assert.Equal(name, problem.Name));
        var severity = text.Split('\n')[1]["severity: ".Length..];
        Assert.Contains(shown, problem => problem.Severity.ToString().Equals(severity, StringComparison.OrdinalIgnoreCase));
        Assert.Empty(DanceReader.Read(pages[1], null, solver).Problems.Select(p => p.Name + ": " + p.Message));
    }

    [Fact]
    public void Every_figure_is_danced_in_the_corpus_from_both_feet()
    {
        foreach (var figure in Dance.Figures.FigureBook.Shipped.All)
        {
            var name = figure.Name.Replace("'", "", StringComparison.Ordinal).Replace(' ', '-');
            Assert.True(File.Exists(Root.At("corpus", "figures", name + "-left.steps")), $"{name} is not danced from the left foot");
            Assert.True(File.Exists(Root.At("corpus", "figures", name + "-right.steps")), $"{name} is not danced from the right foot");
        }
    }

    [Fact]
    public void No_explanation_is_left_over()
    {
        var names = AllChecks.List.Select(c => $"problems/{c.Name}.md").ToHashSet();
        Assert.All(ShippedText.Names("problems/"), file => Assert.Contains(file, names));
        Assert.All(Directory.GetDirectories(Root.At("corpus", "checks")).Concat(Directory.GetDirectories(Root.At("corpus", "couple"))), folder => Assert.Contains($"problems/{Path.GetFileName(folder)}.md", names));
    }

    [Fact]
    public void Every_expectation_has_its_page()
    {
        foreach (var ending in (string[])["*.expected", "*.steps", "*.facts", "*.calls"])
        {
            foreach (var file in Directory.EnumerateFiles(Root.At("corpus"), ending, SearchOption.AllDirectories))
            {
                Assert.True(File.Exists(Path.ChangeExtension(file, ".dance")), $"{file} has no page beside it");
            }
        }

        Assert.All(Root.Pages("corpus"), page => Assert.True(
            // A sheet beside it is read, and expected to come out as the page.
            ((string[])[".expected", ".steps", ".facts", ".calls", ".txt"]).Any(ending => File.Exists(Path.ChangeExtension(page, ending))), $"{page} expects nothing"));
    }

    private static bool NeedsTheCouple(string name) => Directory.Exists(Root.At("corpus", "couple", name));

    private static TheoryData<string> Beside(string ending) =>
        [.. Root.Pages("corpus").Where(p => File.Exists(Path.ChangeExtension(p, ending))).Select(p => Path.GetRelativePath(Root.Folder, p))];

    private static void Compare(string file, string seen)
    {
        var expected = File.ReadAllText(Root.At(file)).ReplaceLineEndings("\n");
        var leftover = Root.At(file + ".seen");
        if (expected == seen)
        {
            File.Delete(leftover);
            return;
        }

        File.WriteAllText(leftover, seen);
        Assert.Fail($"{file} expects\n{expected}\nand this was seen:\n{seen}");
    }
}
