using System.Text.Json;
using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Cli.Json;

/// <summary>One page of the check document; its shape is docs/check.schema.json.</summary>
internal static class CheckJson
{
    public static void Page(Utf8JsonWriter json, PageFile file, Reading reading)
    {
        json.WriteStartObject();
        json.WriteString("file", file.PortablePath);
        json.WriteString("title", reading.Score.Title);
        json.WriteNumber("counts", reading.Score.Counts.Ceiling);
        if (Walls.Of(reading) is { } walls) json.WriteNumber("walls", walls);
        else json.WriteNull("walls");
        json.WriteStartArray("problems");
        foreach (var problem in reading.Problems) Write(json, problem, reading.Page.Source);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Problem problem, SourceText source)
    {
        json.WriteStartObject();
        json.WriteString("name", problem.Name);
        json.WriteString("severity", ProblemPrinter.Word(problem.Severity));
        Place(json, problem.Span, source);
        json.Text("part", problem.Part);
        json.Text("count", problem.Count);
        json.Text("role", problem.Role?.Word());
        json.WriteString("message", problem.Message);
        json.WriteString("reason", problem.Reason);
        json.WriteStartArray("fixes");
        foreach (var fix in problem.Fixes)
        {
            json.WriteStartObject();
            json.WriteString("title", fix.Title);
            json.WriteString("sure", fix.Sureness switch { Sureness.Sure => "sure", Sureness.Likely => "likely", _ => "idea" });
            json.WriteStartArray("edits");
            foreach (var edit in fix.Edits)
            {
                json.WriteStartObject();
                Place(json, edit.Span, source);
                json.WriteString("text", edit.Text);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter json, TextSpan span, SourceText source)
    {
        var (line, column) = source.Place(span.Start);
        json.WriteNumber("line", line);
        json.WriteNumber("column", column);
        json.WriteNumber("length", span.Length);
    }
}
