using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Outside;

/// <summary>
/// Footwork of standard figures against public glossaries, written out here action by action in our own
/// signs: a foot, where it goes, "^" where it takes no weight, "+n" for eighths of a turn to the left.
/// </summary>
public class PublishedFigures
{
    [Theory]
    // Wikipedia, "Grapevine (dance move)": side, behind, side, across, from any start.
    [InlineData("1-4 Weave right", "R side, L behind, R side, L across")]
    // sound-a-motion.tripod.com, basic steps: back, together, forward on 1 & 2; the forward coaster is its mirror.
    [InlineData("1&2 Coaster step R", "R back, L together, R forward")]
    [InlineData("1&2 Forward coaster step R", "R forward, L together, R back")]
    // text.therayslinedanceclub.com, glossary: cross behind, side, side on 1 & 2.
    [InlineData("1&2 Sailor step L", "L behind, R side, L side")]
    // The same glossary: kick, then ball change.
    [InlineData("1&2 Kick ball change R", "R^ forward, R together, L in place")]
    // The same glossary: point to the side, half a turn on the standing foot while closing, point the other foot, close.
    [InlineData("1-4 Monterey ½ turn R", "R^ side, R together -4, L^ side, L together")]
    // The same glossary: forward, half a turn on both balls, weight to the other foot.
    [InlineData("1-2 Step forward L, pivot ½ right", "L forward, L pivot -4 on R")]
    // Wikipedia, "Glossary of dance moves", chassé: step, together, step.
    [InlineData("1&2 Chassé to the left L R L", "L side, R together, L side")]
    // passion-linedance-club.blogspot.com: forward, lock behind, forward.
    [InlineData("1&2 Lock step forward R", "R forward, L lock behind, R forward")]
    // text.therayslinedanceclub.com: cross, back, side, together.
    [InlineData("1-4 Jazz box R, together", "R across, L back, R side, L together")]
    public void Goes_as_published(string line, string published)
    {
        var score = DanceReader.Read($"Figure\nKind: line\n\n{line}\n").Score;
        Assert.Equal(published, string.Join(", ", score.Roles[0].Steps.Select(Sign)));
    }

    // Rulit, "Descriptionary", 4th edition: a triple is three steps in two counts.
    [Fact]
    public void A_triple_is_three_steps_in_two_counts()
    {
        var score = DanceReader.Read("Figure\nKind: line\n\n1-2 Triple step L\n").Score;
        Assert.Equal(["1", "1&", "2"], score.Roles[0].Steps.Select(s => s.At.Name));
        Assert.Equal(2, score.Counts.Ceiling);
    }

    private static string Sign(ScoreStep step)
    {
        var takes = step.ChangesWeight || step.Kind == ActionKind.Pivot;
        var way = step.Kind == ActionKind.Pivot ? "pivot" : step.Direction.Word();
        var turn = step.Turn.IsNone ? "" : $" {step.Turn.Eighths:+0;-0}";
        var on = step.Kind == ActionKind.Pivot ? $" on {step.Weight.Free()!.Value.Other().Letter()}" : "";
        return $"{step.Foot.Single()!.Value.Letter()}{(takes ? "" : "^")} {way}{turn}{on}";
    }
}
