using System.Numerics;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What each strip of a pool is worth at prices: its blanks less the crosscuts between them. On the shelf the greatest worth
/// of each block is kept, so that the few strips that are worth enough are found without a look at the others.
/// </summary>
internal sealed class StripPrices
{
    private const long None = NearStrips.None;

    /// <summary>The worth of blanks is looked up for so many bits of their counts at a time.</summary>
    private const int LookUpBits = 10;
    private const int WordBits = 64;
    private readonly Packing packing;
    private readonly StripPool pool;
    private readonly ulong[] packed;

    /// <summary>Crosscuts between the blanks of the strip at each place; -1 where there is none.</summary>
    private readonly int[] cuts;
    private readonly long[] lookUp;
    private readonly long[] onShelf;
    private readonly long[] blocks;
    private readonly long[] greatBlocks;

    /// <summary>The greatest worth of a breadth's strips up to each block.</summary>
    private readonly long[] upTo;
    private long[]? countedAt;
    private long countedCross;

    public StripPrices(StripPool pool, Packing packing)
    {
        (this.pool, this.packing) = (pool, packing);
        var places = pool.Shelf.Strips;
        (packed, cuts) = (new ulong[places.Length], new int[places.Length]);
        for (var p = 0; p < places.Length; p++)
        {
            cuts[p] = -1;
            if (places[p] < 0)
                continue;
            ref readonly var strip = ref pool.Strips[places[p]];
            (packed[p], cuts[p]) = (strip.Packed, strip.Count - 1);
        }

        var bits = WordBits - BitOperations.LeadingZeroCount(packing.All);
        lookUp = new long[(bits + LookUpBits - 1) / LookUpBits << LookUpBits];
        onShelf = new long[places.Length];
        blocks = new long[places.Length / StripShelf.Block];
        greatBlocks = new long[places.Length / StripShelf.GreatBlock];
        upTo = new long[blocks.Length];
    }

    /// <summary>The worth of the strip at each place of the shelf.</summary>
    public ReadOnlySpan<long> OnShelf => onShelf;

    /// <summary>Counts anew, unless it was for these prices that it was done last.</summary>
    /// <param name="worth">Worth of a blank of each kind.</param>
    /// <param name="cross">Cost of a tick crosscut.</param>
    public void Count(long[] worth, long cross)
    {
        if (countedAt == worth && countedCross == cross)
            return;
        (countedAt, countedCross) = (worth, cross);
        FillLookUp(worth);
        var first = pool.Shelf.First;
        for (var b = 0; b < first.Length; b++)
        {
            var end = b + 1 < first.Length ? first[b + 1] : onShelf.Length;
            CountBreadth(first[b], end, cross * pool.Breadths[b].Needed);
        }

        for (var i = 0; i < greatBlocks.Length; i++)
        {
            var some = blocks.AsSpan(i * StripShelf.Block, StripShelf.Block);
            greatBlocks[i] = Greatest(some);
        }
    }

    /// <summary>The greatest worth of a breadth's strips before a place of the shelf.</summary>
    public long Greatest(int breadth, int end)
    {
        var first = pool.Shelf.First[breadth];
        var whole = Math.Max(first, end / StripShelf.Block * StripShelf.Block);
        var most = whole > first ? upTo[whole / StripShelf.Block - 1] : None;
        return whole < end ? Math.Max(most, GreatestOf(whole, end)) : most;
    }

    /// <summary>The greatest worth of the strips from a place of the shelf on and before another.</summary>
    public long GreatestOf(int from, int end) => Greatest(onShelf.AsSpan(from..end));

    /// <summary>
    /// Collects the places of a breadth's strips before a place of the shelf that are worth at least so much; returns how many
    /// looks that took.
    /// </summary>
    public int Collect(int breadth, int end, long least, List<int> into)
    {
        var looks = 0;
        for (var p = pool.Shelf.First[breadth]; p < end; looks++)
        {
            if (p % StripShelf.GreatBlock == 0 && greatBlocks[p / StripShelf.GreatBlock] < least)
            {
                p += StripShelf.GreatBlock;
                continue;
            }

            if (p % StripShelf.Block == 0 && blocks[p / StripShelf.Block] < least)
            {
                p += StripShelf.Block;
                continue;
            }

            if (onShelf[p] >= least)
                into.Add(p);
            p++;
        }

        return looks;
    }

    /// <summary>Worth of the blanks that each value of some bits stands for.</summary>
    private void FillLookUp(long[] worth)
    {
        for (var bit = 0; bit < WordBits - BitOperations.LeadingZeroCount(packing.All); bit++)
        {
            var kind = packing.FirstKind(1UL << bit);
            var isCount = packing.HasAny(1UL << bit, kind);
            var its = isCount ? packing.Count(1UL << bit, kind) * worth[kind] : 0;
            var table = lookUp.AsSpan(bit / LookUpBits << LookUpBits, 1 << LookUpBits);
            var half = 1 << (bit % LookUpBits);
            for (var without = 0; without < half; without++)
                table[half + without] = table[without] + its;
        }
    }

    private void CountBreadth(int from, int to, long cut)
    {
        var most = None;
        for (var block = from; block < to; block += StripShelf.Block)
        {
            var greatest = None;
            for (var p = block; p < block + StripShelf.Block; p++)
            {
                var its = cuts[p] < 0 ? None : Worth(packed[p]) - cut * cuts[p];
                onShelf[p] = its;
                greatest = Math.Max(greatest, its);
            }

            most = Math.Max(most, greatest);
            (blocks[block / StripShelf.Block], upTo[block / StripShelf.Block]) = (greatest, most);
        }
    }

    private long Worth(ulong blanks)
    {
        var worth = 0L;
        for (var at = 0; blanks != 0; at += 1 << LookUpBits, blanks >>= LookUpBits)
            worth += lookUp[at + (int)(blanks & ((1 << LookUpBits) - 1))];
        return worth;
    }

    private static long Greatest(ReadOnlySpan<long> of)
    {
        var most = None;
        foreach (var value in of)
            most = Math.Max(most, value);
        return most;
    }
}
