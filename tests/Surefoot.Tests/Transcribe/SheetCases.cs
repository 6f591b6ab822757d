using System.Globalization;
using System.Text;
using Surefoot.Tests.Support;
using Surefoot.Transcribe;

namespace Surefoot.Tests.Transcribe;

/// <summary>
/// Sheets in many styles in corpus/sheets, each with the page and the doubts expected beside it in NAME.read. A case
/// that comes out differently leaves what was seen in NAME.read.seen; "./test --accept" takes it over.
/// </summary>
public class SheetCases
{
    public static TheoryData<string> Sheets => [.. Directory.GetFiles(Root.At("corpus", "sheets"), "*.txt").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void There_are_at_least_twenty_five_styles() => Assert.True(Sheets.Count >= 25);

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Reads_as_expected(string name)
    {
        var read = SheetReader.Read(File.ReadAllText(Root.At("corpus", "sheets", name + ".txt")));
        var seen = new StringBuilder(read.Page).Append("----\n");
        foreach (var doubt in read.Doubts) seen.Append(CultureInfo.InvariantCulture, $"{doubt.Kind} {doubt.Line}: {doubt.Says}\n");
        var (file, left) = (Root.At("corpus", "sheets", name + ".read"), Root.At("corpus", "sheets", name + ".read.seen"));
        var expected = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";
        if (expected == seen.ToString()) File.Delete(left);
        else File.WriteAllText(left, seen.ToString());
        Assert.Equal(expected, seen.ToString());
    }

    [Fact]
    public void No_expectation_is_left_over() => Assert.All(
        Directory.GetFiles(Root.At("corpus", "sheets"), "*.read"), file => Assert.True(File.Exists(Path.ChangeExtension(file, ".txt")), file));
}
