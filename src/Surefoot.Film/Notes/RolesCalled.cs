using Surefoot.Dance.Basics;

namespace Surefoot.Film.Notes;

/// <summary>What a hall calls the two dancers, as chapters and captions say it.</summary>
/// <param name="Lead">As inside a sentence: "lead", "gent".</param>
/// <param name="Follow">Likewise: "follow", "lady".</param>
public readonly record struct RolesCalled(string Lead, string Follow)
{
    public static RolesCalled Usual => new("lead", "follow");

    /// <summary>A hall's own words, however they are written.</summary>
    public static RolesCalled Of(string lead, string follow) => new(Lower(lead, Usual.Lead), Lower(follow, Usual.Follow));

    internal string Of(Role role) => role switch
    {
        Role.Lead => Lead,
        Role.Follow => Follow,
        _ => role.Word(),
    };

    private static string Lower(string word, string usual) => word.Trim() is { Length: > 0 } said ? char.ToLowerInvariant(said[0]) + said[1..] : usual;
}
