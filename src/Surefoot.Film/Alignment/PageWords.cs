using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Film.Alignment;

/// <summary>Lefts, rights, forward and back in a page's words for one step, as somebody who reads them aloud would say them.</summary>
internal static class PageWords
{
    public static (ValueList<Foot> Sides, ValueList<Direction> Ways, Foot? Turn) Of(string words, bool turns)
    {
        var sides = new List<Foot>();
        var ways = new List<Direction>();
        var turning = false;
        Foot? turn = null;
        foreach (var word in words.ToLowerInvariant().Split([' ', '-', ',', '/', '.', '(', ')', '[', ']'], StringSplitOptions.RemoveEmptyEntries))
        {
            Foot? side = word switch { "l" or "left" or "lf" => Foot.Left, "r" or "right" or "rf" => Foot.Right, _ => null };
            if (side is { } one)
            {
                if (turning) turn = one;
                else sides.Add(one);
                turning = false;
            }
            else if (word is "forward" or "fwd" or "f/w") ways.Add(Direction.Forward);
            else if (word is "back" or "bk" or "bwd") ways.Add(Direction.Back);
            else if (turns && (word.AsSpan().IndexOfAny('¼', '½', '¾') >= 0 || word is "half" or "quarter")) turning = true;
        }

        return (sides.ToValueList(), ways.ToValueList(), turn);
    }
}
