namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What the widths of strips side by side, each with a kerf, can add up to in a board's width. Where there are too many
/// sums, widths are rounded down to a grid: what fits is then never missed.
/// </summary>
internal sealed class WidthSums
{
    private const int MostSums = 600;
    private const int CoarsestCells = 256;
    private readonly int[] next;
    private readonly int breadths;

    public WidthSums(Stock stock, IReadOnlyList<Breadth> widths)
    {
        breadths = widths.Count;
        long[] takes = [.. widths.Select(w => w.Width + stock.RipKerf)];
        var room = stock.Width + stock.RipKerf;
        if (Of(takes, room) is not { } sums)
        {
            var cell = Math.Max(1, Math.Min(room / CoarsestCells, takes.Min()));
            takes = [.. takes.Select(t => t / cell)];
            room /= cell;
            sums = [.. Enumerable.Range(0, (int)room + 1)];
        }

        Count = sums.Length;
        next = new int[sums.Length * breadths];
        for (var s = 0; s < sums.Length; s++)
        {
            for (var b = 0; b < breadths; b++)
            {
                var sum = sums[s] + takes[b];
                var at = sum <= room ? Array.BinarySearch(sums, sum) : -1;
                next[s * breadths + b] = at;
                if (at >= 0)
                    LastWithRoom = s;
            }
        }
    }

    /// <summary>How many sums there are, nothing at all being the first.</summary>
    public int Count { get; }

    /// <summary>The largest sum beside which a strip has room.</summary>
    public int LastWithRoom { get; }

    /// <summary>The sum with one strip more of a breadth, or -1 where it has no room.</summary>
    public int Next(int sum, int breadth) => next[sum * breadths + breadth];

    private static long[]? Of(long[] takes, long room)
    {
        SortedSet<long> sums = [0];
        var fresh = new List<long> { 0 };
        while (fresh.Count > 0)
        {
            var more = new List<long>();
            foreach (var sum in fresh)
            {
                foreach (var take in takes)
                {
                    if (sum + take <= room && sums.Add(sum + take))
                        more.Add(sum + take);
                }
            }

            if (sums.Count > MostSums)
                return null;
            fresh = more;
        }

        return [.. sums];
    }
}
