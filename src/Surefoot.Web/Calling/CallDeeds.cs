using System.Globalization;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Library;
using Surefoot.Web.Deeds;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Calling;

/// <summary>
/// What the forms of the calls' room do: a call gets other words, is silenced, added, or goes back to what follows from the steps. Each
/// writes or takes out a line of the page, and is kept as a version of it.
/// </summary>
internal static class CallDeeds
{
    /// <summary>Letters of a call. Working value: nobody says more in two counts.</summary>
    public const int Longest = 60;

    public static void MapCalls(this WebApplication app) => app.MapGroup("/calls/{page:long}").Guarded(Home).MapPost("/change", Change);

    private static string Home(HttpContext context) => Home(long.Parse((string)context.Request.RouteValues["page"]!, CultureInfo.InvariantCulture));

    private static string Home(long page) => $"/dance/{page}/calls";

    private static async Task<IResult> Change(HttpContext context, long page, Shelves shelves, Notes notes)
    {
        var form = context.Request.Form;
        if (await Side.FindAsync(shelves, $"{page}") is not { } side) return notes.Say("/", new("That dance is not there any more.", Bad: true));
        if (Whole(form["version"]) != side.Page.Current) return Bad("The dance was changed meanwhile. Nothing was written; look at its calls as they are now.");
        var reading = DanceReader.Read(side.Text, side.Book);
        if (Asked(form, reading) is not { } asked) return Bad("These counts are not in the dance. Nothing was written.");
        var what = form["do"].ToString();
        var words = string.Join(' ', form["words"].ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (what == "change" && (words.Length == 0 || words.Length > Longest)) return Bad(words.Length == 0 ? "Write what is called, or press “Nothing here”. Nothing was written." : $"A call has at most {Longest} letters. Nothing was written.");
        var text = what == "steps" ? CallWriting.Without(reading.Page.Source, reading.Score, asked.Was) : Written(side, reading, asked, what == "none" ? null : words);
        if (text is null) return Bad("Surefoot found no way to write this call into the page. Write it in the text, as in: Call 7-8: rock back");
        return await shelves.Library.Pages.KeepAsync(page, side.Page.Current, text, new(Note: "calls")) switch
        {
            Kept or NothingNew => notes.Say(Home(page), new(what switch
            {
                "steps" => "The call follows from the steps again.",
                "none" => "Nothing is called there.",
                _ => $"“{words}” stands in the page, and is called.",
            })),
            KeptBeside => Bad("Somebody else kept the dance at the same moment; yours is beside it in its history."),
            NotKept refused => Bad(refused.Why),
            _ => Bad("Nothing was written."),
        };

        IResult Bad(string says) => notes.Say(Home(page), new(says, Bad: true));
    }

    /// <param name="Was">Where the call stands that was changed.</param>
    /// <param name="Place">Where it is to stand.</param>
    private sealed record Wanted(int Section, CallPlace Was, CallPlace Place);

    private static Wanted? Asked(IFormCollection form, Reading reading)
    {
        var score = reading.Score;
        if (Whole(form["section"]) is not { } section || section >= score.Sections.Count || section < -1) return null;
        var role = score.Roles.Count == 1 ? null : RoleOf(form["role"]);
        var was = form.ContainsKey("was") ? RoleOf(form["was"]) : role;
        if (section < 0) return new(-1, CallWriting.PlaceOf(score, -1, 0, 0, was), CallWriting.PlaceOf(score, -1, 0, 0, role));
        var (start, part) = (score.Sections[section].Start.Whole, score.Parts[score.Sections[section].Part]);
        // What is added is named by the counts of its part, what is changed by those through the repeat.
        var from = Whole(form["from"]) ?? start + Whole(form["first"]) - part.CountOffset - 1;
        var counts = Whole(form["counts"]) ?? Whole(form["last"]) - Whole(form["first"]) + 1;
        if (from is not { } begins || counts is not { } long_ || long_ < 1 || begins < start || begins + long_ > start + part.Length.Ceiling) return null;
        var at = CallWriting.PlaceOf(score, section, begins, long_, was);
        return new(section, at, at with { Role = role });
    }

    /// <summary>The text with the call, or null where it would not be heard as it was meant.</summary>
    private static string? Written(Side side, Reading reading, Wanted asked, string? words)
    {
        // What is said on the other foot is written as it is said on the first.
        var mirrored = asked.Section >= 0 && reading.Score.Sections[asked.Section].Mirrored;
        var said = words is not null && mirrored ? CallWords.Mirrored(words) : words;
        foreach (var both in (bool[])[false, true])
        {
            var text = CallWriting.With(reading.Page.Source, reading.Page, reading.Score, asked.Was, asked.Place, said, both);
            var after = DanceReader.Read(text, side.Book);
            if (Nowhere(after) <= Nowhere(reading) && Heard(after, asked, words)) return text;
        }

        return null;
    }

    private static int Nowhere(Reading reading) => reading.Problems.Count(p => p.Name is "call-nowhere" or "line-unread" or "count-gap");

    private static bool Heard(Reading reading, Wanted asked, string? words)
    {
        var role = asked.Place.Role;
        var calls = asked.Section < 0 ? reading.Calls.Opening : reading.Calls.Calls;
        var ahead = asked.Section < 0 ? 0 : reading.Score.Sections[asked.Section].Start.Whole - 1;
        var there = calls.Where(c => asked.Section < 0 || (c.From <= asked.Place.To + ahead && c.To >= asked.Place.From + ahead)).ToList();
        return words is null
            ? !there.Exists(c => role is null || c.Role is null || c.Role == role)
            : there.Exists(c => c.Written && c.Role == role && c.Words == string.Join(' ', words.Split(['"', '\u201C', '\u201D', ' '], StringSplitOptions.RemoveEmptyEntries)));
    }

    private static Role? RoleOf(string? said) => said switch
    {
        "lead" => Role.Lead,
        "follow" => Role.Follow,
        _ => null,
    };

    private static int? Whole(string? said) => int.TryParse(said, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number : null;
}
