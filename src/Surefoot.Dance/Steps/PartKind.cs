namespace Surefoot.Dance.Steps;

/// <summary>What a heading opens: a part of the repeat, or something danced outside it.</summary>
public enum PartKind
{
    Part,
    Tag,
    Bridge,
    Intro,
    Ending,
}
