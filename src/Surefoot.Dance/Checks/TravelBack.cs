using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>A circle dance moves against the line of dance.</summary>
public sealed class TravelBack : IWholeDanceCheck
{
    /// <summary>Net way against the line of dance in one part, in metres for a stature of 1.70 m. Working value.</summary>
    private const double Most = 0.5;

    public string Name => "travel-back";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Score.Facts.Floor != Floor.Track || dance.Score.Roles.Count == 0) yield break;
        var role = dance.Score.Roles[0];
        if (dance.Motion.Of(role.Role) is not { } motion) yield break;
        var told = new HashSet<int>();
        for (var s = 0; s < dance.Score.Sections.Count; s++)
        {
            var section = dance.Score.Sections[s];
            if (!told.Add(section.Part)) continue;
            var end = s + 1 < dance.Score.Sections.Count ? dance.Score.Sections[s + 1].Start : Count.First + dance.Score.Counts;
            var from = motion.Stances[DanceCase.StanceAt(role, section.Start - Beats.Of(1, 64))].Middle.X;
            var to = motion.Stances[DanceCase.StanceAt(role, end - Beats.Of(1, 64))].Middle.X;
            var most = Most * OneDancer.StatureOf(dance.Score.Facts, role.Role) / Body.ReferenceStature;
            if (to - from >= -most - 1e-9) continue;
            var part = dance.Score.Parts[section.Part];
            yield return new(
                Name, Severity.Warning, part.Span.Length > 0 ? part.Span : role.Steps[0].Source, dance.LabelIn(section.Part), null, null,
                $"{dance.LabelIn(section.Part)} moves {dance.Measures.Length(from - to)} against the line of dance.",
                $"Couples behind come the other way, and feel it when a part goes back more than {dance.Measures.Length(most)}.");
        }
    }
}
