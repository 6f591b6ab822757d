using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Words;
using Surefoot.Lessons.Reviewing;
using Surefoot.Lessons.Text;

namespace Surefoot.Lessons.Planning;

/// <summary>Brings a term's text together with its lessons and with the pages of its dances.</summary>
internal sealed class CaseMaker(TermPage page, Term term, IReadOnlyList<TermDance> dances)
{
    /// <summary>
    /// Where the reviews of a dance stand that was known before the term and whose last time is said: as after three
    /// that went well. Working value.
    /// </summary>
    private static readonly Sm2 WellKnown = Sm2.New.After(Sm2.Expected).After(Sm2.Expected).After(Sm2.Expected);

    /// <summary>With what the pieces behind a dance's name begin.</summary>
    private static readonly string[] SaidOfADance = ["by", "before", "after", "for", "danced"];

    private readonly TermProblems _problems = new();
    private readonly ValueList<Lesson> _lessons = term.Lessons();
    private readonly List<Course> _courses = [];
    private readonly HashSet<string> _missed = new(StringComparer.OrdinalIgnoreCase);

    public TermCase Make()
    {
        if (term.Slots.Count > 0 && _lessons.Count == 0) _problems.Error("evenings-none", term.Slots[0].Span, "No evening of the term is left.", "Every day on which there is one is closed, or the term is shorter than a week.");
        foreach (var known in term.Known) AddKnown(known);
        AddWished();
        var done = new DoneMaker(term, _lessons, _courses, _problems);
        var (reached, told) = (done.Reached(), done.Told());
        for (var i = 0; i < _courses.Count; i++) _courses[i] = _courses[i] with { Progress = ProgressMaker.Of(_courses[i], _lessons, reached) };
        return new(term, _lessons, done.Past(), _courses.ToValueList(), reached, told, done.Missed(reached, told), done.Fallen(reached, told), [.. page.Problems.Concat(_problems.InOrder).OrderBy(p => p.Span.Start)]);
    }

    private void AddKnown(KnownDance known)
    {
        if (Find(known.Dance, known.NameSpan) is not { } dance) return;
        foreach (var who in known.For is { } said ? [said] : Classes(dance.Kind).ToList())
        {
            if (Course(dance, who, known.Span) is not { } course || TwiceSaid(course, known.NameSpan)) continue;
            var progress = new Progress([.. course.Bites.Select(_ => true)], true, WellKnown, known.Danced);
            _courses.Add(course with { KnownBefore = true, Progress = progress });
        }
    }

    private void AddWished()
    {
        var wished = new List<(DanceWish Wish, Course Course)>();
        foreach (var wish in term.Wishes)
        {
            if (Find(wish.Dance, wish.NameSpan) is not { } dance || ClassOf(wish, dance) is not { } who || Course(dance, who, wish.Span) is not { } course) continue;
            if (TwiceSaid(course, wish.NameSpan)) continue;
            wished.Add((wish, course));
            _courses.Add(course with { By = wish.By });
        }

        foreach (var (wish, course) in wished) Connect(wish, course);
        foreach (var (wish, course) in wished)
        {
            if (!LeadsTo(course.Index, course.Index, [])) continue;
            _problems.Error("order-circle", wish.Span, $"\"{course.Dance.Title}\" would have to come before itself.", "Follow the words \"after\" from dance to dance: they lead in a circle. Take one of them out.");
            _courses[course.Index] = _courses[course.Index] with { After = [] };
        }
    }

    private void Connect(DanceWish wish, Course course)
    {
        var after = new List<int>();
        var known = _courses.Where(c => c.KnownBefore && c.Class == course.Class).Select(c => c.Dance.Score).ToList();
        foreach (var name in wish.After)
        {
            if (Find(name.Name, name.Span) is not { } dance) continue;
            var before = _courses.Find(c => c.Class == course.Class && c.Dance == dance);
            if (before is null)
            {
                _problems.Error("order-missing", name.Span, $"\"{course.Dance.Title}\" comes after \"{dance.Title}\", which {course.Class.Words} neither know nor are taught.", "Add it to the dances to teach or to those that are known, or take out the \"after\".");
                continue;
            }

            if (!before.KnownBefore) after.Add(before.Index);
            if (!before.KnownBefore) known.Add(dance.Score);
        }

        var bites = TeachingBite.Of(course.Dance.Score, known);
        _courses[course.Index] = _courses[course.Index] with { After = after.ToValueList(), Bites = bites, Minutes = [.. bites.Select(b => LessonMinutes.Of(b, course.Class))] };
    }

