using Surefoot.Dance;
using Surefoot.Draw;

namespace Surefoot.Cli.Sheets;

internal enum SheetForm
{
    Html,
    Text,
    Markdown,
}

internal static class SheetForms
{
    public static string Ending(this SheetForm form) => form switch
    {
        SheetForm.Text => ".txt",
        SheetForm.Markdown => ".md",
        _ => ".html",
    };

    public static string Write(this SheetForm form, Reading reading, SheetOptions options) => form switch
    {
        SheetForm.Text => TextSheet.Write(reading.Score, options, reading.Couple),
        SheetForm.Markdown => MarkdownSheet.Write(reading.Score, options, reading.Couple),
        _ => HtmlSheet.Write(reading.Score, reading.Motion, options, reading.Couple),
    };
}
