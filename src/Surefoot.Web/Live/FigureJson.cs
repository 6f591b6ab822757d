using System.Text.Json;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;
using Surefoot.Draw.Vocabulary;
using Surefoot.Draw.Words;
using Surefoot.Library;
using Surefoot.Web.Listing;

namespace Surefoot.Web.Live;

/// <summary>What a figure comes to, step by step from either foot, as the page at hand would dance it.</summary>
internal static class FigureJson
{
    /// <param name="text">The page: it may define figures of its own.</param>
    public static void Write(Utf8JsonWriter json, string name, string text, FigureBook notebook, NotebookSettings settings)
    {
        var (_, book) = PageReader.Read(text, notebook);
        json.WriteStartObject();
        if (book.Named(name) is { } figure)
        {
            json.WriteString("name", figure.Name);
            json.WriteString("means", figure.Means);
            json.WriteString("source", figure.Source);
            json.WriteStartArray("ways");
            foreach (var shown in FigureShown.All(figure, book)) Way(json, shown, settings);
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Way(Utf8JsonWriter json, FigureShown shown, NotebookSettings settings)
    {
        json.WriteStartObject();
        json.WriteString("way", shown.Way.Length > 0 ? $"{shown.Way}, starting {shown.From.Word()}" : $"starting {shown.From.Word()}");
        json.WriteStartArray("roles");
        foreach (var role in shown.Score.Roles)
        {
            json.WriteStartObject();
            json.WriteString("role", HallRoles.Of(role.Role, settings));
            json.WriteStartArray("steps");
            var before = role.Start.Weight;
            foreach (var step in role.Steps)
            {
                json.WriteStartObject();
                json.WriteString("count", step.At.Name);
                json.WriteString("words", StepWords.Of(step, before, spelled: true));
                json.WriteEndObject();
                before = step.Weight;
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
