using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Moving;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>
/// A dance's motion for whatever shows it moving: one repeat, sampled evenly in time, with the words that go with
/// it. The shape is docs/motion.schema.json, and docs/motion.md tells it in sentences. Knows nothing of who reads it.
/// </summary>
public static class MotionFile
{
    /// <summary>Counts a minute where neither the page nor anybody else says a tempo. Working value.</summary>
    public const int UsualTempo = 110;

    /// <summary>Samples a second where nobody asks for others; between them places are joined by straight lines, under a millimetre off. Working value.</summary>
    public const int UsualRate = 30;

    /// <summary>Samples a second, at most; more could not be told apart.</summary>
    public const int FinestRate = 240;

    /// <summary>What each sample of a dancer holds, in order: metres, and degrees to the left.</summary>
    public static IReadOnlyList<string> Fields { get; } =
    [
        "x", "y", "facing",
        "left.x", "left.y", "left.up", "left.facing", "left.toe", "left.weight",
        "right.x", "right.y", "right.up", "right.facing", "right.toe", "right.weight",
        "leftHand.x", "leftHand.y", "leftHand.up", "rightHand.x", "rightHand.y", "rightHand.up",
    ];

    /// <summary>The tempo a page is shown at: the middle of what it says.</summary>
    /// <param name="usual">For a page that says none, in counts a minute.</param>
    public static int TempoOf(Reading reading, int? usual = null) =>
        reading.Score.Facts is { TempoFrom: { } from, TempoTo: { } to } ? (from + to) / 2 : reading.Score.Facts.TempoTo ?? usual ?? UsualTempo;

    /// <param name="rate">Samples a second.</param>
    /// <param name="tempo">Counts a minute.</param>
    /// <param name="called">What the hall calls lead and follow; without it they are called so.</param>
    public static void Write(Utf8JsonWriter json, Reading reading, int rate, int tempo, (string Lead, string Follow)? called = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rate, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(tempo, 1);
        var score = reading.Score;
        var names = called is { } hall ? new RoleNames(hall.Lead, hall.Follow) : new RoleNames("lead", "follow");
        var dance = MovingDance.Of(score, reading.Motion, reading.Couple);
        var samples = (int)Math.Ceiling(dance.End * 60 / tempo * rate) + 1;
        json.WriteStartObject();
        json.WriteString("motion", "surefoot 1");
        json.WriteString("title", score.Title);
        json.WriteString("floor", score.Facts.Floor == Floor.Track ? "track" : "walls");
        json.WriteString("meter", score.Facts.Meter.ToString());
        json.WriteNumber("counts", score.Counts.ToDouble());
        json.WriteNumber("tempo", tempo);
        json.WriteNumber("rate", rate);
        json.WriteNumber("samples", samples);
        json.WriteStartArray("fields");
        foreach (var field in Fields) json.WriteStringValue(field);
        json.WriteEndArray();
        MotionWords.Write(json, reading);
        MotionCalls.Write(json, reading.Calls, names);
        MotionBody.Write(json);
        json.WriteStartArray("dancers");
        foreach (var dancer in dance.Dancers) Dancer(json, dance, dancer, names.Bare(dancer.Role), samples, (double)tempo / 60 / rate);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Dancer(Utf8JsonWriter json, MovingDance dance, MovingDancer dancer, string called, int samples, double step)
    {
        json.WriteStartObject();
        json.WriteString("role", dancer.Role.Word());
        json.WriteString("called", called);
        json.WriteNumber("stature", dancer.Stature);
        json.WriteStartArray("values");
        Span<double> values = stackalloc double[Fields.Count];
        for (var i = 0; i < samples; i++)
        {
            var now = Math.Min(i * step, dance.End);
            Sample(values, dancer.At(now), dance.Hands(dancer.Role, now));
            foreach (var value in values) json.WriteNumberValue(Rounded(value));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Sample(Span<double> values, DancerMoved at, (HandMoved Left, HandMoved Right) hands)
    {
        (values[0], values[1], values[2]) = (at.Middle.X, at.Middle.Y, at.Angle);
        Foot(values[3..], at.Left);
        Foot(values[9..], at.Right);
        (values[15], values[16], values[17]) = (hands.Left.At.X, hands.Left.At.Y, hands.Left.Up);
        (values[18], values[19], values[20]) = (hands.Right.At.X, hands.Right.At.Y, hands.Right.Up);

        static void Foot(Span<double> to, FootMoved foot) =>
            (to[0], to[1], to[2], to[3], to[4], to[5]) = (foot.At.X, foot.At.Y, foot.Up, foot.Angle, foot.Toe, foot.Weight);
    }

    // A tenth of a millimetre and a hundredth of a degree are finer than any eye; "-0" would be a number of its own.
    private static decimal Rounded(double value) => Math.Round((decimal)value, 4) + 0.0000m is var rounded && rounded == 0 ? 0 : Math.Round((decimal)value, 4);
}
