using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;
using Surefoot.Tests.Support;
using Surefoot.Transcribe;
using Surefoot.Transcribe.Files;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Writer;

namespace Surefoot.Tests.Transcribe;

/// <summary>A sheet reads the same whichever kind of file it is kept in. The files are made by the formats' own libraries.</summary>
public class SheetFiles
{
    private static readonly string Plain = File.ReadAllText(Root.At("corpus", "sheets", "two-columns.txt"));

    private static readonly string Expected = SheetReader.Read(Plain).Page;

    [Fact]
    public void In_a_pdf_with_its_columns_apart()
    {
        var pdf = new PdfDocumentBuilder();
        var font = pdf.AddStandard14Font(Standard14Font.Helvetica);
        var page = pdf.AddPage(UglyToad.PdfPig.Content.PageSize.A4);
        var height = 780;
        foreach (var line in Plain.Split('\n'))
        {
            var columns = System.Text.RegularExpressions.Regex.Split(line.TrimEnd(), @"\s{3,}");
            for (var c = 0; c < columns.Length; c++)
            {
                if (columns[c].Length > 0) page.AddText(columns[c], 11, new PdfPoint(50 + (c * 220), height), font);
            }

            height -= 18;
        }

        Assert.Equal(Expected, Page(pdf.Build()));
    }

    [Fact]
    public void In_a_document_with_a_table()
    {
        using var stream = new MemoryStream();
        using (var document = WordprocessingDocument.Create(stream, WordprocessingDocumentType.Document))
        {
            var body = new Body();
            var table = new Table();
            foreach (var line in Plain.TrimEnd().Split('\n'))
            {
                var columns = System.Text.RegularExpressions.Regex.Split(line, @"\s{3,}");
                if (columns.Length == 1) body.Append(Words(line));
                else table.Append(new TableRow(columns.Select(c => new TableCell(Words(c)))));
            }

            body.Append(table);
            document.AddMainDocumentPart().Document = new Document(body);
        }

        Assert.Equal(Expected, Page(stream.ToArray()));
    }

    [Theory]
    [InlineData("utf-8")]
    [InlineData("utf-16")]
    [InlineData("latin1")]
    public void In_plain_text_of_any_age(string letters)
    {
        var encoding = Encoding.GetEncoding(letters);
        var sheet = Plain + "\nCaf\u00E9 waltz, \u00BD speed.\n";
        Assert.Equal(SheetReader.Read(sheet).Page, Page([.. encoding.GetPreamble(), .. encoding.GetBytes(sheet)]));
    }

    [Fact]
    public void What_cannot_be_read_says_what_to_do()
    {
        foreach (var bytes in (byte[][])[[.. "%PDF-1.7 torn"u8], [.. "PK\u0003\u0004 torn"u8], [0xD0, 0xCF, 0x11, 0xE0, 0, 1, 2, 3]])
        {
            var (text, trouble) = SheetFile.Read(bytes);
            Assert.Null(text);
            Assert.EndsWith(".", trouble!.What);
            Assert.EndsWith(".", trouble.Advice);
        }
    }

    private static Paragraph Words(string text) => new(new Run(new Text(text) { Space = SpaceProcessingModeValues.Preserve }));

    private static string Page(byte[] file) => SheetReader.Read(SheetFile.Read(file).Text!).Page;
}
