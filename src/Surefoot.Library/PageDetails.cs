namespace Surefoot.Library;

/// <summary>What is known of a dance beside its page.</summary>
/// <param name="Learned">Where and from whom it was learned, in free words.</param>
/// <param name="Aliases">Names by which it is known elsewhere.</param>
public sealed record PageDetails(string Learned, IReadOnlyList<string> Aliases, IReadOnlyList<string> Tags, IReadOnlyList<Song> Songs, IReadOnlyList<Attachment> Attachments);

/// <summary>A song it is danced to.</summary>
/// <param name="Artist">In free words; may be empty.</param>
/// <param name="Tempo">Counts a minute, or null.</param>
public sealed record Song(long Id, string Title, string Artist, double? Tempo);

/// <summary>A film or a stored file.</summary>
/// <param name="Address">Where a film can be seen; empty for a stored file.</param>
/// <param name="Size">Bytes of a stored file.</param>
public sealed record Attachment(long Id, string Title, string Address, string FileName, string MediaType, long Size, DateTimeOffset Added);
