using System.Text;

namespace Surefoot.Library.Keeping;

/// <summary>
/// Makes names alike that people take for the same: capitals, accents, blanks and dashes do not count.
/// Done here and not by a database, so that both databases find and sort alike.
/// </summary>
internal static class Folding
{
    // Letters of the Latin alphabets of Europe with the plain letters people type for them. The platform's
    // own tables are not loaded (the programs run without a culture), and other scripts have no accents to drop.
    private const string Accented = "àáâãäåāăąçćĉċčďđðèéêëēĕėęěĝğġģĥħìíîïĩīĭįıĵķĺļľŀłñńņňŋòóôõöøōŏőŕŗřśŝşšșţťŧțùúûüũūŭůűųŵýÿŷźżž";
    private const string Plain = "aaaaaaaaacccccdddeeeeeeeeegggghhiiiiiiiiijklllllnnnnnooooooooorrrsssssttttuuuuuuuuuuwyyyzzz";

    private static readonly Dictionary<char, char> Letters = Accented.Zip(Plain).ToDictionary();

    /// <summary>Lower case, no accents, single blanks: "  Élan--Vital " is "elan vital".</summary>
    public static string Key(string name)
    {
        var key = new StringBuilder(name.Length);
        var blank = false;
        foreach (var letter in name)
        {
            // Accents that stand as signs of their own after their letter.
            if (letter is >= '\u0300' and <= '\u036F') continue;
            // "Barney's" and "Barneys" are one name.
            if (letter is '\'' or '’' or '‘' or '`') continue;
            if (!char.IsLetterOrDigit(letter) && letter is not ('/' or '&' or '½' or '¼' or '¾') && !char.IsSurrogate(letter))
            {
                blank = key.Length > 0;
                continue;
            }

            if (blank) key.Append(' ');
            blank = false;
            var lower = char.ToLowerInvariant(letter);
            switch (lower)
            {
                case 'æ': key.Append("ae"); break;
                case 'œ': key.Append("oe"); break;
                case 'ß': key.Append("ss"); break;
                case 'þ': key.Append("th"); break;
                default: key.Append(Letters.GetValueOrDefault(lower, lower)); break;
            }
        }

        return key.ToString();
    }
}
