using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>Names what is danced as it is called.</summary>
internal static class CallNames
{
    /// <param name="calls">Those that the page writes itself name their steps too.</param>
    /// <param name="counts">Length of one repeat.</param>
    public static List<NamedStep> Of(IReadOnlyList<(Role Role, List<CallUnit> Units)> roles, IReadOnlyList<Call> calls, int counts)
    {
        var named = new List<NamedStep>();
        foreach (var together in roles.SelectMany(r => r.Units.Select(u => (r.Role, Unit: u))).GroupBy(x => x.Unit.At).OrderBy(g => g.Key))
        {
            var all = together.ToList();
            var step = together.Key;
            string Words(Role role, CallUnit unit) =>
                calls.LastOrDefault(c => c.Written && (c.Step == step || c.Step == step + Beats.Of(counts)) && (c.Role is null || c.Role == role))?.Words ?? unit.Words;
            var said = all.ConvertAll(x => (x.Role, Words: Words(x.Role, x.Unit)));
            var shared = all.Count == roles.Count && all.TrueForAll(x => x.Unit.Bare == all[0].Unit.Bare && x.Unit.Bare.Length > 0 && x.Unit.TurnsFar == all[0].Unit.TurnsFar) ? all[0].Unit.Bare : null;
            if (said.Count == roles.Count && said.TrueForAll(s => s.Words == said[0].Words)) named.Add(new(step, null, said[0].Words));
            else if (shared is not null && said.TrueForAll(s => all.Exists(x => x.Role == s.Role && x.Unit.Words == s.Words))) named.Add(new(step, null, shared));
            else named.AddRange(said.Select(s => new NamedStep(step, s.Role, s.Words)));
        }

        return named;
    }
}
