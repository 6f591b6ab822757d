using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Web.Listing;

namespace Surefoot.Web.Deeds;

/// <summary>A notebook's ways of saying things.</summary>
internal static class SettingsDeeds
{
    public static void MapSettings(this WebApplication app)
    {
        var deeds = app.MapGroup("/settings").Guarded(_ => "/settings");
        deeds.MapPost("/new", async (HttpContext context, DanceLibrary library, Notes notes) =>
        {
            var (made, refusal) = await library.Notebooks.AddAsync(context.Request.Form["name"].ToString());
            return made is null ? notes.Say("/settings", new(refusal!.Why, Bad: true)) : notes.Say($"/settings?notebook={made.Id}", new($"“{made.Name}” is a notebook now."));
        });
        deeds.MapPost("/{notebook:long}", Keep);
        deeds.MapPost("/{notebook:long}/bin", async (long notebook, DanceLibrary library, Notes notes) =>
        {
            var name = (await library.Notebooks.OneAsync(notebook))?.Name;
            return await library.NotebookBin.PutAsync(notebook) is { } refusal
                ? notes.Say("/settings", new(refusal.Why, Bad: true))
                : notes.Say("/settings", new($"“{name}” is in the bin, with its dances.", Undo: $"/bin/notebook/{notebook}"));
        });
    }

    private static async Task<IResult> Keep(HttpContext context, long notebook, DanceLibrary library, Notes notes)
    {
        var home = $"/settings?notebook={notebook}";
        var form = context.Request.Form;
        if (await library.Notebooks.OneAsync(notebook) is not { } before) return notes.Say("/settings", new("That notebook is not there any more.", Bad: true));
        if (Lengths.Read(form["leadStature"]) is not { } lead || Lengths.Read(form["followStature"]) is not { } follow)
        {
            return notes.Say(home, new($"A height is written as {before.Settings.Measures.Number(1.75, "0.00")}, 175 cm or 5 ft 9. Nothing was changed.", Bad: true));
        }

        var told = form["tempo"].ToString().Trim();
        int? tempo = int.TryParse(told, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
        if (told.Length > 0 && tempo is null) return notes.Say(home, new("A tempo is given in counts a minute, such as 112. Nothing was changed.", Bad: true));
        var settings = before.Settings with
        {
            LeadWord = Word(form["leadWord"], "Lead"),
            FollowWord = Word(form["followWord"], "Follow"),
            LeadStature = lead.Metres,
            FollowStature = follow.Metres,
            Units = form["units"] == "feet" ? Units.FeetAndInches : Units.Metric,
            DecimalMark = form["mark"] == "comma" ? DecimalMark.Comma : DecimalMark.Point,
            Paper = form["paper"] == "letter" ? Paper.Letter : Paper.A4,
            UsualTempo = tempo,
            Theme = form["theme"].ToString() is { } theme and ("light" or "dark" or "dim") ? theme : "",
        };
        var refusal = await library.Notebooks.SetAsync(notebook, settings);
        if (refusal is null && form["name"].ToString().Trim() != before.Name) refusal = await library.Notebooks.RenameAsync(notebook, form["name"].ToString());
        return notes.Say(home, refusal is null ? new("The settings are kept.") : new(refusal.Why, Bad: true));
    }

    private static string Word(string? typed, string usual) => StartingPage.Title(typed) is { Length: > 0 } word ? word : usual;
}
