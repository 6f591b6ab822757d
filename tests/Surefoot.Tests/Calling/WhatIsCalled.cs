using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Text;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Calling;

/// <summary>What must hold of the calls of every dance: the handbook's trade.md, "Calling", and published.md 8, "Cue lead".</summary>
public class WhatIsCalled
{
    public static TheoryData<string> Dances => [.. Root.Pages("demo", "dances").Concat(Root.Pages("corpus")).Select(p => Path.GetRelativePath(Root.Folder, p))];

    [Theory]
    [MemberData(nameof(Dances))]
    public void A_call_is_on_the_last_counts_before_its_step_and_never_over_another(string page)
    {
        var reading = Read(page);
        var counts = reading.Score.Counts.Ceiling;
        foreach (var role in reading.Score.Roles)
        {
            var mine = reading.Calls.Calls.Where(c => c.Role is null || c.Role == role.Role).OrderBy(c => c.From).ToList();
            foreach (var call in mine.Where(c => !c.Written))
            {
                Assert.InRange(call.Counts, 1, 2);
                Assert.InRange(call.From, 1, counts);
                Assert.InRange(call.To, call.From, counts);
                // The last whole count before the step, which may itself be on a half-count.
                Assert.Equal(call.Step.Value.Ceiling - 1, call.To);
            }

            for (var i = 1; i < mine.Count; i++) Assert.True(mine[i - 1].To < mine[i].From, $"{mine[i - 1]} and {mine[i]}");
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void A_call_has_one_to_three_syllables_unless_the_page_says_otherwise(string page)
    {
        var calls = Read(page).Calls;
        foreach (var call in calls.Opening.Concat(calls.Calls).Concat(calls.Extras.SelectMany(e => e.Calls)).Where(c => !c.Written))
        {
            // A name of one long word is never cut.
            var syllables = Syllables.In(CallWords.Plain(call.Words));
            Assert.True(syllables is >= 1 and <= 3 || !call.Words.Contains(' '), $"{call.Words}: {syllables}");
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Every_call_names_a_step_that_somebody_begins_there(string page)
    {
        var reading = Read(page);
        var counts = reading.Score.Counts.Ceiling;
        foreach (var call in reading.Calls.Calls.Where(c => !c.Written))
        {
            var step = call.Step > Count.At(counts) && !reading.Score.Roles.Any(r => r.Steps.Any(s => s.At == call.Step)) ? call.Step - Beats.Of(counts) : call.Step;
            Assert.Contains(reading.Score.Roles.Where(r => call.Role is null || r.Role == call.Role), r => r.Steps.Any(s => s.At == step));
        }
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void One_voice_says_one_call_for_each_step(string page)
    {
        var reading = Read(page);
        foreach (var step in CallVoice.Over(reading.Calls.Calls, "lead", "follow").GroupBy(c => c.Call.Step)) Assert.Single(step, s => s.Says.Length > 0);
    }

    [Fact]
    public void Every_figure_of_the_book_has_a_call_of_at_most_three_syllables()
    {
        foreach (var figure in FigureBook.Shipped.All)
        {
            foreach (var example in figure.Examples)
            {
                var reading = DanceReader.Read($"One\nKind: partner, circle\nFeet: same, {(example.Contains(" R", StringComparison.Ordinal) ? "right" : "left")} free\n\n{example}\n");
                Assert.All(reading.Calls.Opening, call => Assert.True(Syllables.In(CallWords.Plain(call.Words)) is >= 1 and <= 3, $"{figure.Name}: {call.Words}"));
                Assert.NotEmpty(reading.Calls.Opening);
            }
        }
    }

    [Fact]
    public void The_halls_words_for_the_roles_are_called()
    {
        var reading = Read(Path.Combine("corpus", "calls", "hall-words.dance"));
        var says = CallVoice.Over(reading.Calls.Calls, "man", "lady").Select(c => c.Says);
        Assert.Contains("lady's turn", says);
        var apart = Read(Path.Combine("corpus", "calls", "roles-differ.dance"));
        Assert.Contains("lady's turn", CallVoice.Over(apart.Calls.Calls, "man", "lady").Select(c => c.Says));
        Assert.Contains("man rock back", CallVoice.Over(apart.Calls.Calls, "man", "lady").Select(c => c.Says));
    }

    [Fact]
    public void A_dance_danced_once_more_is_called_the_same()
    {
        var page = File.ReadAllText(Root.At("demo", "dances", "circle", "nine-buckets-cha-cha.dance"));
        var once = DanceReader.Read(page);
        var twice = DanceReader.Read(page.Replace("Level:  beginner", "Level:  beginner\nOrder: A B C D A B C D", StringComparison.Ordinal));
        Assert.Equal(64, twice.Score.Counts.Ceiling);
        // The calls of the first half of two repeats are the calls of one.
        Assert.Equal(once.Calls.Calls.Select(c => (c.From, c.Words)), twice.Calls.Calls.Where(c => c.From <= 32).Select(c => (c.From, c.Words)));
        Assert.Equal(once.Calls.Calls.Select(c => (c.From + 32, c.Words)), twice.Calls.Calls.Where(c => c.From > 32).Select(c => (c.From, c.Words)));
    }

    private static Reading Read(string page)
    {
        var book = page.StartsWith("demo", StringComparison.Ordinal) ? FigureBook.Shipped.With(new SourceText(File.ReadAllText(Root.At("demo", "dances", "figures.dance")))) : null;
        return DanceReader.Read(File.ReadAllText(Root.At(page)), book);
    }
}
