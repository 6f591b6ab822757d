using System.Globalization;
using System.Text;

namespace Surefoot.Library.Keeping;

/// <summary>
/// Names of pages that are safe as names of files on every machine: no way out of a folder, no letters that
/// some system refuses, nothing hidden, nothing endless.
/// </summary>
internal static class PageName
{
    // Characters of one folder's or page's name, and how deep folders go. Far below what any system refuses,
    // so that an export can be unpacked anywhere. Working values.
    private const int Longest = 80;
    private const int Deepest = 6;

    private static readonly string[] Refused =
    [
        "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
        "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9",
    ];

    /// <summary>The nearest name that is safe; "page" where nothing is left of it.</summary>
    public static string Clean(string name)
    {
        var pieces = name.Split('/', '\\').Select(Piece).Where(p => p.Length > 0).Take(Deepest).ToList();
        return pieces.Count == 0 ? "page" : string.Join('/', pieces);
    }

    /// <summary>A file's name for a dance's title: "Five Barns" is "five-barns".</summary>
    public static string ForTitle(string title)
    {
        var words = Folding.Key(title).Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries);
        return Clean(words.Length == 0 ? "dance" : string.Join('-', words));
    }

    /// <summary>True when a page is called by this title, alone or with the number that set it apart from others.</summary>
    public static bool IsFor(string name, string title)
    {
        var (own, usual) = (name[(name.LastIndexOf('/') + 1)..], ForTitle(title));
        if (own == usual) return true;
        return own.StartsWith(usual + "-", StringComparison.Ordinal) && int.TryParse(own.AsSpan(usual.Length + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 1;
    }

    /// <summary>One folder's or file's name.</summary>
    public static string Piece(string piece)
    {
        var clean = new StringBuilder(piece.Length);
        foreach (var rune in piece.EnumerateRunes())
        {
            if (clean.Length >= Longest) break;
            // Half of a pair of letters comes as the sign for "unreadable".
            if (Rune.IsControl(rune) || rune == Rune.ReplacementChar || rune.Value is '<' or '>' or ':' or '"' or '|' or '?' or '*' or '/' or '\\') clean.Append('-');
            // Marks that turn the direction of writing hide what a name really is.
            else if (Rune.GetUnicodeCategory(rune) != System.Globalization.UnicodeCategory.Format) clean.Append(rune.ToString());
        }

        // Dots in front hide a file, dots and blanks behind are dropped by some systems.
        var name = clean.ToString().Trim(' ', '.', '\t', '\u00A0');
        if (name.EndsWith(KeptFolder, StringComparison.OrdinalIgnoreCase)) name = name[..^KeptFolder.Length] + "-kept";
        var stem = name.IndexOf('.') is var dot and >= 0 ? name[..dot] : name;
        return Array.Exists(Refused, r => r.Equals(stem, StringComparison.OrdinalIgnoreCase)) ? "-" + name : name;
    }

    /// <summary>The ending of the folder that an export keeps beside a page.</summary>
    public const string KeptFolder = ".kept";
}
