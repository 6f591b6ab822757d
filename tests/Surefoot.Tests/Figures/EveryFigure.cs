using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Figures;

/// <summary>
/// Every figure that comes with Surefoot is danced from both feet, in every version, by both roles: it
/// must lay out on its counts, start from a free foot and end as its own text says.
/// </summary>
public class EveryFigure
{
    public static TheoryData<string> Names => [.. FigureBook.Shipped.All.Select(f => f.Name).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Says_what_it_is_where_it_comes_from_and_how_it_ends(string name)
    {
        var figure = FigureBook.Shipped.Named(name)!;
        Assert.NotEmpty(figure.Means);
        Assert.NotEmpty(figure.Source);
        Assert.Contains(figure.FreeAfter, (string[])["the same foot", "the other foot", "as told"]);
        Assert.NotEmpty(figure.Examples);
        Assert.NotEmpty(figure.Versions);
        Assert.True(figure.AnyCounts || figure.StatedCounts > 0);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_examples_are_danced_without_fault(string name)
    {
        var figure = FigureBook.Shipped.Named(name)!;
        foreach (var example in figure.Examples)
        {
            var reading = DanceReader.Read($"Example\nKind: partner, circle\nPhrase: any\n\n{example}\n");
            var faults = reading.Problems.Where(p => p.Severity == Dance.Problems.Severity.Error && p.Name is not ("loop-weight" or "loop-facing" or "count-gap")).ToList();
            Assert.True(faults.Count == 0, $"{example}: {string.Join("; ", faults.Select(f => f.Message))}");
            Assert.All(reading.Score.Roles, role => Assert.NotEmpty(role.Steps));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Danced_from_either_foot_it_holds_its_counts_and_frees_the_foot_it_says(string name)
    {
        var figure = FigureBook.Shipped.Named(name)!;
        foreach (var way in Ways(figure))
        {
            foreach (var foot in (Foot[])[Foot.Left, Foot.Right])
            {
                foreach (var role in Alone(figure, way, foot))
                {
                    Assert.All(role.Steps, step => Assert.Equal(Conflict.None, step.Conflict));
                    if (figure.FreeAfter == "as told" || role.Role == Role.Follow) continue;
                    var expected = figure.FreeAfter == "the same foot" ? foot : foot.Other();
                    Assert.True(role.End.Free == expected, $"{name} {way} from the {foot.Word()} foot ends with the {role.End.Free?.Word() ?? "no"} foot free");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void From_the_right_foot_it_is_the_mirror_image(string name)
    {
        var figure = FigureBook.Shipped.Named(name)!;
        foreach (var way in Ways(figure))
        {
            var left = Alone(figure, way, Foot.Left);
            var right = Alone(figure, way, Foot.Right);
            for (var r = 0; r < left.Count; r++)
            {
                Assert.Equal(left[r].Steps.Count, right[r].Steps.Count);
                for (var i = 0; i < left[r].Steps.Count; i++)
                {
                    var (a, b) = (left[r].Steps[i], right[r].Steps[i]);
                    Assert.Equal(a.At, b.At);
                    Assert.Equal(a.Kind, b.Kind);
                    Assert.Equal(a.Direction, b.Direction);
                    Assert.Equal(a.Foot, b.Foot.Mirrored());
                    Assert.Equal(a.Weight, b.Weight.Mirrored());
                    // A turn that the page could name either way round is not tied to the foot.
                    if (figure.UsualTurn.IsNone) Assert.Equal(a.Turn, b.Turn.Mirrored);
                }
            }
        }
    }

    [Fact]
    public void Any_two_figures_of_line_dances_can_follow_each_other()
    {
        var figures = FigureBook.Shipped.All.Where(f => f is { AnyCounts: false, FreeAfter: not "as told" }).OrderBy(f => f.Name, StringComparer.Ordinal).ToList();
        Assert.True(figures.Count > 60);
        foreach (var first in figures)
        {
            foreach (var second in figures)
            {
                var text = $"Pair\nKind: line\nFeet: left free\n\n{CountsOf(first, 1)} {first.Name}\n{CountsOf(second, first.StatedCounts + 1)} {second.Name}\n";
                var score = DanceReader.Read(text).Score;
                Assert.True(score.Faults.Count == 0, $"{first.Name}, {second.Name}: {(score.Faults.Count > 0 ? score.Faults[0] : null)}");
                Assert.All(score.Roles[0].Steps, step => Assert.Equal(Conflict.None, step.Conflict));
            }
        }
    }

    [Fact]
    public void No_name_means_two_figures()
    {
        var names = FigureBook.Shipped.All.SelectMany(f => f.OtherNames.Prepend(f.Name).Select(n => (Name: n.Replace('-', ' '), f))).ToList();
        foreach (var same in names.GroupBy(n => n.Name)) Assert.Single(same.Select(s => s.f).Distinct());
    }

    private static IEnumerable<string> Ways(Figure figure) => figure.Versions.Select(v => v.Going?.Word() ?? "").Distinct();

    private static List<RoleScore> Alone(Figure figure, string way, Foot foot)
    {
        var counts = figure.AnyCounts ? "1-8" : CountsOf(figure, 1);
        var text = $"Alone\nKind: partner, circle\nHold: sweetheart\nFeet: same, {foot.Word()} free\n\n{counts} {figure.Name} {way}\n";
        var score = DanceReader.Read(text).Score;
        Assert.True(score.Faults.Count == 0, $"{figure.Name} {way}: {(score.Faults.Count > 0 ? score.Faults[0] : null)}");
        return [.. score.Roles];
    }

    private static string CountsOf(Figure figure, int from) =>
        figure.StatedCounts == 1 ? $"{from}" : $"{from}-{from + figure.StatedCounts - 1}";
}
