using Surefoot.Transcribe.Choosing;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Wording;
using Surefoot.Transcribe.Writing;

namespace Surefoot.Transcribe.Trying;

/// <summary>A sheet read in one way, up to the lines of its page.</summary>
internal sealed class Attempt
{
    public required List<SheetLine> Lines { get; init; }

    public required SheetPlan Plan { get; init; }

    public required SheetFacts Facts { get; init; }

    public required Laying Laying { get; init; }

    public required List<DraftPart> Parts { get; init; }

    public required FeetChosen Feet { get; init; }

    public required bool Same { get; init; }

    public List<Doubt> Doubts { get; } = [];

    /// <summary>How badly it hangs together.</summary>
    public double Cost { get; set; }
}
