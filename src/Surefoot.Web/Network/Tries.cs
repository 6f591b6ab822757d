using System.Net;
using System.Net.Sockets;

namespace Surefoot.Web.Network;

/// <summary>
/// Makes whoever guesses wait, longer each time: a few slips of the finger cost nothing, then one second, two, four,
/// up to five minutes. A try counts when it begins, so that many at once are no way around it.
/// </summary>
internal sealed class Tries(TimeProvider clock)
{
    /// <summary>Wrong tries that cost nothing. Working value.</summary>
    public const int Free = 3;

    /// <summary>The longest wait. Working value: guessing a word a minute leads nowhere, and a dancer fetches a coffee.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    /// <summary>After so long without a try an address begins anew.</summary>
    private static readonly TimeSpan Forgotten = TimeSpan.FromHours(1);

    /// <summary>Addresses that are remembered; a hall has some dozens of devices. Working value.</summary>
    private const int MostAddresses = 2000;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, (int Tries, DateTimeOffset Last, DateTimeOffset Until)> _all = new(StringComparer.Ordinal);

    /// <summary>How long this address has to wait still; zero when it may try, which counts at once as a wrong try.</summary>
    public TimeSpan Begin(IPAddress? address)
    {
        var from = Name(address);
        var now = clock.GetUtcNow();
        lock (_gate)
        {
            var before = _all.GetValueOrDefault(from);
            if (before.Until > now) return before.Until - now;
            if (now - before.Last > Forgotten) before = default;
            var tries = before.Tries + 1;
            var wait = tries <= Free ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(Math.Pow(2, tries - Free - 1), Longest.TotalSeconds));
            if (!_all.ContainsKey(from) && _all.Count >= MostAddresses) _all.Remove(_all.MinBy(a => a.Value.Last).Key);
            _all[from] = (tries, now, now + wait);
            return TimeSpan.Zero;
        }
    }

    /// <summary>It was right: nothing is held against this address any more.</summary>
    public void Right(IPAddress? address)
    {
        lock (_gate) _all.Remove(Name(address));
    }

    /// <summary>By what an address is known: a home is given 2^64 of the long kind, so those count as one.</summary>
    public static string Name(IPAddress? address)
    {
        if (address is null) return "";
        if (address.IsIPv4MappedToIPv6) address = address.MapToIPv4();
        return address.AddressFamily is AddressFamily.InterNetworkV6 ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8)) : address.ToString();
    }
}
