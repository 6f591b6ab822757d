using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Couple;

/// <summary>During which actions somebody turns.</summary>
internal static class Turnings
{
    /// <summary>From the first to the last turning action of the same words somebody is turning.</summary>
    public static bool[] Of(RoleScore role)
    {
        var turning = new bool[role.Steps.Count];
        for (var i = 0; i < turning.Length; i++)
        {
            if (role.Steps[i].Turn.IsNone) continue;
            var (_, end) = HandTimes.Stretch(role, i);
            var last = i;
            for (var k = i; k <= end; k++)
            {
                if (!role.Steps[k].Turn.IsNone) last = k;
            }

            for (; i < last; i++) turning[i] = true;
            turning[last] = true;
        }

        return turning;
    }
}
