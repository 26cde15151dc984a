using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;

namespace ShopClass.Web.Features.Joining;

/// <summary>
/// How often wrong codes may be tried. A school's phones often share one address, so right codes cost nothing; a limit
/// over all addresses stops a guesser who has many.
/// </summary>
public sealed class CodeTries : IDisposable
{
    public const int FromOneAddress = 20;
    public const int FromAll = 300;
    public static readonly TimeSpan Within = TimeSpan.FromMinutes(10);

    private readonly PartitionedRateLimiter<string> each = PartitionedRateLimiter.Create<
        string,
        string
    >(address => RateLimitPartition.GetFixedWindowLimiter(address, _ => Window(FromOneAddress)));

    private readonly FixedWindowRateLimiter all = new(Window(FromAll));

    /// <summary>Whether another try from there would be listened to.</summary>
    public bool MayTry(IPAddress? from)
    {
        using var one = each.AttemptAcquire(KeyOf(from), 0);
        using var any = all.AttemptAcquire(0);
        return one.IsAcquired && any.IsAcquired;
    }

    /// <summary>Counts a try that opened nothing.</summary>
    public void WasWrong(IPAddress? from)
    {
        each.AttemptAcquire(KeyOf(from)).Dispose();
        all.AttemptAcquire().Dispose();
    }

    public void Dispose()
    {
        each.Dispose();
        all.Dispose();
    }

    // One household or shop has a whole /64 of the newer addresses.
    private static string KeyOf(IPAddress? from)
    {
        if (from is null)
            return "unknown";
        if (from.IsIPv4MappedToIPv6)
            from = from.MapToIPv4();
        return from.AddressFamily is AddressFamily.InterNetworkV6
            ? Convert.ToHexString(from.GetAddressBytes().AsSpan(0, 8))
            : from.ToString();
    }

    private static FixedWindowRateLimiterOptions Window(int permits) =>
        new()
        {
            PermitLimit = permits,
            Window = Within,
            QueueLimit = 0,
        };

    internal static string Sentence =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Too many wrong codes were tried. Wait {Within.TotalMinutes:0} minutes, then type the code from the board once more. Phones that are in already are not affected."
        );
}
