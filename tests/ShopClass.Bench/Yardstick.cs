using System.Diagnostics;

namespace ShopClass.Bench;

/// <summary>
/// The fixed piece of work every figure is set against: sorting 100,000 numbers, on the same machine in the same run, so that
/// figures from different machines and busy hours can be compared.
/// </summary>
internal static class Yardstick
{
    /// <summary>Milliseconds of the quickest of so many sorts.</summary>
    public static double Sorting(int rounds)
    {
        var list = FixedList();
        return Quickest(rounds, () => Array.Sort((long[])list.Clone()));
    }

    public static double Quickest(int rounds, Action work)
    {
        var best = double.MaxValue;
        for (var i = 0; i < rounds; i++)
        {
            var watch = Stopwatch.StartNew();
            work();
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        return best;
    }

    private static long[] FixedList()
    {
        var list = new long[100_000];
        var value = 1L;
        for (var i = 0; i < list.Length; i++)
        {
            // Lehmer's generator with the constants of Park and Miller (1988).
            value = value * 48_271 % 2_147_483_647;
            list[i] = value;
        }

        return list;
    }
}
