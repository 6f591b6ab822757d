namespace Surefoot.Web.Network;

/// <summary>What a passphrase has to be: long. Signs and capitals that a rule asks for are only harder to type on a tablet.</summary>
internal static class PassphraseRules
{
    /// <summary>Letters at least: three or four short words.</summary>
    public const int Fewest = 12;

    /// <summary>Letters at most, so that nobody makes the studio work on a book.</summary>
    public const int Most = 200;

    /// <summary>Different letters at least, so that "aaaaaaaaaaaa" is none. Working value.</summary>
    private const int Different = 5;

    /// <summary>Why it cannot be taken, or null.</summary>
    public static string? Fault(string chosen, string again) => chosen switch
    {
        { Length: < Fewest } => $"A passphrase has at least {Fewest} letters. Three or four words that have nothing to do with each other are easy to remember and hard to guess.",
        { Length: > Most } => $"A passphrase has at most {Most} letters.",
        _ when chosen.Distinct().Count() < Different => "That is one letter over and over. Three or four words that have nothing to do with each other are hard to guess.",
        _ when chosen != again => "The two were not the same. Please write it twice alike.",
        _ => null,
    };
}
