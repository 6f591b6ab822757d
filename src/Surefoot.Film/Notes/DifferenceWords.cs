using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Film.Alignment;
using Surefoot.Film.Hearing;

namespace Surefoot.Film.Notes;

/// <summary>Says in one sentence what was said and what is written.</summary>
internal static class DifferenceWords
{
    public static string Feet(Heard heard, Ask ask)
    {
        var written = ask.PageSides.Count > 0 ? ask.PageSides : ask.Feet;
        return $"You say \"{heard.Said}\": {Sides(heard.Move!.Sides)}. The page has {Sides(written)}.";
    }

    public static string Way(Heard heard, Ask ask) =>
        $"You say \"{heard.Said}\": {heard.Move!.Way!.Value.Word()}. The page has {(ask.PageWays.Count > 0 ? ask.PageWays[0] : ask.Step.Direction).Word()}.";

    public static string Turn(Heard heard, Ask ask, Clash clash) => clash.HasFlag(Clash.TurnAmount)
        ? $"You say \"{heard.Said}\": {Amount(heard.Move!.Turn!.Value)}. The page has {Amount(ask.Turned)}."
        : $"You say \"{heard.Said}\": turning {heard.Move!.TurnSide!.Value.Word()}. The page turns {(ask.PageTurn ?? ask.TurnSide!.Value).Word()}.";

    public static string TooMany(Heard heard, Ask ask) => $"You say \"{heard.Said}\" once more than the page has it.";

    public static string Missing(List<string> written) => written.Count == 1
        ? $"You leave out \"{written[0]}\", or it was not heard."
        : $"You leave out {string.Join(" and ", written.Distinct().Select(w => $"\"{w}\""))}, or it was not heard.";

    private static string Sides(ValueList<Foot> sides) => string.Join(' ', sides.Select(s => s.Word()));

    private static string Amount(int eighths) => eighths switch { 2 => "a quarter turn", 4 => "a half turn", 6 => "three quarters of a turn", 8 => "a full turn", _ => Dance.Basics.Turn.AmountName(eighths) + " turn" };
}
