using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>What is called once: a figure, or a few actions that no figure names.</summary>
/// <param name="At">When it begins.</param>
/// <param name="Words">What is called for it.</param>
/// <param name="Bare">The same without how it is danced: "shuffle" for "shuffle back".</param>
/// <param name="Turned">How far the dancer turns in it.</param>
internal sealed record CallUnit(Count At, string Words, string Bare, Turn Turned)
{
    /// <summary>Eighths of half a turn, which is danced very differently from none. Working value.</summary>
    public const int FarTurn = 4;

    /// <summary>True for half a turn or more.</summary>
    public bool TurnsFar => Math.Abs(Turned.Eighths) >= FarTurn;
}

/// <summary>Cuts a role's steps into what is called.</summary>
internal static class CallUnits
{
    /// <param name="meter">An action within two counts (in 3/4 a bar) of the one called before goes along with it: calls are not said faster.</param>
    public static List<CallUnit> Of(RoleScore role, Meter meter, FigureBook figures, CallBook book)
    {
        var apart = Beats.Of(meter.Beats == 3 ? 3 : 2);
        var units = new List<CallUnit>();
        var steps = role.Steps;
        var keys = steps.AsSpan().ToArray().Select(s => s.Figure is null ? CallPattern.KeyOf(s) : "").ToList();
        // Where the loose actions of the last unit began: others may still join them.
        Count? open = null;
        for (var i = 0; i < steps.Count;)
        {
            var length = Length(steps, i, keys, book, out var pattern);
            var all = steps.AsSpan().Slice(i, length).ToArray();
            if (all[0].Figure is { } name)
            {
                units.Add(OfFigure(all, name, role.Role, figures, book));
                open = null;
            }
            else if (open is { } start && all[^1].At - start < apart)
            {
                Join(units, Atom(all, pattern, book));
            }
            else
            {
                units.Add(Atom(all, pattern, book));
                open = all[0].At;
            }

            i += length;
        }

        return units;
    }

    private static int Length(ValueList<ScoreStep> steps, int at, List<string> keys, CallBook book, out CallPattern? pattern)
    {
        pattern = null;
        var first = steps[at];
        var until = at + 1;
        if (first.Figure is not null)
        {
            // All steps that one stretch of the page asks for, with the touch or scuff that closes them.
            while (until < steps.Count && steps[until].Figure == first.Figure && Within(steps[until], first)) until++;
            return until - at;
        }

        // "Full turn right L R L" is one thing, however many steps it takes.
        while (until < steps.Count && steps[until].Figure is null && steps[until].Source == first.Source && Within(steps[until], first)) until++;
        if (until - at > 1 && steps.AsSpan()[at..until].ToArray().Any(s => !s.Turn.IsNone)) return until - at;

        pattern = book.Patterns.FirstOrDefault(p => p.Fits(keys, at) && Same(steps, at, p.Steps.Count));
        return pattern?.Steps.Count ?? 1;
    }

    private static bool Within(ScoreStep step, ScoreStep first) =>
        step.Source.Start >= first.Source.Start && step.Source.End <= first.Source.End && step.Section == first.Section && step.RepeatedBy == first.RepeatedBy;

    // Across the end of a part nothing belongs together.
    private static bool Same(ValueList<ScoreStep> steps, int at, int length) => steps[at].Section == steps[at + length - 1].Section;

    private static CallUnit OfFigure(ScoreStep[] all, string name, Role role, FigureBook figures, CallBook book)
    {
        var figure = figures.Named(name);
        var calls = figure?.Calls ?? default;
        var template = (calls.FirstOrDefault(c => c.Role == role) ?? calls.FirstOrDefault(c => c.Role is null))?.Words;
        // A figure that goes several ways says which, where there is room.
        template ??= CallWords.Short(name) + (figure?.Versions.Exists(v => v.Going is not null) == true ? " {way}" : "");
        var bare = CallWords.Bare(template);
        // A turn that the page adds to a figure.
        if (!Says(template) && figure is { NamesTurn: false, UsualTurn.IsNone: true }) template += " {turn}";
        return new(all[0].At, CallWords.Fill(template, all, book), bare, Turned(all));
    }

    private static Turn Turned(ScoreStep[] all) => all.Aggregate(Turn.None, (sum, step) => sum + step.Turn);

    private static bool Says(string template) => template.Contains("{turn}", StringComparison.Ordinal) || template.Contains("{round}", StringComparison.Ordinal);

    private static CallUnit Atom(ScoreStep[] all, CallPattern? pattern, CallBook book)
    {
        var template = pattern?.Words ?? CallPattern.KeyOf(all[0]);
        var (turns, says) = (all.Any(s => !s.Turn.IsNone), Says(template));
        if (turns && !says && pattern is null && all.Length > 1) template = book.TurningSteps;
        else if (turns && !says && pattern is not null && Math.Abs(Turned(all).Eighths) >= CallUnit.FarTurn && Array.TrueForAll(all, s => s is { Kind: ActionKind.Step, Direction: Direction.InPlace })) template = book.TurningSteps;
        else if (turns && !says && all is [{ Kind: ActionKind.Step }]) template = book.Turning;
        var words = CallWords.Fill(template, all, book);
        return new(all[0].At, words.Length > 0 ? words : all[0].Kind.Word(), CallWords.Bare(template), Turned(all));
    }

    // "step, kick": one breath, where it stays short enough.
    private static void Join(List<CallUnit> units, CallUnit next)
    {
        var before = units[^1];
        var together = $"{before.Words} {next.Words}";
        var fits = before.Words != next.Words && Syllables.In(CallWords.Plain(together)) <= CallWords.MostSyllables;
        units[^1] = before with { Words = fits ? together : before.Words, Turned = before.Turned + next.Turned };
    }
}
