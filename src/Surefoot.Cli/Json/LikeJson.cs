using System.Text.Json;
using Surefoot.Cli.Commands;
using Surefoot.Likeness;

namespace Surefoot.Cli.Json;

/// <summary>The dances that are like one; the shape is docs/like.schema.json.</summary>
internal static class LikeJson
{
    public static void Write(Utf8JsonWriter json, LikeAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("title", answer.Title);
        json.WriteString("where", answer.Where);
        json.WriteNumber("others", answer.Others);
        json.WriteStartArray("likes");
        foreach (var found in answer.Found)
        {
            json.WriteStartObject();
            json.WriteString("title", found.Title);
            json.WriteString("where", found.Page is null ? found.Where.Replace('\\', '/') : found.Where);
            if (found.Page is { } page) json.WriteNumber("page", page);
            else json.WriteNull("page");
            Verdict(json, found.Verdict);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>What is said of two dances, in words and in counts.</summary>
    public static void Verdict(Utf8JsonWriter json, Verdict verdict)
    {
        var compared = verdict.Compared;
        json.WriteString("verdict", verdict.Kind switch { VerdictKind.Same => "same", VerdictKind.Variant => "variant", VerdictKind.SharesPart => "shares a part", _ => "different" });
        json.WriteString("says", verdict.Says);
        json.WriteNumber("share", Math.Round(compared.Share, 3));
        json.WriteNumber("differing", compared.Differing);
        json.WriteBoolean("mirrored", compared.Mirrored);
        json.WriteNumber("shift", compared.Shift);
    }
}
