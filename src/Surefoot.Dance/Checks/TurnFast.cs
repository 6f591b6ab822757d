using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>More turning in the time than is comfortable at the page's tempo.</summary>
public sealed class TurnFast : ICheck
{
    /// <summary>
    /// Comfortable turning in turns a second, over two counts: one turn in two counts at 120 counts a
    /// minute, which is one a second. Working value, from memory; larger values warn less.
    /// </summary>
    private const double TurnsPerSecond = 1.0;

    /// <summary>Beginners turn half as fast. Working value.</summary>
    private const double BeginnersShare = 0.5;

    private static readonly Beats Window = Beats.Of(2);

    public string Name => "turn-fast";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Score.Facts.TempoTo is not { } tempo) yield break;
        var beginners = dance.Score.Facts.Level?.Contains("beginner", StringComparison.Ordinal) ?? false;
        var limit = TurnsPerSecond * (beginners ? BeginnersShare : 1);
        var seconds = Window.ToDouble() * 60 / tempo;
        var told = new HashSet<TextSpan>();
        foreach (var role in dance.Score.Roles)
        {
            for (var i = 0; i < role.Steps.Count; i++)
            {
                if (role.Steps[i].Turn.IsNone) continue;
                var eighths = Turned(role.Steps, i, out var last);
                if (Turned(role.Steps, i + 1, out _) > eighths) continue;
                var turns = eighths / 8.0;
                if (turns / seconds <= limit) continue;
                var step = role.Steps[i];
                i = last;
                if (step.Repeated || !told.Add(step.Source)) continue;
                var (part, count) = dance.Place(step.At);
                var both = dance.Score.Roles.Count > 1 && dance.Score.Roles.All(r => r.Steps.Any(s => s.At == step.At && s.Source == step.Source && s.Turn == step.Turn));
                yield return new(
                    Name, Severity.Warning, step.Source, part, count, both ? null : role.Role,
                    $"{Say.Who(both ? null : role.Role, start: true)} {Say.Verb(both ? null : role.Role, "turns", "turn")} {Amount(eighths)} within 2 counts, which is fast at {tempo} counts a minute.",
                    $"{(beginners ? "Beginners" : "Dancers")} are comfortable with it over {Math.Ceiling(turns / limit * tempo / 60):0} counts at that tempo, or in 2 counts up to {Math.Floor(Window.ToDouble() * 60 * limit / turns):0} counts a minute.");
            }
        }
    }

    private static string Amount(int eighths) => eighths switch
    {
        8 => "a full turn",
        < 8 => $"{Turn.AmountName(eighths)} of a turn",
        _ => $"{Turn.AmountName(eighths).Replace(" turns", "", StringComparison.Ordinal)} times",
    };

    private static int Turned(ValueList<ScoreStep> steps, int from, out int last)
    {
        var eighths = 0;
        last = from;
        for (var i = from; i < steps.Count && steps[i].At < steps[from].At + Window; i++)
        {
            eighths += Math.Abs(steps[i].Turn.Eighths);
            if (!steps[i].Turn.IsNone) last = i;
        }

        return eighths;
    }
}
