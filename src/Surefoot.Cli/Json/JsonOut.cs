using System.Text.Encodings.Web;
using System.Text.Json;

namespace Surefoot.Cli.Json;

/// <summary>Writes a document for other programs: indented, with "&amp;" and "½" as themselves, the same bytes on every machine.</summary>
internal static class JsonOut
{
    private static readonly JsonWriterOptions Form = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static void Write(TextWriter to, Action<Utf8JsonWriter> document)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Form)) document(json);
        to.WriteLine(System.Text.Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length));
    }

    /// <summary>On one line, for files that are long and only read by programs.</summary>
    public static string Compact(Action<Utf8JsonWriter> document)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Form with { Indented = false })) document(json);
        return System.Text.Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length) + "\n";
    }

    public static void Text(this Utf8JsonWriter json, string name, string? value)
    {
        if (value is null) json.WriteNull(name);
        else json.WriteString(name, value);
    }
}
