using System.Diagnostics;
using System.Net;

namespace Surefoot.Tests.Web.Network;

/// <summary>Without being told to, the studio has no door and needs none.</summary>
public class ThisMachineOnly(Studio studio) : IClassFixture<Studio>
{
    [Theory]
    [InlineData("/sign-in")]
    [InlineData("/first-passphrase")]
    public async Task There_is_no_page_of_a_door(string path)
    {
        using var answer = await studio.Http.GetAsync(studio.Address + path);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("/door/change")]
    [InlineData("/door/out")]
    public async Task There_is_no_deed_of_a_door(string path)
    {
        using var answer = await studio.Http.PostAsync(studio.Address + path, new FormUrlEncodedContent([]));
        Assert.True(answer.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.MethodNotAllowed, $"{answer.StatusCode}");
    }

    [Fact]
    public async Task Settings_say_nothing_of_it_and_no_folder_is_made()
    {
        Assert.DoesNotContain("passphrase", await studio.Http.GetStringAsync(studio.Address + "/settings"));
        Assert.False(Directory.Exists(studio.Library + ".network"));
    }

    [Theory]
    [InlineData("--open-to-netwrok")]
    [InlineData("--urls=http://0.0.0.0:0")]
    public async Task A_word_it_does_not_know_opens_nothing(string word)
    {
        var program = Path.Combine(AppContext.BaseDirectory.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("src", "Surefoot.Web")), "Surefoot.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program, word]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["SUREFOOT_PORT"] = "0";
        using var asked = Process.Start(start)!;
        var said = await asked.StandardError.ReadToEndAsync();
        await asked.WaitForExitAsync();
        Assert.Equal(2, asked.ExitCode);
        Assert.Contains("It knows --open-to-network", said);
    }
}
