using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;
using Surefoot.Draw;
using Surefoot.Library;
using Surefoot.Web.Listing;
using Surefoot.Web.Printing;

namespace Surefoot.Web.Live;

/// <summary>
/// What is known of a text, for the window it stands in: all places are UTF-16 characters from its top, as the
/// browser counts them.
/// </summary>
internal static class ReadingJson
{
    public static void Write(Utf8JsonWriter json, Desk desk)
    {
        var reading = desk.Reading;
        json.WriteStartObject();
        json.WriteNumber("number", desk.Number);
        json.WriteString("title", reading.Score.Title);
        json.WriteString("facts", reading.Score.Roles.Count == 0 ? "" : DanceInShort.Of(reading.Score, HallSheet.Of(desk.Settings)));
        json.WriteStartArray("problems");
        foreach (var problem in reading.Problems) Write(json, problem, reading.Page, desk.Settings);
        json.WriteEndArray();
        json.WriteStartArray("figures");
        foreach (var figure in reading.Page.Figures)
        {
            json.WriteStartObject();
            json.WriteString("name", figure.Name);
            json.WriteString("means", figure.Means);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("parts");
        foreach (var part in reading.Page.Parts) json.WriteNumberValue(part.Span.Start);
        json.WriteEndArray();
        Places(json, reading);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Problem problem, Page page, NotebookSettings settings)
    {
        json.WriteStartObject();
        json.WriteString("name", problem.Name);
        json.WriteString("severity", problem.Severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "hint" });
        Span(json, problem.Span);
        json.WriteString("place", Place(problem, settings));
        json.WriteString("message", HallRoles.In(problem.Message, settings));
        json.WriteString("reason", HallRoles.In(problem.Reason, settings));
        if (problem.Unfinished is { } unfinished)
        {
            json.WriteStartObject("unfinished");
            Span(json, unfinished.Where);
            json.WriteString("says", HallRoles.In(unfinished.Says, settings));
            json.WriteString("while", unfinished.While switch { Writing.Stated => "stated", Writing.Open => "open", _ => "typed" });
            json.WriteEndObject();
        }

        json.WriteStartArray("related");
        foreach (var related in problem.Related)
        {
            json.WriteStartObject();
            Span(json, related.Span);
            json.WriteString("says", HallRoles.In(RelatedPlace.Told(page, related, problem.Part), settings));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("fixes");
        foreach (var fix in problem.Fixes)
        {
            json.WriteStartObject();
            json.WriteString("title", HallRoles.In(fix.Title, settings));
            json.WriteStartArray("edits");
            foreach (var edit in fix.Edits)
            {
                json.WriteStartObject();
                Span(json, edit.Span);
                json.WriteString("text", edit.Text);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Which words are danced on which count of the repeat; words danced again by another line name that line too.</summary>
    private static void Places(Utf8JsonWriter json, Reading reading)
    {
        json.WriteStartArray("places");
        foreach (var role in reading.Score.Roles)
        {
            foreach (var step in role.Steps)
            {
                json.WriteStartObject();
                json.WriteString("role", role.Role.Word());
                json.WriteNumber("at", step.At.Value.ToDouble());
                Span(json, step.Source);
                if (step.RepeatedBy is { } by)
                {
                    json.WriteStartObject("by");
                    Span(json, by);
                    json.WriteEndObject();
                }

                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    private static void Span(Utf8JsonWriter json, TextSpan span)
    {
        json.WriteNumber("from", span.Start);
        json.WriteNumber("to", span.End);
    }

    // "Part A, count 5 (follow)".
    internal static string Place(Problem problem, NotebookSettings settings)
    {
        var place = (problem.Part, problem.Count) switch
        {
            ({ } part, { } count) => $"{part}, count {count}",
            ({ } part, null) => part,
            (null, { } count) => $"Count {count}",
            _ => "",
        };
        return problem.Role is { } role && role != Role.Dancer && place.Length > 0 ? $"{place} ({HallRoles.Of(role, settings)})" : place;
    }
}
