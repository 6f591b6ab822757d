using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Choosing;

/// <summary>What comes of a phrase danced from a free foot.</summary>
/// <param name="Free">The foot that is free afterwards; null when neither or both are.</param>
/// <param name="Clashes">Steps that ask for a foot which carries the weight, and the like.</param>
internal readonly record struct Danced(Foot? Free, int Clashes, int Steps);

/// <summary>Dances a phrase by itself, with the page's own reader and feet.</summary>
internal sealed class FootTrial(FigureBook book, PhraseWords words)
{
    private readonly Dictionary<(string, Foot, CountLabel?), Danced> _danced = [];

    /// <param name="counts">The counts it is danced on, as a page writes them; null for as many as it takes.</param>
    public Danced Dance(string text, Foot free, CountLabel? counts)
    {
        if (_danced.TryGetValue((text, free, counts), out var known)) return known;
        var on = counts is null ? CountLabel.Of(3, Math.Max(1, words.Page(text).Length.Ceiling)).Name : counts.Moved(3 - counts.From).Name;
        // One step before it puts the weight where it is to be; what a page says of the start gives way to its first step.
        var standing = free.Other().Letter();
        var rocked = text.StartsWith("recover", StringComparison.OrdinalIgnoreCase) ? "rock forward"
            : text.Contains("pivot", StringComparison.OrdinalIgnoreCase) ? "step forward" : "step in place";
        var (page, own) = PageReader.Read($"Sheet\nKind: line, 1 wall\nFeet: {free.Word()} free\n\n1-2  Step in place {free.Letter()}, {rocked} {standing}\n{on}  {text}\n", book);
        var role = ScoreMaker.Make(page, own).Roles[0];
        var clashes = 0;
        for (var i = 2; i < role.Steps.Count; i++)
        {
            if (role.Steps[i].Conflict != Conflict.None) clashes++;
        }

        var weight = role.Steps.Count > 0 ? role.Steps[^1].Weight : Weight.Both;
        return _danced[(text, free, counts)] = new(weight.Free(), clashes, role.Steps.Count - 2);
    }
}
