using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>
/// A repair as an edit of the page, where swapping a word makes exactly that change: the page is read again
/// with the edit, and the edit is dropped unless the steps come out as in the dance that was tried.
/// </summary>
internal static partial class RepairEdits
{
    public static ValueList<Fix> Fixes(DanceCase dance, OutOfPlace place)
    {
        var fixes = new List<Fix>();
        foreach (var repair in place.Repairs)
        {
            if (Edits(dance, repair) is { } edits) fixes.Add(new(Title(RepairWords.Idea(dance, repair)), Sureness.Idea, edits));
        }

        return fixes.ToValueList();
    }

    private static ValueList<TextEdit>? Edits(DanceCase dance, Repair repair)
    {
        if (repair.Kind is not (RepairKind.OwnLength or RepairKind.OtherWay or RepairKind.OnTheSpot)) return null;
        if (RepairedSteps.Of(dance.Score, repair) is not { } wanted) return null;
        var edits = new List<TextEdit>();
        foreach (var span in Touched(dance.Score, wanted))
        {
            var words = dance.Words(span);
            var other = Swapped(words, repair);
            if (other == words) return null;
            edits.Add(new(span, other));
        }

        if (edits.Count == 0) return null;
        var (page, book) = PageReader.Read(TextEdits.Apply(dance.Page.Source.Text, edits), dance.Book);
        return Alike(ScoreMaker.Make(page, book), wanted) ? edits.ToValueList() : null;
    }

    private static string Swapped(string words, Repair repair) => repair.Kind switch
    {
        RepairKind.OwnLength => Length().Replace(words, ""),
        RepairKind.OtherWay => repair.Forward ? Back().Replace(words, "forward") : Forward().Replace(words, "back"),
        _ => OnTheSpot().Replace(words, "step in place"),
    };

    // The words of every step that changes, each once.
    private static SortedSet<TextSpan> Touched(DanceScore before, DanceScore after)
    {
        var spans = new SortedSet<TextSpan>(Comparer<TextSpan>.Create((a, b) => a.Start.CompareTo(b.Start)));
        for (var r = 0; r < before.Roles.Count; r++)
        {
            for (var i = 0; i < before.Roles[r].Steps.Count; i++)
            {
                if (before.Roles[r].Steps[i] != after.Roles[r].Steps[i]) spans.Add(before.Roles[r].Steps[i].Source);
            }
        }

        return spans;
    }

    private static bool Alike(DanceScore read, DanceScore wanted)
    {
        for (var r = 0; r < wanted.Roles.Count; r++)
        {
            var (a, b) = (read.Roles[r].Steps, wanted.Roles[r].Steps);
            if (a.Count != b.Count) return false;
            for (var i = 0; i < a.Count; i++)
            {
                if ((a[i].At, a[i].Foot, a[i].Kind, a[i].Direction, a[i].Turn, a[i].Facing, a[i].Weight, a[i].Size) != (b[i].At, b[i].Foot, b[i].Kind, b[i].Direction, b[i].Turn, b[i].Facing, b[i].Weight, b[i].Size)) return false;
            }
        }

        return true;
    }

    private static string Title(string idea) => char.ToUpperInvariant(idea[0]) + idea[1..];

    [GeneratedRegex(@"\s*\(?\b\d+(\.\d+)?\s*(m|cm)\b\)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Length();

    [GeneratedRegex(@"\bback(wards?)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Back();

    [GeneratedRegex(@"\bforwards?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Forward();

    [GeneratedRegex(@"\b(walk|step)\s+(forwards?|back(wards?)?)\b|\bwalk\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex OnTheSpot();
}
