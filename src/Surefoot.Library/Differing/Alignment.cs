using Surefoot.Dance.Basics;

namespace Surefoot.Library.Differing;

/// <summary>Finds which actions of two dancings of a part belong together.</summary>
internal static class Alignment
{
    // Actions a part may have for a search of the longest common order, which takes their product; parts of
    // dances have some fifty. Longer ones are compared count by count.
    private const int Most = 2000;

    /// <returns>Pairs in order; one of a pair is null where an action came or went.</returns>
    public static IEnumerable<(PartStep? Before, PartStep? After)> Of(List<PartStep> before, List<PartStep> after, bool sameLength)
    {
        // In a part that kept its length an action belongs to its count. Where counts were put in, what follows
        // is still the same dancing, only later.
        var pairs = sameLength || before.Count > Most || after.Count > Most ? ByCount(before, after) : ByOrder(before, after);
        return pairs.OrderBy(p => (p.After ?? p.Before)!.At);
    }

    private static List<(PartStep? Before, PartStep? After)> ByCount(List<PartStep> before, List<PartStep> after)
    {
        var pairs = new List<(PartStep?, PartStep?)>();
        var (a, b) = (0, 0);
        while (a < before.Count || b < after.Count)
        {
            var order = a == before.Count ? 1 : b == after.Count ? -1 : before[a].At.CompareTo(after[b].At);
            pairs.Add((order <= 0 ? before[a++] : null, order >= 0 ? after[b++] : null));
        }

        return pairs;
    }

    private static List<(PartStep? Before, PartStep? After)> ByOrder(List<PartStep> before, List<PartStep> after)
    {
        var longest = new int[before.Count + 1, after.Count + 1];
        for (var i = before.Count - 1; i >= 0; i--)
        {
            for (var j = after.Count - 1; j >= 0; j--)
            {
                longest[i, j] = before[i].Act == after[j].Act ? longest[i + 1, j + 1] + 1 : Math.Max(longest[i + 1, j], longest[i, j + 1]);
            }
        }

        var pairs = new List<(PartStep?, PartStep?)>();
        var (a, b) = (0, 0);
        while (a < before.Count || b < after.Count)
        {
            if (a < before.Count && b < after.Count && before[a].Act == after[b].Act) pairs.Add((before[a++], after[b++]));
            else if (b == after.Count || (a < before.Count && longest[a + 1, b] >= longest[a, b + 1])) pairs.Add((before[a++], null));
            else pairs.Add((null, after[b++]));
        }

        // What went and what came on the same count is one change.
        for (var i = 0; i < pairs.Count; i++)
        {
            if (pairs[i] is not ({ } gone, null)) continue;
            var other = pairs.FindIndex(p => p is (null, { } here) && here.At == gone.At);
            if (other < 0) continue;
            pairs[i] = (gone, pairs[other].Item2);
            pairs.RemoveAt(other);
            if (other < i) i--;
        }

        return pairs;
    }
}
