using System.Text.Json;
using Surefoot.Dance.Basics;
using Surefoot.Film.Hearing;
using Surefoot.Film.Notes;

namespace Surefoot.Cli.Json;

/// <summary>Notes about a film, for other programs; the form is in docs/film.schema.json.</summary>
internal static class FilmJson
{
    public static void Write(Utf8JsonWriter json, string page, string captions, FilmNotes notes)
    {
        json.WriteStartObject();
        json.WriteString("page", page);
        json.WriteString("captionFile", captions);
        json.WriteString("title", notes.Title);
        json.WriteNumber("seconds", notes.End.Seconds);
        Chapters(json, "chapters", notes.Chapters);
        json.WriteStartArray("stretches");
        foreach (var one in notes.Stretches)
        {
            json.WriteStartObject();
            json.WriteNumber("from", one.From.Seconds);
            json.WriteNumber("to", one.To.Seconds);
            json.WriteString("how", How(one.How));
            json.Text("part", one.Part);
            if (one.Part is not null)
            {
                json.WriteNumber("fromCount", one.FromCount);
                json.WriteNumber("toCount", one.ToCount);
                json.Text("role", one.Role?.Word());
                json.Text("side", one.Side == FilmSide.Unsaid ? null : one.Side.ToString().ToLowerInvariant());
                if (one.Tempo is { } tempo) json.WriteNumber("tempo", tempo);
                else json.WriteNull("tempo");
                json.WriteNumber("sure", one.Sure);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("differences");
        foreach (var one in notes.Differences)
        {
            json.WriteStartObject();
            json.WriteNumber("at", one.At.Seconds);
            json.WriteString("kind", Kind(one.Kind));
            json.WriteString("part", one.Part);
            json.WriteString("counts", one.Counts);
            json.Text("role", one.Role?.Word());
            json.WriteString("said", one.Said);
            json.WriteString("says", one.Says);
            json.WriteNumber("line", one.Line);
            json.WriteString("written", one.Written);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("captions");
        foreach (var one in notes.Captions)
        {
            json.WriteStartObject();
            json.WriteNumber("from", one.From.Seconds);
            json.WriteNumber("to", one.To.Seconds);
            json.WriteString("text", one.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("troubles");
        foreach (var one in notes.Troubles)
        {
            json.WriteStartObject();
            json.WriteNumber("line", one.Line);
            json.WriteString("says", one.Says);
            json.WriteBoolean("lost", one.Lost);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Chapters(Utf8JsonWriter json, string name, ValueList<Chapter> chapters)
    {
        json.WriteStartArray(name);
        foreach (var one in chapters)
        {
            json.WriteStartObject();
            json.WriteNumber("from", one.From.Seconds);
            json.WriteNumber("to", one.To.Seconds);
            json.WriteString("title", one.Title);
            json.WriteString("how", How(one.How));
            json.Text("part", one.Part);
            json.Text("role", one.Role?.Word());
            Chapters(json, "inside", one.Inside);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string How(ShownHow how) => how switch
    {
        ShownHow.Walked => "walked",
        ShownHow.Counted => "counted",
        ShownHow.AtTempo => "at tempo",
        _ => "talk",
    };

    private static string Kind(DifferenceKind kind) => kind switch
    {
        DifferenceKind.OneTooMany => "one too many",
        DifferenceKind.OtherFoot => "other foot",
        DifferenceKind.OtherWay => "other way",
        DifferenceKind.OtherTurn => "other turn",
        DifferenceKind.Missing => "missing",
        _ => "other part",
    };
}
