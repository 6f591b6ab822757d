using Surefoot.Dance.Basics;

namespace Surefoot.Draw.Words;

/// <summary>What a hall calls the two roles.</summary>
internal readonly record struct RoleNames(string Lead, string Follow)
{
    public string Title(Role role) => role switch
    {
        Role.Lead => Phrases.Capital(Lead),
        Role.Follow => Phrases.Capital(Follow),
        _ => "Dancer",
    };

    /// <summary>Inside a sentence: "the lead", "the lady".</summary>
    public string The(Role role) => role switch
    {
        Role.Lead => "the " + Lower(Lead),
        Role.Follow => "the " + Lower(Follow),
        _ => "the dancer",
    };

    /// <summary>In short lines, where articles only take room: "lead", "lady".</summary>
    public string Bare(Role role) => role switch
    {
        Role.Lead => Lower(Lead),
        Role.Follow => Lower(Follow),
        _ => "dancer",
    };

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
