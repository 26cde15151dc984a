namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// The strips of a pool breadth by breadth, and within each by length: those of a breadth that are no longer than a given
/// one lie together. Each breadth starts at a whole block, so that blocks can be passed over.
/// </summary>
internal sealed class StripShelf
{
    /// <summary>Strips in a block.</summary>
    public const int Block = 16;

    /// <summary>Strips in a block of blocks.</summary>
    public const int GreatBlock = Block * Block;
    private readonly int breadths;
    private readonly int[] strips;
    private readonly long[] lengths;
    private readonly int[] ranks;
    private readonly int[] ends;

    public StripShelf(ReadOnlySpan<PoolStrip> pool, int breadths)
    {
        this.breadths = breadths;
        ranks = new int[pool.Length];
        var byLength = new int[pool.Length];
        var sizes = new long[pool.Length];
        for (var i = 0; i < pool.Length; i++)
            (byLength[i], sizes[i]) = (i, pool[i].Length);
        Array.Sort(sizes, byLength);
        var count = new int[breadths];
        foreach (ref readonly var strip in pool)
            count[strip.Breadth]++;
        First = new int[breadths];
        var places = 0;
        for (var b = 0; b < breadths; b++)
        {
            First[b] = places;
            places += (count[b] + GreatBlock - 1) / GreatBlock * GreatBlock;
        }

        strips = new int[places];
        Array.Fill(strips, -1);
        var next = First.ToArray();
        var all = new List<int>();
        for (var n = 0; n < byLength.Length; )
        {
            var to = n;
            for (; to < sizes.Length && sizes[to] == sizes[n]; to++)
            {
                var i = byLength[to];
                strips[next[pool[i].Breadth]++] = i;
                ranks[i] = all.Count / breadths;
            }

            all.AddRange(next);
            n = to;
        }

        ends = [.. all];
        lengths = [.. sizes.Distinct()];
    }

    /// <summary>First place of each breadth.</summary>
    public int[] First { get; }

    /// <summary>The strip at each place, or -1 where there is none.</summary>
    public ReadOnlySpan<int> Strips => strips;

    /// <summary>How many different lengths there are.</summary>
    public int Ranks => lengths.Length;

    /// <summary>A length by its number, the shortest being 0.</summary>
    public long LengthOf(int rank) => lengths[rank];

    /// <summary>Number of a strip's length among all lengths.</summary>
    public int RankOf(int strip) => ranks[strip];

    /// <summary>Places that strips no longer than such a length take up to, for each breadth.</summary>
    public ReadOnlySpan<int> EndsOf(int rank) => ends.AsSpan(rank * breadths, breadths);
}
