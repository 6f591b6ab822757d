using System.Diagnostics;
using System.Net;

namespace Surefoot.Tests.Web.Network;

/// <summary>Whoever guesses waits, longer each time, and keeps nobody else from coming in.</summary>
public class Guessing(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task Each_wrong_one_makes_the_wait_longer_and_the_right_one_has_to_wait_too()
    {
        using var guesser = studio.Visitor();
        var token = await guesser.TokenAsync("/sign-in");
        var (tries, waits) = (0, new List<int>());
        // Until the wait is long enough that no slow machine can sit it out.
        while (waits.Count == 0 || waits[^1] < 4)
        {
            var wait = await KnockAsync(guesser, token, $"guess number {tries}");
            if (wait == 0) tries++;
            else if (waits.Count == 0 || wait != waits[^1]) waits.Add(wait);
            if (wait is > 0 and < 4) await Task.Delay(TimeSpan.FromSeconds(wait));
        }

        // Three slips of the finger cost nothing.
        Assert.True(tries > 3, $"waits after {tries}");
        Assert.Equal(waits.Order(), waits);
        Assert.NotEqual(0, await KnockAsync(guesser, token, OpenStudio.Passphrase));
        Assert.False(await guesser.IsInAsync());
        // Nobody else waits for that.
        using var guest = await studio.GuestAsync();
        // After the wait the right one is right.
        await Task.Delay(TimeSpan.FromSeconds(4.1));
        while (await KnockAsync(guesser, token, OpenStudio.Passphrase) is > 0 and var still) await Task.Delay(TimeSpan.FromSeconds(still));
        Assert.True(await guesser.IsInAsync());
    }

    [Fact]
    public async Task Many_at_once_are_no_way_around_it()
    {
        using var guesser = studio.Visitor();
        var token = await guesser.TokenAsync("/sign-in");
        var clock = Stopwatch.StartNew();
        var answers = await Task.WhenAll(Enumerable.Range(0, 30).Select(async i =>
        {
            using var answer = await guesser.PostAsync("/door/in", ("passphrase", $"guess number {i}"), ("__RequestVerificationToken", token));
            return answer.StatusCode;
        }));
        // Three slips, and the one that begins the waiting; on a machine so slow that waits passed meanwhile, one after each, and each is twice the one before.
        Assert.InRange(answers.Count(a => a == HttpStatusCode.Redirect), 1, 4 + (int)Math.Log2(1 + clock.Elapsed.TotalSeconds));
        Assert.All(answers, a => Assert.True(a is HttpStatusCode.Redirect or HttpStatusCode.TooManyRequests, $"{a}"));
    }

    [Fact]
    public async Task Changing_it_is_no_way_to_guess()
    {
        using var guest = await studio.GuestAsync();
        var token = await guest.TokenAsync("/settings");
        var looked = 0;
        while (true)
        {
            using var wrong = await guest.PostAsync("/door/change", ("now", $"guess number {looked}"), ("new", "five tall red ladders"), ("again", "five tall red ladders"), ("__RequestVerificationToken", token));
            if (wrong.StatusCode == HttpStatusCode.TooManyRequests) break;
            Assert.Contains("Nothing was changed", await guest.ToldAsync(wrong));
            looked++;
        }

        Assert.InRange(looked, 4, 9);
        Assert.True(await guest.IsInAsync());
    }

    // Seconds to wait; 0 when it was looked at.
    private static async Task<int> KnockAsync(Visitor visitor, string token, string passphrase)
    {
        using var answer = await visitor.PostAsync("/door/in", ("passphrase", passphrase), ("__RequestVerificationToken", token));
        if (answer.StatusCode == HttpStatusCode.Redirect) return 0;
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
        var statuses = await Task.WhenAll(Enumerable.Range(0, 80).Select(async i =>
        {
            using var guesser = studio.Visitor();
            using var asked = new HttpRequestMessage(HttpMethod.Post, "/door/in") { Content = new FormUrlEncodedContent([KeyValuePair.Create("passphrase", $"guess number {i}")]) };
            asked.Headers.Add("Origin", guesser.Address);
            asked.Headers.Add("X-Forwarded-For", "203.0.113.9");
            using var answer = await guesser.Http.SendAsync(asked);
            return answer.StatusCode;
        }));
        Assert.Contains(HttpStatusCode.Redirect, statuses);
        Assert.Contains(HttpStatusCode.TooManyRequests, statuses);
        using var near = studio.AtTheMachine();
        using var right = await near.SignInAsync(OpenStudio.Passphrase);
        Assert.True(await near.IsInAsync());
    }
}
