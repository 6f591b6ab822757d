using System.Net;
using System.Net.WebSockets;

namespace Surefoot.Tests.Web.Network;

/// <summary>A new passphrase holds at once, for everybody.</summary>
public class NewPassphrases
{
    private const string Other = "five tall red ladders";

    [Fact]
    public async Task Changing_it_signs_all_others_out_and_closes_what_they_have_open()
    {
        await using var studio = await StartedAsync();
        using var changer = await studio.GuestAsync();
        using var other = await studio.GuestAsync();
        using var line = await other.CallAsync();
        using (var answer = await changer.SendAsync("/settings", "/door/change", ("now", OpenStudio.Passphrase), ("new", Other), ("again", Other)))
        {
            Assert.Contains("The new passphrase holds", await changer.ToldAsync(answer));
        }

        Assert.True(await changer.IsInAsync());
        Assert.False(await other.IsInAsync());
        await ClosedAsync(line);
        using (var old = await other.SignInAsync(OpenStudio.Passphrase)) Assert.Contains("That is not the passphrase", await other.ToldAsync(old));
        using var again = await studio.GuestAsync(Other);
        // It is nowhere on the disk, and what is there only its owner may read.
        foreach (var file in Directory.GetFiles(studio.NetworkFolder))
        {
            Assert.DoesNotContain("ladders", await File.ReadAllTextAsync(file));
            if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }

        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(studio.NetworkFolder));
    }

    [Theory]
    [InlineData("short", "short", "at least 12 letters")]
    [InlineData("aaaaaaaaaaaaaaaa", "aaaaaaaaaaaaaaaa", "one letter over and over")]
    [InlineData(Other, "five tall red ladder", "not the same")]
    public async Task One_that_is_easy_to_guess_or_was_mistyped_is_not_taken(string chosen, string again, string says)
    {
        await using var studio = await StartedAsync();
        using var guest = await studio.GuestAsync();
        using var answer = await guest.SendAsync("/settings", "/door/change", ("now", OpenStudio.Passphrase), ("new", chosen), ("again", again));
        Assert.Contains(says, await guest.ToldAsync(answer));
        using var still = await studio.GuestAsync();
    }

    [Fact]
    public async Task One_set_at_the_console_holds_in_the_studio_that_runs()
    {
        await using var studio = await StartedAsync();
        using var guest = await studio.GuestAsync();
        using var line = await guest.CallAsync();
        var (code, said) = await studio.ChooseAsync(Other);
        Assert.Equal(0, code);
        Assert.Contains("It is kept", said);
        await ClosedAsync(line);
        Assert.False(await guest.IsInAsync());
        using var again = await studio.GuestAsync(Other);
        (code, said) = await studio.ChooseAsync("short");
        Assert.Equal(1, code);
        Assert.Contains("at least 12 letters", said);
    }

    [Fact]
    public async Task Whoever_is_in_stays_in_when_the_studio_is_started_again_and_knows_it_by_its_certificate()
    {
        await using var studio = await StartedAsync();
        using var before = studio.Visitor();
        using (var answer = await before.SignInAsync(OpenStudio.Passphrase, own: true)) Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        await studio.StopAsync();
        await studio.StartAsync();
        using var after = studio.Visitor();
        // Cookies know no ports; the certificate is looked at with each answer.
        foreach (Cookie cookie in before.Cookies.GetAllCookies()) after.Cookies.Add(new Uri(after.Address), new Cookie(cookie.Name, cookie.Value) { Secure = true });
        Assert.True(await after.IsInAsync());
    }

    [Fact]
    public async Task A_damaged_file_lets_nobody_in_and_nobody_choose()
    {
        await using var studio = await StartedAsync();
        using var guest = await studio.GuestAsync();
        await File.WriteAllTextAsync(Path.Combine(studio.NetworkFolder, "passphrase.json"), "{\"Hash\":\"\",\"Stamp\":\"\"}");
        Assert.False(await guest.IsInAsync());
        using var near = studio.AtTheMachine();
        using (var answer = await near.SignInAsync("")) Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.False(await near.IsInAsync());
        using (var first = await near.GoAsync("/first-passphrase")) Assert.Contains("/sign-in", first.Headers.Location!.OriginalString);
        await studio.StopAsync();
        await studio.StartAsync();
        Assert.Contains("the file that keeps the passphrase is damaged", studio.Said);
        await studio.ChooseAsync(Other);
        using var again = await studio.GuestAsync(Other);
    }

    private static async Task ClosedAsync(ClientWebSocket line)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        try
        {
            while ((await line.ReceiveAsync(new byte[4096], patience.Token)).MessageType != WebSocketMessageType.Close)
            {
                // The studio says that it is still there now and then.
            }
        }
        catch (WebSocketException)
        {
            // Hung up without a word.
        }

        Assert.NotEqual(WebSocketState.Open, line.State);
    }

    private static async Task<OpenStudio> StartedAsync()
    {
        var studio = new OpenStudio();
        await studio.InitializeAsync();
        return studio;
    }
}
