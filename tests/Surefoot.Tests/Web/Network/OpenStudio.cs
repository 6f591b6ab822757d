using System.Diagnostics;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Text;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web.Network;

/// <summary>The studio started as people start it for the hall, on free ports, with a passphrase set at the console first.</summary>
public class OpenStudio : IAsyncLifetime
{
    public const string Passphrase = "three slow green buckets";

    private readonly string _folder = Directory.CreateTempSubdirectory("surefoot-hall-").FullName;
    private int _visitors;
    private Process? _program;

    /// <summary>The address on the machine's own screen.</summary>
    public string Here { get; private set; } = "";

    /// <summary>All the console said.</summary>
    public string Said { get; private set; } = "";

    /// <summary>The port of the network's line.</summary>
    public int Port { get; private set; }

    /// <summary>What a tablet in the hall goes to.</summary>
    public string There => $"https://{new IPEndPoint(Outside, Port)}";

    public string Library => Path.Combine(_folder, "library.db");

    public string NetworkFolder => Library + ".network";

    private string RoutesFile => Path.Combine(_folder, "routes");

    /// <summary>An address of this machine in a network, as a stranger sees it.</summary>
    public static IPAddress Outside { get; } = NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.NetworkInterfaceType is not NetworkInterfaceType.Loopback)
        .SelectMany(n => n.GetIPProperties().UnicastAddresses)
        .Select(a => a.Address)
        .First(a => a.AddressFamily is AddressFamily.InterNetwork && !IPAddress.IsLoopback(a));

    protected virtual bool ChosenBefore => true;

    public async ValueTask InitializeAsync()
    {
        if (ChosenBefore) await ChooseAsync(Passphrase);
        await StartAsync();
    }

    /// <summary>Sets a passphrase at the console; what it said, with the exit code.</summary>
    internal async Task<(int Code, string Said)> ChooseAsync(string passphrase)
    {
        using var console = Process.Start(Program("--new-passphrase"))!;
        await console.StandardInput.WriteLineAsync(passphrase);
        console.StandardInput.Close();
        var said = await console.StandardOutput.ReadToEndAsync() + await console.StandardError.ReadToEndAsync();
        await console.WaitForExitAsync();
        return (console.ExitCode, said);
    }

    internal async Task StartAsync()
    {
        File.Delete(RoutesFile);
        _program = Process.Start(Program("--open-to-network"))!;
        var said = new StringBuilder();
        while (await _program.StandardOutput.ReadLineAsync() is { } line)
        {
            said.AppendLine(line);
            if (line.IndexOf("studio is open at http://", StringComparison.Ordinal) is not (var at and >= 0)) continue;
            Here = line[(at + "studio is open at ".Length)..].Trim();
            break;
        }

        Said = said.ToString();
        Assert.StartsWith("http://127.0.0.1:", Here);
        Port = int.Parse(Said.Split($"https://{Outside}:", 2)[1].Split('\n')[0]);
    }

    internal async Task StopAsync()
    {
        _program!.Kill();
        await _program.WaitForExitAsync();
        _program.Dispose();
        _program = null;
    }

    /// <summary>Every address the running program answers to, with its methods (none: all).</summary>
    internal async Task<IReadOnlyList<(string[] Methods, string Path)>> RoutesAsync()
    {
        while (!File.Exists(RoutesFile)) await Task.Delay(50);
        return [.. (await File.ReadAllLinesAsync(RoutesFile)).Select(l => l.Split('\t')).Select(l => (l[0].Split(',', StringSplitOptions.RemoveEmptyEntries), l[1]))];
    }

    /// <summary>Somebody on the network.</summary>
    internal Visitor Stranger() => new(There, null, Said);

    /// <summary>Somebody who comes by the network's line from an address of their own, so that nobody's tries are held against another.</summary>
    internal Visitor Visitor() => new($"https://127.0.0.1:{Port}", new([127, 0, 1, (byte)(1 + Interlocked.Increment(ref _visitors))]), Said);

    /// <summary>Somebody at the machine itself.</summary>
    internal Visitor AtTheMachine() => new(Here, null, Said);

    /// <summary>Somebody who has signed in.</summary>
    internal async Task<Visitor> GuestAsync(string passphrase = Passphrase)
    {
        var guest = Visitor();
        using var answer = await guest.SignInAsync(passphrase);
        Assert.Equal("/", answer.Headers.Location?.OriginalString);
        return guest;
    }

    private ProcessStartInfo Program(string word)
    {
        var base1 = AppContext.BaseDirectory;
        var program = Path.Combine(base1.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("src", "Surefoot.Web")), "Surefoot.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program, word]) { WorkingDirectory = Root.Folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardInput = true, RedirectStandardError = word == "--new-passphrase" };
        start.Environment["SUREFOOT_PORT"] = "0";
        start.Environment["SUREFOOT_LIBRARY"] = Library;
        start.Environment["SUREFOOT_ROUTES"] = RoutesFile;
        // Built for no platform in particular, so it stands one folder higher than the tests.
        var parts = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(base1))!.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("tests", "Surefoot.Tests.Routes"));
        start.Environment["DOTNET_STARTUP_HOOKS"] = Path.Combine(parts, "Surefoot.Tests.Routes.dll");
        return start;
    }

    public async ValueTask DisposeAsync()
    {
        if (_program is not null) await StopAsync();
        await TestFolder.RemoveAsync(_folder);
        GC.SuppressFinalize(this);
    }
}

/// <summary>The same at its very first start: nobody has chosen a passphrase.</summary>
public sealed class UnopenedStudio : OpenStudio
{
    protected override bool ChosenBefore => false;
}
