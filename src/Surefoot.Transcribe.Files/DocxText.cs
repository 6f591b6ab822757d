using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;
using Surefoot.Dance.Text;

namespace Surefoot.Transcribe.Files;

/// <summary>The words of a DOCX file (ECMA-376): a paragraph a line, a table's row a line with its cells apart.</summary>
internal static class DocxText
{
    public static (string?, NoPage?) Read(byte[] bytes)
    {
        try
        {
            using var stream = new MemoryStream(bytes, writable: false);
            using var document = WordprocessingDocument.Open(stream, isEditable: false);
            if (document.MainDocumentPart?.Document?.Body is not { } body) return (null, new("there is no text in it.", "Is it the right file?"));
            var text = new StringBuilder();
            foreach (var element in body.ChildElements) Add(text, element);
            return (text.ToString(), null);
        }
        catch (Exception fault) when (fault is OpenXmlPackageException or IOException or InvalidDataException or FormatException or System.Xml.XmlException or FileFormatException)
        {
            return (null, new("it is a packed file, but not a document with text in it.", "Open it where it was written and save it as a document or as plain text."));
        }
    }

    private static void Add(StringBuilder text, OpenXmlElement element)
    {
        switch (element)
        {
            case Paragraph paragraph:
                text.Append(Words(paragraph)).Append('\n');
                break;
            case Table table:
                foreach (var row in table.Elements<TableRow>())
                {
                    text.AppendJoin("   ", row.Elements<TableCell>().Select(c => string.Join(' ', c.Elements<Paragraph>().Select(Words)))).Append('\n');
                }

                break;
        }
    }

    private static string Words(Paragraph paragraph)
    {
        var words = new StringBuilder();
        foreach (var part in paragraph.Descendants())
        {
            switch (part)
            {
                case Text run:
                    words.Append(run.Text);
                    break;
                case TabChar:
                    words.Append('\t');
                    break;
                case Break:
                    words.Append('\n');
                    break;
            }
        }

        return words.ToString();
    }
}
