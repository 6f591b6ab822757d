using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Wording;

/// <summary>Finds where words stand on a line, however they are spaced and capitalised there: "hop" does not stand in "shop".</summary>
internal sealed class WordPlaces
{
    // What may stand between a phrase and the one beside it: "touch and frobble", "then frobble", "slow frobble".
    private static readonly Regex Before = new(@"(?:^|[^\p{L}'\s-]|\s-|\b(?:and|then|while|or|slow|quick|slowly|quickly|S|Q))\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex After = new(@"\G\s*(?:$|[^\p{L}'\s-]|-\s|(?:and|then|while|or|slow|quick|slowly|quickly|S|Q)\b|on\s+(?:counts?\s+|beats?\s+)?\d)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private readonly string _first;
    private readonly Lazy<bool> _whole;
    private readonly Lazy<Regex> _words;

    /// <param name="said">The words.</param>
    /// <param name="wholePhrase">Only where they are all of a phrase: "touch" is then not meant in "touch right beside left". Asked once some are found.</param>
    public WordPlaces(string said, Func<bool> wholePhrase)
    {
        var pieces = SheetWord.KeyOf(said).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        (_first, _whole) = (pieces.Length > 0 ? pieces[0] : "", new(wholePhrase));
        _words = new(() => new(
            (char.IsLetterOrDigit(_first[0]) ? @"(?<![\p{L}\p{N}])" : "") + string.Join(@"\s+", pieces.Select(Regex.Escape)) + (char.IsLetterOrDigit(pieces[^1][^1]) ? @"(?![\p{L}\p{N}])" : ""),
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant));
    }

    public IEnumerable<(int At, int Length)> In(string line)
    {
        // Most lines have none of it, and patterns are slow to make.
        if (_first.Length == 0 || !line.Contains(_first, StringComparison.OrdinalIgnoreCase)) yield break;
        foreach (Match match in _words.Value.Matches(line))
        {
            if (!_whole.Value || (Before.IsMatch(line[..match.Index]) && After.IsMatch(line, match.Index + match.Length))) yield return (match.Index, match.Length);
        }
    }
}
