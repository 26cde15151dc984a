using System.Runtime.InteropServices;

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
    private readonly int[] ends;

    public StripShelf(ReadOnlySpan<PoolStrip> pool, int breadths)
    {
        this.breadths = breadths;
        var found = new Dictionary<long, int>();
        var counts = new List<int[]>();
        var lengthOf = new int[pool.Length];
        for (var i = 0; i < pool.Length; i++)
        {
            ref var length = ref CollectionsMarshal.GetValueRefOrAddDefault(
                found,
                pool[i].Length,
                out var isKnown
            );
            if (!isKnown)
            {
                length = counts.Count;
                counts.Add(new int[breadths]);
            }

            lengthOf[i] = length;
            counts[length][pool[i].Breadth]++;
        }

        lengths = [.. found.Keys.Order()];
        ends = new int[lengths.Length * breadths];
        First = new int[breadths];
        var places = 0;
        for (var b = 0; b < breadths; b++)
        {
            First[b] = places;
            for (var rank = 0; rank < lengths.Length; rank++)
            {
                ref var its = ref counts[found[lengths[rank]]][b];
                (its, places) = (places, places + its);
                ends[rank * breadths + b] = places;
            }

            places = (places + GreatBlock - 1) / GreatBlock * GreatBlock;
        }

        strips = new int[places];
        Array.Fill(strips, -1);
        for (var i = 0; i < pool.Length; i++)
            strips[counts[lengthOf[i]][pool[i].Breadth]++] = i;
    }

    /// <summary>First place of each breadth.</summary>
    public int[] First { get; }

    /// <summary>The strip at each place, or -1 where there is none.</summary>
    public ReadOnlySpan<int> Strips => strips;

    /// <summary>How many different lengths there are.</summary>
    public int Ranks => lengths.Length;

    /// <summary>A length by its number, the shortest being 0.</summary>
    public long LengthOf(int rank) => lengths[rank];

    /// <summary>Places that strips no longer than such a length take up to, for each breadth.</summary>
    public ReadOnlySpan<int> EndsOf(int rank) => ends.AsSpan(rank * breadths, breadths);
}
