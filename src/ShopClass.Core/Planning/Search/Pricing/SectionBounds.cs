namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What strips beside those of a section could still add to it at best: of each breadth the strip worth most is known, and
/// strips are put side by side as often as the width allows.
/// </summary>
internal sealed class SectionBounds(int breadths, WidthSums sums)
{
    private const long None = long.MinValue / 8;
    private readonly long[] best = new long[breadths];
    private readonly int[] some = new int[breadths];
    private readonly long[] gains = new long[breadths];
    private readonly long[] least = new long[sums.Count];
    private readonly int[] workedOut = new int[sums.Count];
    private int round;
    private int count;

    /// <summary>Forgets the strips noted.</summary>
    public void Clear() => Array.Fill(best, None);

    /// <summary>Notes the worth of a strip of a breadth that might be added.</summary>
    public void Note(int breadth, long worth) => best[breadth] = Math.Max(best[breadth], worth);

    /// <summary>Starts with the strips noted, each of which takes a rip that costs so much.</summary>
    public void Start(long ripped)
    {
        (round, count) = (round + 1, 0);
        for (var b = 0; b < breadths; b++)
        {
            if (best[b] > ripped)
                (some[count], gains[count++]) = (b, best[b] - ripped);
        }
    }

    /// <summary>The least that strips beside such a sum of widths add to the loss.</summary>
    public long Least(int sum)
    {
        if (workedOut[sum] == round)
            return least[sum];
        var lowest = 0L;
        for (var n = 0; n < count; n++)
        {
            if (sums.Next(sum, some[n]) is >= 0 and var next)
                lowest = Math.Min(lowest, Least(next) - gains[n]);
        }

        workedOut[sum] = round;
        return least[sum] = lowest;
    }
}
