using System.Runtime.InteropServices;
using Surefoot.Solver;
using Other = Google.OrTools.LinearSolver.Solver;

namespace Surefoot.Tests.Solver;

/// <summary>
/// Standard output is the program's answer and may be read by another program, so the native library must not
/// write there, nor to standard error. It writes past the console class; so what the process itself has open
/// is exchanged, and nothing else may run meanwhile.
/// </summary>
[Collection(nameof(Silence))]
[CollectionDefinition(nameof(Silence), DisableParallelization = true)]
public class Silence
{
    [Fact]
    public void Solving_writes_nothing()
    {
        var solver = new GlopSolver();
        Assert.Equal("", Heard(() =>
        {
            foreach (var name in Programs.Impossible) solver.Solve(Programs.Named(name));
            var spoiled = Programs.Named("row out of reach");
            spoiled.AddRow(0, 1, [0, 0], [1, 1]);
            Assert.Throws<ArgumentException>(() => solver.Solve(spoiled));
        }));
    }

    [Fact]
    public void The_library_would_be_heard()
    {
        // Asking for a value before solving is what makes it speak.
        Assert.NotEqual("", Heard(() =>
        {
            using var other = Other.CreateSolver("GLOP");
            using var unknown = other.MakeNumVar(0, 1, "");
            unknown.SolutionValue();
        }));
    }

    private static string Heard(Action action)
    {
        Console.Out.Flush();
        Console.Error.Flush();
        var path = Path.GetTempFileName();
        var (output, error) = (Done(Duplicate(1)), Done(Duplicate(2)));
        try
        {
            using (var file = File.OpenHandle(path, FileMode.Create, FileAccess.Write, FileShare.ReadWrite))
            {
                Done(Redirect((int)file.DangerousGetHandle(), 1));
                Done(Redirect((int)file.DangerousGetHandle(), 2));
                try
                {
                    action();
                }
                finally
                {
                    Done(Redirect(output, 1));
                    Done(Redirect(error, 2));
                }
            }

            return File.ReadAllText(path);
        }
        finally
        {
            Done(Close(output));
            Done(Close(error));
            File.Delete(path);
        }
    }

    private static int Done(int result) => result < 0 ? throw new IOException("Standard output could not be exchanged.") : result;

    [DllImport("libc", EntryPoint = "dup")]
    private static extern int Duplicate(int file);

    [DllImport("libc", EntryPoint = "dup2")]
    private static extern int Redirect(int from, int to);

    [DllImport("libc", EntryPoint = "close")]
    private static extern int Close(int file);
}