    private bool LeadsTo(int from, int to, HashSet<int> seen) => _courses[from].After.Any(a => a == to || (seen.Add(a) && LeadsTo(a, to, seen)));

    private bool TwiceSaid(Course course, TextSpan at)
    {
        if (!_courses.Exists(c => c.Dance == course.Dance && c.Class == course.Class)) return false;
        _problems.Warning("dance-twice", at, $"\"{course.Dance.Title}\" stands here a second time for {course.Class.Words}.", "The first line counts; take one of them out.");
        return true;
    }

    private Course? Course(TermDance dance, DanceClass who, TextSpan span)
    {
        var bites = TeachingBite.Of(dance.Score, []);
        if (bites.Count == 0)
        {
            _problems.Error("dance-empty", span, $"The page of \"{dance.Title}\" holds no steps to teach.", "Write the dance first, or take it out of the term.");
            return null;
        }

        var lessons = _lessons.Where(l => l.Slot.For == who && l.Slot.Kinds.HasFlag(dance.Kind)).Select(l => l.Index).ToValueList();
        if (lessons.Count > 0) return new(_courses.Count, dance, who, bites, [.. bites.Select(b => LessonMinutes.Of(b, who))], null, [], lessons, false, new([.. bites.Select(_ => false)], false, null, null), span);
        _problems.Error("dance-no-evening", span, $"No evening is for \"{dance.Title}\": it is for {dance.Kind.Words()}, and {who.Words} have no such evening.", $"Add an evening for it, as in: Tuesday 19:00, 45 minutes, {who.Words}, {dance.Kind.Words()}");
        return null;
    }

    /// <summary>Who learns a dance: who is named; else the easiest class with evenings for it that is up to its page's level.</summary>
    private DanceClass? ClassOf(DanceWish wish, TermDance dance)
    {
        if (wish.For is { } said) return said;
        var fitting = Classes(dance.Kind).ToList();
        if (fitting is [var only]) return only;
        if (Levels.Read(dance.Score.Facts.Level) is { } level)
        {
            foreach (var one in fitting)
            {
                if (one.Level >= level) return one;
            }
        }

        if (fitting.Contains(DanceClass.Everybody)) return DanceClass.Everybody;
        var title = dance.Title;
        if (fitting.Count == 0) _problems.Error("dance-no-evening", wish.Span, $"No evening is for \"{title}\": none is for {dance.Kind.Words()}.", "Add an evening for it, or take the dance out.");
        else _problems.Error("dance-for-whom", wish.Span, $"For whom is \"{title}\"?", $"Its page gives no level that fits one class. Write it behind the dance, as in: {title}, for {fitting[0].Words}");
        return null;
    }

    private IEnumerable<DanceClass> Classes(DanceKinds kind) => term.Slots.Where(s => s.Kinds.HasFlag(kind)).Select(s => s.For).Distinct().Order();

    private TermDance? Find(string name, TextSpan at)
    {
        foreach (var dance in dances)
        {
            if (dance.Names.Any(n => n.Equals(name, StringComparison.OrdinalIgnoreCase))) return dance;
        }

        if (!_missed.Add(name)) return null;
        // "Dinner Bell Six by 2 March": the name is there, and what is said of it runs into it.
        if (dances.SelectMany(d => d.Names).Where(n => name.StartsWith(n + " ", StringComparison.OrdinalIgnoreCase)).MaxBy(n => n.Length) is { } begun
            && Array.Exists(SaidOfADance, w => name[begun.Length..].TrimStart().StartsWith(w + " ", StringComparison.OrdinalIgnoreCase)))
        {
            _problems.Error("dance-missing", at, $"There is no page of a dance \"{name}\".", $"A comma is missing behind its name: {begun}, {name[begun.Length..].Trim()}");
            return null;
        }

        var near = dances.Select(d => (d.Title, Distance: d.Names.Min(n => NearWords.Distance(n.ToLowerInvariant(), name.ToLowerInvariant(), 3))))
            .Where(n => n.Distance <= Math.Max(1, name.Length / 4)).OrderBy(n => n.Distance).Select(n => n.Title).FirstOrDefault();
        _problems.Error("dance-missing", at, $"There is no page of a dance \"{name}\".", near is null ? "A term speaks of dances by the title of their page." : $"Did you mean: {near}?");
        return null;
    }
}
