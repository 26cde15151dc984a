namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What each strip of a pool is worth at prices: its blanks less the crosscuts between them. On the shelf the greatest worth
/// of each block is kept, so that the few strips that are worth enough are found without a look at the others.
/// </summary>
internal sealed class StripPrices
{
    private const long None = long.MinValue / 8;
    private readonly StripPool pool;
    private readonly Term[] terms;
    private readonly long[] sums;
    private readonly long[] values;
    private readonly long[] onShelf;
    private readonly long[] upTo;
    private readonly long[] blocks;
    private readonly long[] greatBlocks;
    private long[]? countedAt;
    private long countedCross;

    public StripPrices(StripPool pool)
    {
        this.pool = pool;
        terms = new Term[pool.Strips.Length];
        for (var i = 0; i < terms.Length; i++)
        {
            ref readonly var strip = ref pool.Strips[i];
            terms[i] = new(
                strip.Before,
                (ushort)pool.Lies[strip.Last].Kind,
                strip.Breadth,
                strip.Count - 1
            );
        }

        var places = pool.Shelf.Strips.Length;
        (sums, values) = (new long[pool.Strips.Length], new long[pool.Strips.Length]);
        (onShelf, upTo) = (new long[places], new long[places]);
        blocks = new long[places / StripShelf.Block];
        greatBlocks = new long[places / StripShelf.GreatBlock];
    }

    /// <summary>The worth of each strip.</summary>
    public ReadOnlySpan<long> Values => values;

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
        var needed = new long[pool.Breadths.Count];
        for (var b = 0; b < needed.Length; b++)
            needed[b] = cross * pool.Breadths[b].Needed;
        for (var i = 0; i < terms.Length; i++)
        {
            var term = terms[i];
            var sum = worth[term.Kind] + (term.Before < 0 ? 0 : sums[term.Before]);
            sums[i] = sum;
            values[i] = sum - needed[term.Breadth] * term.Cuts;
        }

        var first = pool.Shelf.First;
        var places = pool.Shelf.Strips;
        for (var b = 0; b < first.Length; b++)
        {
            var end = b + 1 < first.Length ? first[b + 1] : places.Length;
            var most = None;
            for (var p = first[b]; p < end; p++)
            {
                onShelf[p] = places[p] < 0 ? None : values[places[p]];
                upTo[p] = most = Math.Max(most, onShelf[p]);
            }
        }

        Greatest(onShelf, blocks);
        Greatest(blocks, greatBlocks);
    }

    /// <summary>The greatest worth of a breadth's strips before a place of the shelf.</summary>
    public long Greatest(int breadth, int end) =>
        end > pool.Shelf.First[breadth] ? upTo[end - 1] : None;

    /// <summary>
    /// Collects the strips of a breadth before a place of the shelf that are worth at least so much; returns how many looks
    /// that took.
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
                into.Add(pool.Shelf.Strips[p]);
            p++;
        }

        return looks;
    }

    private static void Greatest(long[] of, long[] into)
    {
        for (var i = 0; i < into.Length; i++)
        {
            var most = None;
            foreach (var value in of.AsSpan(i * StripShelf.Block, StripShelf.Block))
                most = Math.Max(most, value);
            into[i] = most;
        }
    }

    /// <summary>What a strip's worth is counted from: the strip without its last blank, that blank, and the cuts between them all.</summary>
    private readonly record struct Term(int Before, ushort Kind, ushort Breadth, int Cuts);
}
