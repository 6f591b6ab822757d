using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Tests.Corpus;

/// <summary>What is offered for a wrong foot changes that slip and no foot that is right already; a tidied page keeps what it states.</summary>
public class OtherFoot
{
    private const string Head = "Half Gate\nKind: line, 1 wall\nPhrase: any\nFeet: left free\n\n1-2 Rock forward L, recover R\n3&4 Shuffle back L R L\n";

    [Theory]
    [InlineData("5-6 Rock back L, recover L\n", "5-6 Rock back R, recover L\n")]
    [InlineData("5-6 Rock back L, recover R\n", "5-6 Rock back R, recover L\n")]
    [InlineData("5-8 Walk back L, R, L, touch R\n", "5-8 Walk back R, L, R, touch L\n")]
    public void Only_the_slip_is_changed(string written, string offered)
    {
        var problem = DanceReader.Read(Head + written).Problems.First(p => p.Name == "weight-same-foot");
        Assert.Equal(Head + offered, TextEdits.Apply(Head + written, problem.Fixes[0].Edits));
    }

    [Theory]
    [InlineData("Man: walk L, R. Lady: walk R, L", "Man: walk L, R. Lady: walk R, L")]
    [InlineData("Follow: walk R, L. Lead: walk L, R", "Follow: walk R, L. Lead: walk L, R")]
    [InlineData("he walks L, R, she walks R, L", "Lead: walks L, R. Follow: walks R, L")]
    public void A_tidied_page_calls_the_dancers_what_it_called_them(string written, string tidied)
    {
        var (page, book) = PageReader.Read($"Half Gate\nKind: partner, circle\n\n1-2 {written}\n", FigureBook.Shipped);
        Assert.Equal("1-2    " + tidied, TidyPage.Print(page, book).Split('\n')[3]);
    }

    [Fact]
    public void A_size_said_after_steps_is_that_of_all_before_it_on_the_line_that_have_none()
    {
        var steps = DanceReader.Read(Head + "5-8 Walk back R, long step back L, walk back R, L, small steps\n9-10 Walk forward R, L\n").Score.Roles[0].Steps.Where(s => s.At.Value >= Beats.Of(5)).ToList();
        Assert.Equal([StepSizeWord.Small, StepSizeWord.Large, StepSizeWord.Small, StepSizeWord.Small, StepSizeWord.Usual, StepSizeWord.Usual], steps.Select(s => s.Size.Word));
    }

    [Theory]
    [InlineData("Part A 2 counts", "Part A  (2 counts)")]
    [InlineData("Part A (2 counts)", "Part A  (2 counts)")]
    [InlineData("Part A", "Part A")]
    public void A_tidied_heading_states_the_counts_that_it_stated(string heading, string tidied)
    {
        var (page, book) = PageReader.Read($"Half Gate\n\n{heading}\n1-2 Walk forward L, R\n", FigureBook.Shipped);
        Assert.Equal(tidied, TidyPage.Print(page, book).Split('\n')[2]);
    }
}
