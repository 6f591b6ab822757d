using System.Globalization;
using Surefoot.Lessons;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Text;
using Surefoot.Library;
using Surefoot.Web.Deeds;

namespace Surefoot.Web.Teaching;

/// <summary>What the forms of the terms' rooms do: a term begun, kept, told, ticked, thrown away.</summary>
internal static class TermDeeds
{
    private static readonly Note Gone = new("That term is not there any more.", Bad: true);

    public static void MapTerms(this WebApplication app)
    {
        var deeds = app.MapGroup("/terms").Guarded(_ => "/terms");
        deeds.MapPost("/new", New);
        deeds.MapPost("/{id:long}/keep", Keep);
        deeds.MapPost("/{id:long}/teach", Teach);
        deeds.MapPost("/{id:long}/tell", Tell);
        deeds.MapPost("/{id:long}/reached", Reached);
        deeds.MapPost("/{id:long}/not-reached", NotReached);
        deeds.MapPost("/{id:long}/gone", async (long id, DanceLibrary library, ThrownTerms thrown, Notes notes) =>
        {
            if (await library.Terms.OneAsync(id) is not { } term) return notes.Say("/terms", Gone);
            await library.Terms.ThrowAwayAsync(id);
            return notes.Say("/terms", new($"“{Title(term.Title)}” is thrown away.", Undo: $"/terms/back/{thrown.Put(term)}"));
        });
        deeds.MapPost("/back/{word}", Back);
        app.MapTermPrinting();
    }

    internal static string Title(string title) => title.Length > 0 ? title : "A term without a name";

