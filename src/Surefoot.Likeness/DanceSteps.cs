using System.Buffers.Binary;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;

namespace Surefoot.Likeness;

/// <summary>What both do within one whole count of a dance. Who dances by themselves does both parts.</summary>
public readonly record struct CountOfTwo(CountSteps Lead, CountSteps Follow)
{
    public CountOfTwo Mirrored => new(Lead.Mirrored, Follow.Mirrored);
}

/// <summary>
/// A dance as it is compared: one repeat, count by count, for both roles. Names, walls, facings, tempo and holds are not
/// in it, nor how the page is written. Tags, bridges and endings are left out: they belong to a song.
/// </summary>
public sealed class DanceSteps
{
    private readonly CountOfTwo[] _counts;

    public DanceSteps(ReadOnlySpan<CountOfTwo> counts) => _counts = counts.ToArray();

    /// <summary>In the order of the repeat.</summary>
    public ReadOnlySpan<CountOfTwo> Counts => _counts;

    /// <summary>Whole counts of the repeat.</summary>
    public int Length => _counts.Length;

    /// <summary>Begun on the other foot, with every turn the other way.</summary>
    public DanceSteps Mirrored => new([.. _counts.Select(c => c.Mirrored)]);

    public static DanceSteps Of(DanceScore score)
    {
        if ((score.Of(Role.Lead) ?? score.Of(Role.Dancer)) is not { } one || score.Counts.Ceiling <= 0 || score.Roles.All(r => r.Steps.Count == 0)) return new([]);
        var lead = CountSteps.Of(one, score.Counts);
        var follow = score.Of(Role.Follow) is { } other ? CountSteps.Of(other, score.Counts) : lead;
        return new([.. lead.Zip(follow, (l, f) => new CountOfTwo(l, f))]);
    }

    /// <summary>For keeping: 16 bytes a count, the lead's eight first, little-endian.</summary>
    public byte[] ToBytes()
    {
        var bytes = new byte[_counts.Length * 16];
        for (var i = 0; i < _counts.Length; i++)
        {
            BinaryPrimitives.WriteUInt64LittleEndian(bytes.AsSpan(i * 16), _counts[i].Lead.Packed);
            BinaryPrimitives.WriteUInt64LittleEndian(bytes.AsSpan((i * 16) + 8), _counts[i].Follow.Packed);
        }

        return bytes;
    }

    /// <summary>What <see cref="ToBytes"/> wrote; a rest that is no whole count is left out.</summary>
    public static DanceSteps FromBytes(ReadOnlySpan<byte> bytes)
    {
        var counts = new CountOfTwo[bytes.Length / 16];
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] = new(new(BinaryPrimitives.ReadUInt64LittleEndian(bytes[(i * 16)..])), new(BinaryPrimitives.ReadUInt64LittleEndian(bytes[((i * 16) + 8)..])));
        }

        return new(counts);
    }
}
