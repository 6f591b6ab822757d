using Surefoot.Dance.Basics;
using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>What a notebook calls the roles in the middle of a line: "lead", "lady".</summary>
internal static class HallRoles
{
    public static string Of(Role role, NotebookSettings settings) => role switch
    {
        Role.Lead => Lower(settings.LeadWord),
        Role.Follow => Lower(settings.FollowWord),
        _ => role.Word(),
    };

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
