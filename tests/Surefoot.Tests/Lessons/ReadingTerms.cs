using CsCheck;
using Surefoot.Dance;
using Surefoot.Lessons;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Text;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Lessons;

/// <summary>Term files: what they say, and what is said when they cannot be read.</summary>
public class ReadingTerms
{
    public static TheoryData<string> Examples => [.. Directory.EnumerateFiles(Root.At("corpus", "terms"), "*.term").Order(StringComparer.Ordinal).Select(f => Path.GetFileNameWithoutExtension(f)!)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Each_kind_of_problem_has_an_example_that_shows_it_and_nothing_else(string name)
    {
        var page = TermPage.Read(File.ReadAllText(Root.At("corpus", "terms", name + ".term")));
        var problems = TermCase.Of(page, [.. Terms.Dances, TermDance.Of(DanceReader.Read("Unwritten Page\n"))])?.Problems ?? page.Problems;
        Assert.Equal([name], problems.Select(p => p.Name).Distinct());
        foreach (var problem in problems)
        {
            Assert.True(problem.Span.Length > 0, "it has a place");
            Assert.All([problem.Message, problem.Reason], says => Assert.Matches(@"[.?!)…0-9a-z]$", says));
        }
    }

    [Fact]
    public void Every_name_of_a_problem_has_an_example_and_stands_in_the_documentation()
    {
        var code = Directory.EnumerateFiles(Root.At("src", "Surefoot.Lessons"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}")).SelectMany(File.ReadLines);
        var names = code.SelectMany(l => System.Text.RegularExpressions.Regex.Matches(l, @"(?:Error|Warning)\(""([a-z-]+)""").Select(m => m.Groups[1].Value)).ToHashSet();
        Assert.True(names.Count > 15);
        var examples = Directory.EnumerateFiles(Root.At("corpus", "terms"), "*.term").Select(f => Path.GetFileNameWithoutExtension(f)!).ToHashSet();
        Assert.Equal(names.Order(StringComparer.Ordinal), examples.Order(StringComparer.Ordinal));
        var documentation = File.ReadAllText(Root.At("docs", "lessons.md"));
        Assert.All(names, name => Assert.Contains($"`{name}`", documentation));
    }

    [Fact]
    public void A_missing_comma_is_no_other_dance()
    {
        var problem = Assert.Single(Terms.Case("Spring\nFrom: 12 January 2027\nUntil: 20 April 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nDinner Bell Six by 2 March, for beginners\n").Problems);
        Assert.Equal(("dance-missing", "A comma is missing behind its name: Dinner Bell Six, by 2 March"), (problem.Name, problem.Reason));
    }

    [Fact]
    public void An_evening_without_commas_is_told_as_one_and_shown_with_them()
    {
        var problem = Assert.Single(TermPage.Read("Spring\nFrom: 12 January 2027\nUntil: 20 April 2027\nEvenings\nTuesday 7pm 45 min beginners line dances\n").Problems);
        Assert.Equal(("slot-unread", "Commas are missing in \"Tuesday 7pm 45 min beginners line dances\"."), (problem.Name, problem.Message));
        Assert.EndsWith("as in: Tuesday 7pm, 45 min, beginners, line dances", problem.Reason);
        // Where something else is wrong with it, it is no question of commas.
        Assert.Contains("is no time of the week", Assert.Single(TermPage.Read("Spring\nFrom: 12 January 2027\nUntil: 20 April 2027\nEvenings\nTuesday 7pm 45 min with cake\n").Problems).Message);
    }

    [Fact]
    public void Dances_that_are_taken_over_stand_behind_those_that_are_there()
    {
        Assert.Equal("A\n\nTo teach\nOne\nTwo\nThree\n\nTold\n", TermWriting.Taught("A\n\nTo teach\nOne\n\nTold\n", ["Two", "Three"]));
        Assert.Equal("A\n\nDances\nTwo\n", TermWriting.Taught("A\n", ["Two"]));
    }

    [Theory]
    [InlineData("12 January 2027")]
    [InlineData("January 12, 2027")]
    [InlineData("12th Jan 2027")]
    [InlineData("2027-01-12")]
    [InlineData("Tuesday 12 January 2027")]
    public void Days_read_in_the_ways_people_write_them(string day) =>
        Assert.Equal(new DateOnly(2027, 1, 12), TermPage.Read($"A\nFrom: {day}\nUntil: 20 April\n").Term!.From);

    [Fact]
    public void The_demo_term_reads_without_a_word_and_says_what_it_means()
    {
        var term = Terms.Case(Terms.Demo);
        Assert.Empty(term.Problems);
        // Sixteen Tuesdays from 12 January to 27 April, two of them closed, two lessons each.
        Assert.Equal(28, term.Lessons.Count);
        Assert.Equal(14, term.Courses.Count);
        Assert.Equal(new DateOnly(2027, 3, 2), term.Course("Dinner Bell Six").By);
        Assert.Equal([term.Course("Dinner Bell Six").Index], term.Course("Hen House Hurry").After);
        Assert.Equal(new DateOnly(2026, 12, 8), term.Course("Second Gatepost").Progress.Last);
    }

    [Fact]
    public void No_line_is_passed_over_in_silence()
    {
        // Every line of the demo term, spoiled one after the other: each time something is said of that very line.
        var lines = Terms.Demo.Split('\n');
        for (var n = 1; n < lines.Length; n++)
        {
            if (lines[n].Length == 0 || lines[n][0] == '>' || TermPage.Headings.Contains(lines[n])) continue;
            var spoiled = string.Join('\n', lines.Select((l, at) => at == n ? "Qqq " + l.Replace(':', ' ') + ", zzz" : l));
            var page = TermPage.Read(spoiled);
            var problems = (TermCase.Of(page, Terms.Dances)?.Problems ?? page.Problems).ToList();
            Assert.True(problems.Exists(p => page.Source.LineOf(p.Span.Start) == n || p.Name == "dates-missing"), spoiled.Split('\n')[n]);
        }
    }

    [Fact]
    public void Whatever_is_written_reading_never_fails()
    {
        string[] words =
        [
            "From:", "Until:", "Closed:", "Evenings", "Dances", "Known", "Reached", "Told", "12 January 2027", "3 May", "to", ",", ":", "Tuesday 19:00", "45 minutes", "beginners", "line dances",
            "Five Barns", "by", "after", "and", "danced", "bites 1-2", "again", "went 3", "went", "\n", "\n", "\n", ">", "½", "29 February", "99",
        ];
        Gen.Int[0, words.Length - 1].Array[0, 60].Sample(all =>
        {
            var page = TermPage.Read(string.Join(' ', all.Select(w => words[w])).Replace(" \n ", "\n"));
            _ = TermCase.Of(page, Terms.Dances);
            Assert.All(page.Problems, p => Assert.InRange(p.Span.End, 0, page.Source.Text.Length));
        }, iter: 400);
    }

    [Fact]
    public void A_class_takes_a_dance_by_the_level_of_its_page()
    {
        var term = Terms.Case("A\nFrom: 12 January 2027\nUntil: 20 April\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nTuesday 20:00, 45 minutes, improvers, line dances\nDances\nSalt Lick Cha-Cha\nOdd Corner\n");
        Assert.Empty(term.Problems);
        Assert.Equal("beginners", term.Course("Salt Lick Cha-Cha").Class.Words);
        Assert.Equal("improvers", term.Course("Odd Corner").Class.Words);
    }
}
