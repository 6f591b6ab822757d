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

    // Kept apart, so that the library behind the bar is only loaded when there is one.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void WithBar<T>(IReadOnlyList<T> items, int from, Screen screen, string doing, Action<T> each)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(Console.Error),
            Ansi = Skin.TerminalKnowsCodes() ? AnsiSupport.Yes : AnsiSupport.No,
            Interactive = InteractionSupport.Yes,
            ColorSystem = ReferenceEquals(screen.RemarkSkin, Skin.Plain) ? ColorSystemSupport.NoColors : ColorSystemSupport.Standard,
        });
        console.Progress().AutoClear(enabled: true).HideCompleted(enabled: false)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new RemainingTimeColumn())
            .Start(bar =>
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
}
