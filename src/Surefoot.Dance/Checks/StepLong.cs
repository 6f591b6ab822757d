using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The page asks for a longer step than people take.</summary>
public sealed class StepLong : ICheck
{
    public string Name => "step-long";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        var told = new HashSet<TextSpan>();
        foreach (var role in dance.Score.Roles)
        {
            foreach (var step in role.Steps)
            {
                if (step.Size.Metres <= 0 || step.Repeated) continue;
                var most = StepLengths.Usual.For(step).Scaled(OneDancer.StatureOf(dance.Score.Facts, role.Role) / Body.ReferenceStature).Most;
                if (step.Size.Metres <= most || !told.Add(step.Source)) continue;
                var (part, count) = dance.Place(step.At);
                var both = dance.Score.Roles.Count > 1 && dance.Score.Roles.All(r => r.Steps.Any(s => s.At == step.At && s.Source == step.Source));
                yield return new(
                    Name, Severity.Warning, step.Source, part, count, both ? null : role.Role,
                    $"A step of {dance.Measures.Length(step.Size.Metres)} is longer than {Say.Who(both ? null : role.Role)} can take in comfort.",
                    $"Steps of this kind reach to about {dance.Measures.Length(most)} for a stature of {dance.Measures.Length(OneDancer.StatureOf(dance.Score.Facts, role.Role))}.");
            }
        }
    }
}
