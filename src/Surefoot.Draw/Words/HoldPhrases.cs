namespace Surefoot.Draw.Words;

/// <summary>A hold's name as it stands in a sentence about two people: "in sweetheart", "with two hands joined".</summary>
internal static class HoldPhrases
{
    public static string In(string hold) => hold.ToLowerInvariant() switch
    {
        "closed" => "in closed hold",
        "two hands" => "with two hands joined",
        "one hand" => "with one hand joined",
        "handshake" => "with right hands joined",
        "crossed hands" => "with hands crossed",
        "open" => "in open hold with inside hands joined",
        "shadow" => "in shadow, one behind the other",
        "right side to right side" => "right side to right side",
        "left closed" => "in closed hold the other way round",
        "reverse one hand" => "with the lead's right and the follow's left hand joined",
        "left handshake" => "with left hands joined",
        "left crossed hands" => "with hands crossed, left over right",
        "left open" => "in open hold, her on his left, with inside hands joined",
        "left side to left side" => "left side to left side",
        "left wrap" => "in the left wrap",
        "left hammerlock" => "in a left hammerlock",
        "lead in front" => "one behind the other, the lead in front",
        "wrap" => "in the wrap",
        "hammerlock" => "in a hammerlock",
        "hands free" => "with hands free",
        _ => "in " + hold,
    };

    /// <summary>The same as the name of what they have now: "sweetheart", "two hands joined".</summary>
    public static string Now(string hold)
    {
        var phrase = In(hold);
        return phrase.StartsWith("in ", StringComparison.Ordinal) ? phrase[3..] : phrase.StartsWith("with ", StringComparison.Ordinal) ? phrase[5..] : phrase;
    }
}
