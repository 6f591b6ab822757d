using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Solver;
using Surefoot.Lessons.Text;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Lessons;

/// <summary>Terms for tests, with the dances of the demo notebook.</summary>
internal static class Terms
{
    private static readonly Lazy<List<TermDance>> TheDances = new(() =>
        [.. DemoNotebook.Dances.Select(d => TermDance.Of(DemoNotebook.Read(d.Data)))]);

    public static IReadOnlyList<TermDance> Dances => TheDances.Value;

    public static string Demo => File.ReadAllText(Root.At("demo", "winter-at-the-lantern-hall.term"));

    public static TermCase Case(string text) => TermCase.Of(TermPage.Read(text), Dances) ?? throw new InvalidOperationException("The term does not say when it is.");

    /// <summary>With little work: a plan keeps what it has to with any.</summary>
    public static TermPlan Plan(TermCase term) => new Planner(new CpSatSolver(), effort: 0.1).Plan(term);

    public static TermPlan Plan(string text) => Plan(Case(text));

    public static Course Course(this TermCase term, string title) => term.Courses.First(c => c.Dance.Title == title);
}
