namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What strips beside those of a section could still add to it at best: of each breadth the strip worth most is known, and
/// strips are put side by side as often as the width allows.
/// </summary>
internal sealed class SectionBounds(long rip, int breadths, WidthSums sums)
{
    private const long None = long.MinValue / 8;
    private readonly long[] best = new long[breadths];
    private readonly int[] worth = new int[breadths];

    /// <summary>Forgets the strips noted.</summary>
    public void Clear() => Array.Fill(best, None);

    /// <summary>Notes the value of a strip of a breadth that might be added.</summary>
    public void Note(int breadth, long value) => best[breadth] = Math.Max(best[breadth], value);

    /// <summary>
    /// The least that strips so long at most add to the loss, for each sum of widths from the one taken on: at a sum it is
    /// what may be added in the width left beside it.
    /// </summary>
    public void Spread(long length, int taken, long[] into)
    {
        var ripped = rip * length;
        var some = 0;
        for (var b = 0; b < best.Length; b++)
        {
            if (best[b] > ripped)
                worth[some++] = b;
        }

        for (var s = sums.LastWithRoom; s >= taken; s--)
        {
            var least = 0L;
            for (var w = 0; w < some; w++)
            {
                var b = worth[w];
                var next = sums.Next(s, b);
                if (next >= 0)
                    least = Math.Min(least, into[next] + ripped - best[b]);
            }

            into[s] = least;
        }
    }
}
