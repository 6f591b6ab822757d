using System.Text.RegularExpressions;
using Surefoot.Dance.Steps;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>
/// Couples who look along the line of dance go along it: where a sheet names no way in any of its steps, plain steps go
/// forward. Common practice, no source.
/// </summary>
internal static class NoWayTold
{
    private const string Says = "no way is named in any step, so plain steps go forward, along the line of dance";

    private static readonly Regex Plain = new("^(?:slow )?(?:step(?: (?:L|R))?|(?:L|R) step)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<DraftPart> parts, SheetFacts facts, PhraseWords words)
    {
        if (facts is not { Couple: true, Facing: null or "line of dance" }) return;
        var lines = parts.SelectMany(p => p.Lines).ToList();
        var moves = lines.SelectMany(l => l.Phrases).Where(p => p.Text.Length > 0).SelectMany(p => words.Page(p.Text).Moves).ToList();
        if (moves.Exists(m => m.Figure is not null || m.OnlyTurn || m.Way is not (null or Direction.InPlace or Direction.Together))) return;
        foreach (var line in lines)
        {
            for (var i = 0; i < line.Phrases.Count; i++)
            {
                if (line.Phrases[i].Told || !Plain.IsMatch(line.Phrases[i].Text)) continue;
                line.Phrases[i] = line.Phrases[i] with { Text = line.Phrases[i].Text + " forward" };
                if (!line.Assumed.Contains(Says)) line.Assumed.Add(Says);
            }
        }
    }
}
