using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;

namespace Surefoot.Transcribe.Layout;

/// <summary>Who is meant: role words where a line, a sentence or a clause begins.</summary>
internal static class RoleWords
{
    private const string LeadWord = "man|men|gent|gents|gentleman|gentlemen|leader|leaders|lead|leads|boy|boys|guy|guys|lads|fellows|fellas|cowboys|partner a|he";

    private const string FollowWord = "woman|women|lady|ladies|follower|followers|follow|follows|girl|girls|gals|cowgirls|partner b|she";

    private const string BothWord = "both(?! (?:hands|arms|feet)\\b)|all(?! (?:of )?(?:that|this|it|the|these|those)\\b)|everyone|everybody|together|couples|the couple|partners|(?:the )?dancers|each dancer|they";

    private static readonly Regex Heading = new(
        $@"^\W*(?:for\s+)?(?:the\s+)?(?:(?<lead>{LeadWord}|M|his(?=\s+(?:feet|steps|part|footwork|side)\b))|(?<follow>{FollowWord}|W|L(?=\s*:)|her(?=\s+(?:feet|steps|part|footwork|side)\b))|(?<both>{BothWord}))(?:'?s'?)?(?:\s+(?:part|steps?|feet|footwork|side))?\s*(?:[:.=-]+|\(.*\):?)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Opening = new(
        $@"\G\s*(?:(?:and|while|as|when|but|then|meanwhile,?)\s+)?(?:the\s+|your\s+)?(?:(?<lead>(?:{LeadWord})(?:'s)?(?:\s+(?:part|steps?|footwork))?|(?-i:M))|(?<follow>(?:{FollowWord})(?:'s)?(?:\s+(?:part|steps?|footwork))?|(?-i:W))|(?<both>(?:{BothWord})))(?<mark>\s*[:.=]|\s+-)?(?=\s|$)\s*",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>A line that says only who the next ones are for.</summary>
    public static bool IsHeading(string line, out Role? role)
    {
        var match = Heading.Match(line);
        role = RoleOf(match);
        return match.Success;
    }

    /// <summary>Who a sentence or clause is for, where it says so first.</summary>
    /// <param name="marked">True after "Man:", false after "the man".</param>
    public static bool Opens(string text, int at, out Role? role, out int end, out bool marked)
    {
        var match = Opening.Match(text, at);
        role = RoleOf(match);
        end = match.Success ? match.Index + match.Length : at;
        marked = match.Groups["mark"].Success;
        return match.Success;
    }

    /// <summary>Whether a sheet speaks of two roles at all.</summary>
    public static bool Any(string text) => Mentions.IsMatch(text);

    private static readonly Regex Mentions = new(@"\b(?:for the (?:lead|follow)\b|his (?:left|right) hand|her (?:left|right) hand|partners?|varsou?vienne|sweetheart|skaters|cape position|man|men|woman|women|lady|ladies|gent|gents|gentleman|leader(?! (?:is |stands )?(?:on|at) the (?:right|left))|follower|leads|follows|couples?(?! of\b)|cpls?|ptrs?|[MW]'s|lead\s*:|follow\s*:|(?:open|closed|ballroom|skaters|promenade) (?:position|hold))(?:\b|(?<=:))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static Role? RoleOf(Match match) => match.Groups["lead"].Success ? Role.Lead : match.Groups["follow"].Success ? Role.Follow : null;
}
