namespace Surefoot.Dance.Basics;

/// <summary>Who dances. A line dance has one role, the dancer; a couple has a lead and a follow.</summary>
public enum Role
{
    Dancer,
    Lead,
    Follow,
}

public static class Roles
{
    public static string Word(this Role role) => role switch
    {
        Role.Lead => "lead",
        Role.Follow => "follow",
        _ => "dancer",
    };

    public static string Title(this Role role) => role switch
    {
        Role.Lead => "Lead",
        Role.Follow => "Follow",
        _ => "Dancer",
    };
}
