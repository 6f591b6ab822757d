using System.Diagnostics;
using System.Globalization;

namespace Surefoot.Bench;

/// <summary>A studio that was started for measuring, on a free port; killed at the end.</summary>
internal sealed class OpenStudio : IDisposable
{
    private readonly Process _program;

    private OpenStudio(Process program) => _program = program;

    public string Address { get; private init; } = "";

    /// <summary>Milliseconds from starting the program until it said its address.</summary>
    public double Said { get; private init; }

    /// <param name="program">The published studio, as ./start leaves it in out/studio.</param>
    /// <param name="library">The library's file, made where there is none.</param>
    public static async Task<OpenStudio> StartAsync(string program, string library)
    {
        var start = new ProcessStartInfo(Path.GetFullPath(program)) { UseShellExecute = false, RedirectStandardOutput = true };
        start.Environment["SUREFOOT_PORT"] = "0";
        start.Environment["SUREFOOT_LIBRARY"] = library;
        var clock = Stopwatch.StartNew();
        var process = Process.Start(start)!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.IndexOf("http://", StringComparison.Ordinal) is var at and >= 0) return new(process) { Address = line[at..].Trim(), Said = clock.Elapsed.TotalMilliseconds };
        }

        throw new InvalidOperationException($"{program} said no address.");
    }

    /// <summary>Memory the program has in the machine, in MiB, as Linux counts it (VmRSS).</summary>
    public double Memory()
    {
        var line = File.ReadLines($"/proc/{_program.Id}/status").First(l => l.StartsWith("VmRSS:", StringComparison.Ordinal));
        return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    public void Dispose()
    {
        _program.Kill();
        _program.WaitForExit();
        _program.Dispose();
    }
}
