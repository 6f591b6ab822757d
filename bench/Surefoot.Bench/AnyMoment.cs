using BenchmarkDotNet.Attributes;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Moving;
using Surefoot.Solver;

namespace Surefoot.Bench;

/// <summary>Where everybody is at moments between the counts. A thousand moments each; divide by a thousand.</summary>
[MemoryDiagnoser]
public class AnyMoment
{
    private const int Moments = 1000;

    private MovingDance _dance = null!;

    [GlobalSetup]
    public void Setup()
    {
        var reading = DanceReader.Read(Pages.Couple(64), solver: new ProvenSolver());
        _dance = MovingDance.Of(reading.Score, reading.Motion, reading.Couple);
    }

    [Benchmark(OperationsPerInvoke = Moments)]
    public double BodyAndFeet()
    {
        var (sum, lead) = (0.0, _dance.Of(Role.Lead)!);
        for (var i = 0; i < Moments; i++) sum += lead.At(i * _dance.End / Moments).Left.At.X;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Moments)]
    public double Hands()
    {
        var sum = 0.0;
        for (var i = 0; i < Moments; i++) sum += _dance.Hands(Role.Follow, i * _dance.End / Moments).Left.Up;
        return sum;
    }

    [Benchmark]
    public double LeastSpacing() => Neighbours.Least(_dance).Metres;
}
