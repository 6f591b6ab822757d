using System.Net;

namespace Surefoot.Tests.Web.Network;

/// <summary>The first passphrase is chosen by whoever sits at the machine, and by nobody else.</summary>
public class FirstTime
{
    private static readonly (string, string)[] Chosen = [("new", OpenStudio.Passphrase), ("again", OpenStudio.Passphrase)];

    [Fact]
    public async Task Strangers_wait_until_it_is_chosen_at_the_machine()
    {
        await using var studio = new UnopenedStudio();
        await studio.InitializeAsync();
        Assert.Contains("Nobody can come in yet", studio.Said);
        using var stranger = studio.Stranger();
        foreach (var (methods, path) in await studio.RoutesAsync())
        {
            if (path is "/mark.svg" or "/dist/studio.css" or "/dist/look.js" or "/dist/door.js" || path.EndsWith(".gz", StringComparison.Ordinal)) continue;
            foreach (var method in methods.Length == 0 ? ["GET", "POST"] : methods)
            {
                using var asked = new HttpRequestMessage(new(method), path);
                if (method == "POST") asked.Content = new FormUrlEncodedContent([KeyValuePair.Create("new", "a strangers own words"), KeyValuePair.Create("again", "a strangers own words")]);
                using var answer = await stranger.Http.SendAsync(asked);
                Assert.True(answer.StatusCode == HttpStatusCode.ServiceUnavailable, $"{method} {path}: {answer.StatusCode}");
            }
        }

        // Somebody whose words are passed on by a program of this machine is a stranger as well.
        using var near = studio.AtTheMachine();
        using (var passedOn = new HttpRequestMessage(HttpMethod.Get, "/first-passphrase"))
        {
            passedOn.Headers.Add("X-Forwarded-For", "203.0.113.9");
            using var answer = await near.Http.SendAsync(passedOn);
            Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        }

        using (var led = await near.GoAsync("/dance/kettle-lid-shuffle")) Assert.Equal("/first-passphrase", led.Headers.Location!.OriginalString);
        using (var short1 = await near.SendAsync("/first-passphrase", "/door/first", ("new", "short"), ("again", "short"))) Assert.Contains("at least 12 letters", await near.ToldAsync(short1));
        using (var chosen = await near.SendAsync("/first-passphrase", "/door/first", Chosen)) Assert.Contains("The passphrase is kept", await near.ToldAsync(chosen));
        Assert.True(await near.IsInAsync());

        // Once chosen it is not chosen again, not even there.
        using var second = studio.AtTheMachine();
        using (var late = await second.GoAsync("/first-passphrase")) Assert.Contains("/sign-in", late.Headers.Location!.OriginalString);
        using (var forced = await second.SendAsync("/sign-in", "/door/first", ("new", "five tall red ladders"), ("again", "five tall red ladders"))) Assert.Contains("/sign-in", forced.Headers.Location!.OriginalString);
        using var guest = await studio.GuestAsync();
    }
}
