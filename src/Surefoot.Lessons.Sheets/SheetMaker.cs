using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Draw;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Stumbling;

namespace Surefoot.Lessons.Sheets;

/// <summary>Puts a lesson's sheet together.</summary>
internal sealed class SheetMaker(TermPlan plan, LessonPlan lesson, SheetOptions options)
{
    /// <summary>A teaching tempo over the dance's, in percent: a little slower, as is common practice, no source.</summary>
    private const int SlowFrom = 80, SlowTo = 90;

    /// <summary>Joints of a dance that are told where it is danced again: the first ones.</summary>
    private const int MostJoints = 4;

    /// <summary>Songs named on a sheet: more are a choice nobody makes in a lesson. Working value.</summary>
    private const int MostSongs = 3;

    /// <summary>Minutes from which there is time for a dance they wish. Working value.</summary>
    private const int OpenFloor = 5;

    /// <summary>True for a lesson that is over: its sheet says what was done.</summary>
    private readonly bool _over = plan.Case.Past[lesson.Lesson.Index];

    public LessonSheet Make()
    {
        var at = lesson.Lesson;
        var dances = lesson.Items.Select(i => i.Course).OfType<int>().Distinct().Select(i => plan.Case.Courses[i]).ToList();
        var care = dances.Select(c => DanceInShort.Care(c.Dance.Score)).SelectMany(Sentences).Distinct().ToList();
        return new($"{DayWords.Weekday(at.Day)}, {at.Slot.For.Words}{(_over ? ": what was done" : "")}", Opening(), lesson.Items.Select(Station).ToValueList(),
            $"Warm up before anything else. {string.Join(' ', care.Where(s => !s.StartsWith("Warm up", StringComparison.Ordinal)).DefaultIfEmpty("Mind wet spots on the floor."))}");
    }

    private static IEnumerable<string> Sentences(string text) => text.Split(". ").Select(s => s.TrimEnd('.') + ".");

    private string Opening()
    {
        var at = lesson.Lesson;
        var again = Titles(ItemKind.Review);
        var begun = Titles(ItemKind.Show);
        var on = Titles(ItemKind.Recap);
        var parts = new List<string>();
        if (again.Count > 0) parts.Add($"{And(again)} again");
        if (on.Count > 0) parts.Add($"{And(on)} {(_over ? "went" : on.Count == 1 ? "goes" : "go")} on");
        if (begun.Count > 0) parts.Add($"{And(begun)} {(begun.Count == 1 ? (_over ? "was" : "is") : _over ? "were" : "are")} begun");
        if (parts.Count == 0 && Titles(ItemKind.Practice) is { Count: > 0 } practised) parts.Add($"practice of {And(practised)}");
        var what = parts.Count == 0 ? (_over ? "nothing is ticked" : "nothing is planned") : string.Join("; ", parts);
        var counts = lesson.NewHalfCounts / 2;
        var half = lesson.Items.Any(i => i.Bite is { } bite && plan.Case.Courses[i.Course!.Value].Bites[bite].Mirrored > 0) ? " (those from the other foot counted half)" : "";
        return $"{DayWords.Full(at.Day)} from {DayWords.Time(at.At)} to {DayWords.Time(at.At.AddMinutes(at.Slot.Minutes))}: {what}{(counts > 0 ? $"; {counts} new count{(counts == 1 ? "" : "s")} {(_over ? "taught" : "to teach")}{half}" : "")}.{(_over && parts.Count > 0 ? " The minutes are the usual ones." : "")}";
    }

    private List<string> Titles(ItemKind kind) => [.. lesson.Items.Where(i => i.Kind == kind).Select(i => plan.Case.Courses[i.Course!.Value].Dance.Title)];

