using System.Net;

namespace Surefoot.Tests.Web.Network;

/// <summary>Whoever guesses waits, longer each time, and keeps nobody else from coming in.</summary>
public class Guessing(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task Each_wrong_one_makes_the_wait_longer_and_the_right_one_has_to_wait_too()
    {
        using var guesser = studio.Visitor();
        // Three slips are free; the fourth costs a second.
        for (var i = 0; i < 4; i++)
        {
            using var wrong = await guesser.SignInAsync($"guess number {i}");
            Assert.Equal(HttpStatusCode.Redirect, wrong.StatusCode);
        }

        Assert.Equal(1, await WaitAsync(guesser, OpenStudio.Passphrase));
        Assert.False(await guesser.IsInAsync());
        await Task.Delay(1100);
        using (var fifth = await guesser.SignInAsync("guess number 5")) Assert.Equal(HttpStatusCode.Redirect, fifth.StatusCode);
        Assert.Equal(2, await WaitAsync(guesser, "guess number 6"));
        // Nobody else waits for that.
        using var guest = await studio.GuestAsync();
        // And after the wait the right one is right, and everything is forgiven.
        await Task.Delay(2100);
        using var right = await guesser.SignInAsync(OpenStudio.Passphrase);
        Assert.True(await guesser.IsInAsync());
    }

    [Fact]
    public async Task Many_at_once_are_no_way_around_it()
    {
        using var guesser = studio.Visitor();
        var page = await guesser.ReadAsync("/sign-in");
        var token = page.Split("__RequestVerificationToken\" value=\"")[1].Split('"')[0];
        var answers = await Task.WhenAll(Enumerable.Range(0, 30).Select(async i =>
        {
            using var answer = await guesser.PostAsync("/sign-in", ("passphrase", $"guess number {i}"), ("__RequestVerificationToken", token));
            return answer.StatusCode;
        }));
        // Three slips, and the one that begins the waiting.
        Assert.InRange(answers.Count(a => a == HttpStatusCode.Redirect), 1, 4);
        Assert.All(answers, a => Assert.True(a is HttpStatusCode.Redirect or HttpStatusCode.TooManyRequests, $"{a}"));
    }

    [Fact]
    public async Task Changing_it_is_no_way_to_guess()
    {
        using var guest = await studio.GuestAsync();
        for (var i = 0; i < 4; i++)
        {
            using var wrong = await guest.SendAsync("/settings", "/passphrase", ("now", $"guess number {i}"), ("new", "five tall red ladders"), ("again", "five tall red ladders"));
            Assert.Contains("Nothing was changed", await guest.ToldAsync(wrong));
        }

        using var limited = await guest.SendAsync("/settings", "/passphrase", ("now", OpenStudio.Passphrase), ("new", "five tall red ladders"), ("again", "five tall red ladders"));
        Assert.Equal(HttpStatusCode.TooManyRequests, limited.StatusCode);
        Assert.True(await guest.IsInAsync());
    }

    private static async Task<int> WaitAsync(Visitor visitor, string passphrase)
    {
        using var answer = await visitor.SignInAsync(passphrase);
        Assert.Equal(HttpStatusCode.TooManyRequests, answer.StatusCode);
        Assert.Contains("That was tried too often. Please wait", await answer.Content.ReadAsStringAsync());
        return (int)answer.Headers.RetryAfter!.Delta!.Value.TotalSeconds;
    }
}

/// <summary>The whole network together has a limit too, which the machine's own screen is not part of.</summary>
public class GuessingTogether(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task Many_addresses_are_no_way_around_it_and_the_owner_still_comes_in()
    {
        // From addresses that pass for the network's: what another program passes on is not the own screen's.
        var statuses = new List<HttpStatusCode>();
        for (var i = 0; i < 60; i++)
        {
            using var guesser = studio.Visitor();
            using var asked = new HttpRequestMessage(HttpMethod.Post, "/sign-in") { Content = new FormUrlEncodedContent([KeyValuePair.Create("passphrase", $"guess number {i}")]) };
            asked.Headers.Add("Origin", guesser.Address);
            asked.Headers.Add("X-Forwarded-For", "203.0.113.9");
            using var answer = await guesser.Http.SendAsync(asked);
            statuses.Add(answer.StatusCode);
        }

        Assert.Contains(HttpStatusCode.TooManyRequests, statuses.Skip(40));
        using var near = studio.AtTheMachine();
        using var right = await near.SignInAsync(OpenStudio.Passphrase);
        Assert.True(await near.IsInAsync());
    }
}
