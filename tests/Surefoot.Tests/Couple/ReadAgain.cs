using CsCheck;
using Surefoot.Dance;
using Surefoot.Tests.Properties;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>Read with what was read before an edit, a page says the same as read for the first time; only sooner.</summary>
public class ReadAgain
{
    [Fact]
    public void Any_page_after_any_other_says_the_same() => Gen.Select(RandomPages.CircleDance, RandomPages.CircleDance).Each(
        (one, other) => Same(one, other), iter: 60);

    [Fact]
    public void A_note_or_a_title_does_not_solve_again() => RandomPages.CircleDance.Each(
        page =>
        {
            var before = Read(page);
            var noted = DanceReader.Read(page + "\n> Smile.\n", null, Proven, before: before);
            Assert.Same(before.Couple, noted.Couple);
            Assert.Same(before.Motion, noted.Motion);
            Same(page, page + "\n> Smile.\n");
        },
        iter: 60);

    [Fact]
    public void Another_hold_stature_or_line_solves_again()
    {
        const string Steps = "1-4  Walk forward L R L R";
        var page = Page("sweetheart", "same, left free", Steps);
        foreach (var edited in (string[])[page.Replace("sweetheart", "cape"), page.Replace("Phrase:", "Stature: lead 1.90, follow 1.55\nPhrase:"), page.Replace("Walk forward", "Walk back"), page.Replace("1-4  ", "\n1-4  ")])
        {
            Assert.NotEqual(page, edited);
            Assert.NotSame(Read(page).Motion, DanceReader.Read(edited, null, Proven, before: Read(page)).Motion);
            Same(page, edited);
        }
    }

    private static void Same(string before, string after)
    {
        var (anew, again) = (Read(after), DanceReader.Read(after, null, Proven, before: Read(before)));
        Assert.Equal(anew.Problems, again.Problems);
        Assert.Equal(anew.Score, again.Score);
        Assert.Equal(anew.Motion, again.Motion);
        Assert.Equal(anew.Moving, again.Moving);
    }
}
