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
    private readonly int[] byLength;
    private readonly int[] ranks;
    private readonly int[] ends;

    public StripShelf(ReadOnlySpan<PoolStrip> pool, int breadths)
    {
        this.breadths = breadths;
        ranks = new int[pool.Length];
        byLength = new int[pool.Length];
        var lengths = new long[pool.Length];
        for (var i = 0; i < pool.Length; i++)
            (byLength[i], lengths[i]) = (i, pool[i].Length);
        Array.Sort(lengths, byLength);
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
            for (; to < lengths.Length && lengths[to] == lengths[n]; to++)
            {
                var i = byLength[to];
                strips[next[pool[i].Breadth]++] = i;
                ranks[i] = all.Count / breadths;
            }

            all.AddRange(next);
            n = to;
        }

        ends = [.. all];
    }

    /// <summary>First place of each breadth.</summary>
    public int[] First { get; }

    /// <summary>The strip at each place, or -1 where there is none.</summary>
    public ReadOnlySpan<int> Strips => strips;

    /// <summary>All strips, shortest first.</summary>
    public ReadOnlySpan<int> ByLength => byLength;

    /// <summary>Number of a strip's length among all lengths.</summary>
    public int RankOf(int strip) => ranks[strip];

    /// <summary>Places that strips no longer than this one take up to, for each breadth.</summary>
    public ReadOnlySpan<int> EndsFor(int strip) => ends.AsSpan(ranks[strip] * breadths, breadths);
}
