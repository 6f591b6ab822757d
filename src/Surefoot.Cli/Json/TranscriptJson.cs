using System.Text.Json;
using Surefoot.Transcribe;

namespace Surefoot.Cli.Json;

/// <summary>Sheets read, for other programs; the form is in docs/read.schema.json.</summary>
internal static class TranscriptJson
{
    public static void Write(Utf8JsonWriter writer, IReadOnlyList<(string File, Transcript Read)> all)
    {
        writer.WriteStartObject();
        writer.WriteStartArray("sheets");
        foreach (var (file, read) in all)
        {
            writer.WriteStartObject();
            writer.WriteString("file", file.Replace('\\', '/'));
            writer.WriteString("page", read.Page);
            writer.WriteNumber("understood", Math.Round(read.Understood, 3));
            writer.WriteStartArray("lines");
            foreach (var line in read.Lines)
            {
                writer.WriteStartObject();
                writer.WriteNumber("line", line.Number);
                writer.WriteString("text", line.Text);
                writer.WriteString("kind", line.Kind.ToString().ToLowerInvariant());
                writer.WriteNumber("sure", Math.Round(line.Confidence, 3));
                Texts(writer, "became", line.Became);
                // What the hall told is assumed as well, and no doubt.
                Texts(writer, "assumed", [.. line.Assumed, .. read.Words.Where(w => w.Line == line.Number).Select(w => w.Says).Distinct(StringComparer.Ordinal)]);
                Texts(writer, "notUnderstood", line.NotUnderstood);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
            writer.WriteStartArray("doubts");
            foreach (var doubt in read.Doubts)
            {
                writer.WriteStartObject();
                writer.WriteString("kind", Kind(doubt.Kind));
                writer.WriteNumber("line", doubt.Line);
                writer.WriteString("says", doubt.Says);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
            writer.WriteStartArray("words");
            foreach (var used in read.Words)
            {
                writer.WriteStartObject();
                writer.WriteNumber("line", used.Line);
                writer.WriteString("said", used.Said);
                writer.WriteString("means", used.Word.IsNoStep ? SheetWord.NoStep : used.Word.Means);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static string Kind(DoubtKind kind) => kind switch
    {
        DoubtKind.NotUnderstood => "not understood",
        DoubtKind.DoesNotWork => "does not work",
        DoubtKind.Disagrees => "disagrees",
        DoubtKind.TwoReadings => "two readings",
        _ => "assumed",
    };

    private static void Texts(Utf8JsonWriter writer, string name, IEnumerable<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (var text in texts) writer.WriteStringValue(text);
        writer.WriteEndArray();
    }
}
