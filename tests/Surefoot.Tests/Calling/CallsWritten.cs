using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Text;

namespace Surefoot.Tests.Calling;

public class CallsWritten
{
    private const string Head = "Rope Walk\nKind: partner, circle\nFeet: same, left free\n\n";
    private const string Steps = "1-4  Walk forward L R L R\n5-8  Walk back L R L R\n";

    [Theory]
    [InlineData("Call 3-4: back home")]
    [InlineData("call 3 - 4 :  back   home")]
    [InlineData("Cue counts 3-4: back home")]
    [InlineData("Calls 3, 4: \u201Cback home\u201D")]
    [InlineData("Call 3-4, both: back home")]
    public void A_call_is_read_however_it_is_spelled(string line)
    {
        var call = Assert.Single(DanceReader.Read(Head + Steps + line + "\n").Score.Calls);
        Assert.Equal((3, 4, "back home", (Role?)null), (call.From, call.To, call.Words, call.Role));
    }

    [Theory]
    [InlineData("Call 3-4, follow: your turn", Role.Follow)]
    [InlineData("Call 3-4, lady: your turn", Role.Follow)]
    [InlineData("Call 3-4, man: your turn", Role.Lead)]
    public void A_call_for_one_role_is_read(string line, Role role) =>
        Assert.Equal(role, Assert.Single(DanceReader.Read(Head + Steps + line + "\n").Score.Calls).Role);

    [Theory]
    [InlineData("Call 3-4, 2nd time: away", 2)]
    [InlineData("Call 3-4, second time: away", 2)]
    [InlineData("Call 3-4, 11th time: away", 11)]
    [InlineData("Call 3-4, last time: away", 0)]
    public void A_call_for_one_dancing_is_read(string line, int time) =>
        Assert.Equal(time, Assert.Single(DanceReader.Read(Head + Steps + line + "\n").Score.Calls).Time);

    [Fact]
    public void A_call_in_a_block_of_one_role_is_for_that_role()
    {
        var calls = DanceReader.Read(Head + "Lead:\n" + Steps + "Call 3-4: back up\nFollow:\n" + Steps + "Call 3-4, both: back home\nCall 7-8: again\n").Score.Calls;
        Assert.Equal([Role.Lead, null, Role.Follow], calls.Select(c => c.Role));
    }

    [Theory]
    [InlineData("Call 3-4: back home")]
    [InlineData("Call 3-4, follow, last time: your turn")]
    [InlineData("Call 4: none")]
    [InlineData("Call 3-4, banjo: ½ turn, then 3&4 \"hey\"")]
    [InlineData("Call 4:")]
    [InlineData("Call 3&4: and go")]
    public void A_tidy_page_keeps_the_call(string line)
    {
        var before = DanceReader.Read(Head + Steps + line + "\n");
        var tidy = TidyPage.Print(before.Page, FigureBook.Shipped);
        var after = DanceReader.Read(tidy);
        Assert.Equal(before.Score.Calls.Select(Bare), after.Score.Calls.Select(Bare));
        Assert.Equal(before.Problems.Select(p => p.Name), after.Problems.Select(p => p.Name));
        Assert.Equal(tidy, TidyPage.Print(after.Page, FigureBook.Shipped));

        static object Bare(Dance.Scoring.ScoreCall call) => call with { Span = default, Unread = call.Unread is null ? null : default(TextSpan) };
    }

    [Fact]
    public void A_call_moves_nobody()
    {
        var (bare, called) = (DanceReader.Read(Head + Steps), DanceReader.Read(Head + Steps + "Call 3-4: rock, turn ½\n"));
        Assert.Equal(Support.Listing.Steps(bare.Score), Support.Listing.Steps(called.Score));
        Assert.Equal(bare.Problems.Select(p => p.Name), called.Problems.Select(p => p.Name));
    }

    [Fact]
    public void A_call_stands_between_a_line_and_its_partners_words()
    {
        var reading = DanceReader.Read(Head + "1-4  Lead: walk forward L R L R\nCall 3-4: now back\n     Follow: walk back L R L R\n5-8  Walk back L R L R\n");
        Assert.DoesNotContain(reading.Problems, p => p.Name is "count-gap" or "line-unread");
    }

    [Fact]
    public void A_call_after_a_figure_of_the_page_is_no_part_of_the_figure()
    {
        var reading = DanceReader.Read("Rope Walk\nKind: line\nFeet: left free\n\nFigure: rope step (2 counts)\nCall: rope\n1-2  Walk forward L R\nCall 3-4: back home\n\n1-4  Rope step twice\n5-8  Walk back L R L R\n");
        Assert.Equal("back home", Assert.Single(reading.Score.Calls).Words);
        Assert.Equal("rope", Assert.Single(reading.Calls.Opening).Words);
    }

    [Theory]
    [InlineData("", "walk on", null)]
    [InlineData(", follow", "walk on", Role.Follow)]
    public void Before_the_dance_the_last_call_for_somebody_stands(string whose, string words, Role? role)
    {
        var calls = DanceReader.Read(Head + Steps + $"Call before the dance{whose}: off we go\nCall before the dance{whose}: {words}\n").Calls.Opening;
        var written = Assert.Single(calls, c => c.Written);
        Assert.Equal((words, role), (written.Words, written.Role));
        Assert.Equal(role is null ? 1 : 2, calls.Count);
    }

    [Fact]
    public void A_call_longer_than_three_syllables_is_said_as_it_is_written()
    {
        var reading = DanceReader.Read(Head + Steps + "Call 1-4, follow: everybody ready now\n");
        var call = Assert.Single(reading.Calls.Calls, c => c.Written);
        Assert.Equal((1, 4), (call.From, call.Counts));
        Assert.Equal("follow everybody ready now", CallVoice.Said(call, "lead", "follow"));
    }
}
