using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Tests.Library;
using Surefoot.Web.Components.Pages;
using Surefoot.Web.Deeds;
using Surefoot.Web.Listing;

namespace Surefoot.Tests.Web.Parts;

/// <summary>Whole rooms on a library of their own.</summary>
public class Rooms : Part
{
    private async Task<Home> LibraryAsync(bool empty = false)
    {
        var home = await Home.OpenAsync(Place.Sqlite, empty);
        Services.AddSingleton(home.Library);
        Services.AddSingleton<Shelving>();
        Services.AddSingleton<IServer, NotOpen>();
        return home;
    }

    /// <summary>A studio that nobody on the network reaches.</summary>
    private sealed class NotOpen : IServer
    {
        public NotOpen() => Features.Set<IServerAddressesFeature>(new ServerAddressesFeature());

        public IFeatureCollection Features { get; } = new FeatureCollection();

        public Task StartAsync<TContext>(IHttpApplication<TContext> application, CancellationToken cancellationToken)
            where TContext : notnull => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public void Dispose()
        {
        }
    }

    private IRenderedComponent<T> At<T>(string address)
        where T : IComponent
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        var context = new DefaultHttpContext();
        if (address.IndexOf('?', StringComparison.Ordinal) is var at and >= 0) context.Request.QueryString = new(address[at..]);
        return Render<T>(p => p.AddCascadingValue<HttpContext>(context));
    }

    [Fact]
    public async Task A_bin_with_nothing_in_it_says_what_it_is_for()
    {
        await using var home = await LibraryAsync();
        var bin = At<Bin>("/bin");
        Assert.Contains("The bin is empty.", Words(bin));
        Assert.DoesNotContain(Heard(bin), h => h.Contains("Bring back", StringComparison.Ordinal) || h.Contains("Throw", StringComparison.Ordinal) || h.Contains("Empty", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Everything_in_the_bin_can_be_brought_back_and_is_only_thrown_away_after_a_question()
    {
        await using var home = await LibraryAsync();
        var page = await home.AddAsync(Dances.Plain.Replace("Bent Nail", "Bent <i>Nail</i>"));
        await home.Library.Bin.PutAsync(page);
        var bin = At<Bin>("/bin");
        var heard = Heard(bin);
        Assert.Contains("button Bring back Bent <i>Nail</i>", heard);
        Assert.Contains("link Throw away Bent <i>Nail</i> for good", heard);
        Assert.Empty(bin.FindAll("i"));
        Assert.Equal($"/bin?gone={page}", bin.FindAll("a").Single(a => a.GetAttribute("aria-label") is { } l && l.StartsWith("Throw", StringComparison.Ordinal)).GetAttribute("href"));

        var asked = At<Bin>($"/bin?gone={page}");
        Assert.Contains("heading Throw “Bent <i>Nail</i>” away for good?", Heard(asked));
        Assert.Contains("cannot be brought back", Words(asked));
        Assert.Equal(["button Throw away for good", "link Leave everything here"], Heard(asked)[^2..]);
        Assert.Equal(("post", $"/bin/gone/{page}"), (asked.Find("form").GetAttribute("method"), asked.Find("form").GetAttribute("action")));
        // Somebody else was faster.
        Assert.Contains("That dance is not in the bin any more.", Words(At<Bin>("/bin?gone=99")));
    }

    [Fact]
    public async Task The_settings_show_what_is_set_in_the_person_s_own_measures()
    {
        await using var home = await LibraryAsync();
        await home.Library.Notebooks.SetAsync(home.Notebook, new() { LeadWord = "Man", FollowWord = "Lady", LeadStature = 1.83, Units = Units.FeetAndInches, UsualTempo = 112, Theme = "dim" });
        var settings = At<Settings>("/settings");
        var fields = settings.FindAll("input:not([type=hidden]), select").Where(f => f.Closest($"form[action='/settings/{home.Notebook}']") is not null).ToList();
        Assert.All(fields, field => Assert.NotEqual("", Parts.Heard.Name(field)));
        Assert.Equal("The hall", settings.Find("input[name=name][value]").GetAttribute("value"));
        Assert.Equal(["Man", "Lady"], settings.FindAll("[name=leadWord], [name=followWord]").Select(f => f.GetAttribute("value")!));
        Assert.Equal("6 ft 0 in", settings.Find("[name=leadStature]").GetAttribute("value"));
        Assert.Equal("", settings.Find("[name=followStature]").GetAttribute("value"));
        Assert.Equal("112", settings.Find("[name=tempo]").GetAttribute("value"));
        Assert.Equal("dim hall", settings.Find("select[name=theme] option[selected]").TextContent);
        // Hints belong to their fields.
        Assert.All(settings.FindAll("[aria-describedby]"), field => Assert.NotEqual("", settings.Find("#" + field.GetAttribute("aria-describedby")).TextContent));
    }

    [Fact]
    public async Task Without_a_notebook_the_settings_offer_to_begin_one()
    {
        await using var home = await LibraryAsync(empty: true);
        var settings = At<Settings>("/settings");
        Assert.Contains("There is no notebook yet.", Words(settings));
        Assert.Equal(["text field Another notebook", "button Begin it"], Heard(settings).Where(h => h.EndsWith("Another notebook", StringComparison.Ordinal) || h.EndsWith("Begin it", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Who_was_never_here_is_greeted_and_who_was_is_not()
    {
        await using var home = await LibraryAsync(empty: true);
        Assert.Contains("heading Welcome to Surefoot", Heard(At<Shelf>("/")));
        await home.Library.Notebooks.AddAsync("Autumn");
        var shelf = At<Shelf>("/");
        Assert.DoesNotContain("heading Welcome to Surefoot", Heard(shelf));
        Assert.Contains("heading Dances", Heard(shelf));
        Assert.Contains("There are no dances here yet.", Words(shelf));
    }

    [Fact]
    public async Task The_shelf_answers_the_question_of_its_address()
    {
        await using var home = await LibraryAsync();
        await home.AddAsync(Dances.Plain);
        await home.AddAsync(Dances.Plain.Replace("Bent Nail", "Amber Gate").Replace("beginner", "advanced"));
        Assert.Equal(["Amber Gate", "Bent Nail"], Titles("/"));
        Assert.Equal(["Bent Nail"], Titles("/?q=bnet+nail"));
        Assert.Equal(["Amber Gate"], Titles("/?level=advanced"));
        Assert.Empty(Titles("/?kind=couples"));

        List<string> Titles(string address) => [.. At<Shelf>(address).FindAll(".dance .called > a").Select(a => a.TextContent)];
    }

    [Fact]
    public async Task An_import_says_how_far_it_is_and_then_what_became_of_every_file()
    {
        var bringing = Services.GetRequiredService<Bringing>();
        var done = new TaskCompletionSource<ImportReport>();
        IProgress<ImportProgress>? progress = null;
        var one = await bringing.BeginAsync(Harm, p =>
        {
            progress = p;
            return done.Task;
        });
        IRenderedComponent<BringReport> Report() => Render<BringReport>(p => p.Add(b => b.Word, one.Word));
        Assert.Contains("Looking through it", Words(Report()));
        progress!.Report(new(40, 160));
        var running = Report();
        Assert.Contains("progress Pages taken in", Heard(running));
        Assert.Equal("40 of 160 pages", running.Find("[role=status]").TextContent);
        Assert.Equal(("160", "40"), (running.Find("progress").GetAttribute("max"), running.Find("progress").GetAttribute("value")));
        NothingActs(running);

        ImportLine[] lines = [.. Enumerable.Range(1, 40).Select(n => new ImportLine($"new-{n}.dance", Taken.New, n, "")), new("there.dance", Taken.AlreadyThere, 41, ""), new(Harm, Taken.NotRead, null, "it is not text")];
        done.SetResult(new(lines, 3));
        await one.Work;
        var report = Report();
        Assert.Equal(["1 could not be read", "40 taken in", "1 here already", "3 other files, left alone"], report.FindAll(".sums li").Select(Parts.Heard.Words));
        // What failed lies open, what is long and went well is folded.
        Assert.Equal([("Could not be read (1)", true), ("Taken in (40)", false), ("Here already, left as they are (1)", true)], report.FindAll("details").Select(d => (d.QuerySelector("summary")!.TextContent, d.HasAttribute("open"))));
        Assert.Equal("/dance/1", report.FindAll("details")[1].QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("it is not text", Words(report));
        NothingActs(report);
    }

    [Fact]
    public async Task An_import_that_was_stopped_says_why_and_what_to_do()
    {
        var one = await Services.GetRequiredService<Bringing>().BeginAsync("autumn.zip", _ => Task.FromResult(new ImportReport([], 0, "It is not a zip.")));
        var report = Render<BringReport>(p => p.Add(b => b.Word, one.Word));
        Assert.Contains("heading autumn.zip was not taken", Heard(report));
        Assert.Contains("It is not a zip.", Words(report));
        Assert.Contains("link Try something else", Heard(report));
    }
}
