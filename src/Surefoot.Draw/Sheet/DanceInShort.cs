using Surefoot.Dance.Scoring;
using Surefoot.Draw.Sheet.Plan;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>The sentences with which a sheet opens: what kind of dance it is, how long, how it starts.</summary>
public static class DanceInShort
{
    public static string Of(DanceScore score, SheetOptions? options = null)
    {
        options ??= new();
        return OpeningWords.Of(score, options, new RoleNames(options.LeadWord, options.FollowWord));
    }

    /// <summary>Where the work can hurt, in at most two sentences.</summary>
    public static string Care(DanceScore score) => CareWords.Of(score, only: null);
}