    private Station Station(LessonItem item)
    {
        var clock = DayWords.Time(lesson.Lesson.At.AddMinutes(item.At));
        var course = item.Course is { } index ? plan.Case.Courses[index] : null;
        var couples = course?.Dance.Score.Facts.ForCouples == true;
        return item.Kind switch
        {
            ItemKind.WarmUp => Plain("Warm up", "Greet them; walk in time and roll ankles, knees, hips and shoulders; small turns both ways."),
            ItemKind.Spare => Plain($"{item.Minutes} {(item.Minutes == 1 ? "minute" : "minutes")} free", item.Minutes >= OpenFloor ? "Open floor: dances they wish, what was shaky, questions." : "For questions, or for what was shaky."),
            ItemKind.OnceMore => With($"{course!.Dance.Title}, once more", item.Reason, "", Advice("Go through", [Have(item, course, tonight: true)])),
            ItemKind.Practice => With($"{course!.Dance.Title}, for practice", item.Reason, "", Advice("Music", [Song(course)])),
            ItemKind.Review => With($"{course!.Dance.Title}, again", item.Reason, "", Advice("Music", [Song(course)]), Advice("Repeat the joints", Joints(course))),
            ItemKind.Show => With($"{course!.Dance.Title}, shown once to music", item.Reason, DanceInShort.Of(course.Dance.Score, options), Advice("Music", [Song(course)])),
            ItemKind.Recap => With($"{course!.Dance.Title}, what they have", item.Reason, "", Advice("Go through", [Have(item, course)])),
            ItemKind.ToMusic => With($"{course!.Dance.Title}, to music", item.Reason, "", Advice("Tempo", [Tempo(course)])),
            _ => Taught(course!, item.Bite!.Value),
        };

        Station Plain(string heading, string says) => new(item.Kind, clock, item.Minutes, heading, [says], [], false, []);

        Station With(string heading, string says, string more, params ReadOnlySpan<Advice> advice) =>
            new(item.Kind, clock, item.Minutes, heading, new[] { says, more }.Where(s => s.Length > 0).ToValueList(), [], couples, advice.ToArray().Where(a => a.Items.Count > 0).ToValueList()) { Ways = item.Kind is ItemKind.Show or ItemKind.Recap or ItemKind.Review ? DanceWays.Of(course!, null) : [] };

        Station Taught(Course taught, int number)
        {
            var bite = taught.Bites[number];
            var stretch = bite.Stretches[0];
            var score = taught.Dance.Score;
            var advice = new List<Advice>
            {
                Advice("Show it", [SidesOf(item, taught, bite)]),
                Advice("They stumble", Stumbling(Stumbles.Of(score, bite))),
                Advice("Call", BiteCalls.Of(taught.Dance, stretch, options)),
                Advice("Put together", [AddOn(taught, number)]),
            };
            if (score.Sections.Count > 0 && stretch.Section is { } section && score.Sections[section].Mirrored) advice.Insert(0, Advice("Mind", ["Here it begins with the other foot, all the other way round."]));
            var further = bite.Stretches.Count > 1 ? $"Then as they know it: {And([.. bite.Stretches.Skip(1).Select(s => Counts(taught, s))])}." : "";
            return new(item.Kind, clock, item.Minutes, $"{taught.Dance.Title}: {Counts(taught, stretch)}{(bite.Name == score.Parts[stretch.Part].Key ? "" : $" ({bite.Name})")}", new[] { item.Reason, further }.Where(s => s.Length > 0).ToValueList(),
                [.. StretchRows.Of(score, stretch.Part, stretch.From, stretch.Counts, options)], couples, advice.Where(a => a.Items.Count > 0).ToValueList())
            { Ways = DanceWays.Of(taught, number) };
        }
    }

    /// <summary>From which side it is shown; what is as for the bite before is not said at length again.</summary>
    private string SidesOf(LessonItem item, Course course, TeachingBite bite)
    {
        var sides = Sides.Of(course.Dance.Score, bite);
        var before = lesson.Items.LastOrDefault(i => i.Kind == ItemKind.Teach && i.Course == item.Course && i.At < item.At);
        return before is not null && Sides.Of(course.Dance.Score, course.Bites[before.Bite!.Value]) == sides ? "As the one before." : sides;
    }

    /// <summary>What is the same on several counts is told once.</summary>
    private static IEnumerable<string> Stumbling(ValueList<Stumble> stumbles) =>
        stumbles.GroupBy(s => s.Says, StringComparer.Ordinal).Select(g => $"{string.Join(", ", g.Select(s => s.Counts).Distinct())}: {g.Key}");

    private static Advice Advice(string word, IEnumerable<string> items) => new(word, items.Where(i => i.Length > 0).ToValueList());

    /// <summary>"Part A, counts 1 to 8", counted in the part as its lines are.</summary>
    private static string Counts(Course course, BiteStretch stretch)
    {
        var part = course.Dance.Score.Parts[stretch.Part];
        var (first, last) = (Name(stretch.From + 1), Name(stretch.From + stretch.Counts));
        return $"{part.Label}, {(stretch.Counts == 1 ? $"count {first}" : $"counts {first} to {last}")}";

        string Name(int count) => (Count.At(count) + Beats.Of(part.CountOffset)).Name;
    }

