using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>
/// Changes of hold whose outcome every teacher knows (common practice), begun with every facing and danced
/// to either side.
/// </summary>
public class Transitions
{
    private const string Same = "same, left free";
    private const string Opposite = "opposite, lead left free";
    private const string HerHalfRight = "Follow: step in place L ¼ right under right hands, step in place R ¼ right";

    // What is looked for: "" when it works, or the name of the problem.
    private static readonly (int Number, string Hold, string Feet, string Steps, string Problem)[] Table =
    [
        (1, "sweetheart", Same, $"1-2  Lead: step in place L, R, release left hands. {HerHalfRight}\n3-4  Step in place L, R (right side to right side)", ""),
        (2, "sweetheart", Same, $"1-2  Lead: step in place L, R, lower left hands. {HerHalfRight}\n3-4  Step in place L, R", "arm-overhead"),
        (3, "sweetheart", Same, "1-4  Lead: step in place L R L R, release left hands. Follow: step in place L ¼ right under right hands, step in place R ¼ right, step in place L ¼ right, step in place R ¼ right\n5-6  Step in place L R, take left hands (sweetheart)", ""),
        (4, "sweetheart", Same, "1-2  Step in place L ¼ right, step in place R ¼ right, keep both hands\n3-4  Step in place L R (left sweetheart)", ""),
        (5, "sweetheart", Same, "1-2  Step in place L ¼ right, step in place R ¼ right, keep both hands\n3-4  Step in place L ¼ left, step in place R ¼ left, keep both hands (sweetheart)", ""),
        (6, "sweetheart", Same, "1-2  Step in place L R, lower both hands\n3-6  Step in place L ¼ right, step in place R ¼ right, step in place L ¼ right, step in place R ¼ right\n7-8  Step in place L R", "arm-overhead"),
        (7, "two hands", Opposite, "1-2  Lead: step in place L, R, raise left hand. Follow: step forward R ¼ left, step back L ¼ left\n3-4  Step in place L R (wrap)", ""),
        (8, "wrap", Opposite, "1-2  Lead: step in place L, R. Follow: step forward R ¼ right, step back L ¼ right\n3-4  Step in place L R (two hands)", ""),
        (9, "two hands", Opposite, "1-4  Lead: step in place L R L R, release right hand. Follow: step in place R ¼ right under his left hand, step in place L ¼ right, step in place R ¼ right, step in place L ¼ right\n5-6  Step in place L R, take both hands (two hands)", ""),
        (10, "two hands", Opposite, "1-4  Lead: step in place L R L R, raise both hands. Follow: step in place R ¼ right, step in place L ¼ right, step in place R ¼ right, step in place L ¼ right\n5-6  Step in place L R (two hands)", "hands-twisted"),
        (11, "handshake", Same, "1-4  Lead: step forward L, step forward R, step in place L ¼ right, step in place R ¼ right. Follow: step forward L, step forward R, step in place L ¼ left, step in place R ¼ left, under right hands\n5-6  Step in place L R (handshake)", ""),
        (12, "open", Opposite, "1-4  Walk forward L R L R\n5-8  Lead: walk forward L R L R. Follow: step forward R ¼ right, step back L ¼ right, step back R ¼ right, step forward L ¼ right, under inside hands\n9-12  Walk forward L R L R (open)", ""),
        (13, "sweetheart", Same, "1-4  Lead: walk forward L R L R. Follow: rock forward L, recover R, rock back L, recover R, keep both hands", "hold-place"),
        (14, "skaters", Same, "1-8  Lariat left, starting left, release right hands, raise left hands over his head\n9-10  Step in place L R, take right hands (skaters)", ""),
        (15, "shadow", Same, "1-2  Step in place L R, lower both hands\n3-4  Lead: step in place L ¼ right, step in place R ¼ right. Follow: step in place L R\n5-6  Step in place L R, keep both hands", "arm-wind"),
        (16, "closed", Opposite, "1-4  Walk forward L R L R", ""),
    ];

    public static TheoryData<int, int, bool> Begun
    {
        get
        {
            var all = new TheoryData<int, int, bool>();
            foreach (var row in Table)
            {
                for (var eighths = 0; eighths < 8; eighths++)
                {
                    all.Add(row.Number, eighths, false);
                    all.Add(row.Number, eighths, true);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Begun))]
    public void Come_out_as_every_teacher_knows(int number, int eighths, bool mirrored)
    {
        var row = Table.Single(t => t.Number == number);
        var reading = Read(PageOf(row.Hold, row.Feet, row.Steps, eighths, mirrored));
        // Some of the changes end where they do; whether a dance could begin again there is another question.
        var told = reading.Problems.Where(p => p.Severity != Dance.Problems.Severity.Hint && !p.Name.StartsWith("loop-", StringComparison.Ordinal) && p.Name != "travel-back").ToList();
        // Those who walk past each other across the lane have to stay in it as well, which brings them to arm's length first.
        if (number == 11) told.RemoveAll(p => p.Name == "arm-reach" && p.Severity == Dance.Problems.Severity.Warning);
        if (row.Problem.Length == 0)
        {
            Assert.Empty(told.Select(p => p.Message));
            Assert.NotNull(reading.Couple?.Hands);
        }
        else
        {
            Assert.Equal(row.Problem, Assert.Single(told.Select(p => p.Name).Distinct()));
        }
    }

    public static TheoryData<string, int> EveryHold
    {
        get
        {
            var all = new TheoryData<string, int>();
            foreach (var hold in Holds.All)
            {
                for (var eighths = 0; eighths < 8; eighths++) all.Add(hold.Name, eighths);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(EveryHold))]
    public void Doing_nothing_leaves_the_hold_as_it_is(string hold, int eighths)
    {
        var reading = Read(PageOf(hold, Same, $"1-8  Step in place L R L R L R L R ({hold})", eighths, false));
        Assert.Empty(reading.Problems.Where(p => p.Severity != Dance.Problems.Severity.Hint).Select(p => p.Message));
        Assert.Empty(reading.Couple!.Hands!.Suggestions);
        Assert.Equal(0, reading.Couple.Effort);
    }

    [Fact]
    public void Where_the_page_is_silent_the_hands_are_suggested()
    {
        var page = PageOf("sweetheart", Same, "1-4  Lead: step in place L R L R. Follow: step in place L ¼ right, step in place R ¼ right, step in place L ¼ right, step in place R ¼ right\n5-6  Step in place L R (sweetheart)", 0, false);
        var reading = Read(page);
        Assert.DoesNotContain(reading.Problems, p => p.Severity == Dance.Problems.Severity.Error);
        var suggestions = reading.Couple!.Hands!.Suggestions;
        Assert.Contains(suggestions, s => s.Verb == HandVerb.Raise);
        Assert.All(suggestions, s => Assert.InRange(s.At.Whole, 1, 6));
    }

    private static string PageOf(string hold, string feet, string steps, int eighths, bool mirrored)
    {
        var (lead, follow) = (new Facing(eighths), new Facing(eighths + Holds.Named(hold)!.FollowTurn.Eighths));
        var page = Page(hold, feet, steps, $"lead {lead.Name(Floor.Track)}, follow {follow.Name(Floor.Track)}");
        return mirrored ? Mirrored(page) : page;
    }
}
