using System.Diagnostics;
using System.Runtime.CompilerServices;
using Spectre.Console;

namespace Surefoot.Cli.Printing;

/// <summary>Goes through many pages; shows how far it is when that takes more than a second and somebody is watching.</summary>
internal static class Progress
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    public static void Through<T>(IReadOnlyList<T> items, Screen screen, string doing, Action<T> each)
    {
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < items.Count; i++)
        {
            if (screen.RemarksOnTerminal && watch.Elapsed > Patience)
            {
                WithBar(items, i, screen, doing, each);
                return;
            }

            each(items[i]);
        }
    }

    /// <summary>Likewise where each takes its time. Told the number of each, from 0.</summary>
    public static async Task ThroughAsync<T>(IReadOnlyList<T> items, Screen screen, string doing, Func<T, int, Task> each)
    {
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < items.Count; i++)
        {
            if (screen.RemarksOnTerminal && watch.Elapsed > Patience)
            {
                await WithBarAsync(items, i, screen, doing, each);
                return;
            }

            await each(items[i], i);
        }
    }

    // Kept apart, so that the library behind the bar is only loaded when there is one.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void WithBar<T>(IReadOnlyList<T> items, int from, Screen screen, string doing, Action<T> each)
    {
        Bar(screen).Start(bar =>
            {
                var task = bar.AddTask(Markup.Escape(doing), maxValue: items.Count);
                task.Value = from;
                for (var i = from; i < items.Count; i++)
                {
                    each(items[i]);
                    task.Increment(1);
                }
            });
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Task WithBarAsync<T>(IReadOnlyList<T> items, int from, Screen screen, string doing, Func<T, int, Task> each) => Bar(screen).StartAsync(async bar =>
    {
        var task = bar.AddTask(Markup.Escape(doing), maxValue: items.Count);
        task.Value = from;
        for (var i = from; i < items.Count; i++)
        {
            await each(items[i], i);
            task.Increment(1);
        }
    });

    private static Spectre.Console.Progress Bar(Screen screen)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(Console.Error),
            Ansi = Skin.TerminalKnowsCodes() ? AnsiSupport.Yes : AnsiSupport.No,
            Interactive = InteractionSupport.Yes,
            ColorSystem = ReferenceEquals(screen.RemarkSkin, Skin.Plain) ? ColorSystemSupport.NoColors : ColorSystemSupport.Standard,
        });
        return console.Progress().AutoClear(enabled: true).HideCompleted(enabled: false)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new RemainingTimeColumn());
    }
}
