using System.Diagnostics;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web;

/// <summary>A studio that cannot open says why in one sentence, and nothing else.</summary>
public class NotOpening(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task A_port_that_is_taken_is_said_in_one_sentence()
    {
        var (said, code) = await StartAsync(new Uri(studio.Address).Port, studio.Library);
        Assert.Equal("The studio could not open: its port is taken, perhaps by a studio that is open already. SUREFOOT_PORT says another port.", said);
        Assert.Equal(1, code);
    }

    [Fact]
    public async Task A_file_that_is_no_library_is_said_in_one_sentence_and_left_alone()
    {
        var file = Path.GetTempFileName();
        await File.WriteAllTextAsync(file, "Rock forward L, recover R");
        var (said, code) = await StartAsync(0, file);
        Assert.Equal($"{file} is not a library, so it was left as it is.", said);
        Assert.Equal(1, code);
        Assert.Equal("Rock forward L, recover R", await File.ReadAllTextAsync(file));
        File.Delete(file);
    }

    private static async Task<(string Said, int Code)> StartAsync(int port, string library)
    {
        var program = Path.Combine(AppContext.BaseDirectory.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("src", "Surefoot.Web")), "Surefoot.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program]) { WorkingDirectory = Root.Folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        (start.Environment["SUREFOOT_PORT"], start.Environment["SUREFOOT_LIBRARY"]) = ($"{port}", library);
        using var started = Process.Start(start)!;
        var (said, wrong) = (started.StandardOutput.ReadToEndAsync(), started.StandardError.ReadToEndAsync());
        await started.WaitForExitAsync();
        return ((await said + await wrong).Trim(), started.ExitCode);
    }
}
