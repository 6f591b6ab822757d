using System.Text.Json;
using Surefoot.Dance.Text;

namespace Surefoot.Web.Live;

/// <summary>The page in its usual form, for the window it stands in: the text it was made from is known by its number.</summary>
internal static class TidyJson
{
    public static void Write(Utf8JsonWriter json, Desk desk)
    {
        var (page, book) = PageReader.Read(desk.Text, desk.Book);
        json.WriteStartObject();
        json.WriteNumber("number", desk.Number);
        json.WriteString("text", TidyPage.Print(page, book));
        json.WriteEndObject();
    }
}
