using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;
using Surefoot.Tests.Support;
using Surefoot.Transcribe;

namespace Surefoot.Tests.Transcribe;

/// <summary>
/// Descriptions by other people (corpus/descriptions, the source in each one's first line) read as sheets, and compared
/// with the same dances written as pages by hand (corpus/published).
/// </summary>
public class Descriptions(ITestOutputHelper output)
{
    /// <summary>The share of steps read right that is reached; more is better, less is a fault.</summary>
    private const double Reached = 0.88;

    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["01-electric-slide-18"] = "electric-slide-18",
        ["05-grapevine-1914"] = "grapevine-1914",
        ["06-cotton-eyed-joe-partner"] = "cotton-eyed-joe-partner",
        ["09-texas-two-step"] = "texas-two-step",
        ["15-waltz-box-step"] = "waltz-box",
        ["46-cupid-shuffle-nutrition-handout"] = "cupid-shuffle",
        ["49-schottische-folk-encyclopaedia"] = "schottische-basic",
        ["60-mayim-encyclopaedia"] = "mayim",
        ["64-cha-cha-man-woman-page"] = "cha-cha-man-woman",
        ["68-kalamatianos-personal"] = "kalamatianos",
        ["72-foxtrot-basic-blog"] = "foxtrot-basic",
        ["74-cross-step-waltz-basic-blog"] = "cross-step-waltz",
    };

    public static TheoryData<string> All => [.. Directory.GetFiles(Root.At("corpus", "descriptions"), "*.txt").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void Most_steps_are_read_right_and_no_wrong_reading_goes_without_a_doubt()
    {
        var (right, all, whole) = (0, 0, 0);
        foreach (var (name, page) in Known)
        {
            var read = Read(name);
            var expected = DanceReader.Read(File.ReadAllText(Root.At("corpus", "published", page + ".dance"))).Score;
            var seen = DanceReader.Read(read.Page).Score;
            var (mine, theirs) = (0, 0);
            foreach (var role in expected.Roles)
            {
                var steps = (seen.Of(role.Role) ?? seen.Roles[0]).Steps;
                theirs += role.Steps.Count;
                mine += role.Steps.Count(s => steps.Any(t => Same(s, t)));
            }

            var same = mine == theirs && seen.Counts == expected.Counts
                && expected.Roles.All(r => (seen.Of(r.Role) ?? seen.Roles[0]) is var role && role.End.Facing - role.Start.Facing == r.End.Facing - r.Start.Facing);
            output.WriteLine($"{name}: {mine} of {theirs}{(same ? ", whole" : "")}, {read.Doubts.Count} doubts");
            Assert.All(Unflagged(read, seen, expected), step => Assert.Fail($"{name}, {step}: read otherwise than by hand, and nothing at its line says so"));
            if (!same) Assert.Contains(read.Doubts, d => d.Kind != DoubtKind.Assumed || d.Line > 0);
            (right, all, whole) = (right + mine, all + theirs, whole + (same ? 1 : 0));
        }

        output.WriteLine($"{right} of {all} steps, {whole} of {Known.Count} dances whole");
        Assert.True(right >= Reached * all, $"{right} of {all} steps");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Is_read_or_says_what_is_doubtful(string name)
    {
        var read = Read(name);
        Assert.NotEmpty(read.Page);
        Assert.Contains(read.Lines, l => l.Kind == LineKind.Steps);
        Assert.True(read.Doubts.Count > 0 || Known.ContainsKey(name), $"{name} cannot be compared, so something should be doubtful");
    }

    // Steps that were read otherwise than by hand, at whose line of the sheet nothing is doubted.
    private static IEnumerable<string> Unflagged(Transcript read, DanceScore seen, DanceScore expected)
    {
        var page = new SourceText(read.Page);
        foreach (var role in seen.Roles)
        {
            var hand = (expected.Of(role.Role) ?? expected.Roles[0]).Steps;
            foreach (var step in role.Steps.Where(s => s.Foot != FootUse.None && !hand.Any(h => Same(s, h))))
            {
                var line = read.From[page.LineOf(step.Source.Start)];
                if (!read.Doubts.Any(d => d.Line == line || (d.Line == 0 && d.Kind == DoubtKind.DoesNotWork))) yield return $"line {line} {role.Role} count {step.At}: {step.Foot} {step.Kind} {step.Direction}";
            }
        }
    }

    // When, which foot, and whether it takes the weight, leaves the floor or touches; where to, but for how far behind, and
    // but for triples: whether their middle step closes up is style.
    private static bool Same(ScoreStep a, ScoreStep b) =>
        a.At == b.At && a.Foot.Single() == b.Foot.Single() && a.Kind.Rule() == b.Kind.Rule()
        && (a.Kind.Rule() is not WeightRule.Takes || a.InTriple || b.InTriple || Near(a.Direction) == Near(b.Direction));

    private static Direction Near(Direction way) => way switch
    {
        Direction.ForwardAcross => Direction.Across,
        Direction.Behind or Direction.DiagonalBack => Direction.Back,
        Direction.DiagonalForward => Direction.Forward,
        Direction.Together => Direction.InPlace,
        _ => way,
    };

    private static Transcript Read(string name) => SheetReader.Read(File.ReadAllText(Root.At("corpus", "descriptions", name + ".txt")));
}
