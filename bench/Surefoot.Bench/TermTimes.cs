using System.Diagnostics;
using System.Globalization;
using Surefoot.Dance;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Solver;
using Surefoot.Lessons.Text;

namespace Surefoot.Bench;

/// <summary>A term of fourteen evenings with twelve dances: planned, and planned anew after each of its first evenings.</summary>
internal static class TermTimes
{
    private const int Times = 5, Evenings = 4;

    public static void Run(string demo)
    {
        var dances = Path.Combine(demo, "dances");
        var book = FigureBook.Shipped.With(new SourceText(File.ReadAllText(Path.Combine(dances, "figures.dance"))));
        var known = Directory.EnumerateFiles(dances, "*.dance", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => DanceReader.Read(File.ReadAllText(f), book)).Where(r => r.Score.Sections.Count > 0).Select(r => TermDance.Of(r)).ToList();
        var text = File.ReadAllText(Path.Combine(demo, "winter-at-the-lantern-hall.term"));
        var planner = new Planner(new CpSatSolver());
        TermPlan Plan(string term) => planner.Plan(TermCase.Of(TermPage.Read(term), known)!);

        List<double> first = [], anew = [];
        for (var time = 0; time < Times; time++)
        {
            var clock = Stopwatch.StartNew();
            var plan = Plan(text);
            first.Add(clock.Elapsed.TotalMilliseconds);
            var told = TermWriting.Told(text, plan);
            foreach (var lesson in plan.Lessons.Take(Evenings))
            {
                // Every evening something stays away: the last bite does not pass.
                var items = lesson.Items.Where(i => i.Kind is ItemKind.Review or ItemKind.Teach).ToList();
                var reached = items.GroupBy(i => i.Course!.Value).Select(g => (plan.Case.Courses[g.Key], (IReadOnlyList<int>)[.. g.Where(i => i.Bite is not null).Select(i => i.Bite!.Value)], g.Key == items[^1].Course ? 2 : 4)).ToList();
                told = TermWriting.Reached(told, TermCase.Of(TermPage.Read(told), known)!, lesson.Lesson, reached);
                clock.Restart();
                Plan(told);
                anew.Add(clock.Elapsed.TotalMilliseconds);
            }
        }

        Say("planned", first);
        Say("planned anew", anew);

        static void Say(string what, List<double> times)
        {
            times.Sort();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-14} median {times[times.Count / 2]:0} ms, slowest {times[^1]:0} ms, of {times.Count}"));
        }
    }
}
