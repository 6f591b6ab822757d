namespace Surefoot.Tests.Web;

/// <summary>A short dance of our own for tests that keep it.</summary>
internal static class Dances
{
    public const string Plain = "Bent Nail\nKind: line, 2 walls\nMeter: 4/4\nTempo: 108\nLevel: beginner\nFeet: left free\n\nPart A (8 counts)\n1-2 Walk forward L, R\n3-4 Rock forward L, recover R\n5-8 Walk back L, R, L, touch R\n> over\n";
}
