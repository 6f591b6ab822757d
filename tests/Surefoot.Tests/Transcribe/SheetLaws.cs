using System.Text.RegularExpressions;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Tests.Properties;
using Surefoot.Tests.Support;
using Surefoot.Transcribe;

namespace Surefoot.Tests.Transcribe;

/// <summary>What holds for every sheet, whatever stands on it.</summary>
public class SheetLaws
{
    private static readonly string[] Sheets =
    [
        .. Directory.GetFiles(Root.At("corpus", "sheets"), "*.txt").Concat(Directory.GetFiles(Root.At("corpus", "descriptions"), "*.txt")).Order(StringComparer.Ordinal).Select(File.ReadAllText),
    ];

    [Fact]
    public void Every_line_of_a_sheet_is_kept_as_it_stood()
    {
        foreach (var sheet in Sheets) Kept(sheet);
    }

    [Fact]
    public void Any_text_at_all_is_read_and_kept() => Gen.String.Each(Kept, iter: 150);

    [Fact]
    public void Lines_of_sheets_in_any_order_are_read_and_kept() => Gen.Shuffle(Sheets.SelectMany(s => s.Split('\n')).ToArray(), 12).Each(
        lines => Kept(string.Join('\n', lines)), iter: 40);

    [Fact]
    public void Sheets_without_end_or_sense_are_read_too()
    {
        foreach (var one in (string[])["left ", "1", "1 & ", "step right and ", "R, ", "(", "the left foot behind the right ", "a", "Bars 1-4: "])
        {
            Kept(string.Concat(Enumerable.Repeat(one, 8_000 / one.Length)));
        }
    }

    [Fact]
    public void Line_ends_bullets_spaces_and_curly_marks_make_no_difference()
    {
        foreach (var sheet in Sheets)
        {
            var page = SheetReader.Read(sheet).Page;
            Assert.Equal(page, SheetReader.Read(sheet.Replace("\n", "\r\n")).Page);
            Assert.Equal(Steps(page), Steps(SheetReader.Read(sheet.Replace("'", "\u2019").Replace(" ", "\u00A0")).Page));
        }
    }

    [Fact]
    public void A_sheet_with_every_foot_the_other_way_round_gives_the_mirrored_dance()
    {
        foreach (var name in (string[])["counts-after", "count-column", "numbered-list", "prose", "telegraphic", "headings-with-counts"])
        {
            var sheet = File.ReadAllText(Root.At("corpus", "sheets", name + ".txt"));
            var mirrored = DanceReader.Read(SheetReader.Read(OtherWay(sheet)).Page).Score.Roles[0].Steps;
            var steps = DanceReader.Read(SheetReader.Read(sheet).Page).Score.Roles[0].Steps;
            Assert.Equal(steps.Select(s => (s.At, s.Kind, s.Direction, s.Foot.Single()?.Other(), -s.Turn.Eighths)), mirrored.Select(s => (s.At, s.Kind, s.Direction, s.Foot.Single(), s.Turn.Eighths)));
        }
    }

    private static string OtherWay(string sheet) => Regex.Replace(sheet, @"\b(?:left|right|Left|Right|LF|RF|L|R)\b", m => m.Value switch
    {
        "left" => "right",
        "right" => "left",
        "Left" => "Right",
        "Right" => "Left",
        "LF" => "RF",
        "RF" => "LF",
        "L" => "R",
        _ => "L",
    });

    private static IEnumerable<object> Steps(string page) =>
        DanceReader.Read(page).Score.Roles.SelectMany(r => r.Steps, (r, s) => (object)(r.Role, s.At, s.Kind, s.Foot, s.Direction, s.Turn));

    private static void Kept(string sheet)
    {
        var read = SheetReader.Read(sheet);
        Assert.Equal(sheet.ReplaceLineEndings("\n"), string.Join('\n', read.Lines.Select(l => l.Text)));
        Assert.All(read.Lines, line => Assert.InRange(line.Confidence, 0, 1));
        // What was not understood is told, and not only left out.
        Assert.All(read.Lines.Where(l => l.NotUnderstood.Count > 0), line => Assert.Contains(read.Doubts, d => d.Line == line.Number));
        _ = DanceReader.Read(read.Page);
    }
}
