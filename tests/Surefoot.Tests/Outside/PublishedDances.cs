using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Outside;

/// <summary>
/// Traditional dances and standard figures against what was published about them: counts, walls, feet and
/// facings. Each page in corpus/published has its facts beside it, with the source in their first line.
/// </summary>
public class PublishedDances
{
    public static TheoryData<string> Dances => [.. Root.Pages("corpus", "published").Select(p => Path.GetFileNameWithoutExtension(p))];

    [Fact]
    public void There_are_at_least_eight_each_with_its_source()
    {
        Assert.True(Dances.Count >= 8);
        Assert.All(Root.Pages("corpus", "published"), page => Assert.StartsWith("source: ", File.ReadAllText(Path.ChangeExtension(page, ".facts"))));
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Dances_as_published(string name)
    {
        var file = Root.At("corpus", "published", name + ".dance");
        var reading = DanceReader.Read(File.ReadAllText(file));
        var score = reading.Score;
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => p.Name + " " + p.Message));
        foreach (var line in File.ReadAllLines(Path.ChangeExtension(file, ".facts")))
        {
            var colon = line.IndexOf(':');
            var (key, value) = (line[..colon], line[(colon + 1)..].Trim());
            switch (key)
            {
                case "source":
                    break;
                case "counts":
                    Assert.Equal(int.Parse(value), score.Counts.Ceiling);
                    break;
                case "walls":
                    var turned = (score.Roles[0].End.Facing - score.Roles[0].Start.Facing).Eighths;
                    Assert.Equal(int.Parse(value), turned switch { 0 => 1, 4 or -4 => 2, _ => 4 });
                    break;
                case "steps":
                    Assert.Equal(int.Parse(value), score.Roles[0].Steps.Count(s => s.ChangesWeight));
                    break;
                case "hops":
                    Assert.Equal(int.Parse(value), score.Roles[0].Steps.Count(s => s.Kind == ActionKind.Hop));
                    break;
                case "shuffles forward":
                    Assert.Equal(int.Parse(value), score.Roles[0].Steps.Count(s => s is { Figure: "shuffle", Direction: Direction.Forward }) / 2);
                    break;
                case "first":
                    Assert.All(ByRole(score, value), x => Assert.Equal(x.Word, x.Role.Steps.First(s => s.Foot != FootUse.None).Foot.Single()!.Value.Letter()));
                    break;
                case "end free":
                    Assert.All(ByRole(score, value), x => Assert.Equal(x.Word, x.Role.End.Free!.Value.Letter()));
                    break;
                case "end facing":
                    Assert.All(ByRole(score, value), x => Assert.Equal(x.Word, x.Role.End.Facing.Name(score.Facts.Floor)));
                    break;
                case "alternates":
                    var weights = score.Roles[0].Steps.Where(s => s.ChangesWeight).Select(s => s.Foot).ToList();
                    Assert.All(weights.Zip(weights.Skip(1)), pair => Assert.NotEqual(pair.First, pair.Second));
                    break;
                case "left goes" or "right goes":
                    var foot = key.StartsWith("left", StringComparison.Ordinal) ? FootUse.Left : FootUse.Right;
                    Assert.Equal(value.Split(", ").Order(), score.Roles[0].Steps.Where(s => s.Foot == foot).Select(s => s.Direction.Word()).Distinct().Order());
                    break;
                case "lead goes" or "follow goes":
                    var role = key.StartsWith("lead", StringComparison.Ordinal) ? Role.Lead : Role.Follow;
                    Assert.Equal([value], score.Of(role)!.Steps.Select(s => s.Direction.Word()).Distinct());
                    break;
                case "travels":
                    var way = reading.Motion.Roles[0].Travel;
                    Assert.True(value == "right" ? way.Y < -1 : way.Y > 1, $"travelled {way}");
                    break;
                case "comes back":
                    Assert.All(reading.Motion.Roles, r => Assert.True(r.Travel.Length < 0.15, $"{r.Role} ended {r.Travel} away"));
                    break;
                default:
                    Assert.Fail($"{name} states a fact that no test reads: {key}");
                    break;
            }
        }
    }

    // "lead L, follow R" or one word for everybody.
    private static List<(RoleScore Role, string Word)> ByRole(DanceScore score, string value) =>
        [.. score.Roles.Select(role =>
        {
            var own = value.Split(", ").FirstOrDefault(v => v.StartsWith(role.Role.Word() + " ", StringComparison.Ordinal));
            return (role, own is null ? value : own[(role.Role.Word().Length + 1)..]);
        })];
}