    private static async Task<IResult> New(HttpContext context, DanceLibrary library, Notes notes, TimeProvider clock)
    {
        var form = context.Request.Form;
        var title = StartingPage.Title(form["title"]);
        var home = await Homes.OfAsync(library, form["notebook"]);
        var text = StartingTerm.For(title.Length == 0 ? "New term" : title, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
        var (term, refusal) = await library.Terms.AddAsync(home, TermPage.Read(text).Title, text);
        return term is null ? notes.Say("/terms", new(refusal!.Why, Bad: true)) : Results.LocalRedirect($"/terms/{term.Id}");
    }

    private static async Task<IResult> Back(string word, DanceLibrary library, ThrownTerms thrown, Notes notes)
    {
        if (thrown.Take(word) is not { } gone) return notes.Say("/terms", Gone);
        var (term, refusal) = await library.Terms.AddAsync(gone.Notebook, gone.Title, gone.Text);
        if (term is not null) return notes.Say($"/terms/{term.Id}", new($"“{Title(gone.Title)}” is back."));
        // It is not lost because its notebook is in the bin just now.
        return notes.Say("/terms", new($"{refusal!.Why} Bring the notebook back first.", Bad: true, Undo: $"/terms/back/{thrown.Put(gone)}"));
    }

    private static async Task<IResult> Keep(HttpContext context, long id, DanceLibrary library, Notes notes)
    {
        var form = context.Request.Form;
        // Browsers send line ends in a way of their own.
        var text = form["text"].ToString().ReplaceLineEndings("\n");
        return await KeepAsync(id, form["version"], text, library, notes, "The term is kept and planned.", typed: text);
    }

    private static async Task<IResult> Teach(HttpContext context, long id, DanceLibrary library, TermRoom room, Notes notes)
    {
        var form = context.Request.Form;
        if (await room.ShowAsync(id) is not { } shown) return notes.Say("/terms", Gone);
        // Only what the notebook has: nothing else comes into the text by this way.
        var titles = shown.Untaught.Where(form["dance"].ToHashSet(StringComparer.Ordinal).Contains).ToList();
        if (titles.Count == 0) return notes.Say($"/terms/{id}", new("No dance was chosen. Nothing was changed.", Bad: true));
        return await KeepAsync(id, form["version"], TermWriting.Taught(shown.Kept.Text, titles), library, notes, $"{(titles.Count == 1 ? $"“{titles[0]}” is" : $"{titles.Count} dances are")} in the term. Say behind a title for whom and by when it is wished.");
    }

    private static async Task<IResult> Tell(HttpContext context, long id, DanceLibrary library, TermRoom room, Notes notes) =>
        await room.ShowAsync(id) is { Plan: { } plan } shown
            ? await KeepAsync(id, context.Request.Form["version"], TermWriting.Told(shown.Kept.Text, plan), library, notes, "That is what people are told; planning anew stays with it as far as it can.")
            : notes.Say("/terms", Gone);

    private static async Task<IResult> Reached(HttpContext context, long id, DanceLibrary library, TermRoom room, Notes notes)
    {
        var form = context.Request.Form;
        if (await room.ShowAsync(id) is not { Case: { } term, Plan: { } plan } shown) return notes.Say("/terms", Gone);
        if (!int.TryParse(form["lesson"], NumberStyles.None, CultureInfo.InvariantCulture, out var index) || plan.Lessons.FirstOrDefault(l => l.Lesson.Index == index) is not { } lesson)
        {
            return notes.Say($"/terms/{id}", new("That lesson is not to come any more. Nothing was changed.", Bad: true));
        }

        var dances = new List<(Course Course, IReadOnlyList<int> Bites, int Quality)>();
        foreach (var dance in lesson.Items.Where(i => i.Kind is ItemKind.Review or ItemKind.Teach).GroupBy(i => i.Course!.Value))
        {
            var ticked = form[$"done-{dance.Key}"].ToHashSet(StringComparer.Ordinal);
            var bites = dance.Where(i => i.Bite is { } bite && ticked.Contains($"{bite}")).Select(i => i.Bite!.Value).ToList();
            var again = dance.Any(i => i.Kind == ItemKind.Review) && ticked.Contains("again");
            var went = Mark(form[$"went-{dance.Key}"]) ?? 4;
            if (again) dances.Add((term.Courses[dance.Key], [], went));
            else dances.AddRange(bites.GroupBy(b => Mark(form[$"went-{dance.Key}-{b}"]) ?? went).Select(same => (term.Courses[dance.Key], (IReadOnlyList<int>)[.. same], same.Key)));
        }

        var text = TermWriting.Reached(shown.Kept.Text, term, lesson.Lesson, dances);
        return await KeepAsync(id, form["version"], text, library, notes, $"{DayWords.Weekday(lesson.Lesson.Day)} is ticked, and the rest is planned anew.");
    }

    /// <summary>How it went, from 0 to 5, where it is said.</summary>
    private static int? Mark(string? said) => said is [>= '0' and <= '5' and var digit] ? digit - '0' : null;

    private static async Task<IResult> NotReached(HttpContext context, long id, DanceLibrary library, TermRoom room, Notes notes)
    {
        var form = context.Request.Form;
        if (await room.ShowAsync(id) is not { Case: { } term } shown) return notes.Say("/terms", Gone);
        if (!int.TryParse(form["lesson"], NumberStyles.None, CultureInfo.InvariantCulture, out var index) || term.LastReached.FirstOrDefault(l => l.Index == index) is not { } lesson)
        {
            return notes.Say($"/terms/{id}", new("Only the lesson that was ticked last can be taken back. Nothing was changed.", Bad: true));
        }

        return await KeepAsync(id, form["version"], TermWriting.NotReached(shown.Kept.Text, term, lesson), library, notes, $"{DayWords.Weekday(lesson.Day)} is not done yet after all, and is planned anew.");
    }

    private static async Task<IResult> KeepAsync(long id, string? version, string text, DanceLibrary library, Notes notes, string says, string? typed = null)
    {
        if (!int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var basedOn)) return notes.Say($"/terms/{id}", Gone);
        return await library.Terms.KeepAsync(id, basedOn, TermPage.Read(text).Title, text) is { } refusal
            ? notes.Say($"/terms/{id}", new($"{refusal.Why} Nothing was changed.{(typed is null ? "" : $" What you wrote was: {typed}")}", Bad: true))
            : notes.Say($"/terms/{id}", new(says));
    }
}
