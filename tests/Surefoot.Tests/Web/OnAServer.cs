using System.Net.Http.Json;
using System.Text.Json;
using Surefoot.Tests.Library;

namespace Surefoot.Tests.Web;

/// <summary>The studio on a library in PostgreSQL, and on one it cannot open.</summary>
public class OnAServer
{
    [Fact]
    public async Task A_connection_opens_a_library_on_a_server()
    {
        await using var home = await Home.OpenAsync(Place.PostgreSql);
        var page = await home.AddAsync(Dances.Plain);
        var studio = new Studio { Library = home.Where };
        await studio.StartAsync();
        using (var asked = new HttpRequestMessage(HttpMethod.Post, $"{studio.Address}/keep/{page}/draft") { Content = JsonContent.Create(new { session = "server", sequence = 1, basedOn = 1, text = "On a server" }) })
        {
            asked.Headers.Add("Origin", studio.Address);
            using var answer = await studio.Http.SendAsync(asked);
            Assert.True(answer.IsSuccessStatusCode, $"{answer.StatusCode}");
        }

        await studio.KillAsync();
        await studio.StartAsync();
        var opened = await studio.Http.GetFromJsonAsync<JsonElement>($"{studio.Address}/keep/{page}/opened");
        Assert.Equal(Dances.Plain, opened.GetProperty("text").GetString());
        Assert.Equal("On a server", opened.GetProperty("draft").GetProperty("text").GetString());
        await studio.DisposeAsync();
    }

    [Fact]
    public async Task Every_page_waits_until_the_server_has_answered()
    {
        await using var home = await Home.OpenAsync(Place.PostgreSql);
        var page = await home.AddAsync(Dances.Plain);
        await home.Library.Pages.KeepAsync(page, 1, Dances.Plain.Replace("touch R", "stomp R"));
        await home.Library.Pages.KeepAsync(page, 2, Dances.Plain.Replace("over", "beside"));
        // All are asked at once, and each may need two connections.
        var studio = new Studio { Library = home.Where.Replace("Maximum Pool Size=20", "Maximum Pool Size=80", StringComparison.Ordinal) };
        await studio.StartAsync();
        var addresses = Screens.Rooms.Values.Concat(Screens.Kept.Values).SelectMany(a => a)
            .Where(a => a is ['/', ..] && a != "/there-is-no-such-page")
            // A library on a server has no demo notebook and no demo term to begin with.
            .Where(a => !a.StartsWith("/terms/", StringComparison.Ordinal))
            .Where(a => a.Contains("{page}", StringComparison.Ordinal) || !a.StartsWith("/dance/", StringComparison.Ordinal))
            .Select(a => a.Replace("{page}", $"{page}").Replace("/details/3", $"/details/{page}"));
        Assert.All(await Task.WhenAll(addresses.Select(AskAsync)), answer => Assert.True(answer.Status == 200, $"{answer.Address}: {answer.Status}. The studio said: {studio.Said}"));
        await studio.DisposeAsync();

        async Task<(string Address, int Status)> AskAsync(string address)
        {
            using var answer = await studio.Http.GetAsync(studio.Address + address);
            return (address, (int)answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_file_of_another_program_is_left_alone_and_said()
    {
        var file = Path.GetTempFileName();
        await File.WriteAllTextAsync(file, "A list of songs, and no library at all.\n");
        var program = Path.Combine(AppContext.BaseDirectory.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("src", "Surefoot.Web")), "Surefoot.Web.dll");
        var start = new System.Diagnostics.ProcessStartInfo("dotnet", [program]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["SUREFOOT_PORT"] = "0";
        start.Environment["SUREFOOT_LIBRARY"] = file;
        using var studio = System.Diagnostics.Process.Start(start)!;
        var said = await studio.StandardError.ReadToEndAsync();
        await studio.WaitForExitAsync();
        Assert.Equal(1, studio.ExitCode);
        Assert.Contains(file, said);
        Assert.DoesNotContain("   at ", said);
        Assert.Equal("A list of songs, and no library at all.\n", await File.ReadAllTextAsync(file));
        File.Delete(file);
    }
}
