using System.Text.Json.Serialization;
using Surefoot.Library;

namespace Surefoot.Web.Keeping;

/// <summary>What a window hears of its page. Moments are milliseconds since 1970 in UTC, as browsers count.</summary>
/// <param name="Current">The version that is the page now.</param>
/// <param name="Latest">The version kept last; another one when it was kept beside.</param>
internal sealed record PageState(VersionTold Current, VersionTold Latest)
{
    public static PageState Of(PageInfo page, IReadOnlyList<VersionInfo> history) =>
        new(VersionTold.Of(history.First(v => v.Number == page.Current)), VersionTold.Of(history[0]));
}

/// <summary>A page when a window opens it.</summary>
/// <param name="Mark">Tells the page from one of the same number in another library, for what a browser keeps of it.</param>
/// <param name="Draft">What a window left that nobody kept, the newest or the one that was asked for.</param>
internal sealed record PageOpened(VersionTold Current, VersionTold Latest, string Mark, string Text, DraftTold? Draft, int OtherDrafts);

/// <summary>A draft with its text.</summary>
internal sealed record DraftTold(string Session, long Sequence, int BasedOn, string Text, long At);

/// <summary>A version's text.</summary>
internal sealed record TextTold(string Text);

/// <summary>A version in few words.</summary>
internal sealed record VersionTold(int Number, long At, string Note, string By, int? BesideOf)
{
    public static VersionTold Of(VersionInfo version) =>
        new(version.Number, version.Saved.ToUnixTimeMilliseconds(), version.Note, version.By, version.BesideOf);
}

/// <summary>That a draft is on the disk.</summary>
internal sealed record DraftKept(long At);

/// <summary>What became of a text: it is version <paramref name="Number"/>, new or as it was, or beside somebody's <paramref name="Theirs"/>.</summary>
internal sealed record VersionKept(int Number, bool New, long At, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? Theirs = null, bool Noted = false);

/// <summary>Why something was not done.</summary>
internal sealed record Refused(string Why);
