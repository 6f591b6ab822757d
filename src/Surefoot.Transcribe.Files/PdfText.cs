using System.Text;
using Surefoot.Dance.Text;
using UglyToad.PdfPig;
using PdfPage = UglyToad.PdfPig.Content.Page;

namespace Surefoot.Transcribe.Files;

/// <summary>The words of a PDF file, line by line as they stand on the paper; columns stay apart.</summary>
internal static class PdfText
{
    /// <summary>Words whose feet are less than this share of their height apart stand on one line.</summary>
    private const double SameLine = 0.5;

    /// <summary>A gap of more than so many letter heights parts columns.</summary>
    private const double Column = 1.5;

    public static (string?, NoPage?) Read(byte[] bytes)
    {
        try
        {
            using var pdf = PdfDocument.Open(bytes);
            var text = new StringBuilder();
            foreach (var page in pdf.GetPages()) Add(text, page);
            return text.ToString().Trim().Length == 0
                ? (null, new("its pages are pictures, and there are no letters in it.", "Type the dance, or have the pictures turned into text first."))
                : (text.ToString(), null);
        }
#pragma warning disable CA1031 // The library throws whatever its parts throw; for the reader every one of them means the same.
        catch (Exception)
#pragma warning restore CA1031
        {
            return (null, new("it is damaged or locked, and cannot be read.", "Open it where it can be read, copy its words and paste them."));
        }
    }

    private static void Add(StringBuilder text, PdfPage page)
    {
        var words = page.GetWords().Where(w => w.Text.Trim().Length > 0).OrderByDescending(w => w.BoundingBox.Bottom).ToList();
        while (words.Count > 0)
        {
            var first = words[0];
            var height = Math.Max(1, first.BoundingBox.Height);
            var line = words.TakeWhile(w => first.BoundingBox.Bottom - w.BoundingBox.Bottom <= height * SameLine).OrderBy(w => w.BoundingBox.Left).ToList();
            words.RemoveRange(0, line.Count);
            for (var i = 0; i < line.Count; i++)
            {
                if (i > 0) text.Append(line[i].BoundingBox.Left - line[i - 1].BoundingBox.Right > height * Column ? "   " : " ");
                text.Append(line[i].Text);
            }

            text.Append('\n');
        }
    }
}
