using System.Text.RegularExpressions;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Solver;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Properties;

/// <summary>Lengths as halls write them.</summary>
public partial class Measuring
{
    [Theory]
    [InlineData(0.5, "0.5 m", "0,5 m", "1 ft 8 in")]
    [InlineData(1.75, "1.75 m", "1,75 m", "5 ft 9 in")]
    [InlineData(0.3048, "0.3 m", "0,3 m", "1 ft")]
    [InlineData(0.1, "0.1 m", "0,1 m", "4 in")]
    [InlineData(0.01, "0.01 m", "0,01 m", "0.4 in")]
    // Rounding must not leave twelve inches beside a foot.
    [InlineData(0.604, "0.6 m", "0,6 m", "2 ft")]
    public void A_length_is_written_in_the_halls_way(double metres, string point, string comma, string feet)
    {
        Assert.Equal(point, Measures.Usual.Length(metres));
        Assert.Equal(comma, new Measures(Mark: DecimalMark.Comma).Length(metres));
        Assert.Equal(feet, new Measures(Units.FeetAndInches).Length(metres));
    }

    [Fact]
    public void Numbers_and_speeds_follow_the_mark()
    {
        var comma = new Measures(Units.FeetAndInches, DecimalMark.Comma);
        Assert.Equal("11,5 ft a second", comma.Speed(3.5));
        Assert.Equal("0,4 in", comma.Length(0.01));
        Assert.Equal("10\u00A0000", comma.Number(10_000, "N0"));
        Assert.Equal("10,000", Measures.Usual.Number(10_000, "N0"));
    }

    // Every page of the corpus that has something wrong with it, so that no message is forgotten.
    [Fact]
    public void Every_message_about_a_length_follows_the_halls_way()
    {
        var feet = new Measures(Units.FeetAndInches, DecimalMark.Comma);
        var solver = new ProvenSolver();
        var told = new HashSet<string>();
        foreach (var file in Directory.EnumerateFiles(Root.At("corpus"), "*.dance", SearchOption.AllDirectories))
        {
            var text = File.ReadAllText(file);
            var (usual, other) = (DanceReader.Read(text, solver: solver).Problems, DanceReader.Read(text, solver: solver, measures: feet).Problems);
            Assert.Equal(usual.Select(p => (p.Name, p.Span)), other.Select(p => (p.Name, p.Span)));
            for (var i = 0; i < usual.Count; i++)
            {
                var before = $"{usual[i].Message} {usual[i].Reason}";
                // What the page itself says is quoted as it stands.
                if (!Metres().IsMatch(before) || text.Contains(Metres().Match(before).Value, StringComparison.Ordinal)) continue;
                told.Add(usual[i].Name);
                Assert.DoesNotMatch(Metres(), $"{other[i].Message} {other[i].Reason}");
            }
        }

        Assert.Superset(new HashSet<string> { "hold-place", "loop-place", "drift", "travel-back", "foot-fast", "arm-low", "arm-reach", "bump-partner", "bump-couple" }, told);
    }

    [GeneratedRegex(@"\d[.,]\d+ m\b|\d\.\d+ s\b")]
    private static partial Regex Metres();
}
