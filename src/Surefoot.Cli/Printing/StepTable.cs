using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Cli.Printing;

/// <summary>Actions count by count, each role's beside the other's.</summary>
internal static class StepTable
{
    /// <summary>Rows of columns: the count, then for each role foot, action, turn, facing and weight.</summary>
    /// <param name="counted">How a moment is counted in front of its row.</param>
    /// <param name="facings">False where it does not matter which way they look.</param>
    /// <param name="holds">For couples what they hold at each moment: a last column, filled where it changes.</param>
    public static List<string[]> Rows(
        IReadOnlyList<(Role Role, IReadOnlyList<ScoreStep> Steps)> roles, Func<Count, string> counted, Floor floor, bool facings, Func<Count, string?>? holds = null)
    {
        string? held = null;
        var rows = new List<string[]>();
        string[] titles = facings ? ["foot", "action", "turn", "facing", "weight"] : ["foot", "action", "turn", "weight"];
        if (roles.Count > 1) rows.Add(["", .. roles.SelectMany(r => titles.Select((_, i) => i == 0 ? r.Role.Title() : ""))]);
        rows.Add(["count", .. roles.SelectMany(_ => titles), .. holds is null ? Array.Empty<string>() : ["hold"]]);
        foreach (var at in roles.SelectMany(r => r.Steps).Select(s => s.At).Distinct().Order())
        {
            // Two actions of one dancer at one moment take a row each.
            var lines = roles.Max(r => r.Steps.Count(s => s.At == at));
            var hold = holds?.Invoke(at);
            for (var i = 0; i < lines; i++)
            {
                string[] last = i == 0 && hold is not null && hold != held ? [hold] : [];
                rows.Add([i == 0 ? counted(at) : "", .. roles.SelectMany(r => Columns(r.Steps.Where(s => s.At == at).Skip(i).FirstOrDefault(), floor, facings)), .. last]);
            }

            held = hold;
        }

        return rows;
    }

    public static void Print(List<string[]> rows, int indent, Screen screen)
    {
        if (rows.Count == 0) return;
        var widths = Enumerable.Range(0, rows.Max(r => r.Length)).Select(c => rows.Max(r => c < r.Length ? Cells.Width(r[c]) : 0)).ToList();
        foreach (var row in rows)
        {
            screen.Out.WriteLine((new string(' ', indent) + string.Join("  ", row.Select((c, i) => Cells.Pad(c, widths[i])))).TrimEnd());
        }
    }

    /// <summary>"rock forward", "pivot", "hold".</summary>
    public static string Action(ScoreStep step) => step.Kind switch
    {
        ActionKind.Step => $"step {step.Direction.Word()}",
        ActionKind.Recover or ActionKind.Drop or ActionKind.Hold => step.Kind.Word(),
        _ => step.Direction == Direction.InPlace ? step.Kind.Word() : $"{step.Kind.Word()} {step.Direction.Word()}",
    };

    private static string[] Columns(ScoreStep? step, Floor floor, bool facings)
    {
        if (step is null) return facings ? ["", "", "", "", ""] : ["", "", "", ""];
        var foot = step.Foot switch { FootUse.Left => "left", FootUse.Right => "right", FootUse.Both => "both", _ => "" };
        var turn = step.Turn.IsNone ? "" : step.Turn.ToString();
        var weight = step.Weight switch { Weight.Left => "left", Weight.Right => "right", _ => "both" };
        return facings ? [foot, Action(step), turn, step.Facing.Name(floor), weight] : [foot, Action(step), turn, weight];
    }
}
