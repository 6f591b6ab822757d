using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Surefoot.Library.Store;

/// <summary>
/// Moments as whole milliseconds since 1970 in UTC: the one form that both databases store, compare and
/// sort alike, whatever time zone the machine is in.
/// </summary>
internal sealed class Milliseconds() : ValueConverter<DateTimeOffset, long>(
    moment => moment.ToUnixTimeMilliseconds(),
    stored => DateTimeOffset.FromUnixTimeMilliseconds(stored))
{
    /// <summary>A moment as it comes back after it was stored.</summary>
    public static DateTimeOffset Whole(DateTimeOffset moment) => DateTimeOffset.FromUnixTimeMilliseconds(moment.ToUnixTimeMilliseconds());
}
