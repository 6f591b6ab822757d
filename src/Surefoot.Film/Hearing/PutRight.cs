namespace Surefoot.Film.Hearing;

/// <summary>"Part c, no sorry, part b": what was put right in the same breath counts as it was put right.</summary>
internal static class PutRight
{
    /// <summary>Stands for "no sorry" among what was said.</summary>
    public const string Mark = "(put right)";

    /// <summary>Seconds between what was wrong and what is right. Working value.</summary>
    private const double SameBreath = 4;

    public static List<Heard> In(List<Heard> heard)
    {
        var all = new List<Heard>(heard.Count);
        for (var i = 0; i < heard.Count; i++)
        {
            if (heard[i].Said != Mark)
            {
                all.Add(heard[i]);
                continue;
            }

            // "Sorry, I mean": once is enough.
            if (i + 1 < heard.Count && heard[i + 1].Said == Mark) continue;
            if (i + 1 >= heard.Count || heard[i + 1].From - heard[i].From > SameBreath) continue;
            // "The first section, sorry, the second section": the article is nothing by itself.
            if (heard[i + 1] is { Kind: HeardKind.Talk, Words: 1 } word && word.Said != Mark && i + 2 < heard.Count && heard[i + 2].Kind == HeardKind.Part && heard[i + 2].From - heard[i].From < SameBreath) heard.RemoveAt(i + 1);
            var right = heard[i + 1];
            var wrong = all.FindLastIndex(h => h.Kind == right.Kind && heard[i].From - h.To < SameBreath);
            if (right.Kind is HeardKind.Part or HeardKind.Role or HeardKind.Side && wrong >= all.Count - 2 && wrong >= 0)
            {
                // The part begins where it was begun to be named.
                heard[i + 1] = right with { From = all[wrong].From };
                all.RemoveRange(wrong, all.Count - wrong);
            }
            else if (all.Count > 0 && all[^1].Kind == HeardKind.Part && heard[i].From - all[^1].To < SameBreath)
            {
                // Taken back, and what it should be was not heard.
                all.RemoveAt(all.Count - 1);
            }
            else if (right is { Kind: HeardKind.Step, Move: { } move })
            {
                var same = all.FindLastIndex(h => h.Move is { } m && m.SameHead(move));
                var cut = same >= 0 && same >= all.Count - 3 && heard[i].From - all[same].To < SameBreath ? same : wrong == all.Count - 1 ? wrong : -1;
                // Of an action with several feet, the feet are what is left of what was taken back.
                if (cut >= 0 && cut != same && all[cut] is { Move: { Figure: null, Sides.Count: > 1 } kept } step) (all[cut], cut) = (step with { Move = kept with { Sides = [] } }, cut + 1);
                if (cut >= 0) all.RemoveRange(cut, all.Count - cut);
            }
        }

        return all;
    }
}
