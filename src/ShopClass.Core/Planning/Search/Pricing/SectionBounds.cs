namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What strips beside those of a section could still add to it at best. Each single strip is bounded by filling it with
/// the blanks that are left, best worth for its length first, the last one in part; strips are then put side by side as
/// often as the width allows. A second bound fills the area beside in the same way, each blank once.
/// </summary>
internal sealed class SectionBounds
{
    private const long None = long.MinValue / 8;
    private readonly BoardGroup group;
    private readonly Packing packing;
    private readonly WidthSums sums;
    private readonly long rip;
    private readonly long cross;
    private readonly Filler[][] byBreadth;
    private readonly Filler[] byArea;
    private readonly long[] best;
    private readonly int[] worth;
    private readonly int[] counts;
    private readonly double[] extra;
    private readonly Prices prices;

    public SectionBounds(Packing packing, BoardGroup group, Prices prices, WidthSums sums)
    {
        (this.group, this.packing, this.sums) = (group, packing, sums);
        (rip, cross) = (prices.Rip(group.First), prices.Cross(group.First));
        byBreadth = [.. group.Pool.Breadths.Select(b => Along(b, prices))];
        byArea = Areas(prices);
        best = new long[byBreadth.Length];
        worth = new int[byBreadth.Length];
        counts = new int[packing.Kinds];
        extra = new double[group.Pool.Lies.Count];
        this.prices = prices;
    }

    /// <summary>
    /// The least that strips so long at most, of blanks that are left, add to the loss in so much width (kerfs before
    /// them included), by area alone: never above 0.
    /// </summary>
    public long BesideByArea(long length, long width, ulong left)
    {
        var stock = group.First;
        Count(left);
        var room = (double)(length + stock.CrosscutKerf) * width;
        var value = cross * Math.Max(0, width - stock.RipKerf) - rip * length;
        foreach (var blank in byArea)
        {
            var count = counts[blank.Kind];
            if (count == 0 || blank.Along > length || blank.Across + stock.RipKerf > width)
                continue;
            var whole = blank.Size * count;
            if (whole <= room)
            {
                value += blank.Net * count;
                room -= whole;
                continue;
            }

            value += Part(blank.Net * count, room / whole);
            break;
        }

        return Math.Min(0, -value);
    }

    /// <summary>
    /// The same strip by strip, for each sum of widths from the one taken on: <paramref name="into"/> at a sum is what
    /// may be added in the width left beside it.
    /// </summary>
    public void Beside(long length, int taken, ulong left, long[] into)
    {
        Count(left);
        for (var b = 0; b < best.Length; b++)
            best[b] = sums.Next(taken, b) < 0 ? None : BestStrip(length, b);
        Spread(length, taken, into);
    }

    /// <summary>Forgets the strips noted.</summary>
    public void Clear() => Array.Fill(best, None);

    /// <summary>Notes the value of a strip of a breadth that might be added.</summary>
    public void Note(int breadth, long value) => best[breadth] = Math.Max(best[breadth], value);

    /// <summary>As <see cref="Beside"/>, for the strips noted only.</summary>
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

    /// <summary>Readies <see cref="More"/> for these blanks and so much width.</summary>
    public void Offer(ulong left, long beside)
    {
        var most = 0.0;
        var stock = group.First;
        var lies = group.Pool.Lies;
        for (var i = lies.Count - 1; i >= 0; i--)
        {
            var across = group.Pool.AcrossOf(lies[i]);
            if (across + stock.RipKerf <= beside && packing.HasAny(left, lies[i].Kind))
            {
                var net = prices.Worth[lies[i].Kind] - cross * across;
                most = Math.Max(most, net / (double)(lies[i].Along + stock.CrosscutKerf));
            }

            extra[i] = most;
        }
    }

    /// <summary>What a strip may gain at most when it goes on by so much, its last blank being given.</summary>
    public long More(int last, long room)
    {
        var more = (long)(extra[last] * room);
        return more + (more >> 48) + 2;
    }

    /// <summary>The greatest value of a strip of a breadth, its last cut counted, from the blanks counted.</summary>
    private long BestStrip(long length, int breadth)
    {
        var room = length + group.First.CrosscutKerf;
        var value = cross * group.Pool.Breadths[breadth].Needed;
        foreach (var blank in byBreadth[breadth])
        {
            var count = counts[blank.Kind];
            if (count == 0 || blank.Along > length)
                continue;
            var span = blank.Along + group.First.CrosscutKerf;
            if (span * count <= room)
            {
                value += blank.Net * count;
                room -= span * count;
                continue;
            }

            value += Part(blank.Net, (double)room / span);
            break;
        }

        return value;
    }

    /// <summary>A part of a value, rounded up by more than the error of the division.</summary>
    private static long Part(long net, double part) => (long)(net * part) + (net >> 48) + 2;

    private void Count(ulong left)
    {
        for (var kind = 0; kind < counts.Length; kind++)
            counts[kind] = packing.Count(left, kind);
    }

    /// <summary>Blanks that go into a strip of a breadth and are worth more than the cut after them.</summary>
    private Filler[] Along(Breadth breadth, Prices prices) =>
        [
            .. group
                .Pool.Lies.Select(lie => new Filler(
                    lie.Kind,
                    lie.Along,
                    group.Pool.AcrossOf(lie),
                    prices.Worth[lie.Kind] - cross * breadth.Needed,
                    lie.Along + group.First.CrosscutKerf
                ))
                .Where(f => f.Net > 0 && f.Across <= breadth.Needed)
                .OrderByDescending(f => f.Net / f.Size)
                .ThenBy(f => f.Kind),
        ];

    private Filler[] Areas(Prices prices)
    {
        var stock = group.First;
        // A blank that may lie either way counts with the better of each.
        return
        [
            .. group
                .Pool.Lies.GroupBy(lie => lie.Kind)
                .Select(ways => new Filler(
                    ways.Key,
                    ways.Min(l => l.Along),
                    ways.Min(group.Pool.AcrossOf),
                    prices.Worth[ways.Key] - cross * ways.Min(group.Pool.AcrossOf),
                    ways.Min(l =>
                        (double)(l.Along + stock.CrosscutKerf)
                        * (group.Pool.AcrossOf(l) + stock.RipKerf)
                    )
                ))
                .Where(f => f.Net > 0)
                .OrderByDescending(f => f.Net / f.Size)
                .ThenBy(f => f.Kind),
        ];
    }

    private readonly record struct Filler(int Kind, long Along, long Across, long Net, double Size);
}
