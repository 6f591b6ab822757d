using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>What a notebook calls the roles in the middle of a line: "lead", "lady".</summary>
internal static partial class HallRoles
{
    public static string Of(Role role, NotebookSettings settings) => role switch
    {
        Role.Lead => Lower(settings.LeadWord),
        Role.Follow => Lower(settings.FollowWord),
        _ => role.Word(),
    };

    /// <summary>
    /// A sentence of a check with the notebook's words: "The lady's weight is on the left foot". Checks name a role
    /// as "the lead" and "the follow" and in no other way; what they quote from the page stays as it is written there.
    /// </summary>
    public static string In(string sentence, NotebookSettings settings) => Named().Replace(sentence, m => m.Groups["role"].Value switch
    {
        "lead" => m.Groups["before"].Value + Of(Role.Lead, settings),
        "follow" => m.Groups["before"].Value + Of(Role.Follow, settings),
        _ => m.Value,
    });

    [GeneratedRegex("\"[^\"]*\"|\\b(?<before>(?:the|one) )(?<role>lead|follow)\\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Named();

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
