using Surefoot.Dance.Basics;

namespace Surefoot.Draw.Feet;

/// <summary>What happens at one moment, or the words that stand for counts which are not drawn again.</summary>
/// <param name="At">Counted in the part.</param>
/// <param name="Frames">One for each drawn role, null for a role that does nothing new at this moment.</param>
/// <param name="Says">"9–14 as 1–6", or null for a moment that is drawn.</param>
internal sealed record Column(Count At, IReadOnlyList<Frame?> Frames, string? Says)
{
    /// <summary>Panels a column of words is wide.</summary>
    public const double WordsWidth = 1.7;

    public double Width => Says is null ? 1 : WordsWidth;

    /// <summary>
    /// "3" on the beat, "&amp;" between; the number of the beat before stands beside it anyway. Empty at moments
    /// that dancers have no name for, as the third of a count.
    /// </summary>
    public string CountName => At.Name switch
    {
        var name when At.Value.IsWhole => name,
        var name when name.Contains('+') => "",
        var name => name.TrimStart('0', '1', '2', '3', '4', '5', '6', '7', '8', '9') is { Length: > 0 } tail ? tail[..1] : name,
    };
}

/// <summary>Columns side by side.</summary>
/// <param name="Together">True when the roles do the same all along, so that one strip serves both.</param>
internal sealed record PictureLine(IReadOnlyList<Column> Columns, bool Together)
{
    public bool OnlyWords => Columns.All(c => c.Says is not null);

    public double Width => Columns.Sum(c => c.Width);
}