    /// <summary>Each bite is danced with what came before it: A, then A B, then A B C.</summary>
    private static string AddOn(Course course, int bite)
    {
        var names = course.Bites.Take(bite + 1).Select(b => b.Name).ToList();
        if (names.Count == 1) return $"{names[0]} until it goes by itself.";
        // The new one by itself, with the one before it, then all from the top.
        var last = string.Join(' ', names.TakeLast(2));
        return names.Count == 2 ? $"{names[1]}, then {last}." : $"{names[^1]}, then {last}, then {string.Join(' ', names)}.";
    }

    /// <summary>What the class has by then, if all goes as planned.</summary>
    /// <param name="tonight">With what is taught in this lesson.</param>
    private string Have(LessonItem item, Course course, bool tonight = false)
    {
        if (_over) return Through([.. DoneLesson.Had(plan.Case, course, lesson.Lesson.Index - 1).Select(b => course.Bites[b].Name)]);
        var planned = plan.Lessons.Where(l => l.Lesson.Index < lesson.Lesson.Index || (tonight && l.Lesson.Index == lesson.Lesson.Index)).SelectMany(l => l.Items)
            .Where(i => i.Kind == ItemKind.Teach && i.Course == item.Course).Select(i => i.Bite!.Value).ToHashSet();
        return Through([.. course.Bites.Where((_, b) => course.Progress.Done[b] || planned.Contains(b)).Select(b => b.Name)]);

        static string Through(List<string> names) => names.Count == 0 ? "Once from the top, as far as they came, counted slowly." : $"{string.Join(' ', names)}: once counted slowly, once to music.";
    }

    /// <summary>The joints between the bites, which are repeated more than the bites.</summary>
    private static IEnumerable<string> Joints(Course course) => course.Bites.Skip(1)
        .SelectMany(b => Stumbles.Of(course.Dance.Score, b).Where(s => s.Counts.StartsWith("into ", StringComparison.Ordinal)).Select(s => $"{b.Name}, {s.Counts}: {s.Says}"))
        .Take(MostJoints);

    private static string Song(Course course)
    {
        var facts = course.Dance.Score.Facts;
        var songs = course.Dance.Songs.Take(MostSongs).ToList();
        // A song that has its own tempo is not played at another; the page's is for those that have none.
        var tempo = songs.Count > 0 && songs.TrueForAll(s => s.Tempo is not null) ? "" : Range(facts.TempoFrom, facts.TempoTo, 100);
        return string.Join(", ", new[] { facts.Music?.Trim() ?? "", string.Join(" or ", songs.Select(s => s.Words)), tempo.Length == 0 ? "" : $"{tempo} counts a minute" }.Where(s => s.Length > 0));
    }

    private static string Tempo(Course course)
    {
        var facts = course.Dance.Score.Facts;
        // The first song is the one she likes best for it.
        if (course.Dance.Songs is [var song, ..])
        {
            if (song.Tempo is { } own) return $"First {song.Title} slowed to {SlowFrom} to {SlowTo} % of its tempo ({Range((int)Math.Round(own * SlowFrom / 100), (int)Math.Round(own * SlowTo / 100), 100)} counts a minute), then as it is ({own.ToString("0.#", CultureInfo.InvariantCulture)}).";
            return $"First {song.Title} slowed to {SlowFrom} to {SlowTo} % of its tempo, then as it is{(Range(facts.TempoFrom, facts.TempoTo, 100) is { Length: > 0 } range ? $"; the dance is for {range} counts a minute" : "")}.";
        }

        var fast = Range(facts.TempoFrom, facts.TempoTo, 100);
        if (fast.Length == 0) return "First to a slow song, then at the tempo of the evening.";
        var slowest = facts.TempoFrom ?? facts.TempoTo;
        return $"First {Range(slowest * SlowFrom / 100, slowest * SlowTo / 100, 100)} counts a minute, then {fast}.";
    }

    private static string Range(int? from, int? to, int percent)
    {
        if ((from ?? to) is not { } low || (to ?? from) is not { } high) return "";
        var (a, b) = (low * percent / 100, high * percent / 100);
        return a == b ? a.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{a} to {b}");
    }

    private static string And(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}",
    };
}
