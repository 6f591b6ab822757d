using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Web.Deeds;
using Surefoot.Web.Listing;

namespace Surefoot.Tests.Web.Parts;

/// <summary>A part of the studio, drawn by itself without a browser or a studio.</summary>
public abstract class Part : BunitContext
{
    protected const string Harm = "<b onclick=alert(1)>Bold</b> & \"quoted\"";

    protected Part()
    {
        Services.AddSingleton<AntiforgeryStateProvider, Token>();
        Services.AddSingleton<Notes>();
        Services.AddSingleton<Bringing>();
    }

    internal static ShelfItem Dance(string title = "Bent Nail", long page = 7, int errors = 0, int warnings = 0, string[]? also = null, string[]? tags = null, bool couples = false, Floor floor = Floor.Walls, int? walls = 4, int counts = 32, int? from = 100, int? to = 110, string level = "beginner") => new(
        page, 1, $"sunday/dance-{page}", title, false, DateTimeOffset.UnixEpoch, couples, floor, walls, counts, new(4, 4), from, to, level, "", errors, warnings, 0,
        default, default, also is null ? default : new(also), tags is null ? default : new(tags), default);

    internal static Notebook Book(long id, string name) => new(id, name, new(), DateTimeOffset.UnixEpoch);

    internal static ShelfChoices Choices(params Notebook[] notebooks) => new(notebooks, new(["beginner", "advanced"], [new(3, 4), new(4, 4)], [32, 48], []));

    /// <summary>A part as a browser reads it, as a page of its own.</summary>
    internal static IDocument Document<T>(IRenderedComponent<T> drawn)
        where T : IComponent => new HtmlParser().ParseDocument(drawn.Markup);

    /// <summary>Everything in a part that has a role, with its name.</summary>
    internal static List<string> Heard<T>(IRenderedComponent<T> drawn)
        where T : IComponent => Parts.Heard.In(Document(drawn).QuerySelectorAll("*"));

    /// <summary>All the words of a part, as they are read.</summary>
    internal static string Words<T>(IRenderedComponent<T> drawn)
        where T : IComponent => Parts.Heard.Words(Document(drawn).Body!);

    /// <summary>Words that came in are words that are shown, whatever they look like.</summary>
    internal static void NothingActs<T>(IRenderedComponent<T> drawn)
        where T : IComponent
    {
        var document = Document(drawn);
        Assert.Empty(document.QuerySelectorAll("b, script:not([src^=dist]), [onclick]"));
        Assert.Contains(Harm, document.Body!.TextContent, StringComparison.Ordinal);
    }

    private sealed class Token : AntiforgeryStateProvider
    {
        public override AntiforgeryRequestToken? GetAntiforgeryToken() => new("a-token", "__RequestVerificationToken");
    }
}
